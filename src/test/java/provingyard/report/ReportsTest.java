package provingyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provingyard.quantity.UnitSystem;

class ReportsTest {

    @TempDir
    Path folder;

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void allThatIsKnownIsWritten() throws IOException {
        Path out = folder.resolve("new/folder");
        Path page = Reports.write(out, LivedDebriefs.clinic(), "es", UnitSystem.US);
        assertEquals(out.resolve("report.html"), page);
        assertEquals(
                List.of("events.csv", "ledger.csv", "owner.html", "owner.pdf", "report.html", "report.pdf", "yard.png"),
                names(out));
        assertEquals(1280, ImageIO.read(out.resolve("yard.png").toFile()).getWidth());
        assertTrue(Files.readString(out.resolve("owner.html")).contains("Lo que ahorran"), "in Spanish");
    }

    @Test
    void withoutWorthTheOwnersPageIsLeftOut() throws IOException {
        Reports.write(folder, LivedDebriefs.bare(LivedDebriefs.clinic()), "en", UnitSystem.METRIC);
        assertEquals(List.of("events.csv", "ledger.csv", "report.html", "report.pdf", "yard.png"), names(folder));
    }

    @Test
    void whatCannotBeWrittenIsAnExceptionThatNamesIt() throws IOException {
        Files.createDirectories(folder.resolve("ledger.csv/in the way"));
        Story story = LivedDebriefs.bare(LivedDebriefs.clinic());
        IOException failed =
                assertThrows(IOException.class, () -> Reports.write(folder, story, "en", UnitSystem.METRIC));
        assertTrue(failed.getMessage().contains("ledger.csv"), failed.getMessage());
    }
}
