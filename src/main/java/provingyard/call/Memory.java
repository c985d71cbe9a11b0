package provingyard.call;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.control.ControllerRecords.End;
import provingyard.control.ControllerRecords.Run;
import provingyard.scenario.SensorKind;

/**
 * What a controller remembers of the last days, and what its sensors held meanwhile.
 *
 * @param runs in which zones were open
 * @param alarm whether flow was too high, too low or unscheduled at some time
 * @param open minutes of these days in which a zone was open
 * @param held for each kind of sensor the minutes in which one was tripped
 */
record Memory(List<Run> runs, boolean alarm, BitSet open, Map<SensorKind, BitSet> held) {

    /**
     * A zone's turn after one start, with all its parts.
     *
     * @param start tick at which it was opened first
     * @param minutes in which it was open
     */
    record Turn(long start, long minutes) {}

    /** Turns by zone, in order, of a program that no sensor holds; what is not over yet is left out. */
    Map<String, List<Turn>> turns() {
        Map<String, List<Turn>> turns = new LinkedHashMap<>();
        Map<String, Turn> parts = new LinkedHashMap<>();
        for (Run run : runs) {
            Turn before = parts.remove(run.zone());
            long minutes = run.end() - run.start();
            Turn turn = before == null
                    ? new Turn(run.start(), minutes)
                    : new Turn(before.start(), before.minutes() + minutes);
            if (run.why() == End.SOAK) {
                parts.put(run.zone(), turn);
            } else {
                turns.computeIfAbsent(run.zone(), z -> new ArrayList<>()).add(turn);
            }
        }
        return turns;
    }

    /** Minutes in which a zone was open while another's sensors of a kind held. */
    int openWhile(SensorKind kind, Memory other) {
        BitSet both = (BitSet) open.clone();
        both.and(other.held().getOrDefault(kind, new BitSet()));
        return both.cardinality();
    }
}
