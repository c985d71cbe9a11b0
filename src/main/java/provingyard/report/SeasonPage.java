package provingyard.report;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.picture.YardPicture;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Scenario;
import provingyard.score.Loss;
import provingyard.season.Ledger;
import provingyard.season.Season;
import provingyard.study.Standing;
import provingyard.text.Texts;

/** A season as one self-contained HTML page, light and printable, with the yard's picture in it. */
public final class SeasonPage {

    private static final int WIDTH = 1280;
    private static final int HEIGHT = 720;

    private final Texts texts;
    private final Display display;
    private final StringBuilder html = new StringBuilder();

    private SeasonPage(String language, UnitSystem units) {
        texts = Texts.of("cli", language);
        display = Display.of(units, language);
    }

    /**
     * Writes {@code report.html} and {@code yard.png} into a folder, which is made where it is missing.
     *
     * @return the page's file
     */
    public static Path write(Path folder, Season season, Standing standing, String language, UnitSystem units)
            throws IOException {
        Files.createDirectories(folder);
        Scenario scenario = season.site().scenario();
        View view = View.fit(scenario.yard().size(), WIDTH, HEIGHT, View.Free.ALL, Theme.LIGHT)
                .in(language, units);
        BufferedImage picture = YardPicture.render(scenario, season.setUp(), season.snapshot(), view);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        YardPicture.writePng(picture, png);
        Files.write(folder.resolve("yard.png"), png.toByteArray());
        Path page = folder.resolve("report.html");
        Files.writeString(page, new SeasonPage(language, units).page(season, standing, png.toByteArray()));
        return page;
    }

    private String page(Season season, Standing standing, byte[] png) {
        Scenario scenario = season.site().scenario();
        String title = scenario.title().in(texts.language());
        html.append("<!DOCTYPE html>\n<html lang=\"")
                .append(texts.language())
                .append("\"><head><meta charset=\"utf-8\">");
        html.append("<title>").append(escaped(title)).append("</title><style>");
        html.append("body{font:15px/1.45 'Source Sans 3',sans-serif;color:#1d2622;background:#fffefb;max-width:60em;"
                + "margin:2em auto;padding:0 1em}h1,h2{font-family:'Source Serif 4',serif}img{width:100%;height:auto}"
                + "table{border-collapse:collapse;margin:1em 0;min-width:24em}td,th{padding:.2em .8em .2em 0;"
                + "border-bottom:1px solid #dcd7ca;text-align:left}td+td,th+th{text-align:right;"
                + "font-variant-numeric:tabular-nums}.note{color:#5f6963}");
        html.append("</style></head><body>\n<h1>").append(escaped(title)).append("</h1>\n<p>");
        html.append(escaped(scenario.subtitle().in(texts.language()))).append("</p>\n<p><strong>");
        html.append(escaped(score(standing)))
                .append("</strong></p>\n<img alt=\"")
                .append(escaped(title));
        html.append("\" src=\"data:image/png;base64,");
        html.append(Base64.getEncoder().encodeToString(png)).append("\">\n");
        losses(standing);
        water(season.ledger());
        html.append("<p class=\"note\">")
                .append(escaped(texts.say("report.note")))
                .append("</p>\n</body></html>\n");
        return html.toString();
    }

    private String score(Standing standing) {
        return standing.score().points() == null
                ? texts.say(
                        "score.none",
                        texts.say("reason." + standing.score().reason().name()))
                : texts.say("score.points", standing.score().shown());
    }

    private void losses(Standing standing) {
        html.append("<h2>").append(escaped(texts.say("loss.title"))).append("</h2>\n<table><tr><th></th>");
        head("loss.clock");
        head("loss.trainee");
        head("loss.mark");
        html.append("</tr>\n");
        for (Loss.Kind kind : Loss.Kind.values()) {
            row(
                    texts.say("loss." + kind.name()),
                    money(standing.clock().money(kind)),
                    money(standing.trainee().money(kind)),
                    standing.mark().map(m -> money(m.money(kind))).orElse("–"));
        }
        row(
                texts.say("loss.total"),
                money(standing.clock().total()),
                money(standing.trainee().total()),
                standing.mark().map(m -> money(m.total())).orElse("–"));
        html.append("</table>\n");
    }

    private void water(Ledger ledger) {
        Ledger.Water w = ledger.water();
        html.append("<h2>").append(escaped(texts.say("ledger.title"))).append("</h2>\n<table>");
        volume("ledger.supplied", w.supplied());
        volume("ledger.rain", w.rain());
        volume("ledger.evapotranspiration", w.evapotranspiration());
        volume("ledger.drift", w.drift());
        volume("ledger.walkEvaporation", w.walkEvaporation());
        volume("ledger.runoff", w.runoff());
        volume("ledger.below", w.below());
        volume("ledger.offSite", w.offSite());
        volume("ledger.leaked", w.leaked());
        volume("ledger.storeChange", w.storeChange());
        html.append("</table>\n");
    }

    private void head(String key) {
        html.append("<th>").append(escaped(texts.say(key))).append("</th>");
    }

    private void volume(String key, double value) {
        row(texts.say(key), display.text(Show.VOLUME, value));
    }

    private String money(double usd) {
        return display.text(Show.MONEY, usd);
    }

    private void row(String... cells) {
        html.append("<tr>");
        for (String cell : cells) {
            html.append("<td>").append(escaped(cell)).append("</td>");
        }
        html.append("</tr>\n");
    }

    /** A text as HTML shows it: nothing in it is markup. */
    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
