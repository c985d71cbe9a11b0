package provingyard.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import provingyard.scenario.Scenario;
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

    /** The choices that a lesson leaves open, in order. */
    public static List<Choice> open(Scenario scenario) {
        return Arrays.stream(values()).filter(c -> c.isOpen(scenario)).toList();
    }

    /** Whether a lesson leaves it to the trainee. */
    public boolean isOpen(Scenario scenario) {
        return kind == null
                ? !scenario.locks().schedule()
                : scenario.kit().item(kind) != null
                        && !scenario.locks().sensors().contains(kind);
    }

    /** The choice of a kind of sensor. */
    public static Choice of(SensorKind kind) {
        return valueOf(kind.name());
    }
}
