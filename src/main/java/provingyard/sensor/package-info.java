/**
 * What the five kinds of sensor show at their place: lag, noise, range, siting, faults of their own. Takes a set-up and
 * the true surroundings of each minute, gives readings; the true value stays inside, what is displayed is a reading.
 * Knows world (asked through {@link provingyard.sensor.Surroundings}), setup, scenario and quantity; must not know the
 * controller or the season.
 */
package provingyard.sensor;
