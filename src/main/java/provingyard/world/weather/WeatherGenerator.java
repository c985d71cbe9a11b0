package provingyard.world.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.WeatherPlan.Source;

/**
 * Seeded daily weather with the statistics of a place.
 *
 * <p>Richardson 1981, Water Resour. Res. 17, 182: rain by a two-state first-order Markov chain with gamma amounts;
 * high and low by month and by wet or dry day, their residuals a weakly stationary process x(t) = A x(t-1) + B e(t),
 * A = M1 M0^-1, B B' = M0 - M1 M0^-1 M1' (Matalas 1967). Wind here is gamma by month and wet or dry day, independent
 * from day to day (the parameters give no memory). Where a drawn high is not 1 K over the low, both move apart about
 * their mean. Parameters: {@code weather-soil/generator-parameters.json} or a file like it.
 */
final class WeatherGenerator {

    private static final double LEAST_RANGE = 1.0;
    private static final int RUN_IN_DAYS = 60;

    private record Normal(double mean, double deviation) {}

    private record Month(
            double wetAfterWet,
            double wetAfterDry,
            double alpha,
            double beta,
            Normal[] high,
            Normal[] low,
            Normal[] wind) {}

    private final Source source;
    private final List<Month> months = new ArrayList<>();
    private final double[][] a;
    private final double[][] b;

    private WeatherGenerator(Source source, JsonData data) {
        this.source = source;
        String site =
                "/sites/" + String.valueOf(source.location()).replace("~", "~0").replace("/", "~1");
        for (int i = 1; i <= 12; i++) {
            months.add(month(data, site + "/months/" + i));
        }
        String r = site + "/residual_correlations/";
        double together = data.number(r + "tmax_tmin_lag0", -0.999, 0.999);
        double[][] m1 = {
            {data.number(r + "tmax_lag1", -1, 1), data.number(r + "tmax_t_tmin_tm1", -1, 1)},
            {data.number(r + "tmin_t_tmax_tm1", -1, 1), data.number(r + "tmin_lag1", -1, 1)}
        };
        double determinant = 1.0 - together * together;
        double[][] inverse = {{1.0 / determinant, -together / determinant}, {-together / determinant, 1.0 / determinant}
        };
        a = times(m1, inverse);
        double[][] rest = times(a, new double[][] {{m1[0][0], m1[1][0]}, {m1[0][1], m1[1][1]}});
        b = root(1.0 - rest[0][0], together - rest[0][1], 1.0 - rest[1][1], source.file());
    }

    /** Reads the parameters of the source's location. */
    static WeatherGenerator read(Source source, DataFiles files) {
        return new WeatherGenerator(source, JsonData.read(files, source.file()));
    }

    private static Month month(JsonData data, String at) {
        return new Month(
                data.number(at + "/p_ww", 0, 1),
                data.number(at + "/p_wd", 0, 1),
                data.number(at + "/gamma_alpha_ml", 1e-3, 1e3),
                data.number(at + "/gamma_beta_ml_mm", 1e-3, 1e4),
                pair(data, at + "/tmax_", -90),
                pair(data, at + "/tmin_", -90),
                pair(data, at + "/wind_", 0));
    }

    private static Normal[] pair(JsonData data, String at, double least) {
        return new Normal[] {normal(data, at + "dry", least), normal(data, at + "wet", least)};
    }

    private static Normal normal(JsonData data, String at, double least) {
        return new Normal(data.number(at + "/0", least, 100), data.number(at + "/1", 0, 100));
    }

    private static double[][] times(double[][] x, double[][] y) {
        double[][] z = new double[2][2];
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                z[i][j] = x[i][0] * y[0][j] + x[i][1] * y[1][j];
            }
        }
        return z;
    }

    /** Lower Cholesky factor of the symmetric matrix (p q; q s). */
    private static double[][] root(double p, double q, double s, String file) {
        double rest = s - q * q / p;
        if (!(p > 0.0 && rest > 0.0)) {
            throw new WeatherDataException(file, 0, "the residual correlations fit no process");
        }
        return new double[][] {{Math.sqrt(p), 0.0}, {q / Math.sqrt(p), Math.sqrt(rest)}};
    }

    /** Draws the days of a season. */
    List<DayValues> days(LocalDate from, int days, double windFactor, double clearSkyShare, RandomStreams streams) {
        UniformRandomProvider rain = streams.sequence("weather.rain");
        UniformRandomProvider temperature = streams.sequence("weather.temperature");
        UniformRandomProvider wind = streams.sequence("weather.wind");
        List<DayValues> drawn = new ArrayList<>();
        double[] x = {0.0, 0.0};
        boolean wet = false;
        // Days before the first let the chain and the residuals forget their start.
        for (int day = -RUN_IN_DAYS; day < days; day++) {
            Month month = months.get(from.plusDays(day).getMonthValue() - 1);
            wet = rain.nextDouble() < (wet ? month.wetAfterWet : month.wetAfterDry);
            double depth = wet ? Draws.gamma(rain, month.alpha, month.beta) / 1000.0 : 0.0;
            x = next(x, temperature);
            double speed = speed(month.wind[wet ? 1 : 0], wind) * windFactor;
            if (day >= 0) {
                drawn.add(day(month, wet ? 1 : 0, x, speed, depth, clearSkyShare));
            }
        }
        return drawn;
    }

    private double[] next(double[] x, UniformRandomProvider random) {
        double e0 = Draws.gaussian(random);
        double e1 = Draws.gaussian(random);
        return new double[] {
            a[0][0] * x[0] + a[0][1] * x[1] + b[0][0] * e0,
            a[1][0] * x[0] + a[1][1] * x[1] + b[1][0] * e0 + b[1][1] * e1
        };
    }

    private static double speed(Normal wind, UniformRandomProvider random) {
        if (wind.mean <= 0.0 || wind.deviation <= 0.0) {
            return wind.mean;
        }
        double variance = wind.deviation * wind.deviation;
        return Draws.gamma(random, wind.mean * wind.mean / variance, variance / wind.mean);
    }

    private DayValues day(Month month, int state, double[] x, double speed, double depth, double clearSkyShare) {
        double high = month.high[state].mean + month.high[state].deviation * x[0];
        double low = month.low[state].mean + month.low[state].deviation * x[1];
        if (high - low < LEAST_RANGE) {
            double middle = (high + low) / 2.0;
            high = middle + LEAST_RANGE / 2.0;
            low = middle - LEAST_RANGE / 2.0;
        }
        return DayValues.fromTemperatures(high, low, source.dewPointBelowMinimum(), speed, depth, clearSkyShare);
    }
}
