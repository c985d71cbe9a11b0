package provingyard.picture;

import provingyard.scenario.Point;
import provingyard.scenario.YardPlan.Furnishing;
import provingyard.scenario.YardPlan.FurnishingKind;
import provingyard.scenario.YardPlan.Structure;
import provingyard.scenario.YardPlan.StructureKind;
import provingyard.scenario.YardPlan.Vent;

/** Shrubs, cars, benches, lamps, goals, fences, walls and vents. Metres, north up. */
final class FurnishingArt {

    private static final Tone[] SHRUBS = {Tone.SHRUB_1, Tone.SHRUB_2, Tone.SHRUB_3, Tone.SHRUB_4};
    private static final Tone[] CARS = {Tone.CAR_1, Tone.CAR_2, Tone.CAR_3};

    private final YardShapes shapes;
    private final Theme theme;

    FurnishingArt(YardShapes shapes, View view) {
        this.shapes = shapes;
        this.theme = view.theme();
    }

    void draw(Surface s) {
        for (YardShapes.Shrub b : shapes.shrubs()) {
            shrub(s, b);
        }
        int cars = 0;
        for (Furnishing f : shapes.yard().furnishings()) {
            switch (f.kind()) {
                case CAR -> car(s, f, theme.at(CARS[cars++ % CARS.length]));
                case BENCH -> bench(s, f);
                case LAMP -> lamp(s, f);
                case GOAL -> goal(s, f);
                case SHRUB -> {
                    // Drawn with the beds' shrubs.
                }
            }
        }
        for (Structure b : shapes.yard().structures()) {
            if (b.kind() == StructureKind.FENCE) {
                fence(s, b);
            } else if (b.kind() == StructureKind.WALL) {
                Path line = Path.polyline(b.outline());
                s.stroke(line, Pen.of(theme.at(Tone.ROOF_EDGE), 0.36).sharp());
                s.stroke(line, Pen.of(theme.at(Tone.ROOF_W), 0.22).sharp());
            }
        }
    }

    private void shrub(Surface s, YardShapes.Shrub b) {
        Path disc = Path.circle(b.x(), b.y(), b.radius());
        s.fill(disc, theme.at(SHRUBS[b.tone()]));
        s.stroke(disc, Pen.of(theme.at(Tone.SHRUB_EDGE), 0.05));
        double r = b.radius();
        Path light = Path.circle(b.x() - 0.18 * r, b.y() - 0.14 * r, r * 0.5);
        s.fill(light, theme.at(Tone.SHRUB_4).fade(0.55));
    }

    private void car(Surface s, Furnishing f, Colour colour) {
        s.save();
        s.translate(f.at().x(), f.at().y());
        s.rotate(90 - f.heading());
        Path body = Path.rounded(-2.2, -0.9, 4.4, 1.8, 0.5);
        s.fill(body, colour);
        s.stroke(body, Pen.of(theme.at(Tone.WALL).fade(0.5), 0.05));
        Path glass = Path.svg("M-1.5 -.72H-.9V.72H-1.5ZM.5 -.74L1.1 -.7V.7L.5 .74Z");
        s.fill(glass, theme.at(Tone.GLASS).fade(0.8));
        s.fill(Path.rounded(-0.85, -0.72, 1.3, 1.44, 0.2), Colour.WHITE.fade(0.16));
        s.restore();
    }

    /** Who sits on a bench looks along its heading. */
    private void bench(Surface s, Furnishing f) {
        s.save();
        s.translate(f.at().x(), f.at().y());
        s.rotate(-f.heading());
        Path seat = Path.rounded(-0.8, -0.25, 1.6, 0.5, 0.1);
        s.fill(seat, theme.at(Tone.FENCE));
        s.stroke(seat, Pen.of(theme.at(Tone.WALL), 0.04));
        s.restore();
    }

    private void lamp(Surface s, Furnishing f) {
        Path foot = Path.circle(f.at().x(), f.at().y(), 0.22);
        s.fill(foot, theme.isNight() ? Colour.of("#FFE2A6") : theme.at(Tone.HALO));
        s.stroke(foot, Pen.of(theme.at(Tone.WALL), 0.09));
    }

    private void goal(Surface s, Furnishing f) {
        double w = f.size() > 0 ? f.size() : 7.3;
        s.save();
        s.translate(f.at().x(), f.at().y());
        s.rotate(90 - f.heading());
        Path frame = Path.rectangle(-1.6, -w / 2, 1.6, w);
        s.fill(frame, Colour.WHITE.fade(0.22));
        s.stroke(frame, Pen.of(Colour.WHITE.fade(0.9), 0.16));
        Path.Builder net = Path.builder();
        for (double v = -w / 2 + 0.6; v < w / 2; v += 0.6) {
            net.append(Path.segment(-1.6, v, 0, v));
        }
        s.stroke(net.build(), Pen.of(Colour.WHITE.fade(0.5), 0.04));
        s.restore();
    }

    private void fence(Surface s, Structure b) {
        Colour c = theme.at(Tone.FENCE);
        s.stroke(Path.polyline(b.outline()), Pen.of(c, 0.1));
        double length = Polygons.length(b.outline());
        int posts = Math.max(1, (int) Math.round(length / 2.3));
        Path.Builder all = Path.builder();
        for (int i = 0; i <= posts; i++) {
            Point p = Polygons.along(b.outline(), length * i / posts);
            all.rectangle(p.x() - 0.11, p.y() - 0.11, 0.22, 0.22);
        }
        s.fill(all.build(), c);
    }

    /** Heat vents lie on walls, so over the roofs: a grille with two warm waves. */
    void vents(Surface s) {
        for (Vent v : shapes.yard().vents()) {
            s.save();
            s.translate(v.at().x(), v.at().y());
            Path box = Path.rounded(-0.5, -0.22, 1, 0.44, 0.08);
            s.fill(box, theme.at(Tone.ROOF_S));
            s.stroke(box, Pen.of(theme.at(Tone.WALL), 0.08));
            s.stroke(Path.svg("M-.25 -.2V.2M0 -.2V.2M.25 -.2V.2"), Pen.of(theme.at(Tone.WALL), 0.06));
            Pen warm = Pen.of(theme.at(Tone.OVER), 0.1).round();
            s.stroke(Path.svg("M-.25 .4C-.5 .6 0 .8 -.25 1.05M.25 .4C0 .6 .5 .8 .25 1.05"), warm);
            s.restore();
        }
    }

    /** Lamp light on the ground, only by night. */
    void lampLight(Surface s) {
        for (Furnishing f : shapes.yard().furnishings()) {
            if (f.kind() == FurnishingKind.LAMP) {
                glow(s, f.at().x(), f.at().y(), f.size() > 1 ? f.size() : 5.4);
            }
        }
    }

    private static void glow(Surface s, double x, double y, double r) {
        Paint light = new Paint.Radial(
                x,
                y,
                r,
                java.util.List.of(
                        new Paint.Stop(0, Colour.of("#FFD58A80")),
                        new Paint.Stop(0.45, Colour.of("#FFC46B2B")),
                        new Paint.Stop(1, Colour.of("#FFC46B00"))));
        s.save();
        s.blend(Surface.Blend.SCREEN);
        s.fill(Path.circle(x, y, r), light);
        s.restore();
    }
}
