package provingyard.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import provingyard.season.Chronicle;
import provingyard.season.Ledger;

/**
 * Irrigation water that ran off or went below the roots, given to the watering that brought it: what the ledger's share of
 * irrigation grew by from that night's noon to the noon before the next watering.
 *
 * <p>Limits: rain after a watering may wash out water that an earlier one left in the soil, which then counts to the later
 * one; what leaves the soil long after is all given to the last watering before it. Windows in which a share fell (the soil
 * without watering lost more) count as nothing, and the others are taken back in proportion, so that their sum is the
 * season's entry and no litre is told twice.
 */
final class WaterDivided {

    private final Chronicle season;
    private final double ofRunoff;
    private final double ofBelow;

    WaterDivided(Chronicle season) {
        this.season = season;
        List<Story.Watering> waterings = Story.waterings(season);
        ofRunoff = part(waterings, Ledger.Irrigation::runoff);
        ofBelow = part(waterings, Ledger.Irrigation::below);
    }

    private double part(List<Story.Watering> waterings, ToDoubleFunction<Ledger.Irrigation> share) {
        double grown = 0;
        for (Story.Watering w : waterings) {
            grown += growth(w.from(), w.until(), share);
        }
        double whole = Math.max(0, share.applyAsDouble(season.outcome().ledger().irrigation()));
        return grown <= 0 ? 0 : Math.min(1, whole / grown);
    }

    private double growth(long from, long until, ToDoubleFunction<Ledger.Irrigation> share) {
        return Math.max(0, share.applyAsDouble(season.at(until)) - share.applyAsDouble(season.at(from)));
    }

    /** m3 run off in the window of a watering. */
    double runoff(Story.Watering w) {
        return ofRunoff * growth(w.from(), w.until(), Ledger.Irrigation::runoff);
    }

    /** m3 gone below the roots in the window of a watering. */
    double below(Story.Watering w) {
        return ofBelow * growth(w.from(), w.until(), Ledger.Irrigation::below);
    }
}
