package provingyard.control;

import java.util.List;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Scenario;

/**
 * The valves that are wired to the controller.
 *
 * @param zones ids of all zone valves, in the document's order
 * @param hasMaster whether there is a master valve
 * @param masterRestsOpen whether the master valve is normally open
 */
record ValveBox(List<String> zones, boolean hasMaster, boolean masterRestsOpen) {

    static ValveBox of(Scenario scenario) {
        List<Plumbing.Fitting> fittings = scenario.plumbing().fittings();
        List<Plumbing.Fitting> masters = fittings.stream()
                .filter(f -> f.kind() == Plumbing.FittingKind.MASTER_VALVE)
                .toList();
        List<String> zones = fittings.stream()
                .filter(f -> f.kind() == Plumbing.FittingKind.ZONE_VALVE)
                .map(Plumbing.Fitting::id)
                .toList();
        boolean restsOpen = masters.stream().noneMatch(f -> f.normally() == Plumbing.Normally.CLOSED);
        return new ValveBox(zones, !masters.isEmpty(), restsOpen);
    }

    /** Whether the master valve is open; true where there is none. */
    boolean masterOpen(boolean shutByAlarm, boolean zoneOpen) {
        return !hasMaster || !shutByAlarm && (masterRestsOpen || zoneOpen);
    }
}
