package provingyard.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import provingyard.scenario.Costs;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.season.Chronicle;
import provingyard.season.Season;
import provingyard.season.Siting;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * A lived season as the finding of moments sees it.
 *
 * @param changes set-ups with the ticks from which they held
 * @param told the season
 * @param clock the clock alone over the same minutes
 */
record Story(Scenario scenario, Siting siting, List<Season.Change> changes, Chronicle told, Chronicle clock) {

    /** Less is no moment, USD. */
    static final double LEAST_MONEY = 0.1;

    static Story of(Season lived) {
        CompletableFuture<Chronicle> clock = CompletableFuture.supplyAsync(() -> Chronicle.ofClockAlone(lived));
        return new Story(
                lived.site().scenario(),
                lived.site().siting(),
                List.copyOf(lived.changes()),
                Chronicle.of(lived),
                clock.join());
    }

    Costs costs() {
        return scenario.costs();
    }

    /** The set-up in force at a minute. */
    SetUp setUpAt(long tick) {
        SetUp now = changes.get(0).setUp();
        for (Season.Change change : changes) {
            now = change.tick() <= tick ? change.setUp() : now;
        }
        return now;
    }

    /** Whether a kind may be placed here, or was. */
    boolean hasKind(SensorKind kind, long tick) {
        return scenario.kit().item(kind) != null || !setUpAt(tick).of(kind).isEmpty();
    }

    /** Where a placement trips, in SI units; soil: wet. */
    static double trips(Placement p) {
        if (p instanceof Placement.Rain r) {
            return r.trip();
        }
        if (p instanceof Placement.Wind w) {
            return w.trip();
        }
        if (p instanceof Placement.Freeze f) {
            return f.below();
        }
        return p instanceof Placement.Soil s ? s.wet() : Double.NaN;
    }

    /** Share of the available water at which a soil sensor says wet. */
    double wetShare(Placement.Soil s) {
        double wilting = siting.volumeShare(s.at(), 0);
        return (s.wet() - wilting) / (siting.volumeShare(s.at(), 1) - wilting);
    }

    /** What happened in one night of watering, from its noon to the noon before the next one. */
    record Watering(int night, long from, long until, List<Chronicle.Run> runs) {

        Watering {
            runs = List.copyOf(runs);
        }

        long first() {
            return runs.get(0).from();
        }

        long last() {
            return runs.get(runs.size() - 1).until();
        }
    }

    /** The waterings of a season, in order; together they cover all minutes from the first one on. */
    static List<Watering> waterings(Chronicle season) {
        TreeMap<Integer, List<Chronicle.Run>> nights = new TreeMap<>();
        for (Chronicle.Run run : season.runs()) {
            nights.computeIfAbsent(Chronicle.night(run.from()), n -> new ArrayList<>())
                    .add(run);
        }
        List<Watering> all = new ArrayList<>();
        nights.forEach((night, runs) -> {
            Integer next = nights.higherKey(night);
            long until = next == null ? season.tick() : Math.min(season.tick(), Chronicle.beginOf(next));
            all.add(new Watering(night, Chronicle.beginOf(night), until, runs));
        });
        return all;
    }

    /** The zones of runs, each once. */
    static List<String> zones(List<Chronicle.Run> runs) {
        LinkedHashSet<String> zones = new LinkedHashSet<>();
        runs.forEach(r -> zones.add(r.zone()));
        return List.copyOf(zones);
    }

    /** The zones that were held back, each once. */
    static List<String> zonesOf(List<Chronicle.Stop> stops) {
        LinkedHashSet<String> zones = new LinkedHashSet<>();
        stops.forEach(s -> zones.add(s.zone()));
        return List.copyOf(zones);
    }
}
