package provingyard.season;

import java.time.LocalDate;
import java.util.Arrays;
import provingyard.scenario.Point;
import provingyard.sensor.SoilSensor;
import provingyard.sensor.Surroundings;
import provingyard.sensor.WouldHave;
import provingyard.setup.Placement;

/**
 * What was true at one sensor's place in the whole days lived so far, minute by minute, so that each of its settings can
 * be tried on them. Nothing of days not lived is in it. Immutable; readers must not change its arrays.
 */
public final class Past {

    /** Most days that a plot shows. */
    public static final int MOST_DAYS = 30;

    private static final int MINUTES_A_DAY = 1440;

    /**
     * What a setting would have done, day by day.
     *
     * @param first date of the first day
     * @param tripped for each day, whether it was tripped at some time
     * @param extreme for each day, the furthest that a middle unit would have shown (SI)
     * @param limit what trips it, in the same unit (rain: water held by a middle unit in m)
     */
    public record Would(LocalDate first, boolean[] tripped, double[] extreme, double limit) {

        /** Days looked at. */
        public int days() {
            return tripped.length;
        }

        /** Days in which it was tripped at some time. */
        public int daysTripped() {
            int count = 0;
            for (boolean any : tripped) {
                count += any ? 1 : 0;
            }
            return count;
        }
    }

    private final LocalDate from;
    private final double[] first;
    private final double[] second;

    private Past(LocalDate from, double[] first, double[] second) {
        this.from = from;
        this.first = first;
        this.second = second;
    }

    /**
     * Looks back from the whole days that a season lived. Takes up to some seconds where water must be followed (soil, and
     * a rain sensor in reach of spray): such a season is lived again.
     *
     * @param lived a season; it is not changed
     * @throws IllegalArgumentException for a flow sensor, which has no such view
     */
    static Past of(Season lived, Placement placement) {
        if (placement instanceof Placement.Flow) {
            throw new IllegalArgumentException("what a flow sensor sees depends on the pipes: " + placement.id());
        }
        int minutes = (int) (lived.tick() / MINUTES_A_DAY) * MINUTES_A_DAY;
        LocalDate from = lived.site().scenario().season().from();
        Past past = new Past(from, new double[minutes], new double[minutes]);
        if (follows(lived.site(), placement)) {
            past.liveAgain(lived, placement, minutes);
        } else {
            past.weatherAlone(lived, placement, minutes);
        }
        return past;
    }

    /** Whether irrigation matters at the place. */
    private static boolean follows(Site site, Placement placement) {
        return placement instanceof Placement.Soil
                || placement instanceof Placement.Rain r
                        && SeasonSurroundings.sprayShare(r.height()) > 0
                        && site.sprayed(r.at());
    }

    private void weatherAlone(Season lived, Placement placement, int minutes) {
        SeasonSurroundings around = new SeasonSurroundings(lived.site(), null);
        Probe probe = probe(around, placement);
        for (int t = 0; t < minutes; t++) {
            around.minute(lived.weather(t), lived.heat().after(t), null, null);
            probe.note(t);
        }
    }

    private void liveAgain(Season lived, Placement placement, int minutes) {
        Season again = lived.fromTheBeginning();
        Probe probe = probe(again.surroundings(), placement);
        Again.live(lived, again, minutes, t -> {}, t -> probe.note((int) t));
    }

    /** Notes what a sensor's place saw in the minute just lived. */
    private interface Probe {
        void note(int t);
    }

    private Probe probe(SeasonSurroundings around, Placement placement) {
        if (placement instanceof Placement.Rain r) {
            Surroundings.Air air = around.air(r.at(), r.height());
            return t -> {
                first[t] = air.rain() + air.spray();
                second[t] = air.drying();
            };
        }
        if (placement instanceof Placement.Wind w) {
            Surroundings.Air air = around.air(w.at(), w.height());
            return t -> first[t] = air.wind();
        }
        if (placement instanceof Placement.Freeze f) {
            SeasonSurroundings.SpotAir air = around.air(f.at(), f.height());
            return t -> first[t] = air.unshielded();
        }
        Placement.Soil s = (Placement.Soil) placement;
        Surroundings.Soil soil = around.soil(s.at(), s.depth(), SoilSensor.SUPPORT);
        return t -> first[t] = soil.water();
    }

    /** Whole days looked back on. */
    public int days() {
        return first.length / MINUTES_A_DAY;
    }

    /** Whether two placements see the same past: same kind, place, height and depth, however they are set. */
    public static boolean alike(Placement a, Placement b) {
        return a != null && b != null && where(a).equals(where(b));
    }

    private record Where(Class<?> kind, Point at, double level) {}

    private static Where where(Placement p) {
        Point at = p instanceof Placement.Rain r
                ? r.at()
                : p instanceof Placement.Wind w
                        ? w.at()
                        : p instanceof Placement.Freeze f
                                ? f.at()
                                : p instanceof Placement.Soil s ? s.at() : new Point(0, 0);
        double level = p instanceof Placement.Soil s ? s.depth() : Siting.height(p);
        return new Where(p.getClass(), at, level);
    }

    /** What a setting would have done in the last days lived, at most {@link #MOST_DAYS}. */
    public Would would(Placement placement) {
        if (placement instanceof Placement.Rain r) {
            return last(WouldHave.rain(r, first, second, MINUTES_A_DAY), WouldHave.rainTrip(r));
        }
        if (placement instanceof Placement.Wind w) {
            return last(WouldHave.wind(w, first, MINUTES_A_DAY), w.trip());
        }
        if (placement instanceof Placement.Freeze f) {
            return last(WouldHave.freeze(f, first, MINUTES_A_DAY), f.below());
        }
        Placement.Soil s = (Placement.Soil) placement;
        return last(WouldHave.soil(s, first, MINUTES_A_DAY), s.wet());
    }

    private Would last(WouldHave all, double limit) {
        int skipped = Math.max(0, all.days() - MOST_DAYS);
        return new Would(
                from.plusDays(skipped),
                Arrays.copyOfRange(all.byDay(), skipped, all.days()),
                Arrays.copyOfRange(all.extreme(), skipped, all.days()),
                limit);
    }
}
