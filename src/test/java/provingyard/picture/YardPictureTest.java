package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.season.Snapshot;

class YardPictureTest {

    private static final View.Free PANELS = new View.Free(210, 10, 298, 0);

    private static int[] pixels(BufferedImage image) {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    private static View tune(Theme theme, int width, int height) {
        double[] open = new double[36];
        for (int i = 0; i < 36; i++) {
            open[i] = i > 20 && i < 30 ? 0.1 : 0.9;
        }
        return View.fit(new Point(60, 36), width, height, PANELS, theme)
                .at(width > 1500 ? 22.4 : 12.9, width > 1500 ? 29.9 : 34.1, 19.2)
                .marks(Marks.NONE
                        .select("rain-1")
                        .sky(new Marks.SkyRing("rain-1", open))
                        .notes(List.of(new Marks.Note(
                                DemoYard.at(11.3, 22.3), "41 L on the path", "drift, since 06:04", Marks.Meaning.ALARM, 55,
                                -30))));
    }

    static void write(String name, BufferedImage image) throws IOException {
        String to = System.getProperty("pictures");
        if (to != null) {
            try (OutputStream out = Files.newOutputStream(java.nio.file.Path.of(to, name + ".png"))) {
                YardPicture.writePng(image, out);
            }
        }
    }

    /** Not a check by itself: with {@code -Dpictures=directory} it leaves pictures to look at. */
    @Test
    void everyThemeDrawsSomething() throws IOException {
        Scenario clinic = DemoYard.clinic();
        YardShapes shapes = YardShapes.of(clinic);
        Snapshot day = DemoYard.snapshot(clinic, false);
        Snapshot night = DemoYard.snapshot(clinic, true);
        for (Theme theme : Theme.ALL) {
            BufferedImage image = YardPicture.render(shapes, DemoYard.setUp(), day, tune(theme, 1280, 492));
            write("yard-" + theme.name(), image);
            assertFalse(Arrays.stream(pixels(image)).allMatch(p -> p == pixels(image)[0]));
        }
        View cold = tune(Theme.DARK, 1280, 492)
                .layers(EnumSet.of(Layer.PIPES, Layer.SPRAY, Layer.COLD))
                .in("es", UnitSystem.METRIC)
                .marks(Marks.NONE.select("freeze-1").notes(List.of(new Marks.Note(
                        DemoYard.at(28, 5.7), "North walk is iced", "31 m², since 05:02", Marks.Meaning.ICE, -60, 36))));
        write("yard-frost", YardPicture.render(shapes, DemoYard.setUp(), night, cold));
        write("yard-1920", YardPicture.render(shapes, DemoYard.setUp(), day, tune(Theme.LIGHT, 1920, 852)));
        write("thumbnail", YardPicture.thumbnail(clinic, 392, 224, Theme.LIGHT));
        View shade = tune(Theme.LIGHT, 1280, 492).layers(EnumSet.of(Layer.SHADE)).in("en", UnitSystem.US);
        write("yard-shade", YardPicture.render(shapes, DemoYard.setUp(), day, shade));
    }

    @Test
    void sameInputSamePixels() {
        Scenario clinic = DemoYard.clinic();
        Snapshot day = DemoYard.snapshot(clinic, false);
        BufferedImage a = YardPicture.render(clinic, DemoYard.setUp(), day, tune(Theme.LIGHT, 640, 300));
        BufferedImage b = YardPicture.render(clinic, DemoYard.setUp(), day, tune(Theme.LIGHT, 640, 300));
        assertArrayEquals(pixels(a), pixels(b));
    }
}
