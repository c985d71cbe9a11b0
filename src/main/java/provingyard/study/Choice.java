package provingyard.study;

import java.util.Optional;
import provingyard.scenario.SensorKind;

/**
 * What a trainee chooses, so far as it can be told apart: each kind of sensor with the interlocks and the watch that
 * belong to it, and the schedule where a lesson leaves it open.
 */
public enum Choice {
    RAIN(SensorKind.RAIN),
    WIND(SensorKind.WIND),
    FREEZE(SensorKind.FREEZE),
    FLOW(SensorKind.FLOW),
    SOIL(SensorKind.SOIL),
    SCHEDULE(null);

    private final SensorKind kind;

    Choice(SensorKind kind) {
        this.kind = kind;
    }

    /** The kind of sensor; empty for the schedule. */
    public Optional<SensorKind> kind() {
        return Optional.ofNullable(kind);
    }

    /** The choice of a kind of sensor. */
    public static Choice of(SensorKind kind) {
        return valueOf(kind.name());
    }
}
