package provingyard.season;

import java.util.Arrays;
import java.util.function.DoubleSupplier;
import provingyard.world.weather.HourlyWeather;

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

    /** Builds what the season adds to its weather, minute by minute; an unfinished hour is not in it. */
    static final class Recorder {

        private static final int MINUTES = 60;

        private final double[] flow;
        private final double[] soil;
        private final double[] supplied;
        private int hours;
        private int minutes;
        private double flowSum;
        private double suppliedSum;

        Recorder(int hoursAtMost) {
            flow = new double[hoursAtMost];
            soil = new double[hoursAtMost];
            supplied = new double[hoursAtMost];
        }

        private Recorder(Recorder other) {
            flow = other.flow.clone();
            soil = other.soil.clone();
            supplied = other.supplied.clone();
            hours = other.hours;
            minutes = other.minutes;
            flowSum = other.flowSum;
            suppliedSum = other.suppliedSum;
        }

        Recorder copy() {
            return new Recorder(this);
        }

        /** Takes a minute's flow in m3/s; how wet the soil is, is asked at the minute that closes the hour. */
        void minute(double flowNow, DoubleSupplier soilNow) {
            flowSum += flowNow;
            suppliedSum += flowNow * MINUTES;
            if (++minutes == MINUTES) {
                close(soilNow.getAsDouble());
            }
        }

        private void close(double soilNow) {
            flow[hours] = flowSum / MINUTES;
            supplied[hours] = suppliedSum;
            soil[hours] = soilNow;
            hours++;
            minutes = 0;
            flowSum = 0;
            suppliedSum = 0;
        }

        /** The hours lived under a weather. */
        Series series(HourlyWeather weather) {
            return new Series(
                    lived(weather.air()),
                    lived(weather.lowest()),
                    lived(weather.rain()),
                    lived(weather.wind()),
                    lived(weather.sun()),
                    lived(flow),
                    lived(soil),
                    lived(supplied));
        }

        private double[] lived(double[] values) {
            return Arrays.copyOf(values, hours);
        }
    }
}
