package provingyard.world.ground;

/**
 * Where the ground's water went from the first minute to now, all in m3.
 *
 * <p>rain + irrigation = evapotranspiration + walkEvaporation + runoff + percolation + change of store.
 *
 * @param rain on the whole yard, roofs included
 * @param irrigation that landed on the yard
 * @param evapotranspiration from planted cells
 * @param walkEvaporation from paved cells, less the dew they caught
 * @param runoff that left the site over the ground, or by roof drains
 * @param percolation below the roots
 * @param store in soil, ponds, film and ice now
 */
public record Totals(
        double rain,
        double irrigation,
        double evapotranspiration,
        double walkEvaporation,
        double runoff,
        double percolation,
        double store) {

    /** What is missing or too much against the store at the first minute, in m3. */
    public double residual(double storeAtStart) {
        return rain + irrigation - evapotranspiration - walkEvaporation - runoff - percolation - (store - storeAtStart);
    }
}
