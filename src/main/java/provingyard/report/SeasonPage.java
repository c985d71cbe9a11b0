package provingyard.report;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.picture.YardPicture;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Scenario;
import provingyard.score.Loss;
import provingyard.score.Score;
import provingyard.season.Ledger;
import provingyard.season.Outcome;
import provingyard.season.Season;
import provingyard.setup.Placement;
import provingyard.study.Standing;
import provingyard.text.Texts;

/** A lived season as a page for people: the yard, what it cost and where the water went. */
public final class SeasonPage {

    private static final int WIDTH = 1280;
    private static final int HEIGHT = 720;
    private static final int SHOWN = 960;

    /**
     * What the page tells about.
     *
     * @param season a lived season
     * @param standing the season beside the clock alone and the mark
     * @param setUpName how its set-up was called: a reference's name or a file; null for the clock alone
     * @param seed seed it was lived with
     * @param days days lived
     */
    public record Story(Season season, Standing standing, String setUpName, long seed, int days) {}

    private final Story story;
    private final Texts texts;
    private final Texts sensorNames;
    private final Display display;

    private SeasonPage(Story story, String language, UnitSystem units) {
        this.story = story;
        texts = Texts.of("cli", language);
        sensorNames = Texts.of("ui", language);
        display = Display.of(units, language);
    }

    /**
     * Writes {@code report.html} and {@code yard.png} into a folder, which is made where it is missing.
     *
     * @return the page's file
     * @throws IOException when the folder or a file cannot be written
     */
    public static Path write(Path folder, Story story, String language, UnitSystem units) throws IOException {
        Files.createDirectories(folder);
        SeasonPage page = new SeasonPage(story, language, units);
        byte[] yard = page.yard();
        Files.write(folder.resolve("yard.png"), yard);
        Path file = folder.resolve("report.html");
        Files.writeString(file, page.html(yard));
        return file;
    }

    private byte[] yard() throws IOException {
        Season season = story.season();
        Scenario scenario = season.site().scenario();
        View view = View.fit(scenario.yard().size(), WIDTH, HEIGHT, View.Free.ALL, Theme.LIGHT)
                .in(texts.language(), display.system());
        BufferedImage picture = YardPicture.render(scenario, season.setUp(), season.snapshot(), view);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        YardPicture.writePng(picture, png);
        return png.toByteArray();
    }

    private String html(byte[] yard) throws IOException {
        Scenario scenario = story.season().site().scenario();
        String title = scenario.title().in(texts.language());
        SeasonCharts charts = new SeasonCharts(texts, display);
        HtmlPage page = new HtmlPage(texts.language(), title);
        page.paragraph(scenario.subtitle().in(texts.language()));
        page.paragraph(texts.say(
                "run.title",
                title,
                Integer.toString(story.days()),
                scenario.season().from(),
                Long.toString(story.seed())));
        page.lead(score());
        if (story.standing().score().points() != null) {
            page.picture(charts.score(story.standing()), score(), SeasonCharts.WIDTH);
        }
        page.picture(yard, texts.say("report.yard", title), SHOWN);
        setUp(page);
        losses(page);
        Outcome outcome = story.season().outcome();
        Ledger ledger = outcome.ledger();
        page.heading(texts.say("irrigation.title"));
        page.picture(charts.water(ledger.irrigation()), texts.say("irrigation.title"), SeasonCharts.WIDTH);
        irrigation(page, ledger.irrigation());
        page.heading(texts.say("ledger.title"));
        water(page, ledger.water());
        iceAndLeaks(page, outcome);
        return page.note(texts.say("report.note")).text();
    }

    private String score() {
        Score score = story.standing().score();
        if (score.points() == null) {
            return texts.say("score.none", texts.say("reason." + score.reason().name()));
        }
        String points = texts.say("score.points", score.shown());
        return score.outside()
                ? points + " " + texts.say("score.outside", Long.toString(Math.round(score.points())))
                : points;
    }

    private void setUp(HtmlPage page) {
        page.heading(texts.say("report.setUp"));
        page.paragraph(
                story.setUpName() == null
                        ? texts.say("run.setup.clock")
                        : texts.say("run.setup.named", story.setUpName()));
        List<List<String>> rows = new ArrayList<>();
        for (Placement sensor : story.season().setUp().sensors()) {
            rows.add(List.of(sensorNames.say("sensor." + sensor.kind().name()), sensor.id()));
        }
        if (!rows.isEmpty()) {
            page.table(List.of(), rows);
        }
    }

    private void losses(HtmlPage page) {
        Standing standing = story.standing();
        page.heading(texts.say("loss.title"));
        List<List<String>> rows = new ArrayList<>();
        for (Loss.Kind kind : Loss.Kind.values()) {
            rows.add(List.of(
                    texts.say("loss." + kind.name()),
                    money(standing.clock().money(kind)),
                    money(standing.trainee().money(kind)),
                    standing.mark().map(m -> money(m.money(kind))).orElse("–")));
        }
        rows.add(List.of(
                texts.say("loss.total"),
                money(standing.clock().total()),
                money(standing.trainee().total()),
                standing.mark().map(m -> money(m.total())).orElse("–")));
        page.table(List.of("", texts.say("loss.clock"), texts.say("loss.trainee"), texts.say("loss.mark")), rows);
    }

    private void irrigation(HtmlPage page, Ledger.Irrigation i) {
        page.table(
                List.of(),
                List.of(
                        volume("ledger.supplied", i.supplied()),
                        volume("irrigation.used", i.used()),
                        volume("ledger.drift", i.drift()),
                        volume("irrigation.overspray", i.overspray()),
                        volume("ledger.runoff", i.runoff()),
                        volume("ledger.below", i.below()),
                        volume("ledger.leaked", i.leaked()),
                        volume("ledger.storeChange", i.storeChange()),
                        closure(i.closure())));
    }

    private void water(HtmlPage page, Ledger.Water w) {
        page.table(
                List.of(),
                List.of(
                        volume("ledger.supplied", w.supplied()),
                        volume("ledger.rain", w.rain()),
                        volume("ledger.evapotranspiration", w.evapotranspiration()),
                        volume("ledger.drift", w.drift()),
                        volume("ledger.walkEvaporation", w.walkEvaporation()),
                        volume("ledger.runoff", w.runoff()),
                        volume("ledger.below", w.below()),
                        volume("ledger.offSite", w.offSite()),
                        volume("ledger.leaked", w.leaked()),
                        volume("ledger.storeChange", w.storeChange()),
                        closure(w.closure())));
    }

    private void iceAndLeaks(HtmlPage page, Outcome outcome) {
        page.heading(texts.say("report.iceAndLeaks"));
        Ledger.Ice ice = outcome.ledger().ice();
        Outcome.Leaks leaks = outcome.leaks();
        page.table(
                List.of(),
                List.of(
                        List.of(texts.say("ice.areaHours"), display.text(Show.ICE, ice.areaHours())),
                        count("ice.mornings", ice.mornings()),
                        count("leaks.happened", leaks.happened()),
                        count("loss.MISSED_LEAK", leaks.missed()),
                        count("loss.FALSE_ALARM", leaks.falseAlarms())));
    }

    private List<String> volume(String key, double value) {
        return List.of(texts.say(key), display.text(Show.VOLUME, value));
    }

    private List<String> closure(double share) {
        return List.of(texts.say("ledger.closure"), String.format(Locale.ROOT, "%.1e", share));
    }

    private List<String> count(String key, int count) {
        return List.of(texts.say(key), Integer.toString(count));
    }

    private String money(double usd) {
        return display.text(Show.MONEY, usd);
    }
}
