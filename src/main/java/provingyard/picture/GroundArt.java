package provingyard.picture;

import java.util.List;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan;
import provingyard.scenario.YardPlan.FurnishingKind;
import provingyard.scenario.YardPlan.SurfaceKind;

/** What lies flat: off-site, street, lawn, beds, paving. Metres, north up, until told otherwise. */
final class GroundArt {

    /** How far a street or walk that spans the yard goes on beyond it, m. */
    private static final double BEYOND = 120;

    private final YardShapes shapes;
    private final View view;
    private final Theme theme;

    GroundArt(YardShapes shapes, View view) {
        this.shapes = shapes;
        this.view = view;
        this.theme = view.theme();
    }

    void draw(Surface s) {
        s.fill(Path.rectangle(0, 0, view.width(), view.height()), theme.at(Tone.OFF_SITE));
        s.save();
        view.toMetres(s);
        neighbours(s);
        s.restore();
        verges(s);
        s.save();
        view.toMetres(s);
        for (YardPlan.Surface g : shapes.yard().surfaces()) {
            beyond(s, g);
        }
        s.restore();
        base(s);
        for (YardPlan.Surface g : shapes.yard().surfaces()) {
            if (g.outline().size() > 2) {
                surface(s, g);
            }
        }
        s.save();
        view.toMetres(s);
        pitch(s);
        stalls(s);
        s.restore();
    }

    /** Pale outlines of what stands next door: lot lines and two houses. */
    private void neighbours(Surface s) {
        Point size = shapes.size();
        double w = size.x();
        double h = size.y();
        Colour c = theme.at(Tone.OFF_SITE_LINE);
        Dice dice = new Dice("next door to " + shapes.scenario().id());
        Path.Builder lots = Path.builder();
        for (double x : new double[] {0, w}) {
            lots.append(Path.segment(x, h, x, h + BEYOND)).append(Path.segment(x, 0, x, -BEYOND));
        }
        lots.append(Path.segment(0, h, -BEYOND, h)).append(Path.segment(w, h, w + BEYOND, h));
        Path.Builder houses = Path.builder();
        for (int side = -1; side <= 1; side += 2) {
            double from = side < 0 ? -4 - dice.between(14, 20) : w + 4;
            double base = h * dice.between(0.35, 0.6);
            houses.rectangle(from, base, dice.between(14, 20), h * 0.45);
            houses.rectangle(w * (0.3 + side * 0.2) - 6, h + dice.between(5, 8), dice.between(12, 20), 11);
        }
        s.fill(houses.build(), c.fade(0.4));
        s.stroke(houses.build(), Pen.of(c, 0.16));
        s.stroke(lots.build(), Pen.of(c, 0.16));
    }

    /** Grass between a street and the walk beside it goes on past the yard. */
    private void verges(Surface s) {
        for (YardPlan.Surface street : shapes.yard().surfaces()) {
            for (YardPlan.Surface walk : shapes.yard().surfaces()) {
                if (street.kind() == SurfaceKind.STREET
                        && walk.kind() == SurfaceKind.WALK
                        && spans(street, 0)
                        && spans(walk, 0)) {
                    double[] a = Polygons.bounds(street.outline());
                    double[] b = Polygons.bounds(walk.outline());
                    double low = Math.min(a[3], b[3]);
                    double high = Math.max(a[1], b[1]);
                    if (high > low && high - low < 4) {
                        verge(s, Path.rectangle(-BEYOND, low, 2 * BEYOND + shapes.size().x(), high - low));
                    }
                }
            }
        }
    }

    private void verge(Surface s, Path strip) {
        fill(s, strip, Tone.LAWN);
        grain(s, strip, Grain.LAWN, theme.grain());
    }

    /** Whether an upright surface reaches from edge to edge: axis 0 west to east, 1 south to north. */
    private boolean spans(YardPlan.Surface g, int axis) {
        if (g.outline().size() < 3 || !Polygons.upright(g.outline())) {
            return false;
        }
        double[] b = Polygons.bounds(g.outline());
        double far = axis == 0 ? shapes.size().x() : shapes.size().y();
        return b[axis] < 0.1 && b[axis + 2] > far - 0.1;
    }

