package provingyard.field;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import provingyard.season.Ledger;
import provingyard.season.Season;
import provingyard.season.Site;

/** Seasons of several treatments on one plot, each under the weather of the same seeds. */
final class Trial {

    /** Seeds 1 to 30. */
    static final int SEEDS = 30;

    /** A season's water in mm over the plot, rain in mm over the yard, and stress in days. */
    record Lived(double applied, double rain, double dryDays) {}

    private final Map<String, Lived[]> byTreatment = new LinkedHashMap<>();

    private Trial() {}

    /** Lives all. */
    static Trial of(Site site, List<Treatment> treatments) {
        Trial trial = new Trial();
        treatments.forEach(t -> trial.byTreatment.put(t.name(), new Lived[SEEDS]));
        IntStream.range(0, SEEDS).parallel().forEach(i -> {
            for (Treatment treatment : treatments) {
                trial.byTreatment.get(treatment.name())[i] = live(site, i + 1, treatment);
            }
        });
        return trial;
    }

    /** Lives a seed's season under one treatment. */
    static Lived live(Site site, long seed, Treatment treatment) {
        Season season = Season.begin(
                site,
                seed,
                site.scenario().season().days(),
                treatment.changes().get(0).setUp());
        for (Season.Change change : treatment.changes()) {
            while (season.tick() < change.tick()) {
                season.advance();
            }
            season.change(change.setUp());
        }
        season.liveToEnd();
        Ledger ledger = season.ledger();
        double yard = site.scenario().yard().size().x()
                * site.scenario().yard().size().y();
        return new Lived(
                1000 * ledger.water().supplied() / FieldPlot.AREA,
                1000 * ledger.water().rain() / yard,
                ledger.plants().dryAreaDays() / yard);
    }

    /** Water saved in percent of another treatment's, by seed. */
    double[] savings(String treatment, String than) {
        Lived[] mine = byTreatment.get(treatment);
        Lived[] other = byTreatment.get(than);
        return IntStream.range(0, SEEDS)
                .mapToDouble(i -> 100 * (1 - mine[i].applied() / other[i].applied()))
                .toArray();
    }

    /** Water saved in percent of another treatment's. */
    Spread saving(String treatment, String than) {
        return Spread.of(savings(treatment, than));
    }

    /** Mean saving in percent of several treatments, each seed's mean first. */
    Spread meanSaving(List<String> treatments, String than) {
        return Spread.ofMeans(treatments.stream().map(t -> savings(t, than)).toList());
    }

    /** Water applied in mm. */
    Spread applied(String treatment) {
        return of(treatment, Lived::applied);
    }

    /** Rain in mm. */
    Spread rain() {
        return of(byTreatment.keySet().iterator().next(), Lived::rain);
    }

    /** Days of stress, weighted by its depth. */
    Spread dryDays(String treatment) {
        return of(treatment, Lived::dryDays);
    }

    private Spread of(String treatment, ToDoubleFunction<Lived> what) {
        return Spread.of(
                Arrays.stream(byTreatment.get(treatment)).mapToDouble(what).toArray());
    }
}
