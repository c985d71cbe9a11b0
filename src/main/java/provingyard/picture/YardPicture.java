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

    /** The whole picture in the light of the snapshot's sky. */
    public static BufferedImage render(Scenario scenario, SetUp setUp, Snapshot snapshot, View view) {
        return render(YardShapes.of(scenario), setUp, snapshot, view);
    }

    /** The same from shapes worked out before. */
    public static BufferedImage render(YardShapes shapes, SetUp setUp, Snapshot snapshot, View view) {
        View seen = snapshot == null || snapshot.sky() == null
                ? view
                : view.theme(view.theme().under(snapshot.sky().sunAltitude()));
        Backdrop backdrop = new Backdrop(shapes);
        Java2DSurface s = new Java2DSurface(backdrop.ground(view, 1, snapshot).image());
        YardPainter.moving(s, shapes, seen, snapshot);
        new IcedArt(shapes, seen).draw(s);
        s.put(backdrop.top(view, 1, setUp, snapshot).image());
        YardPainter.air(s, seen, snapshot);
        YardPainter.names(s, shapes, seen, setUp);
        YardPainter.marks(s, shapes, seen, setUp, snapshot);
        return s.image();
    }

    /** A small picture for a card: the plan with resting throws, nothing written. */
    public static BufferedImage thumbnail(Scenario scenario, int width, int height, Theme theme) {
        View view = View.fit(scenario.yard().size(), width, height, View.Free.ALL, theme)
                .layers(EnumSet.of(Layer.SPRAY))
                .labels(false);
        // Between all of the yard and a card filled by it: little off-site, little cut away.
        double across = width / scenario.yard().size().x();
        double up = height / scenario.yard().size().y();
        double fill = Math.sqrt(across * up);
        View filled = view.at(
                fill, scenario.yard().size().x() / 2, scenario.yard().size().y() / 2);
        Java2DSurface s = new Java2DSurface(width, height);
        YardShapes shapes = YardShapes.of(scenario);
        YardPainter.ground(s, shapes, filled);
        YardPainter.live(s, shapes, filled, null);
        YardPainter.top(s, shapes, filled);
        return s.image();
    }

    /** The ground image, to be kept while view and theme stay; {@code density} pixels to one px of the view. */
    public static BufferedImage ground(YardShapes shapes, View view, double density) {
        Java2DSurface s = dense(view, density);
        YardPainter.ground(s, shapes, view);
        return s.image();
    }

    /** The transparent image of canopies and roofs, to be kept while view and theme stay. */
    public static BufferedImage top(YardShapes shapes, View view, double density) {
        Java2DSurface s = dense(view, density);
        YardPainter.top(s, shapes, view);
        return s.image();
    }

    private static Java2DSurface dense(View view, double density) {
        int width = (int) Math.ceil(view.width() * density);
        int height = (int) Math.ceil(view.height() * density);
        Java2DSurface s = new Java2DSurface(width, height);
        s.scale(density, density);
        return s;
    }

    /** Writes a picture as PNG. */
    public static void writePng(BufferedImage picture, OutputStream out) throws IOException {
        // PNG writers want plain, not premultiplied, values.
        BufferedImage plain = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_ARGB);
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
