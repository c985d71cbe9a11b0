package provingyard.picture;

import java.util.List;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan.Structure;
import provingyard.scenario.YardPlan.StructureKind;

/** Roofs and canopies on posts. Metres, north up. */
final class RoofArt {

    private final YardShapes shapes;
    private final Theme theme;

    RoofArt(YardShapes shapes, View view) {
        this.shapes = shapes;
        this.theme = view.theme();
    }

    void draw(Surface s) {
        for (Structure b : shapes.yard().structures()) {
            if (shapes.roofs().containsKey(b.id())) {
                roof(s, b, shapes.roofs().get(b.id()));
            }
        }
        for (Structure b : shapes.yard().structures()) {
            if (b.kind() == StructureKind.CANOPY && b.outline().size() > 2) {
                canopy(s, b);
            }
        }
    }

    private void roof(Surface s, Structure building, Roof roof) {
        Path eave = Path.polygon(roof.eave());
        s.fill(eave, theme.at(Tone.ROOF_S));
        for (Roof.Facet f : roof.facets()) {
            s.fill(f.path(), tone(f));
            s.save();
            s.clip(f.path());
            s.stroke(seams(f), Pen.of(theme.at(Tone.SEAM), 0.07));
            s.restore();
        }
        for (Roof.Facet f : roof.facets()) {
            s.stroke(f.path(), Pen.of(theme.at(Tone.ROOF_EDGE), 0.1));
        }
        if (roof.facets().isEmpty()) {
            Path parapet = Path.polygon(Polygons.offset(roof.eave(), -0.5));
            s.stroke(parapet, Pen.of(theme.at(Tone.ROOF_EDGE), 0.07));
        }
        details(s, building, roof);
        s.stroke(eave, Pen.of(theme.at(Tone.ROOF_EDGE), 0.16).sharp());
        if (building.eave() > 0.05) {
            Pen wall = Pen.of(theme.at(Tone.WALL).fade(0.75), 0.08).dashed(0.5, 0.32);
            s.stroke(Path.polygon(roof.wall()), wall);
        }
    }

    /** The slope's tone: the four directions' tones mixed by how much it faces each. */
    private Colour tone(Roof.Facet f) {
        double x = f.faceX() * f.faceX();
        Colour side = theme.at(f.faceX() < 0 ? Tone.ROOF_W : Tone.ROOF_E);
        Colour end = theme.at(f.faceY() < 0 ? Tone.ROOF_S : Tone.ROOF_N);
        return end.mix(side, x);
    }

    /** Lines down the slope each 0.9 m. */
    private static Path seams(Roof.Facet f) {
        double[] b = f.path().bounds();
        double cx = (b[0] + b[2]) / 2;
        double cy = (b[1] + b[3]) / 2;
        double reach = (b[2] - b[0]) + (b[3] - b[1]);
        Path.Builder lines = Path.builder();
        for (double d = -reach / 2; d < reach / 2; d += 0.9) {
            double x = cx - f.faceY() * d;
            double y = cy + f.faceX() * d;
            lines.append(Path.segment(
                    x - f.faceX() * reach, y - f.faceY() * reach, x + f.faceX() * reach, y + f.faceY() * reach));
        }
        return lines.build();
    }

    /** A roof unit on the slope away from the light, two skylights on the sunny one; they only fill large roofs. */
    private void details(Surface s, Structure building, Roof roof) {
        Roof.Facet south = largest(roof, 0, -1);
        Roof.Facet north = largest(roof, 0, 1);
        Pen edge = Pen.of(theme.at(Tone.ROOF_EDGE), 0.09);
        if (south != null && building.heated()) {
            double[] b = south.path().bounds();
            double y = b[1] + (b[3] - b[1]) * 0.34;
            for (double share : new double[] {0.56, 0.68}) {
                double x = b[0] + (b[2] - b[0]) * share;
                if (south.holds(x, y, 1.5, 2)) {
                    Path light = Path.rectangle(x, y, 1.5, 2);
                    s.fill(light, theme.at(Tone.SKYLIGHT));
                    s.stroke(light, edge);
                }
            }
        }
        if (north != null) {
            roofUnit(s, north, edge);
        }
    }

    private void roofUnit(Surface s, Roof.Facet north, Pen edge) {
        double[] b = north.path().bounds();
        double x = b[0] + (b[2] - b[0]) * 0.52;
        double y = b[1] + (b[3] - b[1]) * 0.38;
        if (north.holds(x, y, 2.2, 1.6)) {
            Path unit = Path.rectangle(x, y, 2.2, 1.6);
            s.fill(unit, theme.at(Tone.ROOF_E));
            s.stroke(unit, edge);
            s.stroke(Path.circle(x + 1.1, y + 0.8, 0.56), edge);
            Path cross = Path.svg("M-.4 -.4L.4 .4M.4 -.4L-.4 .4").moved(x + 1.1, y + 0.8);
            s.stroke(cross, Pen.of(theme.at(Tone.ROOF_EDGE), 0.08));
        }
        double along = b[0] + (b[2] - b[0]) * 0.33;
        if (north.holds(along - 0.28, y + 0.52, 0.56, 0.56)) {
            Path pipe = Path.circle(along, y + 0.8, 0.28);
            s.fill(pipe, theme.at(Tone.ROOF_N));
            s.stroke(pipe, Pen.of(theme.at(Tone.ROOF_EDGE), 0.07));
        }
    }

    private static Roof.Facet largest(Roof roof, double faceX, double faceY) {
        Roof.Facet best = null;
        double most = 45;
        for (Roof.Facet f : roof.facets()) {
            double[] b = f.path().bounds();
            double area = (b[2] - b[0]) * (b[3] - b[1]);
            if (f.faceX() * faceX + f.faceY() * faceY > 0.95 && b[3] - b[1] > 4 && area > most) {
                most = area;
                best = f;
            }
        }
        return best;
    }

    private void canopy(Surface s, Structure b) {
        List<Point> roof = Polygons.offset(b.outline(), b.eave());
        Path outline = Path.polygon(roof);
        s.fill(outline, theme.at(Tone.CANOPY));
        s.stroke(outline, Pen.of(theme.at(Tone.ROOF_EDGE), 0.12).sharp());
        s.stroke(
                Path.polygon(Polygons.offset(roof, -0.45)),
                Pen.of(theme.at(Tone.ROOF_EDGE), 0.05).sharp());
    }
}
