package provingyard.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import provingyard.scenario.SensorKind;
import provingyard.season.Chronicle;
import provingyard.setup.Placement;
import provingyard.study.Moment.What;
import provingyard.study.Moment.Why;

/** What runs brought about that should have been held back: wet soil watered, drift, iced walks. */
final class WateringRules {

    private static final int DAY = 1440;

    private final Story story;
    private final Blame blame;

    WateringRules(Story story) {
        this.story = story;
        blame = new Blame(story);
    }

    /** Waterings whose water ran off or went below the roots, see {@link WaterDivided}. */
    List<Moment> wetSoil() {
        WaterDivided water = new WaterDivided(story.told());
        List<Moment> moments = new ArrayList<>();
        List<Story.Watering> waterings = Story.waterings(story.told());
        for (int i = 0; i < waterings.size(); i++) {
            double below = water.below(i);
            double runoff = water.runoff(i);
            double money = (below + runoff) * story.costs().water();
            if (money >= Story.LEAST_MONEY) {
                moments.add(wet(waterings.get(i), below, runoff, money));
            }
        }
        return moments;
    }

    private Moment wet(Story.Watering w, double below, double runoff, double money) {
        Optional<Blame.Verdict> rain = blame.of(SensorKind.RAIN, w.runs());
        Optional<Blame.Verdict> soil = blame.of(SensorKind.SOIL, w.runs());
        boolean soilIsThere = soil.isPresent() && soil.get().why() != Why.NO_SENSOR;
        boolean bySoil = soil.isPresent() && (rain.isEmpty() || rain.get().why() == Why.NO_SENSOR && soilIsThere);
        SensorKind kind = bySoil ? SensorKind.SOIL : rain.isPresent() ? SensorKind.RAIN : null;
        Blame.Verdict verdict = kind == null ? new Blame.Verdict(Why.SCHEDULE, null) : bySoil ? soil.get() : rain.get();
        Gauge.Readings readings = readings(verdict.sensor(), w.first())
                .put(Gauge.WETNESS, wetness(w.runs()))
                .put(Gauge.BELOW, below)
                .put(Gauge.RUNOFF, runoff);
        return new Moment(
                w.first(),
                w.last(),
                What.WATERED_WET_SOIL,
                verdict.why(),
                kind,
                Story.zones(w.runs()),
                below + runoff,
                money,
                readings.of(What.WATERED_WET_SOIL));
    }

    private static double wetness(List<Chronicle.Run> runs) {
        double sum = 0;
        double weight = 0;
        for (Chronicle.Run run : runs) {
            if (Double.isFinite(run.wetness())) {
                sum += run.supplied() * run.wetness();
                weight += run.supplied();
            }
        }
        return weight == 0 ? Double.NaN : sum / weight;
    }

    private Gauge.Readings readings(Placement sensor, long tick) {
        Chronicle.Fallen rain = story.told().rain();
        long since = rain.since(tick);
        Gauge.Readings readings = new Gauge.Readings().put(Gauge.FELL, rain.between(rain.open(), since, tick));
        if (sensor != null) {
            readings.put(Gauge.SEEN, story.told().sensor(sensor.id()).seenAt(tick))
                    .put(Gauge.TRIPS, Story.trips(sensor))
                    .put(Gauge.CAUGHT, rain.between(rain.caught().get(sensor.id()), since, tick))
                    .put(Gauge.SPRAYED, rain.between(rain.sprayed().get(sensor.id()), since, tick));
        }
        return readings;
    }

    /** Nights in which strong wind carried water off, beyond what would have gone astray in still air. */
    List<Moment> drift() {
        List<Moment> moments = new ArrayList<>();
        for (Story.Watering w : Story.waterings(story.told())) {
            List<Chronicle.Run> windy =
                    w.runs().stream().filter(r -> r.byWind() > 0).toList();
            double volume = windy.stream().mapToDouble(Chronicle.Run::byWind).sum();
            if (volume * story.costs().water() >= Story.LEAST_MONEY) {
                moments.add(drifted(windy, volume));
            }
        }
        return moments;
    }

