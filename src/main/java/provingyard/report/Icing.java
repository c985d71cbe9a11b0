package provingyard.report;

import java.util.List;

/**
 * Ice from irrigation over a season, for its plan and its plot. Arrays are not to be changed.
 *
 * @param nx cells east
 * @param ny cells north
 * @param hours per cell: hours with ice; cell index = row * nx + column, row 0 in the south
 * @param night the night that iced most, or null
 */
public record Icing(int nx, int ny, float[] hours, Night night) {

    public Icing {
        if (hours.length != nx * ny) {
            throw new IllegalArgumentException("hours do not fill " + nx + " x " + ny);
        }
    }

    /** From a minute to a minute, as ticks of the season. */
    public record Stretch(long from, long to) {}

    /**
     * A night around one walk. The lines are equally long.
     *
     * @param from tick of the first value
     * @param step minutes from one value to the next
     * @param walk id of the walk
     * @param air °C
     * @param surface temperature of the walk's surface, °C
     * @param sensor what the freeze sensor read, °C; empty where there is none
     * @param trip °C under which it trips; not a number where there is none
     * @param watered when water fell on the walk
     * @param iced when the walk was iced
     */
    public record Night(
            long from,
            int step,
            String walk,
            double[] air,
            double[] surface,
            double[] sensor,
            double trip,
            List<Stretch> watered,
            List<Stretch> iced) {

        public Night {
            watered = List.copyOf(watered);
            iced = List.copyOf(iced);
            boolean even = surface.length == air.length && (sensor.length == 0 || sensor.length == air.length);
            if (!even || air.length == 0 || step < 1) {
                throw new IllegalArgumentException("a night's lines are equally long");
            }
        }
    }
}
