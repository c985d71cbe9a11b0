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
 * @param seasonsAYear how many seasons as good as this one a year has, for what sensors save a year; 1 counts this season
 *     alone and nothing of the rest of the year
 */
public record SeasonPlan(
        LocalDate from,
        int days,
        long seed,
        @In(Dimension.FRACTION) double soilAtStart,
        @In(Dimension.DURATION) double repairAfter,
        @LeftOutOfHash(at = 1) double seasonsAYear) {}
