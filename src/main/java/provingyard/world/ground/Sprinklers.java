package provingyard.world.ground;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Catalogue.Nozzle;
import provingyard.scenario.Catalogue.Throw;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.DripLine;
import provingyard.scenario.Plumbing.Head;
import provingyard.scenario.Point;

/**
 * The heads and drip lines of a yard: how far they throw, what wind takes, and where the rest lands.
 *
 * <p>Kernels are made when first needed, one for each head, pressure (tenths of the design pressure), wind speed (whole
 * m/s up to {@value #FASTEST}) and sixteen wind bearings, and kept; they depend on nothing else, so the order in which
 * seasons ask does not matter, and several may ask at once.
 */
public final class Sprinklers {

    private static final int FASTEST = 12;
    private static final int BEARINGS = 16;
    private static final int HIGHEST = 30;

    private final GroundCells cells;
    private final int[] placeOf;
    private final List<Head> heads;
    private final List<Nozzle> nozzles = new ArrayList<>();
    private final List<Landing> lines = new ArrayList<>();
    /** Landings by wind speed and bearing as far as asked for, of each head at each of its classes of pressure. */
    private final Map<Long, AtomicReferenceArray<Landing>> landings = new ConcurrentHashMap<>();
    /** What each head did at the pressure asked for last: it is the same from minute to minute of a run. */
    private final AtomicReferenceArray<Pressed> lately;

    /** A kernel with its shares on plants, paving and buildings, and the places that it reaches. */
    private record Landing(SprayKernel kernel, double[] byKind, BitSet places) {}

    /** A head at a pressure in Pa: mean drop diameter in m, and its landings by wind. */
    private record Pressed(double pressure, double drop, AtomicReferenceArray<Landing> byWind) {}

    /** Heads and drip lines of a plumbing, in its order; nozzles by their id in the catalogue. */
    public Sprinklers(Plumbing plumbing, Catalogue catalogue, GroundCells cells) {
        this.cells = cells;
        placeOf = new int[cells.count()];
        for (int i = 0; i < placeOf.length; i++) {
            placeOf[cells.order()[i]] = i;
        }
        heads = List.copyOf(plumbing.heads());
        lately = new AtomicReferenceArray<>(heads.size());
        for (Head head : heads) {
            nozzles.add(catalogue.nozzles().stream()
                    .filter(n -> n.id().equals(head.nozzle()))
                    .findFirst()
                    .orElseThrow());
        }
        for (DripLine line : plumbing.drips()) {
            lines.add(landing(alongWay(line)));
        }
    }

    /** Number of heads. */
    public int heads() {
        return heads.size();
    }

    /** Number of drip lines. */
    public int lines() {
        return lines.size();
    }

    /**
     * Throw of a head in m at a pressure in Pa: its set radius, falling with the square root of the pressure under the
     * nozzle's lowest (common practice: throw follows the square root of pressure).
     */
    public double radius(int head, double pressure) {
        Nozzle nozzle = nozzles.get(head);
        Double set = heads.get(head).radius();
        double full = set == null ? nozzle.radius() : set;
        return pressure >= nozzle.lowest() ? full : full * Math.sqrt(Math.max(0, pressure) / nozzle.lowest());
    }

    /**
     * Mean drop diameter in m at a pressure: finer with the pressure to the power 0.4, and in inverse proportion more
     * above the nozzle's highest, where it mists (common practice, no source).
     */
    public double drop(int head, double pressure) {
        Nozzle nozzle = nozzles.get(head);
        double relative = Math.max(0.1, pressure / nozzle.pressure());
        double misting = Math.min(1, nozzle.highest() / Math.max(1, pressure));
        return nozzle.drop() * Deterministic.pow(relative, -0.4) * misting;
    }

    /** How far in m the wind (m/s) carries the far edge of a head's pattern downwind; bubblers stay where they are. */
    public double edgeDrift(int head, double pressure, double wind) {
        return drips(head) ? 0 : SprayPattern.edgeDrift(radius(head, pressure), drop(head, pressure), wind);
    }

    /** Share of a head's flow that drifts off or evaporates before it lands; none of a bubbler's. */
    public double lossShare(int head, double pressure, SprayAir air) {
        return lossShare(head, pressed(head, pressure), air);
    }

    private double lossShare(int head, Pressed pressed, SprayAir air) {
        return drips(head) ? 0 : SprayLoss.share(air.wind(), air.humidity(), air.sunAltitude(), pressed.drop());
    }

    /** Where a head's water lands at a pressure (Pa) in a wind. */
    public SprayKernel kernel(int head, double pressure, double wind, double windFrom) {
        return landing(head, pressed(head, pressure), wind, windFrom).kernel();
    }

