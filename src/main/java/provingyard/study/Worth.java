package provingyard.study;

import java.util.Arrays;
import provingyard.scenario.SensorKind;

/**
 * What a kind of sensor is worth on a site: seasons with it less seasons without it, over draws of the site's climate,
 * its events and faults.
 *
 * @param price USD for what is placed of this kind
 * @param placed whether the set-up that was lived has it; otherwise it is added as the mark (or the textbook set-up) has it
 * @param water m3 of wasted water that it saves a season
 * @param ice m2 h of iced walk in foot traffic that it saves a season
 * @param money USD that it saves a season, all entries but its own price
 * @param seasonsAYear how many such seasons a year has, as the site's author states
 * @param draws how many draws
 */
public record Worth(
        SensorKind kind,
        double price,
        boolean placed,
        Span water,
        Span ice,
        Span money,
        double seasonsAYear,
        int draws) {

    /**
     * A quantity over the draws; negative where it costs.
     *
     * @param low a tenth of the draws lie below
     * @param high a tenth lie above
     */
    public record Span(double mean, double low, double high) {

        private static final double LOW = 0.1;
        private static final double HIGH = 0.9;

        /**
         * Over so many draws, at least one: mean, and the quantiles at 10 and 90 % by linear interpolation (Hyndman and
         * Fan 1996, Sample quantiles in statistical packages, American Statistician 50, 361-365, type 7).
         */
        static Span over(double[] draws) {
            double sum = 0;
            for (double draw : draws) {
                sum += draw;
            }
            double[] sorted = draws.clone();
            Arrays.sort(sorted);
            return new Span(sum / draws.length, quantile(sorted, LOW), quantile(sorted, HIGH));
        }

        /** x[k] + (h - k) (x[k+1] - x[k]) with h = p (n - 1), k its whole part, and x the n values from the least on. */
        private static double quantile(double[] sorted, double p) {
            double h = p * (sorted.length - 1);
            int k = (int) h;
            double next = sorted[Math.min(k + 1, sorted.length - 1)];
            return sorted[k] + (h - k) * (next - sorted[k]);
        }
    }

    /** USD saved a year, on average. */
    public double moneyAYear() {
        return money.mean() * seasonsAYear;
    }

    /** Years until it has paid for itself; infinite where it saves nothing. */
    public double paybackYears() {
        return moneyAYear() > 0 ? price / moneyAYear() : Double.POSITIVE_INFINITY;
    }
}
