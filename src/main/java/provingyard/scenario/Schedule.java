package provingyard.scenario;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/**
 * When the controller waters.
 *
 * @param zones zones in the order in which they run
 * @param days weekdays; empty when {@code every} counts
 * @param every interval in whole days from the season's first day; 0 when weekdays count
 * @param starts start times
 * @param seasonal seasonal percentage as a share
 * @param allowed what the local ordinance allows
 */
public record Schedule(
        List<ZoneRun> zones,
        List<DayOfWeek> days,
        int every,
        List<LocalTime> starts,
        @In(Dimension.FRACTION) double seasonal,
        Allowed allowed) {

    /**
     * A zone's run.
     *
     * @param zone id of its zone valve
     * @param runs s at 100 %
     * @param cycle longest part in s (0: the run is one part)
     * @param soak least pause between parts in s
     */
    public record ZoneRun(
            String zone,
            @In(Dimension.DURATION) double runs,
            @In(Dimension.DURATION) double cycle,
            @In(Dimension.DURATION) double soak) {}

    /** Weekdays and windows in which watering is allowed. */
    public record Allowed(List<DayOfWeek> days, List<Window> windows) {}

    /** From a time to a time, over midnight if the second is earlier; in files {@code ["22:00", "08:00"]}. */
    @JsonFormat(shape = JsonFormat.Shape.ARRAY)
    @JsonPropertyOrder({"from", "to"})
    public record Window(LocalTime from, LocalTime to) {}
}
