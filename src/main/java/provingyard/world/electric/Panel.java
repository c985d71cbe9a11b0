package provingyard.world.electric;

import java.util.Set;

/**
 * What is switched at the controller and in its sensor.
 *
 * @param on terminals of outputs that are on
 * @param sensorHolds the sensor's contact is open because it holds
 * @param bypass the sensor's bypass switch is on
 */
public record Panel(Set<String> on, boolean sensorHolds, boolean bypass) {

    public Panel {
        on = Set.copyOf(on);
    }

    /** Outputs on, sensor dry, not bypassed. */
    public static Panel running(String... terminals) {
        return new Panel(Set.of(terminals), false, false);
    }

    /** The same with the bypass switch on. */
    public Panel bypassed() {
        return new Panel(on, sensorHolds, true);
    }
}
