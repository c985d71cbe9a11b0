package provingyard.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.EnumSet;
import javax.imageio.ImageIO;
import provingyard.scenario.Scenario;
import provingyard.season.Snapshot;
import provingyard.setup.SetUp;

/** The yard as a picture without a screen: for the command line, reports and the route sheet's cards. */
public final class YardPicture {

    private YardPicture() {}

    /** The whole picture; the theme turns to night when the snapshot's sun is down. */
    public static BufferedImage render(Scenario scenario, SetUp setUp, Snapshot snapshot, View view) {
        return render(YardShapes.of(scenario), setUp, snapshot, view);
    }

    /** The same from shapes worked out before. */
    public static BufferedImage render(YardShapes shapes, SetUp setUp, Snapshot snapshot, View view) {
        View seen = snapshot == null || snapshot.sky() == null
                ? view
                : view.theme(view.theme().under(snapshot.sky().sunAltitude()));
        Java2DSurface s = new Java2DSurface(view.width(), view.height());
        YardPainter.all(s, shapes, seen, setUp, snapshot);
        return s.image();
    }

    /** A small picture for a card: the plan with resting throws, nothing written. */
    public static BufferedImage thumbnail(Scenario scenario, int width, int height, Theme theme) {
        View view = View.fit(scenario.yard().size(), width, height, View.Free.ALL, theme)
                .layers(EnumSet.of(Layer.SPRAY))
                .labels(false);
        // A card is filled to its edges.
        double fill = Math.max(width / scenario.yard().size().x(), height / scenario.yard().size().y());
        View filled = view.at(
                fill, scenario.yard().size().x() / 2, scenario.yard().size().y() / 2);
        Java2DSurface s = new Java2DSurface(width, height);
        YardShapes shapes = YardShapes.of(scenario);
        YardPainter.ground(s, shapes, filled);
        YardPainter.live(s, shapes, filled, null);
        YardPainter.top(s, shapes, filled);
        return s.image();
    }

    /** Writes a picture as PNG. */
    public static void writePng(BufferedImage picture, OutputStream out) throws IOException {
        // PNG writers want plain, not premultiplied, values.
        BufferedImage plain =
                new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_ARGB);
        plain.createGraphics().drawImage(picture, 0, 0, null);
        if (!ImageIO.write(plain, "png", out)) {
            throw new IOException("no PNG writer");
        }
    }

    /** A picture's pixels, for other back ends. */
    public static Pixels pixels(BufferedImage picture) {
        int w = picture.getWidth();
        int h = picture.getHeight();
        return new Pixels(w, h, picture.getRGB(0, 0, w, h, null, 0, w));
    }
}
