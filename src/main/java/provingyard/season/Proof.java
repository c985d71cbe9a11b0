package provingyard.season;

import java.util.List;
import java.util.Set;
import provingyard.scenario.SensorKind;

/**
 * What a test of a sensor showed, minute by minute, and what it comes to; plain values.
 *
 * @param test which test
 * @param sensor placement id
 * @param zone id of the zone that ran meanwhile
 * @param minutes in order
 * @param verdict what it comes to
 */
public record Proof(Test test, String sensor, String zone, List<Minute> minutes, Verdict verdict) {

    public Proof {
        minutes = List.copyOf(minutes);
    }

    /** The tests. */
    public enum Test {
        /** Water is poured on a rain sensor, then it is dried with warm air. */
        POUR(SensorKind.RAIN),
        /** A wind sensor's cups are sheltered, then spun beside a hand-held anemometer. */
        SPIN(SensorKind.WIND),
        /** A freeze sensor is cooled beside a thermometer. */
        COOL(SensorKind.FREEZE),
        /** A zone runs five minutes: the flow sensor's volume against the meter's. */
        METER(SensorKind.FLOW),
        /** A zone runs with a limit that is too low. */
        LIMIT(SensorKind.FLOW),
        /** A soil core beside the probe, then water is poured there. */
        CORE(SensorKind.SOIL);

        private final SensorKind kind;

        Test(SensorKind kind) {
            this.kind = kind;
        }

        /** The kind of sensor that it is for. */
        public SensorKind kind() {
            return kind;
        }

        /** The tests of a kind. */
        public static List<Test> of(SensorKind kind) {
            return java.util.Arrays.stream(values()).filter(t -> t.kind == kind).toList();
        }
    }

    /** State of the zone's valve. */
    public enum Valve {
        SHUT,
        OPEN
    }

    /**
     * One minute.
     *
     * @param reference what the reference showed, in the reading's SI unit: m poured, anemometer, thermometer, flow past
     *     the sensor, soil core
     * @param reading what the sensor showed
     * @param tripped whether the controller saw it tripped
     */
    public record Minute(double reference, double reading, boolean tripped, Valve valve) {}

    /** What the controller did with the zone. */
    public enum Reaction {
        /** It ended the run. */
        SHUT,
        /** It held the run until the sensor re-armed. */
        HELD,
        /** It dropped a start; what ran went on. */
        START_DROPPED,
        /** It shut all water. */
        ALL_SHUT,
        /** It gave an alarm, and the water ran on. */
        ALARM_ONLY,
        /** Nothing. */
        RAN_ON
    }

    /** What is not as it should be. */
    public enum Finding {
        /** The reading differs from the reference by more than such a sensor may. */
        READS_OFF,
        /** It did not trip. */
        NEVER_TRIPPED,
        /** It was tripped before anything was done to it. */
        TRIPPED_AT_REST,
        /** It did not re-arm. */
        STAYS_TRIPPED,
        /** The controller lets the water run whatever it says. */
        NOT_OBEYED,
        /** No water of any zone passes it. */
        NO_WATER,
        /** The flow watch does not watch this sensor. */
        NOT_WATCHED
    }

    /**
     * What it comes to. Values are in the reading's SI unit (volumes in m3), NaN where the test does not give them.
     *
     * @param reference what the reference gave
     * @param reading what the sensor gave
     * @param trippedAt the reference at the minute in which it tripped
     * @param setPoint where it was set to trip
     * @param trippedAfter minutes until it tripped, -1 for never
     * @param rearmedAfter minutes until it re-armed, -1 for never
     */
    public record Verdict(
            double reference,
            double reading,
            double trippedAt,
            double setPoint,
            int trippedAfter,
            int rearmedAfter,
            Reaction reaction,
            Set<Finding> findings) {

        public Verdict {
            findings = Set.copyOf(findings);
        }

        /** Whether all is as it should be. */
        public boolean good() {
            return findings.isEmpty();
        }
    }
}
