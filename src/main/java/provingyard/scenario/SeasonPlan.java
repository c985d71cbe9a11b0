package provingyard.scenario;

import java.time.LocalDate;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/**
 * The season to be lived.
 *
 * @param from first day
 * @param days number of days
 * @param seed seed of its random streams
 * @param soilAtStart water in the root zones at the start as a share of the available water
 * @param repairAfter s from a flow alarm, or from a leak being seen, to its repair and the controller's re-arming
 */
public record SeasonPlan(
        LocalDate from,
        int days,
        long seed,
        @In(Dimension.FRACTION) double soilAtStart,
        @In(Dimension.DURATION) double repairAfter) {}
