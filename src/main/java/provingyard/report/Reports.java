package provingyard.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.picture.YardPicture;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Scenario;
import provingyard.season.Season;

/** Writes all that can be told of a season into a folder. */
public final class Reports {

    private static final int WIDTH = 1280;
    private static final int HEIGHT = 720;

    private final Story story;
    private final String language;
    private final UnitSystem units;
    private final Paper paper;

    private Reports(Story story, String language, UnitSystem units) {
        this.story = story;
        this.language = language;
        this.units = units;
        paper = Paper.of(units);
    }

    /**
     * Writes {@code report.html}, {@code report.pdf}, {@code ledger.csv}, {@code events.csv} and {@code yard.png}, and
     * {@code owner.html} and {@code owner.pdf} where it is known what the sensors are worth. The folder is made where it
     * is missing; files of these names are replaced.
     *
     * @return the page's file
     * @throws IOException when the folder or a file cannot be written
     */
    public static Path write(Path folder, Story story, String language, UnitSystem units) throws IOException {
        Files.createDirectories(folder);
        return new Reports(story, language, units).write(folder);
    }

    /** The debrief as a PDF file, on the paper that goes with the units. */
    public static byte[] pdf(Story story, String language, UnitSystem units) throws IOException {
        return Pdf.of(DebriefPage.of(story, language, units), Paper.of(units));
    }

    private Path write(Path folder) throws IOException {
        Season season = story.debrief().season();
        HtmlPage page = DebriefPage.of(story, language, units);
        Path file = folder.resolve("report.html");
        write(file, page);
        Files.write(folder.resolve("report.pdf"), Pdf.of(page, paper));
        if (OwnerPage.tells(story.debrief())) {
            write(folder.resolve("owner.html"), OwnerPage.of(story.debrief(), language, units));
            Files.write(folder.resolve("owner.pdf"), OwnerPage.pdf(story.debrief(), language, units, paper));
        }
        Files.write(folder.resolve("ledger.csv"), LedgerCsv.of(story, language, units));
        Files.write(folder.resolve("events.csv"), EventsCsv.of(season, language, units));
        Files.write(folder.resolve("yard.png"), yard(season));
        return file;
    }

    private static void write(Path file, HtmlPage page) throws IOException {
        Files.write(file, page.text().getBytes(StandardCharsets.UTF_8));
    }

    private byte[] yard(Season season) {
        Scenario scenario = season.site().scenario();
        View view = View.fit(scenario.yard().size(), WIDTH, HEIGHT, View.Free.ALL, Theme.LIGHT)
                .in(language, units);
        return PageCharts.png(YardPicture.render(scenario, season.setUp(), season.snapshot(), view));
    }
}