    private Moment drifted(List<Chronicle.Run> runs, double volume) {
        Optional<Blame.Verdict> wind = blame.of(SensorKind.WIND, runs);
        Blame.Verdict verdict = wind.orElse(new Blame.Verdict(Why.SCHEDULE, null));
        double speed = runs.stream().mapToDouble(r -> r.wind() * r.byWind()).sum() / volume;
        Gauge.Readings readings = new Gauge.Readings().put(Gauge.WIND, speed);
        furthest(readings, verdict.sensor(), runs, false);
        return new Moment(
                runs.get(0).from(),
                runs.get(runs.size() - 1).until(),
                What.DRIFTED,
                verdict.why(),
                wind.isPresent() ? SensorKind.WIND : null,
                Story.zones(runs),
                volume,
                volume * story.costs().water(),
                readings.of(What.DRIFTED));
    }

    /** The strongest or lowest that a sensor showed while runs went on. */
    private void furthest(Gauge.Readings readings, Placement sensor, List<Chronicle.Run> runs, boolean lowest) {
        if (sensor == null) {
            return;
        }
        Chronicle.Sensed sensed = story.told().sensor(sensor.id());
        double furthest = Double.NaN;
        for (Chronicle.Run run : runs) {
            for (long t = run.from(); t < run.until(); t++) {
                double seen = sensed.seenAt(t);
                boolean further = lowest ? seen < furthest : seen > furthest;
                furthest = Double.isNaN(furthest) || further ? seen : furthest;
            }
        }
        readings.put(Gauge.SEEN, furthest).put(Gauge.TRIPS, Story.trips(sensor));
    }

    /** Iced walks in foot traffic, by the watering that they followed. */
    List<Moment> ice() {
        Map<Long, List<Chronicle.IcedWalk>> byWatering = new TreeMap<>();
        for (Chronicle.IcedWalk walk : story.told().iced()) {
            List<Chronicle.Run> runs = before(walk.from() + 1);
            long key = runs.isEmpty() ? walk.from() : runs.get(0).from();
            byWatering.computeIfAbsent(key, k -> new ArrayList<>()).add(walk);
        }
        List<Moment> moments = new ArrayList<>();
        for (List<Chronicle.IcedWalk> walks : byWatering.values()) {
            double amount =
                    walks.stream().mapToDouble(Chronicle.IcedWalk::inTraffic).sum();
            if (amount * story.costs().icedWalk() >= Story.LEAST_MONEY) {
                moments.add(iced(walks, amount));
            }
        }
        return moments;
    }

    private Moment iced(List<Chronicle.IcedWalk> walks, double amount) {
        long from = walks.stream().mapToLong(Chronicle.IcedWalk::from).min().orElseThrow();
        long until = walks.stream().mapToLong(Chronicle.IcedWalk::until).max().orElseThrow();
        List<Chronicle.Run> runs = before(from + 1);
        Optional<Blame.Verdict> freeze = blame.of(SensorKind.FREEZE, runs);
        Blame.Verdict verdict = freeze.orElse(new Blame.Verdict(Why.SCHEDULE, null));
        Gauge.Readings readings = new Gauge.Readings()
                .put(Gauge.AIR, least(walks, Chronicle.IcedWalk::coldestAir))
                .put(Gauge.AREA, -least(walks, w -> -w.largest()));
        furthest(readings, verdict.sensor(), runs, true);
        return new Moment(
                from,
                until,
                What.ICED,
                verdict.why(),
                freeze.isPresent() ? SensorKind.FREEZE : null,
                mostIcedFirst(walks),
                amount,
                amount * story.costs().icedWalk(),
                readings.of(What.ICED));
    }

    private static double least(List<Chronicle.IcedWalk> walks, ToDoubleFunction<Chronicle.IcedWalk> value) {
        return walks.stream().mapToDouble(value).min().orElseThrow();
    }

    /** The walks that were iced in foot traffic. */
    private static List<String> mostIcedFirst(List<Chronicle.IcedWalk> walks) {
        Map<String, Double> sums = new LinkedHashMap<>();
        walks.stream().filter(w -> w.inTraffic() > 0).forEach(w -> sums.merge(w.walk(), w.inTraffic(), Double::sum));
        return sums.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The runs before a tick of the last night of watering that began before it, a day before at most. */
    private List<Chronicle.Run> before(long tick) {
        List<Chronicle.Run> runs = List.of();
        for (Story.Watering w : Story.waterings(story.told())) {
            runs = w.first() < tick ? w.runs() : runs;
        }
        boolean lately = !runs.isEmpty() && runs.get(0).from() >= tick - DAY;
        return lately ? runs : List.of();
    }
}
