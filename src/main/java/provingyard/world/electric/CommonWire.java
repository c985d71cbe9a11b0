package provingyard.world.electric;

import java.util.ArrayList;
import java.util.List;

/**
 * The wire that all valves share, from the common terminal through all boxes.
 *
 * @param gauge AWG
 * @param cuts where it is cut
 */
public record CommonWire(int gauge, List<Cut> cuts) {

    public CommonWire {
        cuts = List.copyOf(cuts);
    }

    CommonWire with(Cut cut) {
        List<Cut> all = new ArrayList<>(cuts);
        all.add(cut);
        return new CommonWire(gauge, all);
    }
}
