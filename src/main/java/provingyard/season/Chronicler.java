package provingyard.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.control.ControlEvent;
import provingyard.scenario.SensorKind;
import provingyard.season.Chronicle.Dryness;
import provingyard.season.Chronicle.Guise;
import provingyard.season.Chronicle.Sensed;
import provingyard.season.Chronicle.Stop;
import provingyard.sensor.Readings;
import provingyard.sensor.SensorFaults;
import provingyard.setup.Placement;
import provingyard.world.weather.Weather;

/** Lives a season again and notes what a {@link Chronicle} holds. Mutable. */
final class Chronicler {

    private static final int HOUR = Chronicle.HOUR;

    /** What one placed sensor showed. */
    private record Lane(String id, SensorKind kind, float[] shown, BitSet open, BitSet broken) {

        boolean isNamed(String on) {
            return id.equals(on) || kind.name().equalsIgnoreCase(on);
        }
    }

    /** What reaches a rain sensor. */
    private record Cup(String id, SeasonSurroundings.SpotAir air, double[] caught, double[] sprayed) {}

    private final Season season;
    private final Guises guises;
    private final RunNotes runs;
    private final IceNotes ice;
    private final LeakNotes leaks;
    private final List<Ledger.Irrigation> hours = new ArrayList<>();
    private final List<Dryness> days = new ArrayList<>();
    private final Map<String, Lane> lanes = new LinkedHashMap<>();
    private final Map<String, SensorKind> kinds = new LinkedHashMap<>();
    private final Map<String, double[]> caught = new LinkedHashMap<>();
    private final Map<String, double[]> sprayed = new LinkedHashMap<>();
    private final double[] open;
    private final long minutes;
    private final List<Stop> stops = new ArrayList<>();
    private int told;
    private List<Cup> cups = List.of();
    private List<Lane> placed = List.of();

    private Chronicler(Season fresh, long minutes) {
        season = fresh;
        this.minutes = minutes;
        WalkMiddles middles = new WalkMiddles(fresh.site());
        guises = new Guises(fresh, middles.coldest());
        runs = new RunNotes(fresh);
        ice = new IceNotes(fresh, middles);
        leaks = new LeakNotes(fresh);
        open = new double[(int) (minutes / HOUR) + 1];
        watch();
        hours.add(fresh.irrigation());
        days.add(dryness());
    }

    /**
     * Lives the minutes of a lived season.
     *
     * @param fresh the season to live, before its first minute
     * @param withChanges whether to make the lived season's changes
     */
    static Chronicle write(Season lived, Season fresh, boolean withChanges) {
        Chronicler all = new Chronicler(fresh, lived.tick());
        if (withChanges) {
            Again.live(lived, fresh, lived.tick(), t -> all.changed(), all::minute);
        } else {
            for (long t = 0; t < lived.tick(); t++) {
                fresh.advance();
                all.minute(t);
            }
        }
        return all.chronicle();
    }

    private void changed() {
        guises.change();
        watch();
    }

    private void watch() {
        List<Cup> rain = new ArrayList<>();
        List<Lane> now = new ArrayList<>();
        for (Placement p : season.setUp().sensors()) {
            kinds.put(p.id(), p.kind());
            now.add(lanes.computeIfAbsent(p.id(), id -> lane(p)));
            if (p instanceof Placement.Rain r) {
                rain.add(new Cup(
                        r.id(),
                        season.surroundings().air(r.at(), r.height()),
                        caught.computeIfAbsent(r.id(), id -> new double[open.length]),
                        sprayed.computeIfAbsent(r.id(), id -> new double[open.length])));
            }
        }
        cups = rain;
        placed = now;
    }

    private Lane lane(Placement p) {
        float[] shown = new float[(int) minutes];
        Arrays.fill(shown, Float.NaN);
        return new Lane(p.id(), p.kind(), shown, new BitSet((int) minutes), new BitSet());
    }

