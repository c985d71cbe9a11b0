package provingyard.picture;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import provingyard.scenario.SensorKind;

/**
 * What the weather ribbon shows: plain values by minute of the season (tick).
 *
 * @param start clock of tick 0
 * @param step minutes between the values of the arrays; value i belongs to ticks i step to (i + 1) step
 * @param air °C
 * @param rain mm in each step
 * @param wind m/s
 * @param sun global radiation, W/m2
 * @param lanes zones, in the document's order
 * @param holders how many placed sensors can hold; their marks get that many rows, up to three
 * @param holds sensors that held
 * @param signs ice and alarms; kept in order of time
 * @param nights from sunset to sunrise
 * @param livedUntil tick up to which the season was lived; nothing but planned runs is shown after it
 * @param flow the flow lane, or null where no flow sensor is
 * @param soil the soil lane, or null where no soil sensor is
 */
public record RibbonData(
        LocalDateTime start,
        int step,
        double[] air,
        double[] rain,
        double[] wind,
        double[] sun,
        List<Lane> lanes,
        int holders,
        List<Hold> holds,
        List<Sign> signs,
        List<Span> nights,
        long livedUntil,
        Flow flow,
        Soil soil) {

    public RibbonData {
        if (step <= 0) {
            throw new IllegalArgumentException("step must be positive: " + step);
        }
        lanes = List.copyOf(lanes);
        holds = List.copyOf(holds);
        signs = signs.stream().sorted(Comparator.comparingLong(Sign::tick)).toList();
        nights = List.copyOf(nights);
    }

    /** From a tick to a tick. */
    public record Span(long from, long to) {}

    /** What became of a run. */
    public enum RunState {
        RAN,
        SKIPPED,
        RUNNING,
        PLANNED
    }

    /** A zone's run. */
    public record Run(long from, long to, RunState state) {}

    /** A zone's lane. */
    public record Lane(String zone, List<Run> runs) {
        public Lane {
            runs = List.copyOf(runs);
        }
    }

    /** A sensor that held from a tick to a tick; the word may be empty. */
    public record Hold(SensorKind kind, String sensor, long from, long to, String word) {}

    /** What a sign says. */
    public enum SignKind {
        ICE,
        ALARM,
        LEAK
    }

    /** A sign with a word; the word may be empty. */
    public record Sign(long tick, SignKind kind, String word) {}

    /** Expected flow of what runs from a tick to a tick, and its limits; all in the flow lane's unit. */
    public record Band(long from, long to, double expected, double low, double high) {}

    /** The flow sensor's reading by a step of its own in minutes, with the bands of the zones that ran. */
    public record Flow(int step, double[] reading, List<Band> bands) {
        public Flow {
            bands = List.copyOf(bands);
        }
    }

    /** The soil sensor's reading by a step of its own in minutes, and its dry and wet points, as volume shares. */
    public record Soil(int step, double[] reading, double dry, double wet) {}
}
