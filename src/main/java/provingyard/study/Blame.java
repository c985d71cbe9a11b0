package provingyard.study;

import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;
import provingyard.scenario.SensorKind;
import provingyard.season.Chronicle;
import provingyard.season.Chronicle.Guise;
import provingyard.season.Trips;
import provingyard.setup.Interlock;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.study.Moment.Why;

/**
 * Why a kind of sensor let runs happen that it is there to hold back, by evidence: the minutes in which a usual sensor of
 * the kind at a good place was tripped while they ran, and which of the same sensor's guises would have been tripped in at
 * least half of them. First what is missing (sensor, connection), then what did not work (a fault), then where it is, then
 * how it is set: a setting cannot help where the place hides what is to be seen. Where only another place and another
 * setting together would have helped, the place is named.
 */
final class Blame {

    /** Share of the available water from which a zone needs no water (common practice, no source). */
    static final double WET_SHARE = 0.8;

    private static final double HALF = 0.5;

    /** A cause with the sensor that it speaks of; null where there is none. */
    record Verdict(Why why, Placement sensor) {}

    private final Story story;

    Blame(Story story) {
        this.story = story;
    }

    /** The cause; empty where no usual sensor of the kind would have held the runs back. */
    Optional<Verdict> of(SensorKind kind, List<Chronicle.Run> runs) {
        if (runs.isEmpty() || !story.hasKind(kind, runs.get(0).from())) {
            return Optional.empty();
        }
        ToLongFunction<Chronicle.Run> due = due(kind);
        double needed = sum(runs, due);
        double all = sum(runs, Chronicle.Run::minutes);
        boolean some = kind == SensorKind.WIND ? needed > 0 : needed > 0 && needed >= HALF * all;
        return some ? Optional.of(placed(kind, runs, due)) : Optional.empty();
    }

    private Verdict placed(SensorKind kind, List<Chronicle.Run> runs, ToLongFunction<Chronicle.Run> due) {
        SetUp setUp = story.setUpAt(runs.get(0).from());
        List<Placement> sensors = setUp.of(kind);
        if (sensors.isEmpty()) {
            return new Verdict(Why.NO_SENSOR, null);
        }
        for (Placement sensor : sensors) {
            List<Chronicle.Run> acted =
                    runs.stream().filter(r -> actsOn(setUp, sensor, r.zone())).toList();
            if (sum(acted, due) >= HALF * sum(runs, due)) {
                return new Verdict(judged(sensor, acted, due), sensor);
            }
        }
        return new Verdict(Why.NOT_CONNECTED, sensors.get(0));
    }

    private static boolean actsOn(SetUp setUp, Placement sensor, String zone) {
        return setUp.interlocks().stream()
                .anyMatch(i -> i.sensor().equals(sensor.id()) && i.action() != Interlock.Action.NONE && i.actsOn(zone));
    }

    private Why judged(Placement sensor, List<Chronicle.Run> runs, ToLongFunction<Chronicle.Run> due) {
        Chronicle.Sensed sensed = story.told().sensor(sensor.id());
        double half = HALF * sum(runs, due);
        double did = sum(runs, with(sensor.kind(), sensed, Guise.AS_IT_WAS));
        if (did >= half) {
            // It tripped, and the controller let the runs go on.
            return Why.SETTING;
        }
        // A freeze sensor that is somewhat off still trips; the others see nothing at all while they are broken.
        boolean blind = sensor.kind() != SensorKind.FREEZE
                && sensed.broken().seenAt(runs.get(0).from());
        if (blind || sum(runs, with(sensor.kind(), sensed, Guise.SOUND)) > did) {
            return Why.FAULT;
        }
        boolean placed = sensor instanceof Placement.Soil s
                ? sum(runs, r -> r.wetness() >= story.wetShare(s) ? due.applyAsLong(r) : 0) >= half
                : sum(runs, with(sensor.kind(), sensed, Guise.WELL_PLACED)) >= half;
        boolean set = sum(runs, with(sensor.kind(), sensed, Guise.EAGER)) >= half;
        return !placed && set ? Why.SETTING : Why.PLACE;
    }

    /** Minutes of a run in which a usual sensor at a good place would have held it back. */
    private ToLongFunction<Chronicle.Run> due(SensorKind kind) {
        if (kind == SensorKind.SOIL) {
            return run -> run.wetness() >= WET_SHARE ? run.minutes() : 0;
        }
        Trips usual = story.told().usual().get(kind);
        return run -> usual == null ? 0 : usual.seen(run.from(), run.until());
    }

    /** Those of them in which a guise was tripped. */
    private ToLongFunction<Chronicle.Run> with(SensorKind kind, Chronicle.Sensed sensed, Guise guise) {
        Trips trips = sensed.trips().get(guise);
        if (trips == null) {
            return run -> 0;
        }
        if (kind == SensorKind.SOIL) {
            return run -> run.wetness() >= WET_SHARE ? trips.seen(run.from(), run.until()) : 0;
        }
        Trips usual = story.told().usual().get(kind);
        return run -> trips.seenWith(usual, run.from(), run.until());
    }

    private static double sum(List<Chronicle.Run> runs, ToLongFunction<Chronicle.Run> minutes) {
        return runs.stream().mapToLong(minutes).sum();
    }
}
