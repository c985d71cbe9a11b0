package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.numeric.RandomStreams;

/** Many years of generated days have the statistics of the parameters (fitted from NOAA days 2012-2015). */
@Tag("unit")
class WeatherGeneratorTest {

    private static final int YEARS = 400;
    private static final int DAYS = YEARS * 365;
    private static final LocalDate FROM = LocalDate.of(2001, 1, 1);

    @ParameterizedTest(name = "{0}: generated days have the statistics asked for")
    @ValueSource(strings = {"Seattle", "New York"})
    void meetsItsParameters(String site) throws IOException {
        JsonNode parameters;
        try (InputStream in = Reference.FILES.open(Plans.GENERATOR)) {
            parameters = new ObjectMapper().readTree(in).get("sites").get(site);
        }
        List<DayValues> days = WeatherGenerator.read(Plans.generated(site).source(), Reference.FILES)
                .days(FROM, DAYS, 1.0, 0.75, new RandomStreams(2026));
        List<double[]> residuals = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            check(parameters.get("months").get("" + month), days, month, site + " month " + month);
        }
        for (int i = 0; i < DAYS; i++) {
            residuals.add(residual(parameters, days.get(i), FROM.plusDays(i).getMonthValue()));
        }
        JsonNode r = parameters.get("residual_correlations");
        // Bound 0.03: the least range of 1 K between high and low bends the residuals a little.
        assertEquals(r.get("tmax_tmin_lag0").doubleValue(), correlation(residuals, 0, 1, 0), 0.03);
        assertEquals(r.get("tmax_lag1").doubleValue(), correlation(residuals, 0, 0, 1), 0.03);
        assertEquals(r.get("tmin_lag1").doubleValue(), correlation(residuals, 1, 1, 1), 0.03);
        assertEquals(r.get("tmax_t_tmin_tm1").doubleValue(), correlation(residuals, 0, 1, 1), 0.03);
        assertEquals(r.get("tmin_t_tmax_tm1").doubleValue(), correlation(residuals, 1, 0, 1), 0.03);
    }

    private static void check(JsonNode month, List<DayValues> days, int number, String where) {
        double[] count = new double[2];
        double[] high = new double[2];
        double[] low = new double[2];
        double[] wind = new double[2];
        double rain = 0.0;
        double afterWet = 0.0;
        double wetAfterWet = 0.0;
        double afterDry = 0.0;
        double wetAfterDry = 0.0;
        for (int i = 1; i < DAYS; i++) {
            if (FROM.plusDays(i).getMonthValue() != number) {
                continue;
            }
            DayValues day = days.get(i);
            int wet = day.rain() > 0.0 ? 1 : 0;
            count[wet]++;
            high[wet] += day.high();
            low[wet] += day.low();
            wind[wet] += day.wind();
            rain += day.rain() * 1000.0;
            if (days.get(i - 1).rain() > 0.0) {
                afterWet++;
                wetAfterWet += wet;
            } else {
                afterDry++;
                wetAfterDry += wet;
            }
        }
        // Bounds of some four standard errors of 400 years: 0.03 of the chances, 5 % of the rain of a wet day, 0.35 K
        // and 0.2 m/s (wet days of a dry month are fewest).
        assertEquals(month.get("p_ww").doubleValue(), wetAfterWet / afterWet, 0.04, where);
        assertEquals(month.get("p_wd").doubleValue(), wetAfterDry / afterDry, 0.02, where);
        double mean = month.get("gamma_alpha_ml").doubleValue()
                * month.get("gamma_beta_ml_mm").doubleValue();
        assertEquals(mean, rain / count[1], 0.12 * mean, where);
        String[] states = {"dry", "wet"};
        for (int state = 0; state < 2; state++) {
            String name = where + " " + states[state];
            double more = state == 1 ? 0.2 : 0.0;
            assertEquals(first(month, "tmax_" + states[state]), high[state] / count[state], 0.25 + more, name);
            assertEquals(first(month, "tmin_" + states[state]), low[state] / count[state], 0.25 + more, name);
            assertEquals(first(month, "wind_" + states[state]), wind[state] / count[state], 0.1 + more, name);
        }
    }

    private static double first(JsonNode month, String name) {
        return month.get(name).get(0).doubleValue();
    }

    private static double[] residual(JsonNode parameters, DayValues day, int month) {
        JsonNode m = parameters.get("months").get("" + month);
        String state = day.rain() > 0.0 ? "wet" : "dry";
        JsonNode high = m.get("tmax_" + state);
        JsonNode low = m.get("tmin_" + state);
        return new double[] {
            (day.high() - high.get(0).doubleValue()) / high.get(1).doubleValue(),
            (day.low() - low.get(0).doubleValue()) / low.get(1).doubleValue()
        };
    }

    /** Correlation of quantity a on a day with quantity b so many days before. */
    private static double correlation(List<double[]> x, int a, int b, int lag) {
        double ab = 0.0;
        double aa = 0.0;
        double bb = 0.0;
        for (int i = lag; i < x.size(); i++) {
            double p = x.get(i)[a];
            double q = x.get(i - lag)[b];
            ab += p * q;
            aa += p * p;
            bb += q * q;
        }
        return ab / Math.sqrt(aa * bb);
    }
}
