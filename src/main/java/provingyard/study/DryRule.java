package provingyard.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import provingyard.scenario.SensorKind;
import provingyard.season.Chronicle;
import provingyard.season.Chronicle.Guise;
import provingyard.season.Chronicle.Stop;
import provingyard.season.Trips;
import provingyard.setup.Placement;
import provingyard.study.Moment.What;
import provingyard.study.Moment.Why;

/**
 * Spells of days in which plants went dry or died.
 *
 * <p>What sensors held back is blamed for what the spell cost more than under the clock alone; the sensor is the one that
 * held back most from {@value #BEFORE_DAYS} days before the spell to its end. Dryness that the clock alone brings as well is
 * told only where the schedule is the trainee's to choose: elsewhere it was nobody's decision.
 */
final class DryRule {

    private static final int DAY = 1440;
    private static final int BEFORE_DAYS = 4;
    private static final double HALF = 0.5;
    private static final double LEAST_GROWTH = 1e-9;

    private final Story story;

    DryRule(Story story) {
        this.story = story;
    }

    /** What a spell came to. */
    private record Cost(double areaDays, double dead, double money) {

        Cost over(Cost other) {
            return new Cost(areaDays - other.areaDays, dead - other.dead, money - other.money);
        }
    }

    List<Moment> find() {
        List<Moment> moments = new ArrayList<>();
        int days = story.told().days().size() - 1;
        int first = 0;
        while (first < days) {
            int next = first;
            while (next < days && grows(next)) {
                next++;
            }
            if (next > first) {
                moments.addAll(spell(first, next));
            }
            first = next + 1;
        }
        return moments;
    }

    private boolean grows(int day) {
        Cost cost = cost(story.told(), day, day + 1);
        return cost.areaDays() > LEAST_GROWTH || cost.dead() > 0;
    }

    private Cost cost(Chronicle season, int from, int until) {
        Chronicle.Dryness a = season.days().get(from);
        Chronicle.Dryness b = season.days().get(until);
        double areaDays = b.areaDays() - a.areaDays();
        double dead = b.dead() - a.dead();
        return new Cost(
                areaDays,
                dead,
                areaDays * story.costs().dryPlant() + dead * story.costs().deadPlant());
    }

    private List<Moment> spell(int first, int next) {
        Cost all = cost(story.told(), first, next);
        Cost more = all.over(cost(story.clock(), first, next));
        List<Stop> stops = stops(first, next);
        List<Moment> moments = new ArrayList<>();
        boolean held = more.money() >= Story.LEAST_MONEY && !stops.isEmpty();
        if (held) {
            // Fewer dead but more dry, or the other way about: the amounts stay within what was lived.
            Cost told = new Cost(Math.max(0, more.areaDays()), Math.max(0, more.dead()), more.money());
            moments.add(held(first, next, told, stops));
        }
        double rest = held ? all.money() - more.money() : all.money();
        if (!story.scenario().locks().schedule() && rest >= Story.LEAST_MONEY) {
            Cost other = held ? all.over(more) : all;
            moments.add(moment(first, next, Why.SCHEDULE, null, List.of(), other, rest, List.of()));
        }
        return moments;
    }

    private List<Stop> stops(int first, int next) {
        long from = (long) (first - BEFORE_DAYS) * DAY;
        long until = (long) next * DAY;
        return story.told().stops().stream()
                .filter(s -> s.tick() >= from && s.tick() < until)
                .toList();
    }

    private Moment held(int first, int next, Cost cost, List<Stop> stops) {
        Map<SensorKind, List<Stop>> kinds = new EnumMap<>(SensorKind.class);
        stops.forEach(
                s -> kinds.computeIfAbsent(s.kind(), k -> new ArrayList<>()).add(s));
        List<Stop> most = largest(kinds);
        SensorKind kind = most.get(0).kind();
        return moment(first, next, why(kind, most), kind, Story.zonesOf(most), cost, cost.money(), most);
    }

    private static <K> List<Stop> largest(Map<K, List<Stop>> groups) {
        List<Stop> best = List.of();
        for (List<Stop> group : groups.values()) {
            best = group.size() > best.size() ? group : best;
        }
        return best;
    }

    private Moment moment(
            int first,
            int next,
            Why why,
            SensorKind kind,
            List<String> zones,
            Cost cost,
            double money,
            List<Stop> stops) {
        long tick = story.told().tick();
        Gauge.Readings readings = new Gauge.Readings()
                .put(Gauge.DEAD, cost.dead())
                .put(Gauge.STOPS, stops.size())
                .put(Gauge.SPRAYED, sprayed(first, next, stops));
        return new Moment(
                Math.min(tick, (long) first * DAY),
                Math.min(tick, (long) next * DAY),
                What.WENT_DRY,
                why,
                kind,
                zones,
                cost.areaDays(),
                money,
                readings.of(What.WENT_DRY));
    }

    private double sprayed(int first, int next, List<Stop> stops) {
        Chronicle.Fallen rain = story.told().rain();
        double[] depths =
                stops.isEmpty() ? null : rain.sprayed().get(stops.get(0).by());
        return rain.between(depths, (long) Math.max(0, first - BEFORE_DAYS) * DAY, (long) next * DAY);
    }

    private Why why(SensorKind kind, List<Stop> all) {
        Map<String, List<Stop>> sensors = new LinkedHashMap<>();
        all.forEach(s -> sensors.computeIfAbsent(s.by(), k -> new ArrayList<>()).add(s));
        List<Stop> stops = largest(sensors);
        Chronicle.Sensed sensed = story.told().sensor(stops.get(0).by());
        if (kind == SensorKind.FLOW || sensed == null) {
            return Why.HELD;
        }
        if (!most(stops, tripped(sensed, Guise.AS_IT_WAS))) {
            // Held back without being tripped: the soil was not dry enough for its dry point.
            return Why.SETTING;
        }
        if (!most(stops, tripped(sensed, Guise.SOUND))) {
            return Why.FAULT;
        }
        if (!most(stops, wellPlaced(kind, sensed))) {
            return Why.PLACE;
        }
        return most(stops, tripped(sensed, Guise.LAX)) ? Why.HELD : Why.SETTING;
    }

    private Predicate<Stop> wellPlaced(SensorKind kind, Chronicle.Sensed sensed) {
        if (kind != SensorKind.SOIL) {
            return tripped(sensed, Guise.WELL_PLACED);
        }
        return stop -> story.setUpAt(stop.tick())
                .sensor(sensed.id())
                .filter(p -> p instanceof Placement.Soil s && stop.wetness() >= story.wetShare(s))
                .isPresent();
    }

    private static Predicate<Stop> tripped(Chronicle.Sensed sensed, Guise guise) {
        Trips trips = sensed.trips().get(guise);
        return stop -> trips == null || trips.seenAt(stop.tick());
    }

    private static boolean most(List<Stop> stops, Predicate<Stop> which) {
        return stops.stream().filter(which).count() > HALF * stops.size();
    }
}
