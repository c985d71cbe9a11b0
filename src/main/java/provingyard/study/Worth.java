package provingyard.study;

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
    public record Span(double mean, double low, double high) {}

    /** USD saved a year, on average. */
    public double moneyAYear() {
        return money.mean() * seasonsAYear;
    }

    /** Years until it has paid for itself; infinite where it saves nothing. */
    public double paybackYears() {
        return moneyAYear() > 0 ? price / moneyAYear() : Double.POSITIVE_INFINITY;
    }
}
