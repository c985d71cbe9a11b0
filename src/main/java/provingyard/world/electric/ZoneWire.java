package provingyard.world.electric;

import java.util.ArrayList;
import java.util.List;

/**
 * The wire of one valve, from its terminal along the route to its box, and the coil there.
 *
 * @param valve id of the valve
 * @param terminal where it is put on at the controller
 * @param box id of the valve's box
 * @param gauge AWG
 * @param cuts where it is cut
 * @param splice its joint to the coil
 */
public record ZoneWire(String valve, String terminal, String box, int gauge, List<Cut> cuts, Splice splice, Coil coil) {

    public ZoneWire {
        cuts = List.copyOf(cuts);
    }

    ZoneWire on(String other) {
        return new ZoneWire(valve, other, box, gauge, cuts, splice, coil);
    }

    ZoneWire with(Cut cut) {
        List<Cut> all = new ArrayList<>(cuts);
        all.add(cut);
        return new ZoneWire(valve, terminal, box, gauge, all, splice, coil);
    }

    ZoneWire with(Splice joint) {
        return new ZoneWire(valve, terminal, box, gauge, cuts, joint, coil);
    }

    ZoneWire with(Coil other) {
        return new ZoneWire(valve, terminal, box, gauge, cuts, splice, other);
    }
}
