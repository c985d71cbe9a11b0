package provingyard.picture;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Plumbing.Head;

/** Water in the air: resting throws, live sectors, drift, and what lands on paving. Metres, north up. */
final class SprayArt {

    /** True speed of a rotor's stream, degrees per second. */
    private static final double ROTOR_SPEED = 9;

    /** Most drops drawn along one radius. */
    private static final double DROPS = 9;

    private final YardShapes shapes;
    private final View view;
    private final Theme theme;
    private final Live live;
    private final List<Jet> jets;

    SprayArt(YardShapes shapes, View view, Live live) {
        this.shapes = shapes;
        this.view = view;
        this.theme = view.theme();
        this.live = live;
        this.jets = shapes.scenario().plumbing().heads().stream()
                .filter(live::spraying)
                .map(live::jet)
                .toList();
    }

    /** What stays while head flows and wind do: resting throws, drift, sectors, and what lands on paving. */
    void standing(Surface s) {
        resting(s);
        if (!jets.isEmpty()) {
            driftHaze(s);
            for (Jet j : jets) {
                s.fill(j.sector(), gradient(j));
            }
            overspray(s);
        }
    }

    /** What moves while time runs: drops, streams, wisps. */
    void moving(Surface s) {
        if (!jets.isEmpty()) {
            streaks(s);
            if (!view.blurred()) {
                streams(s);
            }
            wisps(s);
        }
    }

    private void resting(Surface s) {
        double px = 1 / view.scale();
        Colour edge = theme.at(Tone.SPRAY_EDGE).fade(0.34);
        Pen pen = Pen.of(edge, 0.9 * px).dashed(3 * px, 3 * px);
        for (Head h : shapes.scenario().plumbing().heads()) {
            if (!live.spraying(h)) {
                Path sector = live.jet(h).sector();
                s.fill(sector, theme.at(Tone.SPRAY).fade(0.05));
                s.stroke(sector, pen);
            }
        }
    }

    private void driftHaze(Surface s) {
        Colour c = theme.at(Tone.SPRAY);
        s.layer(0.13, 0.55, l -> jets.forEach(j -> l.fill(j.scaled(1.06, 2).sector(), c)));
    }

    private Paint gradient(Jet j) {
        Colour c = theme.at(Tone.SPRAY);
        double k = theme.dark() ? 1.15 : 1;
        return new Paint.Radial(
                j.head().at().x(),
                j.head().at().y(),
                j.radius() + j.drift(),
                List.of(
                        new Paint.Stop(0, c.fade(0.05 * k)),
                        new Paint.Stop(0.6, c.fade(0.17 * k)),
                        new Paint.Stop(0.9, c.fade(0.26 * k)),
                        new Paint.Stop(1, c.fade(0.1 * k))));
    }

    /** Drops along the carried radii: white, broken lines that move outward while time runs, as one path. */
    private void streaks(Surface s) {
        double px = 1 / view.scale();
        Path.Builder b = Path.builder();
        for (Jet j : jets) {
            Dice dice = new Dice("streaks " + j.head().id());
            double sweep = Math.min(360, j.head().sweep());
            int n = Math.max(4, (int) Math.round(sweep / (j.radius() > 5 ? 11 : 15)));
            for (int k = 0; k < n; k++) {
                double a = j.head().from() + (k + 0.5) * sweep / n + dice.between(-2, 2);
                double from = dice.between(0.12, 0.22);
                double on = dice.between(2, 6) * px / j.radius();
                double off = Math.max(dice.between(3, 8) * px / j.radius(), 0.85 / DROPS - on);
                double ahead = fraction(view.seconds() * 1.7 + dice.next());
                for (double t = from + (on + off) * ahead; t < 0.97; t += on + off) {
                    double end = Math.min(0.97, t + on);
                    b.moveTo(j.x(a, t), j.y(a, t));
                    b.lineTo(j.x(a, end), j.y(a, end));
                }
            }
        }
        s.stroke(b.build(), Pen.of(theme.at(Tone.STREAK).fade(0.62), 1.1 * px).round());
    }

    private static double fraction(double v) {
        return v - Math.floor(v);
    }

    /** A rotor's stream stands where it is this second. */
    private void streams(Surface s) {
        int i = 0;
        for (Jet j : jets) {
            if (live.rotor(j.head())) {
                double sweep = Math.min(360, j.head().sweep());
                double turned = view.seconds() * ROTOR_SPEED / Math.max(1, sweep) + 0.25 + fraction(i * 0.37) * 0.5;
                double share = j.full() ? fraction(turned) : 1 - Math.abs(1 - 2 * fraction(turned / 2));
                stream(s, j, j.head().from() + sweep * share);
            }
            i++;
        }
    }

