package provingyard.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.YardPlan;
import provingyard.scenario.YardPlan.Structure;
import provingyard.scenario.YardPlan.StructureKind;
import provingyard.scenario.YardPlan.Surface;
import provingyard.scenario.YardPlan.SurfaceKind;

/**
 * A scenario's shapes, worked out once: immutable, shared by all pictures of it.
 *
 * @param paved outlines of walks, drives and streets as one path, all running the same way round
 * @param shrubs in beds and standing alone
 * @param roofs in the order of the buildings
 * @param base what lies where no outline does
 * @param planted which cells are planted
 */
public record YardShapes(
        Scenario scenario,
        Path paved,
        List<Shrub> shrubs,
        Map<String, Roof> roofs,
        PipeMap pipes,
        SurfaceKind base,
        PlantedCells planted) {

    /** A shrub: place, radius in m and which of the four tones. */
    record Shrub(double x, double y, double radius, int tone) {}

    /** The shapes of a scenario. */
    public static YardShapes of(Scenario scenario) {
        YardPlan yard = scenario.yard();
        Path.Builder paved = Path.builder();
        SurfaceKind base = SurfaceKind.TURF;
        for (Surface s : yard.surfaces()) {
            if (s.id().equals(yard.base())) {
                base = s.kind();
            } else if (s.outline().size() > 2 && !s.kind().planted()) {
                Path path = Path.polygon(Polygons.counterClockwise(s.outline()));
                paved.append(path);
            }
        }
        Map<String, Roof> roofs = new LinkedHashMap<>();
        for (Structure s : yard.structures()) {
            if (s.kind() == StructureKind.BUILDING && s.outline().size() > 2) {
                roofs.put(s.id(), Roof.over(s.outline(), s.eave()));
            }
        }
        return new YardShapes(
                scenario,
                paved.build(),
                List.copyOf(shrubs(scenario)),
                roofs,
                PipeMap.of(scenario.plumbing()),
                base,
                PlantedCells.of(yard, base.planted()));
    }

    YardPlan yard() {
        return scenario.yard();
    }

    Point size() {
        return scenario.yard().size();
    }

    /** Outline of a surface in m; null for one without an outline. */
    Path outline(String id) {
        for (Surface s : yard().surfaces()) {
            if (s.id().equals(id) && s.outline().size() > 2) {
                return Path.polygon(s.outline());
            }
        }
        return null;
    }

    /** Kind of the surface at a place: the last outline that holds it, else the base. */
    SurfaceKind kindAt(double x, double y) {
        SurfaceKind kind = base;
        for (Surface s : yard().surfaces()) {
            if (s.outline().size() > 2 && Polygons.contains(s.outline(), x, y)) {
                kind = s.kind();
            }
        }
        return kind;
    }

    private static List<Shrub> shrubs(Scenario scenario) {
        List<Shrub> all = new ArrayList<>();
        for (Surface s : scenario.yard().surfaces()) {
            if (s.kind() == SurfaceKind.BED && s.outline().size() > 2 && shrubby(scenario.catalogue(), s.plant())) {
                plant(s, all);
            }
        }
        Dice dice = new Dice("shrubs");
        for (YardPlan.Furnishing f : scenario.yard().furnishings()) {
            if (f.kind() == YardPlan.FurnishingKind.SHRUB) {
                all.add(new Shrub(f.at().x(), f.at().y(), f.size() > 0 ? f.size() : 0.45, (int) (dice.next() * 4)));
            }
        }
        return all;
    }

    /** A bed without a known plant is drawn with shrubs; low plants (under 0.3 m) are not. */
    private static boolean shrubby(Catalogue catalogue, String plant) {
        if (catalogue == null || plant == null) {
            return true;
        }
        return catalogue.plants().stream()
                .filter(p -> p.id().equals(plant))
                .map(p -> p.height() >= 0.3)
                .findFirst()
                .orElse(true);
    }

    /** Rows of shrubs along the bed's longest side. */
    private static void plant(Surface bed, List<Shrub> all) {
        Dice dice = new Dice("bed " + bed.id());
        double turn = Polygons.direction(bed.outline());
        double[] b = Polygons.bounds(Polygons.turned(bed.outline(), -turn));
        double c = Deterministic.cos(turn);
        double s = Deterministic.sin(turn);
        double depth = b[3] - b[1];
        int rows = Math.max(1, (int) Math.round(depth / 1.45));
        double radius = Math.max(0.26, Math.min(0.56, depth / rows * 0.3));
        for (int row = 0; row < rows; row++) {
            double v = b[1] + depth * (row + 0.5) / rows;
            for (double u = b[0] + radius + 0.15; u < b[2] - radius * 0.6; u += radius * 1.9) {
                double r = radius * dice.between(0.82, 1.18);
                double uu = u + dice.between(-0.08, 0.08);
                double vv = v + dice.between(-0.13, 0.13);
                double x = uu * c - vv * s;
                double y = uu * s + vv * c;
                boolean room =
                        Polygons.contains(bed.outline(), x, y) && Polygons.edgeDistance(bed.outline(), x, y) > r * 0.8;
                int tone = (int) (dice.next() * 4);
                // Wide beds have open soil between the plants.
                boolean bare = rows > 2 && dice.next() < 0.35;
                if (room && !bare) {
                    all.add(new Shrub(x, y, r, tone));
                }
            }
        }
    }
}
