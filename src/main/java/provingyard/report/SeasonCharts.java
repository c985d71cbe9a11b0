package provingyard.report;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.function.ToDoubleFunction;
import provingyard.picture.Charts;
import provingyard.picture.Java2DSurface;
import provingyard.picture.Path;
import provingyard.picture.Surface;
import provingyard.picture.Theme;
import provingyard.picture.Tone;
import provingyard.picture.YardPicture;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.season.Ledger;
import provingyard.study.Standing;
import provingyard.text.Texts;

/** The charts of a season's page as PNG files, drawn at twice the size that the page shows them. */
final class SeasonCharts {

    /** Width on the page, px. */
    static final int WIDTH = 760;

    private static final int DENSITY = 2;
    private static final int MARGIN = 8;
    private static final int TALLEST = 400;

    private final Texts texts;
    private final Display display;

    SeasonCharts(Texts texts, Display display) {
        this.texts = texts;
        this.display = display;
    }

    /** The bar from the clock alone to the mark; only for a season that has a score. */
    byte[] score(Standing standing) throws IOException {
        double share = standing.score().points() / 100;
        Charts.Score score = new Charts.Score(
                mark(0, "loss.clock", standing.clock().total()),
                mark(share, "loss.trainee", standing.trainee().total()),
                mark(1, "loss.mark", standing.mark().orElseThrow().total()),
                null);
        return png(s -> Charts.score(s, inside(), score, Theme.LIGHT));
    }

    private Charts.ScoreMark mark(double share, String name, double loss) {
        return new Charts.ScoreMark(share, texts.say(name), display.text(Show.MONEY, loss));
    }

    /** What of the irrigation water plants kept or used, and what was wasted in which way. */
    byte[] water(Ledger.Irrigation i) throws IOException {
        // Water still in the soil serves the plants later; a store that fell was used.
        double kept = i.used() + i.storeChange();
        Charts.WaterRow row = new Charts.WaterRow(
                texts.say("loss.trainee"),
                true,
                Math.max(0, kept),
                display.text(Show.VOLUME, kept),
                new double[] {i.drift(), i.overspray(), i.runoff(), i.below(), i.leaked()},
                display.text(Show.VOLUME, i.wasted()));
        return png(s -> Charts.water(
                s,
                inside(),
                List.of(row),
                texts.say("chart.kept"),
                texts.say("chart.wasted"),
                Theme.LIGHT,
                texts.language()));
    }

    private static double inside() {
        return WIDTH - 2.0 * MARGIN;
    }

    /** Draws on paper and cuts it to the height taken. */
    private static byte[] png(ToDoubleFunction<Surface> chart) throws IOException {
        Java2DSurface surface = new Java2DSurface(WIDTH * DENSITY, TALLEST * DENSITY);
        surface.scale(DENSITY, DENSITY);
        surface.fill(Path.rectangle(0, 0, WIDTH, TALLEST), Theme.LIGHT.at(Tone.PAPER));
        surface.translate(MARGIN, MARGIN);
        double taken = chart.applyAsDouble(surface) + 2 * MARGIN;
        int height = (int) Math.ceil(Math.min(TALLEST, taken) * DENSITY);
        BufferedImage cut = surface.image().getSubimage(0, 0, WIDTH * DENSITY, height);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        YardPicture.writePng(cut, png);
        return png.toByteArray();
    }
}
