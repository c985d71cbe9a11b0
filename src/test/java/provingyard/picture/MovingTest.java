package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Plumbing.Pipe;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.season.Snapshot;

/** What moves while time runs: chevrons in pipes, rain, wind, and water that wells up. */
class MovingTest {

    private static final Scenario CLINIC = DemoYard.clinic();
    private static final YardShapes SHAPES = YardShapes.of(CLINIC);
    private static final View VIEW = View.fit(CLINIC.yard().size(), 640, 400, View.Free.ALL, Theme.LIGHT);

    private static Snapshot with(double[] links, List<Snapshot.Leak> leaks) {
        Snapshot s = DemoYard.snapshot(CLINIC, true);
        return new Snapshot(
                s.tick(),
                s.clock(),
                s.sky(),
                s.nx(),
                s.ny(),
                s.wetness(),
                s.film(),
                s.ice(),
                s.stress(),
                s.cold(),
                s.paving(),
                s.zones(),
                s.heads(),
                links,
                s.sensors(),
                leaks,
                s.masterOpen(),
                s.supplyFlow(),
                s.ledger(),
                s.spent());
    }

    private static List<Point> points(Path path) {
        List<Point> all = new ArrayList<>();
        path.walk(new LineWalker() {
            @Override
            public void moveTo(double x, double y) {
                all.add(new Point(x, y));
            }

            @Override
            public void lineTo(double x, double y) {
                all.add(new Point(x, y));
            }
        });
        return all;
    }

    /** The longest straight pipe, by its place in the document. */
    private static int straightest() {
        int best = -1;
        double most = 0;
        List<Pipe> pipes = CLINIC.plumbing().pipes();
        for (int i = 0; i < pipes.size(); i++) {
            List<Point> way = SHAPES.pipes().ways().get(pipes.get(i).id());
            if (way != null && way.size() == 2 && way.get(0).distance(way.get(1)) > most) {
                most = way.get(0).distance(way.get(1));
                best = i;
            }
        }
        return best;
    }

    @Test
    void chevronsPointTheWayTheWaterFlows() {
        int pipe = straightest();
        List<Point> way =
                SHAPES.pipes().ways().get(CLINIC.plumbing().pipes().get(pipe).id());
        for (int sign = -1; sign <= 1; sign += 2) {
            double[] links = new double[CLINIC.plumbing().pipes().size()];
            links[pipe] = sign * 8e-4;
            List<Point> p = points(new FlowArt(SHAPES, VIEW, with(links, List.of())).chevrons());
            assertTrue(p.size() >= 3 && p.size() % 3 == 0, "points: " + p.size());
            for (int i = 0; i < p.size(); i += 3) {
                double x = p.get(i + 1).x() - (p.get(i).x() + p.get(i + 2).x()) / 2;
                double y = p.get(i + 1).y() - (p.get(i).y() + p.get(i + 2).y()) / 2;
                double along = x * (way.get(1).x() - way.get(0).x())
                        + y * (way.get(1).y() - way.get(0).y());
                assertEquals(sign, Math.signum(along), "flow " + sign);
            }
        }
    }

    @Test
    void onlyPipesThatCarryWaterHaveChevrons() {
        double[] still = new double[CLINIC.plumbing().pipes().size()];
        still[0] = Double.NaN;
        assertTrue(new FlowArt(SHAPES, VIEW, with(still, List.of())).chevrons().isEmpty());
    }

    @Test
    void chevronsMoveDownstreamWithTime() {
        int pipe = straightest();
        List<Point> way =
                SHAPES.pipes().ways().get(CLINIC.plumbing().pipes().get(pipe).id());
        double[] links = new double[CLINIC.plumbing().pipes().size()];
        links[pipe] = 8e-4;
        Snapshot flowing = with(links, List.of());
        Point before = points(new FlowArt(SHAPES, VIEW.seconds(0.2), flowing).chevrons())
                .get(1);
        Point after = points(new FlowArt(SHAPES, VIEW.seconds(0.3), flowing).chevrons())
                .get(1);
        assertTrue(after.distance(way.get(0)) > before.distance(way.get(0)));
    }

