/**
 * The controller: schedule, interlocks, flow watch, alarms, records. Takes a set-up, the clock and the last readings,
 * gives valve commands and events. Sees readings and schedule only, never the world; knows sensor (readings), setup,
 * scenario and quantity. Its events have kinds named as the season's, which the season translates.
 */
package provingyard.control;
