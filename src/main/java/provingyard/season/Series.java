package provingyard.season;

import java.util.Arrays;

/**
 * What the ribbon and the plots draw: one value for each lived hour. Arrays are as long as the hours lived; readers
 * must not change them.
 *
 * @param air mean air temperature, °C
 * @param lowest lowest air temperature, °C
 * @param rain depth, m
 * @param wind mean wind at 2 m, m/s
 * @param sun mean global radiation, W/m2
 * @param flow mean flow through the point of connection, m3/s
 * @param soil mean share of available water over the planted cells
 * @param supplied m3 through the point of connection
 */
public record Series(
        double[] air,
        double[] lowest,
        double[] rain,
        double[] wind,
        double[] sun,
        double[] flow,
        double[] soil,
        double[] supplied) {

    /** Hours lived. */
    public int hours() {
        return air.length;
    }

    /** Builds a series minute by minute; an unfinished hour is not in it. */
    static final class Recorder {

        private static final int LANES = 8;
        private static final int MINUTES = 60;

        private final double[][] lanes;
        private int hours;
        private int minutes;
        private final double[] sums = new double[LANES];

        Recorder(int hoursAtMost) {
            lanes = new double[LANES][hoursAtMost];
            sums[1] = Double.POSITIVE_INFINITY;
        }

        private Recorder(Recorder other) {
            lanes = new double[LANES][];
            for (int i = 0; i < LANES; i++) {
                lanes[i] = other.lanes[i].clone();
            }
            hours = other.hours;
            minutes = other.minutes;
            System.arraycopy(other.sums, 0, sums, 0, LANES);
        }

        Recorder copy() {
            return new Recorder(this);
        }

        boolean hourIsDue() {
            return minutes == MINUTES - 1;
        }

        /** Takes a minute; the soil value counts only at the minute that closes the hour. */
        void minute(double air, double rain, double wind, double sun, double flow, double soilNow) {
            sums[0] += air;
            sums[1] = Math.min(sums[1], air);
            sums[2] += rain;
            sums[3] += wind;
            sums[4] += sun;
            sums[5] += flow;
            sums[6] = soilNow;
            sums[7] += flow * MINUTES;
            if (++minutes == MINUTES) {
                close();
            }
        }

        private void close() {
            boolean[] mean = {true, false, false, true, true, true, false, false};
            for (int i = 0; i < LANES; i++) {
                lanes[i][hours] = mean[i] ? sums[i] / MINUTES : sums[i];
                sums[i] = 0;
            }
            sums[1] = Double.POSITIVE_INFINITY;
            minutes = 0;
            hours++;
        }

        Series series() {
            double[][] out = new double[LANES][];
            for (int i = 0; i < LANES; i++) {
                out[i] = Arrays.copyOf(lanes[i], hours);
            }
            return new Series(out[0], out[1], out[2], out[3], out[4], out[5], out[6], out[7]);
        }
    }
}
