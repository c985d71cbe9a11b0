package provingyard.control;

import java.util.List;

/**
 * What is wrong in the controller's program now, as values; the season says which of its faults are active.
 *
 * @param seasonal what the seasonal percentage is times what it should be
 * @param extraStarts for each start that nobody wants, minutes from each wanted start to it, by the clock: past
 *     midnight it falls on the same watering day's morning
 */
public record ControlFaults(double seasonal, List<Integer> extraStarts) {

    /** Nothing is wrong. */
    public static final ControlFaults NONE = new ControlFaults(1, List.of());

    public ControlFaults {
        extraStarts = List.copyOf(extraStarts);
    }
}
