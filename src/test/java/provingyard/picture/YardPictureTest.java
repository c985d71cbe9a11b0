package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.scenario.YardPlan;
import provingyard.season.Snapshot;
import provingyard.setup.FlowWatch;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

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
                                DemoYard.at(11.3, 22.3),
                                "41 L on the path",
                                "drift, since 06:04",
                                Marks.Meaning.ALARM,
                                55,
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
                .marks(Marks.NONE
                        .select("freeze-1")
                        .notes(List.of(new Marks.Note(
                                DemoYard.at(28, 5.7),
                                "North walk is iced",
                                "31 m², since 05:02",
                                Marks.Meaning.ICE,
                                -60,
                                36))));
        write("yard-frost", YardPicture.render(shapes, DemoYard.setUp(), night, cold));
        write("yard-1920", YardPicture.render(shapes, DemoYard.setUp(), day, tune(Theme.LIGHT, 1920, 852)));
        write("thumbnail", YardPicture.thumbnail(clinic, 392, 224, Theme.LIGHT));
        float[] calm = new float[60 * 36];
        for (int i = 0; i < calm.length; i++) {
            calm[i] = i % 60 > 42 && i % 60 < 54 ? 0.3f : 1;
        }
        View desk = tune(Theme.PROJECTOR, 1280, 492)
                .layers(EnumSet.of(Layer.PIPES, Layer.SHELTER))
                .shelter(new CellField(60, 36, calm))
                .marks(Marks.NONE
                        .faulty(Set.of("freeze-1"))
                        .pins(List.of(
                                new Marks.Pin(DemoYard.at(10, 6), 1, "north", 0, 0),
                                new Marks.Pin(DemoYard.at(4, 15), 2, "west", 0, 0),
                                new Marks.Pin(DemoYard.at(14, 28), 3, "south", 0, 0),
                                new Marks.Pin(DemoYard.at(42, 26), 4, "meter", 0, 0))));
        write("yard-desk", YardPicture.render(shapes, DemoYard.setUp(), day, desk));
        View call = desk.theme(Theme.LIGHT)
                .layers(EnumSet.of(Layer.PIPES))
                .marks(desk.marks()
                        .select("iso-a")
                        .pins(List.of(
                                new Marks.Pin(DemoYard.at(45.3, 30.2), 1, "9.3 L/min", 14, 22),
                                new Marks.Pin(DemoYard.at(30, 4.15), 3, "shut, 9.1", -4, -28))));
        Snapshot leaking = new Snapshot(
                day.tick(),
                day.clock(),
                new Snapshot.Sky(9, 4, 5.4, 210, 300, 0.3, 6.2, 24, 130),
                day.nx(),
                day.ny(),
                day.wetness(),
                day.film(),
                day.ice(),
                day.stress(),
                day.cold(),
                day.paving(),
                day.zones(),
                day.heads(),
                day.links(),
                List.of(new Snapshot.Sensor("rain-1", 0.007, true), new Snapshot.Sensor("flow-1", 1e-3, true)),
                List.of(new Snapshot.Leak(17, 6.8, 3e-3, 40, true)),
                false,
                3e-4,
                day.ledger(),
                0);
        write("yard-call", YardPicture.render(shapes, DemoYard.setUp(), leaking, call));
        View shade =
                tune(Theme.LIGHT, 1280, 492).layers(EnumSet.of(Layer.SHADE)).in("en", UnitSystem.US);
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

    @Test
    void emptyYardDraws() {
        YardPlan bare = new YardPlan(
                new Point(20, 10),
                0.5,
                "ground",
                List.of(new YardPlan.Surface(
                        "ground", YardPlan.SurfaceKind.TURF, null, null, null, null, null, 1, null, List.of())),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        Plumbing none = new Plumbing(
                Plumbing.Friction.HAZEN_WILLIAMS, null, List.of(), List.of(), List.of(), List.of(), List.of());
        Scenario scenario = DemoYard.of(bare, none, null);
        View view = View.fit(bare.size(), 300, 200, View.Free.ALL, Theme.DARK).layers(EnumSet.allOf(Layer.class));
        BufferedImage image = YardPicture.render(scenario, SetUp.CLOCK_ALONE, null, view);
        // Theme and lawn are there: the middle of the picture is green.
        Colour middle = new Colour(image.getRGB(150, 60));
        assertTrue(middle.green() > middle.red() && middle.green() > middle.blue());
    }

    @Test
    void notANumberIsNoReasonToFail() {
        Scenario clinic = DemoYard.clinic();
        Snapshot day = DemoYard.snapshot(clinic, false);
        List<Snapshot.Head> heads = day.heads().stream()
                .map(h -> new Snapshot.Head(
                        h.id(), h.spraying(), Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN))
                .toList();
        float[] cold = day.cold().clone();
        Arrays.fill(cold, Float.NaN);
        Snapshot odd = new Snapshot(
                day.tick(),
                day.clock(),
                day.sky(),
                day.nx(),
                day.ny(),
                day.wetness(),
                day.film(),
                day.ice(),
                day.stress(),
                cold,
                day.paving(),
                day.zones(),
                heads,
                day.links(),
                day.sensors(),
                List.of(new Snapshot.Leak(20, 7, Double.NaN, 10, true), new Snapshot.Leak(30, 7, 4e-3, 10, true)),
                false,
                Double.NaN,
                day.ledger(),
                0);
        View view = tune(Theme.LIGHT, 640, 300).layers(EnumSet.allOf(Layer.class));
        BufferedImage image = YardPicture.render(clinic, DemoYard.setUp(), odd, view);
        assertFalse(Arrays.equals(pixels(image), pixels(YardPicture.render(clinic, DemoYard.setUp(), day, view))));
    }

    @Test
    void unknownPipesAndJunctionsAreLeftOut() {
        Plumbing p = DemoYard.plumbing();
        List<Plumbing.Pipe> pipes = new ArrayList<>(p.pipes());
        pipes.add(new Plumbing.Pipe("lost", "nowhere", "elsewhere", 0.02, "pvc", List.of(), null, 0));
        Plumbing odd = new Plumbing(p.friction(), p.supply(), p.junctions(), pipes, p.fittings(), p.heads(), p.drips());
        YardShapes shapes = YardShapes.of(DemoYard.of(DemoYard.yard(), odd, null));
        assertFalse(shapes.pipes().ways().containsKey("lost"));
        SetUp flow =
                new SetUp(List.of(new Placement.Flow("flow-1", "lost", 1, 0.02, 3, 0)), List.of(), FlowWatch.OFF, null);
        BufferedImage image = YardPicture.render(shapes, flow, null, tune(Theme.LIGHT, 300, 200));
        assertEquals(300, image.getWidth());
    }

    @Test
    void stillTimeStandsStillAndRunningTimeMoves() {
        Scenario clinic = DemoYard.clinic();
        YardShapes shapes = YardShapes.of(clinic);
        Snapshot day = DemoYard.snapshot(clinic, false);
        View view = tune(Theme.LIGHT, 640, 300);
        int[] now = pixels(YardPicture.render(shapes, DemoYard.setUp(), day, view.seconds(3)));
        assertArrayEquals(now, pixels(YardPicture.render(shapes, DemoYard.setUp(), day, view.seconds(3))));
        assertFalse(Arrays.equals(now, pixels(YardPicture.render(shapes, DemoYard.setUp(), day, view.seconds(3.4)))));
    }

    @Test
    void layersHide() {
        Scenario clinic = DemoYard.clinic();
        YardShapes shapes = YardShapes.of(clinic);
        Snapshot night = DemoYard.snapshot(clinic, true);
        View bare = tune(Theme.DARK, 640, 300).layers(EnumSet.noneOf(Layer.class));
        int[] before = pixels(YardPicture.render(shapes, SetUp.CLOCK_ALONE, night, bare));
        for (Layer layer : EnumSet.of(Layer.PIPES, Layer.SPRAY, Layer.WETNESS, Layer.COLD)) {
            int[] after = pixels(YardPicture.render(shapes, SetUp.CLOCK_ALONE, night, bare.layers(EnumSet.of(layer))));
            assertFalse(Arrays.equals(before, after), layer.name());
        }
    }

    /** The states of a sensor and the icons side by side, to look at. */
    @Test
    void everySensorStateDiffers() throws IOException {
        Java2DSurface s = new Java2DSurface(640, 240);
        s.fill(Path.rectangle(0, 0, 640, 240), Theme.LIGHT.at(Tone.LAWN));
        Set<Integer> seen = new java.util.HashSet<>();
        double x = 50;
        for (SensorArt.State state : SensorArt.State.values()) {
            Java2DSurface one = new Java2DSurface(100, 100);
            SensorArt.marker(one, 50, 80, SensorKind.SOIL, state, Theme.LIGHT);
            assertTrue(seen.add(Arrays.hashCode(pixels(one.image()))), state.name());
            SensorArt.marker(s, x, 70, SensorKind.values()[seen.size() % 5], state, Theme.LIGHT);
            x += 90;
        }
        int i = 0;
        for (Icons.Icon icon : Icons.all()) {
            icon.draw(s, 24 + i % 20 * 31, 110 + i / 20 * 36, 22, Theme.LIGHT.at(Tone.INK));
            i++;
        }
        write("states", s.image());
    }

    @Test
    void fontsAreTheProgramsOwn() {
        assertEquals("Source Sans 3", Fonts.font(FontRole.TEXT, 14).getFamily());
        assertEquals(14.5f, Fonts.font(FontRole.TITLE, 14.5).getSize2D());
        Java2DSurface s = new Java2DSurface(10, 10);
        assertTrue(s.textWidth("Rain", FontRole.BOLD, 14) > s.textWidth("Rain", FontRole.TEXT, 14));
    }
}
