package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Catalogue.Nozzle;
import provingyard.scenario.Catalogue.Profile;
import provingyard.scenario.Catalogue.Throw;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.DripLine;
import provingyard.scenario.Plumbing.Head;
import provingyard.scenario.Point;
import provingyard.scenario.Text;

/** Throw, drift, drops and loss of spray against closed forms. */
@Tag("unit")
class SprayLawsTest {

    private static final Text NAME = new Text("n", "n");

    private static Nozzle nozzle(String id, Throw throwing, Profile profile, List<Double> points) {
        return new Nozzle(id, NAME, throwing, 2e-4, false, 200e3, 0.5, 8, 150e3, 300e3, profile, points, 1.5e-3);
    }

    private static Sprinklers heads(GroundCells cells, List<DripLine> lines, Head... heads) {
        Catalogue catalogue = new Catalogue(
                List.of(),
                List.of(),
                List.of(),
                List.of(
                        nozzle("even", Throw.ROTOR, Profile.UNIFORM, null),
                        nozzle("cone", Throw.SPRAY, Profile.TRIANGULAR, null),
                        nozzle("bubbler", Throw.DRIP, Profile.UNIFORM, null)),
                List.of());
        return new Sprinklers(
                new Plumbing(null, null, List.of(), List.of(), List.of(), List.of(heads), lines), catalogue, cells);
    }

    private static Head head(double x, double y, String nozzle, double from, double sweep, Double radius) {
        return new Head("h", "z", new Point(x, y), nozzle, from, sweep, radius);
    }

    private static GroundCells lawn(double cell, int nx, int ny) {
        String[] rows = new String[ny];
        Arrays.fill(rows, "l".repeat(nx));
        return Plots.of(cell, 0, rows);
    }

    /** Share of a kernel within a distance of a place. */
    private static double within(GroundCells cells, SprayKernel kernel, double x, double y, double distance) {
        double sum = 0;
        for (int i = 0; i < kernel.cells().length; i++) {
            int c = kernel.cells()[i];
            sum += Math.hypot(cells.x(c) - x, cells.y(c) - y) < distance ? kernel.shares()[i] : 0;
        }
        return sum;
    }

    @Test
    void profilesLayTheirWaterAlongTheThrow() {
        GroundCells cells = lawn(0.25, 80, 80);
        Sprinklers heads =
                heads(cells, List.of(), head(10, 10, "even", 0, 360, null), head(10, 10, "cone", 0, 360, null));
        SprayKernel even = heads.kernel(0, 200e3, 0, 0);
        SprayKernel cone = heads.kernel(1, 200e3, 0, 0);
        // Within half the throw: a quarter of an even circle; 3/4 - 1/4 = half of a cone's volume.
        assertEquals(0.25, within(cells, even, 10, 10, 4), 0.02);
        assertEquals(0.5, within(cells, cone, 10, 10, 4), 0.02);
        assertEquals(1, within(cells, even, 10, 10, 8.2), 1e-9);
        assertEquals(0, even.offSite());
        assertArrayEquals(new double[] {10, 10}, cone.middle(cells), 0.02);
    }

    @Test
    void aMeasuredProfileRunsStraightBetweenItsPoints() {
        SprayPattern p = new SprayPattern(0, 0, 8, 0, 360, Profile.MEASURED, List.of(1.0, 0.8, 0.2), 1e-3);
        assertEquals(1, p.depth(0), 1e-12);
        assertEquals(0.9, p.depth(0.25), 1e-12);
        assertEquals(0.8, p.depth(0.5), 1e-12);
        assertEquals(0.35, p.depth(0.875), 1e-12);
        assertEquals(0.2, p.depth(1), 1e-12);
        assertEquals(0.7, new SprayPattern(0, 0, 8, 0, 360, Profile.TRIANGULAR, null, 1e-3).depth(0.3), 1e-12);
        assertEquals(1, new SprayPattern(0, 0, 8, 0, 360, Profile.UNIFORM, null, 1e-3).depth(0.3));
    }

    @Test
    void anArcBeginsAtItsBearingAndSweepsClockwise() {
        GroundCells cells = lawn(0.5, 40, 40);
        SprayKernel east =
                heads(cells, List.of(), head(10, 10, "even", 45, 90, null)).kernel(0, 200e3, 0, 0);
        // The middle of a quarter disc of 8 m lies 8 x 4 sqrt(2) / (3 pi) = 4.80 m from its point.
        double[] middle = east.middle(cells);
        assertEquals(14.80, middle[0], 0.1);
        assertEquals(10, middle[1], 0.1);
    }

    @Test
    void fallSpeedsAreThoseOfAtlas() {
        // 9.65 - 10.3 exp(-0.6 d): 4.00 m/s at 1 mm, 6.55 m/s at 2 mm.
        assertEquals(3.997, SprayPattern.fallSpeed(1e-3), 1e-3);
        assertEquals(6.548, SprayPattern.fallSpeed(2e-3), 1e-3);
        assertEquals(0.2, SprayPattern.fallSpeed(1e-5));
    }

