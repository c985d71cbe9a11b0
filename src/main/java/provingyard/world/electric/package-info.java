/**
 * The low-voltage side of a sprinkler controller as a circuit: transformer secondary, outputs, field wires, splices, coils
 * and sensor loop. Takes a wiring, copper temperature, soil wetness and which outputs are on; gives volts, ohms, amperes and
 * which valves pull in, without an instrument's errors. Faults are changes of the wiring; no reading is scripted. Must not
 * know water, sensors, control, time or the screen: whoever owns them carries the values.
 *
 * <p>Caution that belongs wherever readings of this package are shown: only the low-voltage side (class 24 V AC) is
 * modelled and may be tested by a trainee. The mains side of the controller and of its transformer is work for an
 * electrician. Ohms are measured with the power off.
 */
package provingyard.world.electric;