    private void stream(Surface s, Jet j, double bearing) {
        Path.Builder b = Path.builder();
        for (int q = 0; q <= 16; q++) {
            double t = (q <= 8 ? q : 16 - q) / 8.0;
            double half = Math.toDegrees(0.012 + 0.04 * t) * 1.3 * (q <= 8 ? -1 : 1);
            if (q == 0) {
                b.moveTo(j.x(bearing + half, t), j.y(bearing + half, t));
            } else {
                b.lineTo(j.x(bearing + half, t), j.y(bearing + half, t));
            }
        }
        b.close();
        Colour c = theme.at(Tone.STREAK);
        Paint light = new Paint.Radial(
                j.head().at().x(),
                j.head().at().y(),
                j.radius() + j.drift(),
                List.of(
                        new Paint.Stop(0, c.fade(0.95)),
                        new Paint.Stop(0.6, c.fade(0.7)),
                        new Paint.Stop(1, c.fade(0.05))));
        s.fill(b.build(), light);
    }

    /** Wisps and drops that leave the pattern with the wind. */
    private void wisps(Surface s) {
        double strongest = jets.stream().mapToDouble(Jet::drift).max().orElse(0);
        if (strongest < 0.8) {
            return;
        }
        Dice dice = new Dice("wisps");
        Path.Builder air = Path.builder();
        Path.Builder drops = Path.builder();
        int n = Math.min(34, 8 * jets.size());
        for (int k = 0; k < n; k++) {
            wisp(jets.get(k % jets.size()), dice, air, drops);
        }
        Colour c = theme.at(Tone.STREAK);
        s.fill(air.build(), c.fade(0.34));
        s.fill(drops.build(), c.fade(0.9));
    }

    private void wisp(Jet j, Dice dice, Path.Builder air, Path.Builder drops) {
        double w = Math.max(0.01, j.drift());
        double ux = j.driftX() / w;
        double uy = j.driftY() / w;
        double a = j.head().from() + dice.next() * Math.min(360, j.head().sweep());
        double t = dice.between(0.72, 1.02);
        double flow = fraction(view.seconds() * 0.6 + dice.next());
        double x = j.x(a, t) + ux * w * 0.6 * (flow - 0.5);
        double y = j.y(a, t) + uy * w * 0.6 * (flow - 0.5);
        double l = w * dice.between(1.4, 3.6);
        double half = dice.between(0.16, 0.32);
        double bend = dice.between(-0.55, 0.55);
        double mx = x + ux * l / 2;
        double my = y + uy * l / 2;
        air.moveTo(x, y);
        air.quadTo(mx - uy * (bend + half), my + ux * (bend + half), x + ux * l, y + uy * l);
        air.quadTo(mx - uy * (bend - half), my + ux * (bend - half), x, y);
        air.close();
        for (int q = 0; q < 3; q++) {
            double m = dice.next() * 1.15;
            double side = dice.between(-0.45, 0.45);
            drops.circle(x + ux * l * m - uy * side, y + uy * l * m + ux * side, dice.between(0.05, 0.1));
        }
    }

    /** What lands on paving is hatched: it is waste. */
    private void overspray(Surface s) {
        if (shapes.paved().isEmpty()) {
            return;
        }
        for (Jet j : jets) {
            Path sector = j.scaled(1.03, 1.15).sector();
            s.save();
            s.clip(shapes.paved());
            s.clip(sector);
            s.stroke(hatch(sector.bounds()), Pen.of(theme.at(Tone.OVER), Math.max(0.12, 1.4 * view.px())));
            s.restore();
        }
    }

    /** Lines at 45 degrees each 0.5 m, the same wherever they are asked for, so that patches match. */
    private Path hatch(double[] b) {
        double step = Math.max(0.5, 4.5 * view.px()) * Deterministic.hypot(1, 1);
        double height = b[3] - b[1];
        Path.Builder lines = Path.builder();
        double first = Math.floor((b[0] + b[1]) / step) * step;
        for (double d = first; d < b[2] + b[3]; d += step) {
            lines.moveTo(d - b[1], b[1]);
            lines.lineTo(d - b[1] - height, b[3]);
        }
        return lines.build();
    }
}