    /**
     * Lets a head throw a volume (m3): adds what lands and tells the fate.
     *
     * @param pressure at the head in Pa
     */
    public void spray(int head, double volume, double pressure, SprayAir air, Watering landed, SprayFate fate) {
        Pressed pressed = pressed(head, pressure);
        double lost = volume * lossShare(head, pressed, air);
        Landing landing = landing(head, pressed, air.wind(), air.windFrom());
        landed.add(landing.kernel(), volume - lost, cells.area(), landing.places());
        fate.add(volume, lost, landing.kernel(), landing.byKind());
    }

    /** Lets a drip line give a volume (m3), in equal parts by its emitters; nothing drifts. */
    public void drip(int line, double volume, Watering landed, SprayFate fate) {
        Landing landing = lines.get(line);
        landed.add(landing.kernel(), volume, cells.area(), landing.places());
        fate.add(volume, 0, landing.kernel(), landing.byKind());
    }

    /** Cells on which a head's water lands at its design pressure in calm air, or a drip line gives. */
    public boolean[] reached() {
        boolean[] reached = new boolean[cells.count()];
        for (int h = 0; h < heads.size(); h++) {
            for (int c : kernel(h, nozzles.get(h).pressure(), 0, 0).cells()) {
                reached[c] = true;
            }
        }
        for (Landing line : lines) {
            for (int c : line.kernel().cells()) {
                reached[c] = true;
            }
        }
        return reached;
    }

    private boolean drips(int head) {
        return nozzles.get(head).throwing() == Throw.DRIP;
    }

    private Pressed pressed(int head, double pressure) {
        Pressed known = lately.get(head);
        if (known == null || known.pressure() != pressure) {
            long key = head * 100L + tenths(head, pressure);
            known = new Pressed(
                    pressure,
                    drop(head, pressure),
                    landings.computeIfAbsent(key, k -> new AtomicReferenceArray<>((FASTEST + 1) * BEARINGS)));
            lately.set(head, known);
        }
        return known;
    }

    /** Class of a pressure: tenths of the design pressure. */
    private long tenths(int head, double pressure) {
        return Math.min(
                HIGHEST,
                Math.max(1, Math.round(10 * pressure / nozzles.get(head).pressure())));
    }

    private Landing landing(int head, Pressed pressed, double wind, double windFrom) {
        long speed = drips(head) ? 0 : Math.min(FASTEST, Math.max(0, Math.round(wind)));
        long bearing = speed == 0 ? 0 : Math.floorMod(Math.round(windFrom * BEARINGS / 360), BEARINGS);
        int blown = (int) (speed * BEARINGS + bearing);
        Landing known = pressed.byWind().get(blown);
        if (known == null) {
            double pressure =
                    tenths(head, pressed.pressure()) * nozzles.get(head).pressure() / 10;
            known = landing(pattern(head, pressure).kernel(cells, speed, bearing * 360.0 / BEARINGS));
            pressed.byWind().set(blown, known);
        }
        return known;
    }

    private SprayPattern pattern(int head, double pressure) {
        Head at = heads.get(head);
        Nozzle nozzle = nozzles.get(head);
        return new SprayPattern(
                at.at().x(),
                at.at().y(),
                radius(head, pressure),
                at.from(),
                at.sweep(),
                nozzle.profile(),
                nozzle.points(),
                drop(head, pressure));
    }

    private Landing landing(SprayKernel kernel) {
        double[] byKind = new double[3];
        BitSet places = new BitSet(cells.count());
        for (int i = 0; i < kernel.cells().length; i++) {
            int c = kernel.cells()[i];
            places.set(placeOf[c]);
            byKind[cells.planted(c) ? 0 : cells.paved(c) ? 1 : 2] += kernel.shares()[i];
        }
        return new Landing(kernel, byKind, places);
    }

    /** Emitters at equal steps along a line's way, half a step from its ends. */
    private SprayKernel alongWay(DripLine line) {
        List<Point> way = line.way();
        double length = 0;
        for (int i = 1; i < way.size(); i++) {
            length += way.get(i - 1).distance(way.get(i));
        }
        double[] weight = new double[cells.count()];
        double off = 0;
        for (int e = 0; e < line.emitters(); e++) {
            Point at = along(way, length * (e + 0.5) / line.emitters());
            int cell = SprayPattern.cellAt(cells, at.x(), at.y());
            if (cell < 0) {
                off++;
            } else {
                weight[cell]++;
            }
        }
        return SprayPattern.normalised(weight, off);
    }

    private static Point along(List<Point> way, double distance) {
        double left = distance;
        for (int i = 1; i < way.size(); i++) {
            Point from = way.get(i - 1);
            Point to = way.get(i);
            double leg = from.distance(to);
            if (left <= leg && leg > 0) {
                double share = left / leg;
                return new Point(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
            }
            left -= leg;
        }
        return way.get(way.size() - 1);
    }
}
