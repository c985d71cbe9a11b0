package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.SensorKind;
import provingyard.season.LogBook;
import provingyard.season.SeasonEvent;

class RecordsTableTest {

    private static final LocalDateTime AT = LocalDateTime.of(2013, 11, 2, 5, 0);

    private static final LogBook BOOK = new LogBook(
            true,
            List.of(
                    new LogBook.Run("north, \"front\"", 300, AT, 12, 5e-4, 0.36, LogBook.End.DONE, ""),
                    new LogBook.Run(
                            "south", 400, AT.plusHours(1), 9, Double.NaN, Double.NaN, LogBook.End.SENSOR, "rain-1")),
            List.of(new LogBook.Zone("south", 2, 21, 0.36, 5e-4, 6e-4)),
            List.of(new LogBook.Night(LocalDate.of(2013, 11, 1), 21, 0.36, 0.01, 5.2e-4)),
            List.of(new LogBook.Note(
                    AT, 300, SeasonEvent.Kind.SENSOR_TRIPPED, "rain-1", SensorKind.RAIN, "", Map.of("shown", 0.004))));

    private static RecordsTable table(RecordsTable.Page page, String language, UnitSystem units) {
        Words words = new Words();
        words.speak(language);
        words.units().set(units);
        return new RecordsTable.Maker(words, id -> id).make(page, BOOK);
    }

    private static List<String> texts(RecordsTable table, int row) {
        return table.rows().get(row).cells().stream()
                .map(RecordsTable.Cell::text)
                .toList();
    }

    @Test
    void everyPageHasACellForEachColumnInBothLanguages() {
        for (String language : List.of("en", "es")) {
            for (RecordsTable.Page page : RecordsTable.Page.values()) {
                RecordsTable table = table(page, language, UnitSystem.US);
                assertFalse(table.rows().isEmpty());
                for (RecordsTable.Row row : table.rows()) {
                    assertEquals(table.columns().size(), row.cells().size(), page.name());
                    row.cells().forEach(c -> assertFalse(c.text().contains("[["), c.text()));
                }
                table.columns().forEach(c -> assertFalse(c.name().contains("[["), c.name()));
            }
        }
    }

    @Test
    void valuesFollowTheUnitsAndTheLanguage() {
        List<String> metric = texts(table(RecordsTable.Page.RUNS, "es", UnitSystem.METRIC), 0);
        assertEquals("30\u00a0L/min", metric.get(3));
        assertEquals("360\u00a0L", metric.get(4));
        List<String> us = texts(table(RecordsTable.Page.RUNS, "en", UnitSystem.US), 0);
        assertEquals("7.93\u00a0gpm", us.get(3));
        assertEquals(
                "Ended: rain-1",
                texts(table(RecordsTable.Page.RUNS, "en", UnitSystem.US), 1).get(5));
        assertEquals(
                "read 4\u00a0mm",
                texts(table(RecordsTable.Page.NOTES, "en", UnitSystem.METRIC), 0)
                        .get(3));
    }

    @Test
    void cellsSortByWhatTheyMean() {
        RecordsTable table = table(RecordsTable.Page.RUNS, "en", UnitSystem.METRIC);
        RecordsTable.Cell twelve = table.rows().get(0).cells().get(2);
        RecordsTable.Cell nine = table.rows().get(1).cells().get(2);
        assertTrue(nine.compareTo(twelve) < 0, "9 before 12");
        RecordsTable.Cell known = table.rows().get(0).cells().get(3);
        RecordsTable.Cell unknown = table.rows().get(1).cells().get(3);
        assertTrue(unknown.compareTo(known) < 0);
        assertEquals(300, table.rows().get(0).tick());
    }

    @Test
    void fileHasPlainNumbersAndQuotesWhereTheyAreNeeded() {
        String[] lines =
                table(RecordsTable.Page.RUNS, "es", UnitSystem.METRIC).csv().split("\r\n");
        assertEquals(3, lines.length);
        assertEquals("Zona,Comenzó,Minutos,\"Caudal medio, L/min\",\"Volumen, m³\",Cómo terminó", lines[0]);
        assertEquals("\"north, \"\"front\"\"\",2013-11-02 05:00,12,30.0,0.36,Completo", lines[1]);
        assertEquals("south,2013-11-02 06:00,9,,,Terminado: rain-1", lines[2]);
    }

    @Test
    void aFileIsWrittenWholeOrNotAtAll(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("runs.csv");
        SafeFile.write(file, "first");
        SafeFile.write(file, "second");
        assertEquals("second", Files.readString(file));
        Path nowhere = folder.resolve("missing").resolve("runs.csv");
        assertThrows(IOException.class, () -> SafeFile.write(nowhere, "x"));
        Path occupied = Files.createDirectories(folder.resolve("taken.csv").resolve("inside"))
                .getParent();
        assertThrows(IOException.class, () -> SafeFile.write(occupied, "x"));
        try (var all = Files.list(folder)) {
            assertEquals(2, all.count(), "nothing half written is left behind");
        }
    }
}
