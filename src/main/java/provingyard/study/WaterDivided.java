package provingyard.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import provingyard.season.Chronicle;
import provingyard.season.Ledger;

/**
 * Irrigation water that ran off or went below the roots, given to the watering that brought it: what the ledger's share of
 * irrigation grew by from that night's noon to the noon before the next watering, but at most what it laid on the ground.
 *
 * <p>Limits: what is more than that was left in the soil by waterings before and washed out by rain; nobody could tell from
 * which, and it is told of none. Soil keeps no account of whose water it holds, so water that left the night before may
 * count to a watering that came after. Windows in which a share fell (the soil without watering lost more) count as
 * nothing, and the others are taken back in proportion, so that all together never exceed the season's entry and no litre
 * is told twice.
 */
final class WaterDivided {

    private final Chronicle season;
    private final List<Story.Watering> waterings;
    private final double[] runoff;
    private final double[] below;

    WaterDivided(Chronicle season) {
        this.season = season;
        waterings = Story.waterings(season);
        runoff = grown(Ledger.Irrigation::runoff);
        below = grown(Ledger.Irrigation::below);
        cap();
    }

    private double[] grown(ToDoubleFunction<Ledger.Irrigation> share) {
        double[] grown = new double[waterings.size()];
        double sum = 0;
        for (int i = 0; i < grown.length; i++) {
            Story.Watering w = waterings.get(i);
            double growth = share.applyAsDouble(season.at(w.until())) - share.applyAsDouble(season.at(w.from()));
            grown[i] = Math.max(0, growth);
            sum += grown[i];
        }
        double whole = Math.max(0, share.applyAsDouble(season.outcome().ledger().irrigation()));
        double part = sum <= 0 ? 0 : Math.min(1, whole / sum);
        for (int i = 0; i < grown.length; i++) {
            grown[i] *= part;
        }
        return grown;
    }

    private void cap() {
        for (int i = 0; i < runoff.length; i++) {
            double lost = runoff[i] + below[i];
            double part = lost <= 0 ? 1 : Math.min(1, landed(waterings.get(i)) / lost);
            runoff[i] *= part;
            below[i] *= part;
        }
    }

    private static double landed(Story.Watering w) {
        return w.runs().stream().mapToDouble(r -> r.supplied() - r.astray()).sum();
    }

    /** m3 run off of a watering of this season, by its place in the order of waterings. */
    double runoff(int watering) {
        return runoff[watering];
    }

    /** m3 gone below the roots of a watering of this season. */
    double below(int watering) {
        return below[watering];
    }

    /** m3 of both, of all waterings that began between two ticks. */
    double between(long from, long until) {
        double sum = 0;
        for (int i = 0; i < waterings.size(); i++) {
            long first = waterings.get(i).first();
            sum += first >= from && first < until ? runoff[i] + below[i] : 0;
        }
        return sum;
    }
}
