package provingyard.world.electric;

/**
 * What an ohmmeter would show with the power off and all outputs off: direct current, so that a coil shows its resistance
 * alone; without an instrument's error, infinite where nothing joins the probes. Measure only with the power off.
 *
 * @param wiring what is there
 * @param conditions what it lies in
 */
public record OhmReadings(Wiring wiring, Conditions conditions) {

    /** The meter's own source: V and ohm of it (no influence on a linear circuit's resistance). */
    private static final double SOURCE_VOLTS = 1;

    private static final double SOURCE_OHMS = 100;

    /** Ohms from an output's terminal to the common terminal. */
    public double toCommon(String terminal) {
        return between(terminal, Wiring.COMMON);
    }

    /** Ohms between two terminals. */
    public double between(String terminal, String other) {
        LiveReadings.known(wiring, terminal);
        LiveReadings.known(wiring, other);
        return read(
                WiringCircuit.dead(wiring, conditions),
                WiringCircuit.terminal(terminal),
                WiringCircuit.terminal(other));
    }

    /** Ohms from a terminal to earth. */
    public double toEarth(String terminal) {
        LiveReadings.known(wiring, terminal);
        Circuit circuit = WiringCircuit.dead(wiring, conditions);
        return read(circuit, WiringCircuit.terminal(terminal), WiringCircuit.EARTH);
    }

    /** Ohms of a valve's coil in its box, its leads off the wires. */
    public double coil(String valve) {
        Circuit alone = WiringCircuit.coilAlone(wiring.wire(valve), conditions);
        return read(alone, WiringCircuit.lead(valve), "other lead");
    }

    private static double read(Circuit circuit, String probe, String other) {
        if (!circuit.joined(probe, other)) {
            return Double.POSITIVE_INFINITY;
        }
        if (probe.equals(other)) {
            return 0;
        }
        circuit.join("ohmmeter", other, probe, Complex.real(SOURCE_OHMS), Complex.real(SOURCE_VOLTS));
        Circuit.Solution solution = circuit.solve();
        return solution.volts(probe, other).re() / solution.amps("ohmmeter").re();
    }
}
