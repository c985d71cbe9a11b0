package provingyard.study;

/**
 * What a whole set-up is worth on a site: seasons with it less seasons under the clock alone, with the site's own
 * schedule and no sensor, over the same draws. It is not the sum of what each kind is worth, since one kind often saves
 * what another would have saved.
 *
 * @param price USD for all that is placed
 * @param water m3 of wasted water that it saves a season
 * @param ice m2 h of iced walk in foot traffic that it saves a season
 * @param money USD that it saves a season, all entries but the sensors' price
 * @param seasonsAYear how many such seasons a year has, as the site's author states
 * @param draws how many draws
 */
public record WholeWorth(
        double price, Worth.Span water, Worth.Span ice, Worth.Span money, double seasonsAYear, int draws) {

    /** USD saved a year, on average. */
    public double moneyAYear() {
        return money.mean() * seasonsAYear;
    }

    /** Years until it has paid for itself; infinite where it saves nothing. */
    public double paybackYears() {
        return moneyAYear() > 0 ? price / moneyAYear() : Double.POSITIVE_INFINITY;
    }
}