    @Test
    void driftIsWhatTheWindCarriesADropInItsFlight() {
        // 8 m of throw: apex 1.12 m, flight 0.9557 s; a drop of 2 mm lags by 0.6675 s and is carried for 0.4476 s.
        double flight = 2 * Math.sqrt(2 * 1.12 / 9.81);
        double lag = SprayPattern.fallSpeed(2e-3) / 9.81;
        double carried = flight - lag * (1 - Math.exp(-flight / lag));
        assertEquals(0.4476, carried, 1e-3);
        assertEquals(0.69 * 4 * carried, SprayPattern.edgeDrift(8, 2e-3, 4), 1e-9);
        assertEquals(0, SprayPattern.edgeDrift(8, 2e-3, 0));
    }

    @Test
    void windNarrowsThePatternAcrossIt() {
        // Keller and Bliesner: 2.5 % for each 1.6 km/h over 4.8 km/h.
        assertEquals(1, SprayPattern.across(1.3));
        assertEquals(0.975, SprayPattern.across(6.4 / 3.6), 1e-12);
        assertEquals(0.9, SprayPattern.across(11.2 / 3.6), 1e-12);
        assertEquals(0.5, SprayPattern.across(40));
        GroundCells cells = lawn(0.25, 100, 100);
        Sprinklers heads = heads(cells, List.of(), head(12, 12, "even", 0, 360, null));
        SprayKernel windy = heads.kernel(0, 200e3, 5, 270);
        double across = 0;
        for (int c : windy.cells()) {
            across = Math.max(across, Math.abs(cells.y(c) - 12));
        }
        assertEquals(8 * SprayPattern.across(5), across, 0.26);
        assertTrue(windy.middle(cells)[0] > 12.2);
    }

    @Test
    void kernelsAreKeptByClassesOfPressureAndWind() {
        GroundCells cells = lawn(0.5, 60, 60);
        Sprinklers heads =
                heads(cells, List.of(), head(15, 15, "even", 0, 360, null), head(15, 15, "cone", 0, 360, null));
        SprayKernel usual = heads.kernel(0, 200e3, 3, 90);
        assertSame(usual, heads.kernel(0, 205e3, 3.4, 99));
        assertSame(heads.kernel(0, 200e3, 12, 90), heads.kernel(0, 200e3, 30, 90));
        assertSame(heads.kernel(0, 200e3, 3, 355), heads.kernel(0, 200e3, 3, 5));
        assertSame(heads.kernel(0, 200e3, 0.3, 90), heads.kernel(0, 200e3, 0, 200));
        assertTrue(usual != heads.kernel(0, 100e3, 3, 90));
        assertTrue(usual != heads.kernel(0, 200e3, 4, 90));
        assertTrue(usual != heads.kernel(0, 200e3, 3, 112.5));
        assertTrue(usual != heads.kernel(1, 200e3, 3, 90));
        // The wind of a class blows from the class's bearing.
        double[] north = heads.kernel(0, 200e3, 6, 0).middle(cells);
        double[] northEast = heads.kernel(0, 200e3, 6, 45).middle(cells);
        assertEquals(15, north[0], 0.05);
        assertEquals(northEast[0] - 15, northEast[1] - 15, 0.05);
        assertTrue(north[1] < 14.8 && northEast[0] < 14.9);
    }

    @Test
    void throwFallsWithTheRootOfPressureUnderTheLowest() {
        Sprinklers heads = heads(
                lawn(0.5, 60, 60),
                List.of(),
                head(15, 15, "even", 0, 360, null),
                head(15, 15, "even", 0, 360, 6.0),
                head(15, 15, "bubbler", 0, 360, 0.5));
        assertEquals(8, heads.radius(0, 150e3), 1e-12);
        assertEquals(4, heads.radius(0, 37.5e3), 1e-12);
        assertEquals(6, heads.radius(1, 400e3), 1e-12);
        assertEquals(3, heads.radius(1, 37.5e3), 1e-12);
        assertEquals(0, heads.radius(0, -5), 1e-12);
        assertEquals(3, heads.heads());
        assertEquals(0, heads.lines());
        assertEquals(0, heads.edgeDrift(2, 200e3, 5));
        assertEquals(0, heads.lossShare(2, 200e3, new SprayAir(5, 0, 20, 60)));
        assertEquals(
                SprayPattern.edgeDrift(8, 1.5e-3, 5), heads.edgeDrift(0, 200e3, 5), 1e-9, "at its design pressure");
    }

