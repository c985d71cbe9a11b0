package provingyard.world.yard;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Catalogue;
import provingyard.scenario.YardPlan;
import provingyard.scenario.YardPlan.Hollow;
import provingyard.scenario.YardPlan.Slope;
import provingyard.scenario.YardPlan.Surface;
import provingyard.scenario.YardPlan.SurfaceKind;

/** The yard's ground by cell: surface, building, elevation, way of runoff. */
final class Cells {

    /** Depth of a hollow per m of its reach: a mean grade of 5 %; common practice, no source. */
    private static final double HOLLOW_DEPTH = 0.05;

    final int nx;
    final int ny;
    final int[] surface;
    final boolean[] builtOver;
    final double[] elevation;
    final double[] hollow;
    final int[] downhill;
    final int[] soil;
    final int[] plant;
    final int[] paving;
    final int[] walks;
    final int[] walkOf;
    final int[] countOf;
    private final YardPlan plan;

    Cells(YardPlan plan, Catalogue catalogue, Geometry geometry) {
        this.plan = plan;
        nx = across(plan.size().x(), plan.cell());
        ny = across(plan.size().y(), plan.cell());
        List<Surface> all = plan.surfaces();
        soil = indices(all, catalogue.soils().stream().map(Catalogue.Soil::id).toList(), Surface::soil);
        plant = indices(
                all, catalogue.plants().stream().map(Catalogue.Plant::id).toList(), Surface::plant);
        paving = indices(
                all, catalogue.pavings().stream().map(Catalogue.Paving::id).toList(), Surface::paving);
        walks = IntStream.range(0, all.size())
                .filter(s -> all.get(s).kind() == SurfaceKind.WALK)
                .toArray();
        walkOf = new int[all.size()];
        for (int s = 0; s < all.size(); s++) {
            walkOf[s] = Math.max(-1, Arrays.binarySearch(walks, s));
        }
        surface = surfaces();
        builtOver = new boolean[count()];
        countOf = new int[all.size()];
        hollow = new double[count()];
        for (int i = 0; i < count(); i++) {
            builtOver[i] = geometry.insideBuilding(x(i), y(i));
            countOf[surface[i]] += builtOver[i] ? 0 : 1;
            hollow[i] = wetter(x(i), y(i));
        }
        elevation = elevations();
        downhill = Drainage.downhill(nx, ny, elevation, builtOver, drained());
    }

    private static int across(double size, double cell) {
        return Math.max(1, (int) Math.ceil(size / cell - 1e-6));
    }

    private static int[] indices(List<Surface> surfaces, List<String> ids, Function<Surface, String> id) {
        return surfaces.stream().mapToInt(s -> ids.indexOf(id.apply(s))).toArray();
    }

    int count() {
        return nx * ny;
    }

    double x(int cell) {
        return (cell % nx + 0.5) * plan.cell();
    }

    double y(int cell) {
        return (cell / nx + 0.5) * plan.cell();
    }

    int at(double x, double y) {
        if (!(x >= 0 && y >= 0 && x <= nx * plan.cell() && y <= ny * plan.cell())) {
            return -1;
        }
        int column = Math.min(nx - 1, (int) (x / plan.cell()));
        int row = Math.min(ny - 1, (int) (y / plan.cell()));
        return row * nx + column;
    }

    private int[] surfaces() {
        List<Polygon> outlines =
                plan.surfaces().stream().map(s -> Polygon.of(s.outline())).toList();
        int base = IntStream.range(0, plan.surfaces().size())
                .filter(s -> plan.surfaces().get(s).id().equals(plan.base()))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("base surface '" + plan.base() + "' is not in the plan"));
        int[] found = new int[count()];
        for (int i = 0; i < found.length; i++) {
            found[i] = base;
            for (int s = outlines.size() - 1; s >= 0; s--) {
                if (outlines.get(s).contains(x(i), y(i))) {
                    found[i] = s;
                    break;
                }
            }
        }
        return found;
    }

    private double wetter(double x, double y) {
        double most = 0;
        for (Hollow h : plan.hollows()) {
            most = Math.max(most, h.wetter() * inside(h, x, y));
        }
        return most;
    }

    /** 1 in a hollow's middle, 0 at its reach and beyond: 1 - (d / reach)2. */
    static double inside(Hollow h, double x, double y) {
        double dx = x - h.at().x();
        double dy = y - h.at().y();
        return h.reach() <= 0 ? 0 : Math.max(0, 1 - (dx * dx + dy * dy) / (h.reach() * h.reach()));
    }

    private double[] elevations() {
        double[] east = new double[count()];
        double[] north = new double[count()];
        for (int i = 0; i < count(); i++) {
            Slope slope = plan.surfaces().get(surface[i]).slope();
            if (slope != null) {
                double toward = Math.toRadians(slope.toward());
                east[i] = -slope.grade() * Deterministic.sin(toward);
                north[i] = -slope.grade() * Deterministic.cos(toward);
            }
        }
        double[] z = Terrain.fit(nx, ny, plan.cell(), east, north, builtOver);
        for (int i = 0; i < count(); i++) {
            for (Hollow h : plan.hollows()) {
                double in = inside(h, x(i), y(i));
                z[i] -= HOLLOW_DEPTH * h.reach() * in * in;
            }
        }
        return z;
    }

    private boolean[] drained() {
        boolean[] out = new boolean[count()];
        for (int i = 0; i < out.length; i++) {
            SurfaceKind kind = plan.surfaces().get(surface[i]).kind();
            out[i] = kind == SurfaceKind.STREET || kind == SurfaceKind.DRIVE;
        }
        return out;
    }
}