    /** Streets and walks that span the yard are drawn on beyond it. */
    private void beyond(Surface s, YardPlan.Surface g) {
        boolean street = g.kind() == SurfaceKind.STREET;
        if (!street && g.kind() != SurfaceKind.WALK || g.outline().size() < 3) {
            return;
        }
        double[] e = extended(g);
        if (e != null) {
            Path all = Path.rectangle(e[0], e[1], e[2] - e[0], e[3] - e[1]);
            s.fill(all, theme.at(street ? Tone.STREET : Tone.WALK));
            if (!street) {
                s.stroke(all, Pen.of(theme.at(Tone.WALK_EDGE), 0.08));
            }
        }
    }

    /** Bounds of a spanning surface drawn on beyond the yard, or null. */
    private double[] extended(YardPlan.Surface g) {
        boolean across = spans(g, 0);
        boolean up = spans(g, 1);
        if (!across && !up) {
            return null;
        }
        double[] b = Polygons.bounds(g.outline()).clone();
        boolean street = g.kind() == SurfaceKind.STREET;
        double[] limit = {0, 0, shapes.size().x(), shapes.size().y()};
        for (int side = 0; side < 4; side++) {
            boolean along = side % 2 == 0 ? across : up;
            if (Math.abs(b[side] - limit[side]) < 0.1 && (along || street)) {
                b[side] += side < 2 ? -BEYOND : BEYOND;
            }
        }
        return b;
    }

    private void base(Surface s) {
        Point size = shapes.size();
        Path all = Path.rectangle(0, 0, size.x(), size.y());
        switch (shapes.base()) {
            case TURF -> turf(s, all);
            case BED -> fill(s, all, Tone.BED);
            case WALK -> paving(s, all, Tone.WALK);
            case DRIVE -> paving(s, all, Tone.DRIVE);
            case STREET -> paving(s, all, Tone.STREET);
        }
    }

    private void fill(Surface s, Path path, Tone tone) {
        s.save();
        view.toMetres(s);
        s.fill(path, theme.at(tone));
        s.restore();
    }

    private Path toPx(Path path) {
        return path.mapped(view.scale(), -view.scale(), view.x(0), view.y(0));
    }

    private void turf(Surface s, Path path) {
        s.save();
        view.toMetres(s);
        s.fill(path, theme.at(Tone.LAWN));
        double[] b = path.bounds();
        s.clip(path);
        double lean = (b[3] - b[1]) * 0.27;
        Path.Builder stripes = Path.builder();
        for (double x = Math.floor((b[0] - lean) / 3.2) * 3.2; x < b[2]; x += 3.2) {
            stripes.moveTo(x, b[1]);
            stripes.lineTo(x + lean, b[3]);
            stripes.lineTo(x + lean + 1.6, b[3]);
            stripes.lineTo(x + 1.6, b[1]);
            stripes.close();
        }
        s.fill(stripes.build(), theme.at(Tone.LAWN_STRIPE).fade(0.75));
        s.restore();
        grain(s, path, Grain.LAWN, theme.grain());
    }

    private void grain(Surface s, Path path, Pixels tile, double alpha) {
        if (alpha > 0) {
            s.save();
            s.alpha(alpha);
            s.tile(toPx(path), tile);
            s.restore();
        }
    }

    private void paving(Surface s, Path path, Tone tone) {
        fill(s, path, tone);
        grain(s, path, Grain.PAVING, theme.grain() * 0.8);
    }

    private void surface(Surface s, YardPlan.Surface g) {
        Path path = Path.polygon(Polygons.counterClockwise(g.outline()));
        switch (g.kind()) {
            case TURF -> turf(s, path);
            case BED -> bed(s, g);
            case WALK -> walk(s, g, path);
            case DRIVE -> {
                paving(s, path, Tone.DRIVE);
                edge(s, path, Tone.DRIVE_EDGE, 0.14);
            }
            case STREET -> street(s, g, path);
        }
    }

    private void edge(Surface s, Path path, Tone tone, double width) {
        s.save();
        view.toMetres(s);
        s.stroke(path, Pen.of(theme.at(tone), width));
        s.restore();
    }

    private void bed(Surface s, YardPlan.Surface g) {
        double[] b = Polygons.bounds(g.outline());
        double wave = Math.min(0.16, Math.min(b[2] - b[0], b[3] - b[1]) * 0.08);
        Path path = Polygons.wavy(g.outline(), wave, new Dice("edge " + g.id()));
        s.save();
        view.toMetres(s);
        s.fill(path, theme.at(Tone.BED));
        s.stroke(path, Pen.of(theme.at(Tone.BED_EDGE), 0.1));
        s.restore();
        grain(s, path, Grain.PAVING, theme.grain() * 0.7);
    }

