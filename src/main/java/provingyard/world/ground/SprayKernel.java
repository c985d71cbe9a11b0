package provingyard.world.ground;

/**
 * Where a head's water lands: cells and the share of the landing volume on each, in a fixed order; with {@code offSite},
 * thrown beyond the yard, the shares add up to 1.
 */
public record SprayKernel(int[] cells, double[] shares, double offSite) {

    /** Adds a volume's depths in m to cells of an area in m2. */
    public void addTo(double[] landed, double volume, double cellArea) {
        double depth = volume / cellArea;
        for (int i = 0; i < cells.length; i++) {
            landed[cells[i]] += shares[i] * depth;
        }
    }

    /** Mean place of what lands on the yard, east and north in m. */
    public double[] middle(GroundCells ground) {
        double x = 0;
        double y = 0;
        for (int i = 0; i < cells.length; i++) {
            x += shares[i] * ground.x(cells[i]);
            y += shares[i] * ground.y(cells[i]);
        }
        return new double[] {x / (1 - offSite), y / (1 - offSite)};
    }
}
