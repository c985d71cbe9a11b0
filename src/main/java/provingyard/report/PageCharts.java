package provingyard.report;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import provingyard.picture.Charts;
import provingyard.picture.Icons;
import provingyard.picture.Java2DSurface;
import provingyard.picture.NightPlot;
import provingyard.picture.Path;
import provingyard.picture.Pen;
import provingyard.picture.Surface;
import provingyard.picture.Theme;
import provingyard.picture.Tone;
import provingyard.picture.YardPicture;
import provingyard.quantity.Show;
import provingyard.scenario.SensorKind;
import provingyard.season.Ledger;
import provingyard.season.Outcome;
import provingyard.study.Standing;

/** The charts of pages as PNG files, in one drawing for wide columns and paper and one for narrow screens. */
final class PageCharts {

    private static final int WIDE = 704;
    private static final int NARROW = 380;
    /** Pixels to one px of the page: fine enough for print. */
    private static final int DENSITY = 3;

    /** px under which there is no room for words beside bars. */
    private static final int WORDS_FROM = 500;

    private static final int MARGIN = 2;
    private static final int TALLEST = 480;

    /** A chart in a width of px; gives the height taken. */
    interface Chart {
        double draw(Surface s, double width);
    }

    private final PageWords words;

    PageCharts(PageWords words) {
        this.words = words;
    }

    /** The bar from the clock alone to the mark; only for a season that has a score. */
    Picture score(Standing standing) {
        double share = standing.score().points() / 100;
        Charts.Score score = new Charts.Score(
                mark(0, "page.clock", standing.clock().total()),
                mark(share, "page.you", standing.trainee().total()),
                mark(1, "page.mark", standing.mark().orElseThrow().total()),
                null);
        return picture((s, width) -> Charts.score(s, width - 16, score, Theme.LIGHT));
    }

    private Charts.ScoreMark mark(double share, String name, double loss) {
        return new Charts.ScoreMark(share, words.say(name), words.say("page.lost", words.about(loss)));
    }

    /** Where the water went for the clock alone, the trainee and the mark. */
    Picture water(Outcome clock, Outcome trainee, Optional<Outcome> mark) {
        List<Charts.WaterRow> rows = new ArrayList<>();
        rows.add(row("page.clock", false, clock));
        rows.add(row("page.you", true, trainee));
        mark.ifPresent(m -> rows.add(row("page.mark", false, m)));
        return picture((s, width) -> Charts.water(
                s, width, rows, words.say("water.kept"), words.say("water.wasted"), Theme.LIGHT, words.language()));
    }

    private Charts.WaterRow row(String name, boolean own, Outcome outcome) {
        Ledger.Irrigation i = outcome.ledger().irrigation();
        // Water still in the soil serves the plants later; a store that fell was used.
        double kept = i.used() + i.storeChange();
        return new Charts.WaterRow(
                words.say(name),
                own,
                Math.max(0, kept),
                words.text(Show.VOLUME, kept),
                new double[] {i.drift(), i.overspray(), i.runoff(), i.below(), i.leaked()},
                words.text(Show.VOLUME, i.wasted()));
    }

    /** What each decision cost or gained. */
    Picture shares(List<Charts.Share> rows) {
        List<Charts.Share> few = rows.stream()
                .map(r -> new Charts.Share(r.kind(), r.name(), r.value(), r.valueText(), ""))
                .toList();
        return picture((s, width) -> Charts.shares(
                s,
                width,
                width < WORDS_FROM ? few : rows,
                words.say("share.cost"),
                words.say("share.gain"),
                Theme.LIGHT));
    }

    /** The temperatures of a night. */
    Picture night(NightPlot night) {
        return picture((s, width) -> night.draw(s, width, Theme.LIGHT));
    }

    /** A sensor's sign; the clock's for null. */
    byte[] icon(SensorKind kind) {
        return drawn(kind == null ? Icons.get("clock") : Icons.of(kind));
    }

    /** A sign by its name. */
    byte[] sign(String name) {
        return drawn(Icons.get(name));
    }

    /** A sign. */
    static byte[] drawn(Icons.Icon icon) {
        int px = 24 * DENSITY;
        Java2DSurface s = new Java2DSurface(px, px);
        s.scale(DENSITY, DENSITY);
        icon.draw(s, 12, 12, 22, Theme.LIGHT.at(Tone.INK));
        return png(s.image());
    }

    /** The ring that stands for sensors on the plan: whole for the trainee's, dashed for the mark's. */
    byte[] ring(boolean dashed) {
        int px = 24 * DENSITY;
        Java2DSurface s = new Java2DSurface(px, px);
        s.scale(DENSITY, DENSITY);
        Pen pen = Pen.of(Theme.LIGHT.at(Tone.INK), 2.6);
        s.stroke(Path.circle(12, 12, 9), dashed ? pen.dashed(4.5, 3) : pen);
        return png(s.image());
    }

    /** A chart in both its drawings. */
    static Picture picture(Chart chart) {
        return new Picture(png(chart, WIDE), png(chart, NARROW));
    }

    /** Draws on clear ground, so that the page's shows, and cuts it to the height taken. */
    private static byte[] png(Chart chart, int width) {
        Java2DSurface surface = new Java2DSurface(width * DENSITY, TALLEST * DENSITY);
        surface.scale(DENSITY, DENSITY);
        surface.save();
        surface.clip(Path.rectangle(0, 0, width, TALLEST));
        surface.translate(MARGIN, MARGIN);
        double taken = chart.draw(surface, width - 2.0 * MARGIN) + 2 * MARGIN;
        surface.restore();
        int height = (int) Math.ceil(Math.min(TALLEST, taken) * DENSITY);
        return png(surface.image().getSubimage(0, 0, width * DENSITY, height));
    }

    /** A picture as a file. */
    static byte[] png(BufferedImage picture) {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            YardPicture.writePng(picture, png);
        } catch (IOException e) {
            throw new UncheckedIOException("a picture can be written to memory", e);
        }
        return png.toByteArray();
    }
}