    private void walk(Surface s, YardPlan.Surface g, Path path) {
        double[] e = extended(g);
        Path all = e == null ? path : Path.rectangle(e[0], e[1], e[2] - e[0], e[3] - e[1]);
        s.save();
        view.toMetres(s);
        s.stroke(all, Pen.of(theme.at(Tone.WALK_EDGE), 0.16));
        s.restore();
        paving(s, all, Tone.WALK);
        s.save();
        view.toMetres(s);
        s.clip(path);
        Path joints = e == null ? Joints.of(g.outline()) : Joints.of(corners(e));
        s.stroke(joints, Pen.of(theme.at(Tone.JOINT), 0.06));
        s.restore();
    }

    private static List<Point> corners(double[] b) {
        return List.of(
                new Point(b[0], b[1]), new Point(b[2], b[1]), new Point(b[2], b[3]), new Point(b[0], b[3]));
    }

    private void street(Surface s, YardPlan.Surface g, Path path) {
        double[] e = extended(g);
        if (e == null) {
            paving(s, path, Tone.STREET);
            edge(s, path, Tone.WALK_EDGE, 0.32);
            return;
        }
        paving(s, Path.rectangle(e[0], e[1], e[2] - e[0], e[3] - e[1]), Tone.STREET);
        s.save();
        view.toMetres(s);
        Pen curb = Pen.of(theme.at(Tone.WALK_EDGE), 0.32);
        Pen centre = Pen.of(theme.at(Tone.MARKING), 0.16).dashed(2.4, 2.4);
        boolean across = spans(g, 0);
        int low = across ? 1 : 0;
        double[] b = Polygons.bounds(g.outline());
        boolean openLow = e[low] < b[low] - 1;
        boolean openHigh = e[low + 2] > b[low + 2] + 1;
        for (int side = low; side < 4; side += 2) {
            if (side == low ? !openLow : !openHigh) {
                s.stroke(line(e, across, e[side]), curb);
            }
        }
        double middle = openLow ? e[low + 2] - 4.6 : openHigh ? e[low] + 4.6 : (e[low] + e[low + 2]) / 2;
        s.stroke(line(e, across, middle), centre);
        s.restore();
    }

    private static Path line(double[] e, boolean across, double at) {
        return across ? Path.segment(e[0], at, e[2], at) : Path.segment(at, e[1], at, e[3]);
    }

    /** Lines of a sports field between two goals that face each other. */
    private void pitch(Surface s) {
        List<YardPlan.Furnishing> goals = shapes.yard().furnishings().stream()
                .filter(f -> f.kind() == FurnishingKind.GOAL)
                .toList();
        if (goals.size() != 2) {
            return;
        }
        Point a = goals.get(0).at();
        Point b = goals.get(1).at();
        double length = a.distance(b);
        if (length < 10) {
            return;
        }
        s.save();
        s.translate(a.x(), a.y());
        s.rotate(Math.toDegrees(provingyard.numeric.Deterministic.atan2(b.y() - a.y(), b.x() - a.x())));
        double half = length * 0.31;
        double box = Math.min(half * 0.62, length * 0.16);
        Path.Builder lines = Path.builder();
        lines.rectangle(0, -half, length, 2 * half);
        lines.append(Path.segment(length / 2, -half, length / 2, half));
        lines.append(Path.circle(length / 2, 0, length * 0.09));
        lines.rectangle(0, -box, length * 0.15, 2 * box);
        lines.rectangle(length * 0.85, -box, length * 0.15, 2 * box);
        s.stroke(lines.build(), Pen.of(theme.at(Tone.MARKING).fade(0.9), 0.14));
        s.restore();
    }

    /** Stall lines beside the cars that stand on a drive. */
    private void stalls(Surface s) {
        for (YardPlan.Furnishing f : shapes.yard().furnishings()) {
            boolean parked = f.kind() == FurnishingKind.CAR
                    && shapes.kindAt(f.at().x(), f.at().y()) == SurfaceKind.DRIVE;
            if (parked) {
                s.save();
                s.translate(f.at().x(), f.at().y());
                s.rotate(90 - f.heading());
                Path.Builder lines = Path.builder();
                lines.append(Path.segment(-2.5, -1.32, 2.4, -1.32)).append(Path.segment(-2.5, 1.32, 2.4, 1.32));
                s.stroke(lines.build(), Pen.of(theme.at(Tone.MARKING), 0.13));
                s.restore();
            }
        }
    }
}
