package provingyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import provingyard.scenario.CatalogueValuesTest;
import provingyard.world.ground.PublishedRowsTest;
import provingyard.world.ground.SprayTest;
import provingyard.world.hydraulics.PublishedHydraulicsTest;
import provingyard.world.weather.LocalClimateTest;
import provingyard.world.weather.PublishedWeatherRowsTest;
import provingyard.world.weather.WeatherSeriesTest;

/** No reference value is passed over in silence: each is compared by a test or listed in {@code unused.md}. */
class ReferenceCoverageTest {

    private static final Path FOLDER = Path.of("shared", "reference");

    /** Files whose values are compared line by line, by the tests that name them, and those that describe. */
    private static final Set<String> FILES = Set.of(
            "README.md",
            "unused.md",
            "catalogue.json",
            "fault-rates.json",
            "hydraulics/README.md",
            "hydraulics/darcy-weisbach.csv",
            PublishedHydraulicsTest.FILE,
            ReferenceRow.FILE,
            "weather/noaa-daily-seattle-newyork-2012-2015.csv",
            "weather-soil/balance-visible.csv",
            "weather-soil/diurnal-shape.json",
            "weather-soil/et0-daily-visible.csv",
            "weather-soil/et0-hourly-visible.csv",
            "weather-soil/generator-parameters.json",
            "weather-soil/greenampt-visible-summary.json",
            "weather-soil/greenampt-visible.csv",
            "weather-soil/pavement-visible.csv",
            "weather-soil/seattle-daily-et0.csv",
            "weather-soil/series-conditions.json");

    private static boolean checked(ReferenceRow row) {
        return PublishedRowsTest.FORMULAS.check(row)
                || PublishedWeatherRowsTest.FORMULAS.check(row)
                || CatalogueValuesTest.check(row)
                || WeatherSeriesTest.annualRows().anyMatch(row::equals)
                || LocalClimateTest.ROWS.contains(row.id())
                || SprayTest.ROWS.contains(row.id());
    }

    @Test
    void everyRowIsEitherComparedOrListed() {
        Set<String> listed = UnusedRows.rows(ReferenceRow.FILE);
        List<String> wrong = new ArrayList<>();
        for (ReferenceRow row : ReferenceRow.all()) {
            if (checked(row) == listed.contains(row.id())) {
                wrong.add(row.id() + (checked(row) ? " is compared and listed" : " is neither compared nor listed"));
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void whatIsListedIsThere() throws IOException {
        Set<String> ids =
                ReferenceRow.all().stream().map(ReferenceRow::id).collect(Collectors.toCollection(TreeSet::new));
        for (UnusedRows.Entry entry : UnusedRows.entries()) {
            assertFalse(entry.reason().isEmpty(), entry.toString());
            if (entry.file().equals(ReferenceRow.FILE)) {
                assertTrue(ids.contains(entry.row()), entry.toString());
                assertTrue(
                        entry.part().isEmpty()
                                || ReferenceRow.of(entry.row()).expected().has(entry.part()),
                        entry.toString());
            }
        }
    }

    @Test
    void soilRowsAreComparedInTheirOtherParts() {
        for (ReferenceRow row : ReferenceRow.all()) {
            if (row.id().startsWith("fao56-t19-") && checked(row)) {
                Set<String> left = new TreeSet<>();
                for (Iterator<String> names = row.expected().fieldNames(); names.hasNext(); ) {
                    left.add(names.next());
                }
                left.removeAll(Set.of("theta_fc", "theta_wp", "available"));
                assertEquals(left, UnusedRows.parts(ReferenceRow.FILE, row.id()), row.id());
            }
        }
    }

    @Test
    void everyFileIsKnown() throws IOException {
        Set<String> found;
        try (Stream<Path> files = Files.walk(FOLDER)) {
            found = files.filter(Files::isRegularFile)
                    .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
                    .filter(file -> !file.matches("hydraulics/v\\d\\d\\.(network|expected)\\.json"))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
        assertEquals(new TreeSet<>(FILES), found);
    }
}