    private void minute(long t) {
        Weather now = season.weather(t);
        boolean strong = guises.windy(t - 1);
        guises.minute(t, now);
        runs.minute(t, now, strong);
        ice.minute(t);
        List<SeasonEvent> events = season.eventsFrom(told);
        told += events.size();
        leaks.minute(t, events);
        events.forEach(this::stop);
        catchRain(t, now);
        readings((int) t);
        if ((t + 1) % HOUR == 0) {
            hours.add(season.irrigation());
        }
        if ((t + 1) % Chronicle.DAY == 0) {
            days.add(dryness());
        }
    }

    private void readings(int t) {
        List<Readings.Reading> all = season.readings().all();
        for (int i = 0; i < placed.size(); i++) {
            placed.get(i).shown()[t] = (float) all.get(i).shown();
            if (all.get(i).open()) {
                placed.get(i).open().set(t);
            }
        }
        for (SensorFaults.Fault fault : season.troubles().active()) {
            placed.stream()
                    .filter(lane -> lane.isNamed(fault.on()))
                    .forEach(lane -> lane.broken().set(t));
        }
    }

    /** Rain and spray of the minute go to the whole hour after it. */
    private void catchRain(long t, Weather now) {
        int hour = (int) (t / HOUR) + 1;
        if (hour >= open.length) {
            return;
        }
        boolean first = t % HOUR == 0;
        open[hour] = (first ? open[hour - 1] : open[hour]) + now.rain();
        if (first) {
            carry(caught, hour);
            carry(sprayed, hour);
        }
        for (Cup cup : cups) {
            cup.caught()[hour] += now.rain() > 0 ? cup.air().rain() : 0;
            cup.sprayed()[hour] += cup.air().spray();
        }
    }

    private static void carry(Map<String, double[]> sums, int hour) {
        sums.values().forEach(depths -> depths[hour] = depths[hour - 1]);
    }

    private Dryness dryness() {
        return new Dryness(season.ground().dryAreaDays(), season.ground().deadArea());
    }

    private void stop(SeasonEvent e) {
        boolean held =
                switch (e.kind()) {
                    case START_SKIPPED, RUN_SHUT, RUN_PAUSED -> true;
                    default -> false;
                };
        SensorKind kind = flowDid(e.cause()) ? SensorKind.FLOW : kinds.get(e.cause());
        if (held && kind != null) {
            double wetness = runs.wetness(season.commands().zones().indexOf(e.subject()));
            stops.add(new Stop(e.tick(), e.kind(), e.subject(), e.cause(), kind, wetness));
        }
    }

    private static boolean flowDid(String cause) {
        return switch (cause) {
            case ControlEvent.LOCK_OUT, ControlEvent.MASTER, ControlEvent.FLOW -> true;
            default -> false;
        };
    }

    private List<Sensed> sensors() {
        List<Sensed> all = new ArrayList<>();
        lanes.forEach((id, lane) -> {
            Map<Guise, Trips> trips = new EnumMap<>(Guise.class);
            if (lane.kind() != SensorKind.FLOW) {
                trips.putAll(guises.trips(id));
                trips.put(Guise.AS_IT_WAS, Trips.of(lane.open()));
                trips.putIfAbsent(Guise.SOUND, trips.get(Guise.AS_IT_WAS));
            }
            all.add(new Sensed(id, lane.kind(), trips, lane.shown(), Trips.of(lane.broken())));
        });
        return all;
    }

    private Chronicle chronicle() {
        days.add(dryness());
        return new Chronicle(
                season.tick(),
                season.outcome(),
                hours,
                days,
                runs.runs(season.tick()),
                stops,
                ice.iced(season.tick()),
                leaks.leaks(season.tick()),
                leaks.falseAlarms(),
                new Chronicle.Fallen(open, caught, sprayed),
                sensors(),
                guises.usual());
    }
}