    @Test
    void dropsAreFinerUnderPressureAndMistOverTheHighest() {
        Sprinklers heads = heads(lawn(0.5, 60, 60), List.of(), head(15, 15, "even", 0, 360, null));
        assertEquals(1.5e-3, heads.drop(0, 200e3), 1e-12);
        // 1.5^-0.4 = 0.85028; twice the highest halves it again: 3^-0.4 = 0.64439.
        assertEquals(1.5e-3 * 0.85028, heads.drop(0, 300e3), 1e-8);
        assertEquals(1.5e-3 * 0.64439 / 2, heads.drop(0, 600e3), 1e-8);
        // Pressures under a tenth of the design count as a tenth: 10^0.4 = 2.51189.
        assertEquals(1.5e-3 * 2.51189, heads.drop(0, 5e3), 1e-8);
        assertEquals(1.5e-3 * 2.51189, heads.drop(0, 0), 1e-8);
    }

    @Test
    void lossJoinsNightAndDayAndGoesWithTheDrop() {
        double coarse = 1.5e-3;
        // Playan's night: 3.7 + 1.31 U; day: 20.7 + 0.185 U2 - 2.14e-3 RH2, in percent.
        assertEquals(0.0632, SprayLoss.share(2, 50, -5, coarse), 1e-9);
        assertEquals(0.16090, SprayLoss.share(2, 50, 10, coarse), 1e-9);
        assertEquals(0.16090, SprayLoss.share(2, 50, 60, coarse), 1e-9);
        assertEquals((0.0632 + 0.1609) / 2, SprayLoss.share(2, 50, 5, coarse), 1e-9);
        // A quarter of the drop doubles it; 0.6 and 2.5 are the bounds.
        assertEquals(2 * 0.0632, SprayLoss.share(2, 50, -5, coarse / 4), 1e-9);
        assertEquals(2.5 * 0.0632, SprayLoss.share(2, 50, -5, coarse / 100), 1e-9);
        assertEquals(0.6 * 0.0632, SprayLoss.share(2, 50, -5, coarse * 100), 1e-9);
        assertEquals(0.6, SprayLoss.share(20, 0, 60, coarse / 4), 1e-12);
        // Damp days lose no less than the night's intercept.
        assertEquals(0.037, SprayLoss.share(0, 100, 60, coarse), 1e-9);
    }

    @Test
    void dripLinesGiveInEqualStepsAlongTheirWay() {
        GroundCells cells = lawn(1, 6, 6);
        // From (0.5, 0.5) 3 m east, then 2 m north: five emitters half a metre from the ends and a metre apart.
        DripLine line = new DripLine(
                "d",
                "z",
                List.of(new Point(0.6, 0.5), new Point(3.6, 0.5), new Point(3.6, 0.5), new Point(3.6, 2.5)),
                5,
                "bubbler");
        Sprinklers heads = heads(cells, List.of(line));
        boolean[] reached = heads.reached();
        Watering landed = Watering.none(cells.count());
        SprayFate fate = new SprayFate();
        heads.drip(0, 0.01, landed, fate);
        for (int c = 0; c < cells.count(); c++) {
            // At (1.1, 0.5), (2.1, 0.5), (3.1, 0.5), (3.6, 1.0) and (3.6, 2.0).
            boolean gives = c == 1 || c == 2 || c == 3 || c == 9 || c == 15;
            assertEquals(gives ? 0.002 : 0, landed.depth(c), 1e-12, "cell " + c);
            assertEquals(gives, reached[c], "cell " + c);
        }
        assertEquals(0.01, fate.onPlants(), 1e-15);
        assertEquals(0, fate.drift() + fate.overspray());
        assertEquals(1, heads.lines());
    }

    @Test
    void emittersBeyondTheYardAreOffSite() {
        DripLine line = new DripLine("d", "z", List.of(new Point(-2, 0.5), new Point(2, 0.5)), 4, "bubbler");
        SprayFate fate = new SprayFate();
        heads(lawn(1, 6, 6), List.of(line)).drip(0, 0.01, Watering.none(36), fate);
        assertEquals(0.005, fate.offSite(), 1e-15);
        assertEquals(0.005, fate.onPlants(), 1e-15);
        assertEquals(0.005, fate.overspray(), 1e-15);
    }

    @Test
    void aHeadAtTheCornerThrowsThreeQuartersBeyondTheYard() {
        GroundCells cells = lawn(0.5, 40, 40);
        SprayKernel corner =
                heads(cells, List.of(), head(0, 0, "even", 0, 360, null)).kernel(0, 200e3, 0, 0);
        assertEquals(0.75, corner.offSite(), 0.02);
        SprayKernel far =
                heads(cells, List.of(), head(20, 20, "even", 0, 360, null)).kernel(0, 200e3, 0, 0);
        assertEquals(0.75, far.offSite(), 0.02);
    }

    @Test
    void aKernelAddsDepthsToWhatIsThere() {
        double[] landed = {1, 1, 1};
        new SprayKernel(new int[] {0, 2}, new double[] {0.25, 0.5}, 0.25).addTo(landed, 0.008, 2);
        assertArrayEquals(new double[] {1.001, 1, 1.002}, landed, 1e-15);
    }
}
