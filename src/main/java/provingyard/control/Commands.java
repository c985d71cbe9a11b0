package provingyard.control;

import java.util.List;

/**
 * What the controller wants in one minute.
 *
 * @param zones ids of all zone valves, in the document's order
 * @param openZone index of the zone that is open, -1 for none: never more than one
 * @param masterOpen whether the master valve is open (true where there is none)
 * @param events what happened at the begin of the minute, in order
 */
public record Commands(List<String> zones, int openZone, boolean masterOpen, List<ControlEvent> events) {

    /** Whether the same valves are open. */
    public boolean sameValves(Commands other) {
        return openZone == other.openZone && masterOpen == other.masterOpen;
    }

    /** Which zones are open, by index; a new array. */
    public boolean[] open() {
        boolean[] open = new boolean[zones.size()];
        if (openZone >= 0) {
            open[openZone] = true;
        }
        return open;
    }

    /** Id of the open zone, or null. */
    public String openId() {
        return openZone < 0 ? null : zones.get(openZone);
    }
}
