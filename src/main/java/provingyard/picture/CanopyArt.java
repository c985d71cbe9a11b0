package provingyard.picture;

import provingyard.numeric.Deterministic;
import provingyard.scenario.YardPlan.Tree;

/** Trees from above, seeded by their ids. Metres, north up. */
final class CanopyArt {

    private static final Tone[] LEAVES = {Tone.TREE_1, Tone.TREE_2, Tone.TREE_3, Tone.TREE_4};
    private static final double SOFT = 0.62;

    private final YardShapes shapes;
    private final Theme theme;

    CanopyArt(YardShapes shapes, View view) {
        this.shapes = shapes;
        this.theme = view.theme();
    }

    void draw(Surface s) {
        s.layer(0.9, 0, l -> shapes.yard().trees().forEach(t -> tree(l, t)));
    }

    private void tree(Surface s, Tree t) {
        Dice dice = new Dice("tree " + t.id());
        double r = t.canopy() / 2;
        s.save();
        s.translate(t.at().x(), t.at().y());
        if (t.evergreen()) {
            conifer(s, r, dice);
        } else {
            broadleaf(s, r, dice);
        }
        s.restore();
    }

    private void conifer(Surface s, double r, Dice dice) {
        Path outer = star(0, 0, r * 0.72, r, 0, dice);
        s.fill(outer, theme.at(Tone.CONIFER_1));
        s.stroke(outer, Pen.of(theme.at(Tone.CONIFER_EDGE), 0.07));
        Path inner = star(-0.12 * r, -0.1 * r, r * 0.38, r * 0.66, 0.1, null);
        s.fill(inner, theme.at(Tone.CONIFER_2).fade(0.8));
        s.fill(Path.circle(0, 0, 0.12), theme.at(Tone.CONIFER_EDGE));
    }

    private static Path star(double x, double y, double low, double high, double turn, Dice dice) {
        int n = 22;
        Path.Builder b = Path.builder();
        for (int j = 0; j < n * 2; j++) {
            double a = j * Math.PI / n + turn;
            double q = j % 2 == 1 ? low : high * (dice == null ? 1 : dice.between(0.95, 1.05));
            double px = x + Deterministic.cos(a) * q;
            double py = y + Deterministic.sin(a) * q;
            if (j == 0) {
                b.moveTo(px, py);
            } else {
                b.lineTo(px, py);
            }
        }
        b.close();
        return b.build();
    }

    /** A rim of lobes, then clumps of leaves that move to the light in the south-west and grow paler. */
    private void broadleaf(Surface s, double r, Dice dice) {
        Path rim = rim(r, dice);
        s.fill(rim, theme.at(LEAVES[0]));
        s.stroke(rim, Pen.of(theme.at(Tone.TREE_EDGE), 0.085));
        for (int layer = 1; layer < 4; layer++) {
            int clumps = (int) Math.round(r * r * (2.6 - layer * 0.45)) + 3;
            for (int j = 0; j < clumps; j++) {
                double a = dice.next() * 2 * Math.PI;
                double q = Math.sqrt(dice.next()) * r * (1.02 - layer * 0.2);
                double cx = -ShadowArt.X * r * 0.16 * layer + Deterministic.cos(a) * q;
                double cy = -ShadowArt.Y * r * 0.16 * layer + Deterministic.sin(a) * q;
                double cr = r * 0.1 + 0.2 + dice.next() * 0.14;
                if (Deterministic.hypot(cx, cy) + cr <= r * 0.99) {
                    s.fill(Path.circle(cx, cy, cr), theme.at(LEAVES[layer]).fade(SOFT));
                }
            }
        }
        Path.Builder branches = Path.builder();
        for (int j = 0; j < 5; j++) {
            double a = j * 2 * Math.PI / 5 + dice.next();
            branches.append(Path.segment(0, 0, Deterministic.cos(a) * r * 0.5, Deterministic.sin(a) * r * 0.5));
        }
        s.stroke(branches.build(), Pen.of(theme.at(Tone.TREE_EDGE).fade(0.45), 0.05));
        s.fill(Path.circle(0, 0, 0.17), theme.at(Tone.TRUNK));
    }

    private static Path rim(double r, Dice dice) {
        int n = Math.max(7, (int) Math.round(8 + r * 2.2));
        double[] x = new double[n];
        double[] y = new double[n];
        for (int j = 0; j < n; j++) {
            double a = j * 2 * Math.PI / n + dice.next() * 0.25;
            double q = r * dice.between(0.9, 1.02);
            x[j] = Deterministic.cos(a) * q;
            y[j] = Deterministic.sin(a) * q;
        }
        Path.Builder b = Path.builder();
        b.moveTo(x[0], y[0]);
        for (int j = 1; j <= n; j++) {
            lobe(b, x[j - 1], y[j - 1], x[j % n], y[j % n]);
        }
        b.close();
        return b.build();
    }

    /** A bulge between two points of the rim: an arc of a circle 1.12 times as wide as the step. */
    private static void lobe(Path.Builder b, double ax, double ay, double bx, double by) {
        double dx = (bx - ax) / 2;
        double dy = (by - ay) / 2;
        double half = Math.max(1e-6, Deterministic.hypot(dx, dy));
        double radius = half * 1.12;
        double away = Math.sqrt(radius * radius - half * half) / half;
        double cx = ax + dx - dy * away;
        double cy = ay + dy + dx * away;
        double from = Deterministic.atan2(ay - cy, ax - cx);
        double turn = Deterministic.atan2(by - cy, bx - cx) - from;
        b.arc(cx, cy, radius, from, turn < 0 ? turn + 2 * Math.PI : turn);
    }
}
