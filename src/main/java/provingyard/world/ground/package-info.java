/**
 * Spray, drift, infiltration, soil water, runoff, plants; temperature, film and ice of pavements.
 *
 * <p>Takes: the yard's cells, the catalogue, weather as plain values by the minute, flows and pressures of running heads.
 * Gives: what landed where, the state of each cell, and totals that close. Must not know: the weather's and the pipe
 * network's packages, time of day, sensors, who watches.
 */
package provingyard.world.ground;
