package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.WeatherPlan;

@Tag("unit")
class WeatherDataProblemTest {

    private static final String HEADER = "location,date,precipitation,temp_max,temp_min,wind,weather\n";

    private static WeatherDataProblem problem(WeatherPlan plan, LocalDate from, Map<String, String> texts) {
        return assertThrows(
                        WeatherDataException.class,
                        () -> WeatherSeries.of(plan, Plans.EAST, from, 2, new RandomStreams(1), Plans.with(texts)))
                .problem();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "New York,2013-11-01,1.0,10.0,,3.0,rain | 2 | temp_min",
                "New York,2013-11-01,NaN,10.0,2.0,3.0,rain | 2 | precipitation",
                "New York,2013-11-01,-1.0,10.0,2.0,3.0,rain | 2 | precipitation",
                "New York,2013-11-01,1.0,10.0,12.0,3.0,rain | 2 | temp_min",
                "New York,2013-11-31,1.0,10.0,2.0,3.0,rain | 2 | date",
                "New York,2013-11-01,1.0,10.0,2.0 | 2 | 5 values",
                "New York,2013-11-01,1.0,10.0,2.0,3.0,rain | 0 | 2013-11-02",
                "Elsewhere,2013-11-01,1.0,10.0,2.0,3.0,rain | 0 | New York"
            })
    void badDailyRowsAreNamed(String row, int line, String word) {
        WeatherDataProblem problem =
                problem(Plans.measured("New York"), Plans.NOVEMBER, Map.of(Plans.NOAA, HEADER + row));
        assertEquals(Plans.NOAA, problem.file());
        assertEquals(line, problem.line());
        assertTrue(problem.what().contains(word), problem.message());
    }

    @Test
    void aMissingColumnIsNamed() {
        WeatherDataProblem problem = problem(
                Plans.measured("New York"), Plans.NOVEMBER, Map.of(Plans.NOAA, "location,date,precipitation\n"));
        assertEquals(1, problem.line());
        assertTrue(problem.what().contains("temp_max"), problem.message());
    }

    @Test
    void aSeasonOutsideTheRecordIsNamed() {
        WeatherDataProblem problem = problem(Plans.measured("New York"), LocalDate.of(2026, 5, 1), Map.of());
        assertTrue(problem.what().contains("2026-05-01"), problem.message());
        assertTrue(problem.what().contains("2012-01-01 to 2015-12-31"), problem.message());
    }

    @Test
    void aMissingFileIsNamed() {
        assertEquals(
                "nowhere.csv",
                problem(Plans.hourly("nowhere.csv"), Plans.NOVEMBER, Map.of()).file());
    }

    @Test
    void brokenGeneratorParametersAreNamed() {
        WeatherPlan plan = Plans.generated("New York");
        assertTrue(problem(plan, Plans.NOVEMBER, Map.of(Plans.GENERATOR, "{ \"sites\": "))
                        .line()
                > 0);
        WeatherDataProblem missing = problem(Plans.generated("Nowhere"), Plans.NOVEMBER, Map.of());
        assertTrue(missing.what().contains("/sites/Nowhere/months/1"), missing.message());
    }

    @Test
    void anHourOfAnHourlyFileOccursOnce() {
        String hours = WeatherSeriesTest.hourlyFile(3);
        String twice = hours + hours.lines().skip(1).findFirst().orElseThrow() + "\n";
        WeatherDataProblem problem = problem(Plans.hourly("h.csv"), LocalDate.of(2026, 5, 1), Map.of("h.csv", twice));
        assertEquals(3 * 24 + 2, problem.line());
        assertTrue(problem.what().contains("twice"), problem.message());
    }
}
