package provingyard.world.ground;

/**
 * What passed between planted ground and the rest of the yard so far, and what the planted ground holds, in m3.
 *
 * @param fromPlants ran from planted cells onto paving, buildings or off the site
 * @param toPlants ran from paving or buildings onto planted cells
 * @param soil water in the soil and standing on planted cells now
 */
public record Flows(double fromPlants, double toPlants, double soil) {}
