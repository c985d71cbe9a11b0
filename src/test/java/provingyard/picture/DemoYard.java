package provingyard.picture;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Place;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.DripLine;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Plumbing.Head;
import provingyard.scenario.Plumbing.Junction;
import provingyard.scenario.Plumbing.Pipe;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.Text;
import provingyard.scenario.YardPlan;
import provingyard.scenario.YardPlan.Furnishing;
import provingyard.scenario.YardPlan.FurnishingKind;
import provingyard.scenario.YardPlan.Slope;
import provingyard.scenario.YardPlan.Structure;
import provingyard.scenario.YardPlan.StructureKind;
import provingyard.scenario.YardPlan.Surface;
import provingyard.scenario.YardPlan.SurfaceKind;
import provingyard.scenario.YardPlan.Tree;
import provingyard.scenario.YardPlan.Vent;
import provingyard.season.Ledger;
import provingyard.season.Snapshot;
import provingyard.setup.FlowWatch;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** A clinic's yard of 60 m by 36 m for pictures. Places are written from the north-west corner, y southward. */
final class DemoYard {

    private static final double DEPTH = 36;

    private DemoYard() {}

    static Point at(double x, double fromNorth) {
        return new Point(x, DEPTH - fromNorth);
    }

    static List<Point> points(double... xy) {
        List<Point> p = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            p.add(at(xy[i], xy[i + 1]));
        }
        return p;
    }

    private static Surface surface(String id, SurfaceKind kind, String en, double... xy) {
        boolean planted = kind.planted();
        return new Surface(
                id,
                kind,
                en == null ? null : new Text(en, en + " (es)"),
                planted ? "clay-loam" : null,
                planted ? kind == SurfaceKind.BED ? "shrubs" : "turf" : null,
                planted ? null : "concrete",
                new Slope(0.01, 180),
                1,
                List.<LocalTime>of(),
                points(xy));
    }

    private static double[] box(double x, double y, double x2, double y2) {
        return new double[] {x, y, x2, y, x2, y2, x, y2};
    }

    private static List<Point> curve() {
        double[][] c = {{6.4, 29.4}, {6.4, 22.6}, {14.6, 22.8}, {14.1, 14.6}, {13.8, 9.6}, {12.6, 6.4}, {15.4, 5.5}};
        List<Point> left = new ArrayList<>();
        List<Point> right = new ArrayList<>();
        for (int piece = 0; piece < 2; piece++) {
            for (int i = piece; i <= 8; i++) {
                double t = i / 8.0;
                double[] p = bezier(c, piece * 3, t);
                double[] a = bezier(c, piece * 3, t - 0.01);
                double[] b = bezier(c, piece * 3, t + 0.01);
                double l = Deterministic.hypot(b[0] - a[0], b[1] - a[1]);
                double nx = -(b[1] - a[1]) / l * 0.75;
                double ny = (b[0] - a[0]) / l * 0.75;
                left.add(at(p[0] + nx, p[1] + ny));
                right.add(0, at(p[0] - nx, p[1] - ny));
            }
        }
        left.addAll(right);
        return left;
    }

    private static double[] bezier(double[][] c, int k, double t) {
        double u = 1 - t;
        double[] w = {u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t};
        double[] p = new double[2];
        for (int i = 0; i < 4; i++) {
            p[0] += w[i] * c[k + i][0];
            p[1] += w[i] * c[k + i][1];
        }
        return p;
    }

    static YardPlan yard() {
        List<Surface> s = new ArrayList<>();
        s.add(surface("lawn", SurfaceKind.TURF, null));
        s.add(surface("bed-w", SurfaceKind.BED, null, 15.6, 8.4, 18.3, 8.2, 18.3, 23.4, 15.6, 22.6));
        s.add(surface("bed-s", SurfaceKind.BED, null, box(18.4, 23.3, 28.2, 25.3)));
        s.add(surface("bed-e", SurfaceKind.BED, null, 36, 17.8, 44.6, 17.8, 45, 19.7, 36, 19.7));
        s.add(surface(
                "bed-sw",
                SurfaceKind.BED,
                null,
                1.4,
                25.4,
                3,
                23.3,
                5.8,
                23.8,
                7.4,
                25.6,
                7,
                27.8,
                4,
                28.6,
                1.8,
                27.6));
        s.add(surface("bed-se", SurfaceKind.BED, null, 36.6, 26.4, 39, 24.2, 43, 24.4, 44.6, 26.6, 42, 28.4, 38, 28.3));
        s.add(surface("bed-n", SurfaceKind.BED, null, box(2.6, 0.5, 46.4, 2.6)));
        s.add(surface("bed-p", SurfaceKind.BED, null, box(46.4, 23.6, 50.4, 26.1)));
        s.add(surface("bed-q", SurfaceKind.BED, null, box(56, 24.4, 59.6, 28.6)));
        s.add(surface("street", SurfaceKind.STREET, null, box(0, 33, 60, 36)));
        s.add(surface("street-walk", SurfaceKind.WALK, "Street walk", box(0, 29.4, 60, 31)));
        s.add(surface(
                "parking",
                SurfaceKind.DRIVE,
                "Parking",
                46.4,
                3.6,
                59.6,
                3.6,
                59.6,
                24.2,
                55.4,
                24.2,
                55.4,
                33,
                49.4,
                33,
                49.4,
                24.2,
                46.4,
                24.2));
        Surface path = surface("path", SurfaceKind.WALK, null);
        s.add(new Surface(path.id(), path.kind(), null, null, null, "concrete", path.slope(), 1, List.of(), curve()));
        s.add(surface("front", SurfaceKind.WALK, null, box(30.6, 18, 33.2, 29.4)));
        s.add(surface("porch", SurfaceKind.WALK, null, box(28.4, 18, 36, 21.4)));
        s.add(surface("east", SurfaceKind.WALK, null, box(35.6, 20.1, 46.4, 21.8)));
        s.add(surface("north-walk", SurfaceKind.WALK, "North walk", box(14.2, 4.7, 46.4, 6.3)));
        s.add(surface("north-door", SurfaceKind.WALK, null, box(35.2, 6.3, 37, 8.6)));
        List<Structure> b = List.of(
                new Structure(
                        "clinic",
                        StructureKind.BUILDING,
                        new Text("Clinic", "Clínica"),
                        4.2,
                        0.8,
                        true,
                        points(18.8, 8.8, 41.2, 8.8, 41.2, 17.2, 27.2, 17.2, 27.2, 22.7, 18.8, 22.7)),
                new Structure(
                        "porch-roof", StructureKind.CANOPY, null, 2.8, 0, false, points(box(29, 17.4, 35.4, 20.8))),
                new Structure(
                        "fence", StructureKind.FENCE, null, 1.8, 0, false, points(0.13, 22, 0.13, 0.13, 46.4, 0.13)));
        double[][] t = {
            {7.6, 11.2, 3.7, 8, 0}, {4.2, 18.8, 2.4, 5, 0}, {4.9, 25.6, 2.0, 4, 0}, {22.5, 26.9, 1.6, 3, 0},
            {40.2, 25.4, 2.3, 5, 0}, {11.2, 2.4, 1.7, 6, 1}, {7.9, 2.2, 1.5, 5, 1}, {44.4, 2.6, 2.0, 4, 0},
            {17, 31.2, 2.2, 5, 0}, {41.4, 31.3, 2.0, 5, 0}, {57.6, 27, 2.0, 5, 0}, {48.2, 7.2, 1.7, 4, 0}
        };
        List<Tree> trees = new ArrayList<>();
        for (double[] v : t) {
            trees.add(new Tree("tree-" + trees.size(), at(v[0], v[1]), v[2] * 2, v[3], v[4] > 0));
        }
        List<Furnishing> f = List.of(
                new Furnishing(FurnishingKind.CAR, at(57, 7), 90, 0),
                new Furnishing(FurnishingKind.CAR, at(57, 12.3), 90, 0),
                new Furnishing(FurnishingKind.CAR, at(57, 20.3), 270, 0),
                new Furnishing(FurnishingKind.CAR, at(30, 35.3), 90, 0),
                new Furnishing(FurnishingKind.BENCH, at(37.7, 22.2), 180, 0),
                new Furnishing(FurnishingKind.LAMP, at(34, 23), 0, 0),
                new Furnishing(FurnishingKind.LAMP, at(23, 32), 0, 0));
        return new YardPlan(
                new Point(60, DEPTH),
                0.6,
                "lawn",
                s,
                b,
                trees,
                List.of(new Vent("dryer", at(36.6, 8.2), 4, 2)),
                List.of(),
                f);
    }

    private static void arc(
            List<Head> h, int zone, double x, double y, double r, double from, double to, String nozzle) {
        // From degrees clockwise of east to a bearing.
        h.add(new Head(
                "h-" + zone + "-" + h.size(), "zone-" + zone, at(x, y), nozzle, (from + 90 + 720) % 360, to - from, r));
    }

    static Plumbing plumbing() {
        List<Head> h = new ArrayList<>();
        double[][] one = {
            {9.6, 28.6, 4.2, 180, 360}, {13.8, 28.6, 4.2, 180, 360}, {18, 28.6, 4.2, 180, 360},
            {22.2, 28.6, 4, 180, 360}, {26.2, 28.6, 4, 180, 360}, {30.1, 28.6, 4, 180, 270},
            {30.1, 25.6, 3.6, 90, 270}, {16, 25.6, 3.4, 0, 180}
        };
        double[][] two = {
            {33.7, 28.6, 4, 270, 360},
            {33.7, 25.2, 4, 270, 450},
            {33.7, 22.4, 4, 0, 90},
            {38, 22.4, 4, 0, 180},
            {42, 22.4, 4, 0, 180},
            {45.8, 22.4, 4, 90, 180},
            {45.8, 28.6, 4, 180, 270}
        };
        double[][] three = {
            {1, 4.8, 7.6, 0, 90},
            {1, 12, 7.8, -90, 90},
            {1, 20, 7.6, -90, 90},
            {12.6, 7.6, 7.4, 100, 190},
            {13, 16.6, 7.6, 118, 262},
            {10.6, 22.3, 7, 150, 270}
        };
        for (double[] v : one) {
            arc(h, 1, v[0], v[1], v[2], v[3], v[4], "spray");
        }
        for (double[] v : two) {
            arc(h, 2, v[0], v[1], v[2], v[3], v[4], "spray");
        }
        for (double[] v : three) {
            arc(h, 3, v[0], v[1], v[2], v[3], v[4], "rotor");
        }
        for (double x = 17; x < 46; x += 3.55) {
            arc(h, 5, x, 2.95, 2, 0, 180, "spray");
        }
        for (double x = 9; x < 48; x += 4.1) {
            if (Math.abs(x - 31.8) > 2) {
                arc(h, 6, x, 31.9, 1.7, 180, 360, "spray");
            }
        }
        List<Junction> j = new ArrayList<>();
        List<Pipe> p = new ArrayList<>();
        junction(j, "poc", 45.3, 30.2);
        junction(j, "a", 45.3, 29.2);
        junction(j, "b", 34.4, 29.2);
        junction(j, "c", 29, 29.2);
        junction(j, "d", 9.2, 29.2);
        junction(j, "e", 0.55, 10);
        junction(j, "f", 15.4, 4.15);
        junction(j, "g", 46.2, 4.15);
        junction(j, "z1", 9.6, 28.6);
        junction(j, "z1e", 16, 25.6);
        junction(j, "z2", 33.7, 28.6);
        junction(j, "z2e", 45.8, 28.6);
        junction(j, "z3", 1, 4.4);
        junction(j, "z3s", 1, 20);
        junction(j, "z4", 29, 28.2);
        junction(j, "z5", 45.4, 2.95);
        junction(j, "z6", 46, 31.9);
        junction(j, "z6e", 9, 31.9);
        p.add(pipe("m1", "poc", "a"));
        p.add(pipe("m2", "a", "b"));
        p.add(pipe("m3", "b", "c"));
        p.add(pipe("m4", "c", "d"));
        p.add(pipe("m5", "d", "e", 8.2, 29.2, 8.2, 24.6, 0.55, 22.6));
        p.add(pipe("m6", "e", "f", 0.55, 4.6, 1, 4.15));
        p.add(pipe("m7", "f", "g"));
        p.add(pipe("l1", "d", "z1", 9.2, 28.6));
        p.add(pipe("l1b", "z1", "z1e", 30.1, 28.6, 30.1, 25.6));
        p.add(pipe("l2", "b", "z2", 34.4, 28.6));
        p.add(pipe("l2b", "z2", "z2e", 33.7, 22.4, 45.8, 22.4));
        p.add(pipe("l3", "e", "z3s", 1, 10));
        p.add(pipe("l3b", "z3s", "z3"));
        p.add(pipe("l4", "c", "z4"));
        p.add(pipe("l5", "f", "z5", 15.4, 2.95));
        p.add(pipe("l6", "poc", "z6", 45.3, 31.9));
        p.add(pipe("l6b", "z6", "z6e"));
        List<Fitting> f = List.of(
                fitting("meter", FittingKind.METER, "m1", 0.1),
                fitting("backflow", FittingKind.BACKFLOW_PREVENTER, "m2", 1.8),
                fitting("master", FittingKind.MASTER_VALVE, "m2", 4),
                fitting("iso-a", FittingKind.ISOLATION_VALVE, "m4", 8.5),
                fitting("iso-b", FittingKind.ISOLATION_VALVE, "m5", 15),
                fitting("iso-c", FittingKind.ISOLATION_VALVE, "m7", 14.6),
                fitting("zone-1", FittingKind.ZONE_VALVE, "l1", 0.6),
                fitting("zone-2", FittingKind.ZONE_VALVE, "l2", 0.3),
                fitting("zone-3", FittingKind.ZONE_VALVE, "l3", 0.1),
                fitting("zone-4", FittingKind.ZONE_VALVE, "l4", 0.2),
                fitting("zone-5", FittingKind.ZONE_VALVE, "l5", 0.2),
                fitting("zone-6", FittingKind.ZONE_VALVE, "l6", 1.0));
        List<DripLine> d = List.of(
                new DripLine("d1", "zone-4", points(16.7, 9.4, 16.7, 22.4), 40, "drip"),
                new DripLine("d2", "zone-4", points(19, 24.3, 27.8, 24.3), 30, "drip"),
                new DripLine("d3", "zone-4", points(36.8, 18.8, 44, 18.8), 30, "drip"));
        return new Plumbing(
                Plumbing.Friction.HAZEN_WILLIAMS,
                new Plumbing.Supply(Plumbing.SupplyKind.FIXED, "poc", 400_000, List.of()),
                j,
                p,
                f,
                h,
                d);
    }

    private static void junction(List<Junction> j, String id, double x, double y) {
        j.add(new Junction(id, at(x, y), 0));
    }

    private static Pipe pipe(String id, String from, String to, double... via) {
        return new Pipe(id, from, to, 0.04, "pvc", points(via), null, 0);
    }

    private static Fitting fitting(String id, FittingKind kind, String on, double along) {
        return new Fitting(id, kind, null, on, along, 0.025, 0, 0, 0, null);
    }

    private static Catalogue.Nozzle nozzle(String id, Catalogue.Throw throwing, double radius) {
        return new Catalogue.Nozzle(
                id,
                new Text(id, id),
                throwing,
                1e-4,
                false,
                250_000,
                0.5,
                radius,
                1e5,
                5e5,
                Catalogue.Profile.UNIFORM,
                List.of(),
                1e-3);
    }

    static Scenario clinic() {
        Catalogue catalogue = new Catalogue(
                List.of(),
                List.of(new Catalogue.Plant("shrubs", new Text("Shrubs", "Arbustos"), 0.5, 0.5, 0.5, 0.8)),
                List.of(),
                List.of(
                        nozzle("spray", Catalogue.Throw.SPRAY, 4),
                        nozzle("rotor", Catalogue.Throw.ROTOR, 7.6),
                        nozzle("drip", Catalogue.Throw.DRIP, 0)),
                List.of());
        return of(yard(), plumbing(), catalogue);
    }

    static Scenario of(YardPlan yard, Plumbing plumbing, Catalogue catalogue) {
        return new Scenario(
                "1.0",
                "clinic",
                new Text("Clinic", "Clínica"),
                null,
                null,
                3,
                null,
                new Place(new Text("Town", "Pueblo"), 40, -74, 10, -18_000),
                null,
                null,
                catalogue,
                yard,
                plumbing,
                null,
                null,
                List.of(),
                null,
                null,
                null,
                null,
                List.of());
    }

    static SetUp setUp() {
        return new SetUp(
                List.of(
                        new Placement.Freeze("freeze-1", at(38.6, 7.4), Mount.WALL, 2.6, 3, 4),
                        new Placement.Flow("flow-1", "m1", 0.9, 0.04, 3, 0),
                        new Placement.Rain("rain-1", at(45.2, 19.2), Mount.POST, 2.1, 0.006, 0.5)),
                List.of(),
                FlowWatch.OFF,
                null);
    }

    /** Morning with zone 3 running in a west wind, or a frosty night with an iced walk. */
    static Snapshot snapshot(Scenario scenario, boolean night) {
        int nx = 100;
        int ny = 60;
        float[] wet = new float[nx * ny];
        float[] film = new float[nx * ny];
        float[] ice = new float[nx * ny];
        float[] cold = new float[nx * ny];
        float[] paving = new float[nx * ny];
        for (int r = 0; r < ny; r++) {
            for (int c = 0; c < nx; c++) {
                int i = r * nx + c;
                double x = (c + 0.5) * 0.6;
                double y = DEPTH - (r + 0.5) * 0.6;
                wet[i] = (float) (0.3
                        + 0.6 * bump(x, y, 5, 14, 9, 9)
                        + 0.4 * bump(x, y, 20, 27, 13, 3)
                        + 0.35 * bump(x, y, 40, 26, 6, 4)
                        + 0.3 * bump(x, y, 30, 3, 15, 2));
                cold[i] =
                        (float) (night ? 2.6 - 4 * bump(x, y, 31, 4.2, 16, 5) - 3.2 * bump(x, y, 6.6, 22.5, 8, 7) : 8);
                boolean walk = y > 4.7 && y < 6.3 || x > 35 && x < 37 && y > 6 && y < 8;
                paving[i] = walk ? (float) (night ? -0.8 : 8) : Float.NaN;
                film[i] = night && walk && x > 17 && x < 45 ? 0.4f : 0;
                ice[i] = night && walk && x > 21 && x < 42 ? 0.4f : 0;
            }
        }
        int running = night ? 0 : 3;
        List<Snapshot.Zone> zones = new ArrayList<>();
        for (int z = 1; z <= 6; z++) {
            zones.add(new Snapshot.Zone("zone-" + z, z == running, false, z == running ? 1e-3 : 0, 3e5));
        }
        List<Snapshot.Head> heads = new ArrayList<>();
        for (Head h : scenario.plumbing().heads()) {
            boolean on = h.zone().equals("zone-" + running);
            double r = h.radius() == null ? 4 : h.radius();
            heads.add(new Snapshot.Head(
                    h.id(), on, on ? 2e-4 : 0, on ? 3e5 : Double.NaN, on ? r : 0, on ? 1.7 : 0, on ? 0.35 : 0));
        }
        return new Snapshot(
                24_000,
                LocalDateTime.of(2024, 10, 17, night ? 5 : 8, 26),
                night
                        ? new Snapshot.Sky(-0.8, -3, 0.2, 270, 0, 0, 0, -14, 80)
                        : new Snapshot.Sky(9, 4, 5.4, 258, 300, 0.3, 0, 24, 130),
                nx,
                ny,
                wet,
                film,
                ice,
                new float[nx * ny],
                cold,
                paving,
                zones,
                heads,
                new double[scenario.plumbing().pipes().size()],
                List.of(
                        new Snapshot.Sensor("rain-1", 0.002, false),
                        new Snapshot.Sensor("freeze-1", night ? 4.1 : 9, false),
                        new Snapshot.Sensor("flow-1", 1e-3, false)),
                List.of(),
                true,
                1e-3,
                ledger(),
                488);
    }

    static Ledger ledger() {
        return new Ledger(
                new Ledger.Water(61.4, 30, 60, 3, 1, 2, 9, 1, 0, 15.4),
                new Ledger.Irrigation(61.4, 40, 2, 3, 1, 4, 0, 11.4),
                new Ledger.Ice(1.6, 0.2, 1),
                new Ledger.Plants(0, 0, 0));
    }

    private static double bump(double x, double y, double cx, double cy, double rx, double ry) {
        double d = (x - cx) * (x - cx) / rx / rx + (y - cy) * (y - cy) / ry / ry;
        return Math.max(0, 1 - d);
    }
}
