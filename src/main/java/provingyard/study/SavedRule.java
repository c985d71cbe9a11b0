package provingyard.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import provingyard.scenario.SensorKind;
import provingyard.season.Chronicle;
import provingyard.season.Chronicle.Stop;
import provingyard.study.Moment.What;
import provingyard.study.Moment.Why;

/**
 * What sensors saved against the clock alone, night by night: in nights in which the clock alone watered and a sensor held
 * something back, what the clock lost until its next watering less what was lost meanwhile. It is credited to the kind of
 * sensor that held back most that night (ice to a freeze sensor that held back anything); for wind only water astray counts.
 * What was watered later instead is taken off only as far as its loss falls into the same nights.
 */
final class SavedRule {

    private final Story story;
    private final WaterDivided clocks;
    private final WaterDivided lived;

    SavedRule(Story story) {
        this.story = story;
        clocks = new WaterDivided(story.clock());
        lived = new WaterDivided(story.told());
    }

    List<Moment> find() {
        List<Moment> moments = new ArrayList<>();
        for (Story.Watering night : Story.waterings(story.clock())) {
            List<Stop> stops = story.told().stops().stream()
                    .filter(s -> Chronicle.night(s.tick()) == night.night())
                    .filter(s -> s.kind() != SensorKind.FLOW)
                    .toList();
            if (!stops.isEmpty()) {
                water(night, most(stops)).ifPresent(moments::add);
                ice(night, iceStops(stops)).ifPresent(moments::add);
            }
        }
        return moments;
    }

    private static List<Stop> most(List<Stop> stops) {
        Map<SensorKind, List<Stop>> kinds = new EnumMap<>(SensorKind.class);
        stops.forEach(
                s -> kinds.computeIfAbsent(s.kind(), k -> new ArrayList<>()).add(s));
        List<Stop> best = List.of();
        for (List<Stop> group : kinds.values()) {
            best = group.size() > best.size() ? group : best;
        }
        return best;
    }

    private static List<Stop> iceStops(List<Stop> stops) {
        List<Stop> freeze =
                stops.stream().filter(s -> s.kind() == SensorKind.FREEZE).toList();
        return freeze.isEmpty() ? most(stops) : freeze;
    }

    private Optional<Moment> water(Story.Watering night, List<Stop> stops) {
        SensorKind kind = stops.get(0).kind();
        boolean windOnly = kind == SensorKind.WIND;
        double volume = astray(story.clock(), night)
                - astray(story.told(), night)
                + (windOnly ? 0 : sunk(clocks, night) - sunk(lived, night));
        double money = volume * story.costs().water();
        if (money < Story.LEAST_MONEY) {
            return Optional.empty();
        }
        What what = windOnly ? What.SAVED_DRIFT : What.SAVED_WATER;
        Chronicle.Fallen rain = story.told().rain();
        long tick = stops.get(0).tick();
        Gauge.Readings readings = new Gauge.Readings()
                .put(Gauge.STOPS, stops.size())
                .put(Gauge.FELL, rain.between(rain.open(), rain.since(tick), tick))
                .put(Gauge.WIND, wind(night.runs()));
        return Optional.of(moment(what, stops, volume, money, readings));
    }

    /** Mean wind in the runs of the clock alone, weighted by their windy loss; NaN where none was windy. */
    private static double wind(List<Chronicle.Run> runs) {
        double sum = 0;
        double weight = 0;
        for (Chronicle.Run run : runs) {
            sum += run.byWind() > 0 ? run.wind() * run.byWind() : 0;
            weight += run.byWind();
        }
        return weight == 0 ? Double.NaN : sum / weight;
    }

    /** m3 astray in the runs of the nights that a watering of the clock alone stands for. */
    private static double astray(Chronicle season, Story.Watering night) {
        double sum = 0;
        for (Chronicle.Run run : season.runs()) {
            sum += run.from() >= night.from() && run.from() < night.until() ? run.astray() : 0;
        }
        return sum;
    }

    /** m3 of runoff and below the roots of the waterings in those nights. */
    private static double sunk(WaterDivided season, Story.Watering night) {
        return season.between(night.from(), night.until());
    }

    private Optional<Moment> ice(Story.Watering night, List<Stop> stops) {
        double amount = iced(story.clock(), night) - iced(story.told(), night);
        double money = amount * story.costs().icedWalk();
        if (money < Story.LEAST_MONEY) {
            return Optional.empty();
        }
        double coldest = story.clock().iced().stream()
                .filter(w -> isIn(w, night))
                .mapToDouble(Chronicle.IcedWalk::coldestAir)
                .min()
                .orElse(Double.NaN);
        Gauge.Readings readings =
                new Gauge.Readings().put(Gauge.STOPS, stops.size()).put(Gauge.AIR, coldest);
        return Optional.of(moment(What.SAVED_ICE, stops, amount, money, readings));
    }

    private static boolean isIn(Chronicle.IcedWalk walk, Story.Watering night) {
        return walk.from() >= night.from() && walk.from() < night.until();
    }

    private static double iced(Chronicle season, Story.Watering night) {
        double sum = 0;
        for (Chronicle.IcedWalk walk : season.iced()) {
            sum += isIn(walk, night) ? walk.inTraffic() : 0;
        }
        return sum;
    }

    private static Moment moment(What what, List<Stop> stops, double amount, double money, Gauge.Readings readings) {
        return new Moment(
                stops.get(0).tick(),
                stops.get(stops.size() - 1).tick() + 1,
                what,
                Why.WORKED,
                stops.get(0).kind(),
                Story.zonesOf(stops),
                amount,
                -money,
                readings.of(what));
    }
}
