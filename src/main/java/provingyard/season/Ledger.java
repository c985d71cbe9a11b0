package provingyard.season;

/**
 * Where every litre went, from the season's first minute to now. All volumes in m3.
 *
 * <p>Balance 1, water of the site: supplied + rain = evapotranspiration + drift + walkEvaporation + runoff + below +
 * offSite + leaked + storeChange. Balance 2, irrigation's share: the season minus its unwatered twin on the same
 * weather, term by term; differences may be negative and are shown so.
 */
public record Ledger(Water water, Irrigation irrigation, Ice ice, Plants plants) {

    /**
     * Balance 1.
     *
     * @param supplied through the point of connection
     * @param rain on the yard
     * @param evapotranspiration from planted cells
     * @param drift carried off or evaporated between nozzle and ground
     * @param walkEvaporation from paved cells
     * @param runoff that left the site over the ground
     * @param below percolation below the roots
     * @param offSite thrown beyond the yard's edge
     * @param leaked from breaks and leaks
     * @param storeChange soil, ponds, film and ice, now minus first minute
     */
    public record Water(
            double supplied,
            double rain,
            double evapotranspiration,
            double drift,
            double walkEvaporation,
            double runoff,
            double below,
            double offSite,
            double leaked,
            double storeChange) {

        /** What is missing or too much, in m3. */
        public double residual() {
            return supplied
                    + rain
                    - (evapotranspiration + drift + walkEvaporation + runoff + below + offSite + leaked + storeChange);
        }

        /** The residual as a share of the volume handled (supplied + rain). */
        public double closure() {
            double handled = supplied + rain;
            return handled <= 0 ? Math.abs(residual()) : Math.abs(residual()) / handled;
        }
    }

    /**
     * Balance 2, irrigation's share. Overspray is counted once, where it lands first (paved cells and beyond the yard):
     * supplied = used + drift + overspray + runoff + below + leaked + keptInSoil, where runoff and below are of the
     * water that landed on plants.
     *
     * @param used evapotranspiration with watering minus without
     * @param storeChange store with watering minus without, at the season's end minus its start
     */
    public record Irrigation(
            double supplied,
            double used,
            double drift,
            double overspray,
            double runoff,
            double below,
            double leaked,
            double storeChange) {

        /** What is missing or too much in this balance, as a share of the water supplied. */
        public double closure() {
            double rest = supplied - (used + drift + overspray + runoff + below + leaked + storeChange);
            return supplied <= 0 ? Math.abs(rest) : Math.abs(rest) / supplied;
        }

        /** Water wasted, in m3: no litre twice; negative shares count as nothing. */
        public double wasted() {
            return Math.max(0, drift)
                    + Math.max(0, overspray)
                    + Math.max(0, runoff)
                    + Math.max(0, below)
                    + Math.max(0, leaked);
        }
    }

    /**
     * Ice from irrigation water (twin subtracted).
     *
     * @param areaHours m2 h of iced walk
     * @param areaHoursInTraffic the part during foot traffic
     * @param mornings days with an iced walk
     */
    public record Ice(double areaHours, double areaHoursInTraffic, int mornings) {}

    /**
     * Plants.
     *
     * @param dryAreaDays m2 d of stress beyond what the lesson allows, weighted by its depth
     * @param deadArea m2 of plants that died
     * @param refill m3 that would bring soil left drier than at the start back to where it was, irrigated cells
     */
    public record Plants(double dryAreaDays, double deadArea, double refill) {}
}