    private static int[] air(Snapshot.Sky sky, double seconds) {
        Java2DSurface s = new Java2DSurface(640, 400);
        new AirArt(VIEW.seconds(seconds), sky).draw(s);
        return s.image().getRGB(0, 0, 640, 400, null, 0, 640);
    }

    private static long drawn(int[] pixels) {
        return Arrays.stream(pixels).filter(p -> p != 0).count();
    }

    private static Snapshot.Sky sky(double wind, double rain) {
        return new Snapshot.Sky(9, 4, wind, 258, 300, 0.3, rain, 24, 130);
    }

    @Test
    void rainIsSeenByItsAmountAndCalmDryAirIsNot() {
        assertEquals(0, drawn(air(sky(0.5, 0), 1)));
        long drizzle = drawn(air(sky(0, 0.5), 1));
        long pour = drawn(air(sky(0, 20), 1));
        assertTrue(drizzle > 100 && pour > 2 * drizzle, drizzle + " pixels of drizzle, " + pour + " of a pour");
    }

    @Test
    void windIsSeenFromABreezeOn() {
        assertEquals(0, AirArt.wisps(1.5));
        assertTrue(AirArt.wisps(8) > AirArt.wisps(3) && AirArt.wisps(3) > 0);
        assertTrue(drawn(air(sky(6, 0), 1)) > 300);
        assertTrue(YardPainter.isAirSeen(DemoYard.snapshot(CLINIC, false)));
    }

    @Test
    void airMovesWithTimeAloneAndStandsWithIt() {
        assertArrayEquals(air(sky(6, 5), 2), air(sky(6, 5), 2));
        assertFalse(Arrays.equals(air(sky(6, 5), 2), air(sky(6, 5), 2.05)));
    }

    /** How bright moving water is on black. */
    private static long brightness(boolean blurred) {
        Java2DSurface s = new Java2DSurface(640, 400);
        s.fill(Path.rectangle(0, 0, 640, 400), Colour.BLACK);
        YardPainter.moving(s, SHAPES, VIEW.seconds(1).blurred(blurred), DemoYard.snapshot(CLINIC, false));
        return Arrays.stream(s.image().getRGB(0, 0, 640, 400, null, 0, 640))
                .mapToLong(p -> p & 0xFF)
                .sum();
    }

    @Test
    void turningStreamsAreLeftToTheirSectorsWhileTimeFlies() {
        assertTrue(brightness(true) > 0, "streaks stay");
        assertTrue(brightness(true) < brightness(false), "the streams are gone");
    }

    @Test
    void evenTheHeaviestWeatherIsFewPoints() {
        List<Integer> counts = new ArrayList<>();
        Java2DSurface s = new Java2DSurface(10, 10);
        Surface counting = (Surface) java.lang.reflect.Proxy.newProxyInstance(
                Surface.class.getClassLoader(), new Class<?>[] {Surface.class}, (proxy, method, args) -> {
                    if (method.getName().equals("stroke") || method.getName().equals("fill")) {
                        int[] n = new int[1];
                        ((Path) args[0]).walk(counter(n));
                        counts.add(n[0]);
                    }
                    return method.invoke(s, args);
                });
        new AirArt(VIEW, sky(25, 200)).draw(counting);
        int points = counts.stream().mapToInt(Integer::intValue).sum();
        assertTrue(points > 300 && points <= 2000, "points: " + points);
    }

    private static Path.Walker counter(int[] n) {
        return (Path.Walker) java.lang.reflect.Proxy.newProxyInstance(
                Path.Walker.class.getClassLoader(), new Class<?>[] {Path.Walker.class}, (proxy, method, args) -> {
                    n[0]++;
                    return null;
                });
    }

    @Test
    void waterWellsUpOnlyWhereALeakShows() {
        double[] links = new double[CLINIC.plumbing().pipes().size()];
        for (boolean shows : new boolean[] {false, true}) {
            Java2DSurface s = new Java2DSurface(640, 400);
            Snapshot leaking = with(links, List.of(new Snapshot.Leak(20, 18, 2e-3, 30, shows)));
            YardPainter.moving(s, SHAPES, VIEW.layers(Set.of()), leaking);
            long pixels = drawn(s.image().getRGB(0, 0, 640, 400, null, 0, 640));
            assertEquals(shows, pixels > 20, "shows " + shows + ": " + pixels);
        }
    }
}
