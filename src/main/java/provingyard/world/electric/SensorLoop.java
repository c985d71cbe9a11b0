package provingyard.world.electric;

/**
 * The normally closed loop of a rain or freeze sensor, in series between the common terminal and the transformer. A
 * sensor that holds opens its contact; the bypass switch bridges the loop at the controller.
 *
 * @param metres run of its pair of wires in m
 * @param gauge AWG
 * @param contactOhms of the closed contact in ohm
 * @param state healthy or how it is broken
 */
public record SensorLoop(double metres, int gauge, double contactOhms, State state) {

    /** How the loop is. */
    public enum State {
        HEALTHY,
        /** Cut, stuck wet or wired to the wrong contact: never closed. */
        OPEN,
        /** Bridged somewhere: never opens. */
        SHORTED
    }

    SensorLoop in(State other) {
        return new SensorLoop(metres, gauge, contactOhms, other);
    }

    /** Ohms of the closed loop at a temperature in °C. */
    double ohms(double celsius) {
        return contactOhms + 2 * metres * Copper.ohmsPerMetre(gauge, celsius);
    }
}
