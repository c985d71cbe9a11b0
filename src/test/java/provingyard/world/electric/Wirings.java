package provingyard.world.electric;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Point;

/** Small wirings for tests. */
final class Wirings {

    static final double NEVER = Double.POSITIVE_INFINITY;

    private Wirings() {}

    /** Four valves v1 to v4, one to a box each 20 m, on terminals 1 to 4, and the master valve in the first box. */
    static Wiring row() {
        List<Box> boxes = new ArrayList<>();
        List<ZoneWire> wires = new ArrayList<>();
        List<Output> outputs = new ArrayList<>();
        for (int i = 1; i <= 4; i++) {
            boxes.add(new Box("b" + i, new Point(20 * i, 0), 20 * i, Splice.SOUND));
            outputs.add(new Output("" + i, 0.2, false));
            wires.add(new ZoneWire("v" + i, "" + i, "b" + i, 18, List.of(), Splice.SOUND, Coil.USUAL));
        }
        outputs.add(new Output(Output.MASTER, 0.2, false));
        wires.add(new ZoneWire("mv", Output.MASTER, "b1", 18, List.of(), Splice.SOUND, Coil.USUAL));
        return new Wiring(
                transformer(1, Transformer.Protection.FUSE),
                new SensorLoop(10, 18, 0.1, SensorLoop.State.HEALTHY),
                outputs,
                new CommonWire(14, List.of()),
                boxes,
                wires,
                List.of(),
                NEVER);
    }

    static Transformer transformer(double limit, Transformer.Protection protection) {
        return new Transformer(27, 3, 60, limit, protection, false, false);
    }
}
