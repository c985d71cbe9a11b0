package provingyard.setup;

import com.fasterxml.jackson.databind.EnumNamingStrategies.CamelCaseStrategy;
import com.fasterxml.jackson.databind.annotation.EnumNaming;
import java.util.List;

/**
 * What the controller does while a sensor is tripped (soil: wet).
 *
 * @param sensor placement id
 * @param action what it does
 * @param zones zone ids; empty for all zones
 */
public record Interlock(String sensor, Action action, List<String> zones) {

    public Interlock {
        zones = List.copyOf(zones);
    }

    /** Whether the zone is among those it acts on. */
    public boolean actsOn(String zone) {
        return zones.isEmpty() || zones.contains(zone);
    }

    /** The actions. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum Action {
        /** Nothing. */
        NONE,
        /** A start that falls in the tripped time is dropped; what runs goes on. */
        SKIP,
        /** What runs is held and its rest runs later. */
        PAUSE,
        /** What runs ends, and starts are dropped. */
        SHUT,
        /** Soil: starts are dropped while it is wet. */
        BLOCK,
        /** Soil: starts are let through only while it is dry. */
        ALLOW,
        /** Soil: a run of its zones starts when it falls dry, within the allowed windows; clock starts are dropped. */
        START
    }
}
