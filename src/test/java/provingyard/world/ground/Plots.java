package provingyard.world.ground;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import provingyard.scenario.Catalogue.Paving;
import provingyard.scenario.Catalogue.Plant;
import provingyard.scenario.Catalogue.Soil;
import provingyard.scenario.Text;

/** Small grounds for tests: rows of cells that fall to the south. */
final class Plots {

    static final Soil LOAM = new Soil("loam", name("loam"), 0.46, 0.27, 0.12, 0.34e-2 / 3600, 0.0889, 86400);
    static final Soil CLAY = new Soil("clay", name("clay"), 0.475, 0.38, 0.24, 0.1e-2 / 3600, 0.3163, 3 * 86400);
    static final Soil SAND = new Soil("sand", name("sand"), 0.437, 0.12, 0.05, 11.78e-2 / 3600, 0.0495, 6 * 3600);
    static final Plant TURF = new Plant("turf", name("turf"), 0.9, 0.25, 0.4, 0.06);
    static final Plant SHRUB = new Plant("shrub", name("shrub"), 0.5, 0.45, 0.5, 0.8);
    static final Paving CONCRETE = new Paving("concrete", name("concrete"), 0.1, 1.5, 1000, 2350, 0.3, 0.92, 0.001);
    static final Paving ASPHALT = new Paving("asphalt", name("asphalt"), 0.08, 1.2, 920, 2300, 0.1, 0.93, 0.0015);

    private Plots() {}

    private static Text name(String text) {
        return new Text(text, text);
    }

    /** What a plot's letters mean: soils with turf (l, c, s), loam with shrub (b), concrete (w), asphalt (d), roof (r). */
    static GroundCells of(double cell, double grade, String... rows) {
        int nx = rows[0].length();
        int ny = rows.length;
        int n = nx * ny;
        int[] soil = new int[n];
        int[] plant = new int[n];
        int[] paving = new int[n];
        int[] surface = new int[n];
        int[] downhill = new int[n];
        for (int c = 0; c < n; c++) {
            char letter = rows[ny - 1 - c / nx].charAt(c % nx);
            soil[c] = "lcs".indexOf(letter);
            plant[c] = soil[c] >= 0 ? 0 : -1;
            if (letter == 'b') {
                soil[c] = 0;
                plant[c] = 1;
            }
            paving[c] = "wd".indexOf(letter);
            surface[c] = "lcsbwdr".indexOf(letter);
            downhill[c] = letter == 'r' ? -1 : c - nx >= 0 ? c - nx : -1;
        }
        double[] sky = filled(n, 1);
        return new GroundCells(
                nx,
                ny,
                cell,
                soil,
                plant,
                paving,
                surface,
                filled(n, 1),
                filled(n, grade),
                sky.clone(),
                sky,
                new double[n],
                downhill,
                IntStream.range(0, n).map(i -> n - 1 - i).toArray(),
                new double[n * GroundCells.BEARINGS],
                List.of(LOAM, CLAY, SAND),
                List.of(TURF, SHRUB),
                List.of(CONCRETE, ASPHALT));
    }

    static double[] filled(int n, double value) {
        double[] a = new double[n];
        Arrays.fill(a, value);
        return a;
    }

    /** A dry minute by night. */
    static MinuteForcing night(double air, double dewPoint, double wind, double cloud) {
        return new MinuteForcing(0, 0, air, dewPoint, wind, 0, cloud, -20, 0);
    }

    /** A minute by day with evapotranspiration in mm/d spread evenly. */
    static MinuteForcing day(double air, double sun, double referencePerDay) {
        return new MinuteForcing(0, referencePerDay / 1440e3, air, air - 8, 2, sun, 0.2, 40, 180);
    }

    /** The same minute with rain of so many mm/h. */
    static MinuteForcing rained(MinuteForcing f, double millimetresPerHour) {
        return new MinuteForcing(
                millimetresPerHour / 60e3,
                f.reference(),
                f.air(),
                f.dewPoint(),
                f.wind(),
                f.sun(),
                f.cloud(),
                f.sunAltitude(),
                f.sunBearing());
    }
}
