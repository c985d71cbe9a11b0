/**
 * The pipe network of a yard. Takes pipes, valves, regulators, pumps, supplies, outlets and leaks in SI units; gives
 * heads, pressures and flows in steady state, or says that it found none, and the small laws around them: friction,
 * surge, leaks, nozzles, pipe sizes, meters. Must not know weather, ground, sensors, control, time or the screen: whoever
 * owns time carries the values.
 */
package provingyard.world.hydraulics;
