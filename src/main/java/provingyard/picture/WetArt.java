package provingyard.picture;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Point;
import provingyard.season.Snapshot;

/** What cells show: wetness, shelter, cold air, wet film and ice; and leaks. Metres, north up. */
final class WetArt {

    private static final int FINER = 4;

    /** mm of water or ice below which nothing is drawn. */
    private static final double SOME = 0.05;

    private final YardShapes shapes;
    private final View view;
    private final Theme theme;
    private final Snapshot snapshot;

    WetArt(YardShapes shapes, View view, Snapshot snapshot) {
        this.shapes = shapes;
        this.view = view;
        this.theme = view.theme();
        this.snapshot = snapshot;
    }

    private double cell() {
        return shapes.size().x() / snapshot.nx();
    }

    /** Blue where the root zone is wet: alpha rises with the square of the available water, so that spots stand out. */
    void wetness(Surface s) {
        int nx = snapshot.nx();
        int ny = snapshot.ny();
        boolean[] planted = CellMask.planted(shapes, nx, ny, 1);
        boolean[] fine = CellMask.planted(shapes, nx, ny, FINER);
        CellField field = new CellField(nx, ny, snapshot.wetness());
        int[] argb = new int[nx * ny * FINER * FINER];
        int w = nx * FINER;
        int h = ny * FINER;
        int rgb = theme.at(Tone.WET).argb() & 0xFFFFFF;
        for (int row = 0; row < h; row++) {
            for (int col = 0; col < w; col++) {
                double a = 0;
                if (fine[row * w + col]) {
                    double v = Fields.smooth(field, planted, (col + 0.5) / FINER, (row + 0.5) / FINER);
                    double share = Math.max(0, Math.min(1.1, v));
                    a = theme.wetness() * share * share;
                }
                argb[(h - 1 - row) * w + col] = (int) Math.round(255 * a) << 24 | rgb;
            }
        }
        image(s, new Pixels(w, h, argb), theme.dark() ? Surface.Blend.NORMAL : Surface.Blend.MULTIPLY);
    }

    /** Violet where the wind is kept off. */
    void shelter(Surface s, CellField field) {
        CellField fine = Fields.finer(field, 2);
        int[] argb = new int[fine.values().length];
        for (int row = 0; row < fine.ny(); row++) {
            for (int col = 0; col < fine.nx(); col++) {
                double kept = Math.max(0, Math.min(1, 1 - fine.at(col, row)));
                int at = (fine.ny() - 1 - row) * fine.nx() + col;
                argb[at] = (int) Math.round(255 * 0.5 * kept) << 24 | 0x5B4B8A;
            }
        }
        image(s, new Pixels(fine.nx(), fine.ny(), argb), Surface.Blend.NORMAL);
    }

    /** Pictures have their first row in the north: turned back while the surface has north up. */
    private void image(Surface s, Pixels picture, Surface.Blend blend) {
        Point size = shapes.size();
        s.save();
        s.blend(blend);
        s.translate(0, size.y());
        s.scale(1, -1);
        s.image(picture, 0, 0, size.x(), size.y());
        s.restore();
    }

    /** Wet film on paving, then ice with its cracks. */
    void paving(Surface s) {
        Path film = cells(snapshot.film());
        Path ice = cells(snapshot.ice());
        if (film.isEmpty() && ice.isEmpty()) {
            return;
        }
        s.save();
        s.clip(shapes.paved().isEmpty() ? Path.rectangle(0, 0, shapes.size().x(), shapes.size().y()) : shapes.paved());
        if (!film.isEmpty()) {
            s.fill(film, theme.at(Tone.FILM).fade(0.35));
        }
        if (!ice.isEmpty()) {
            s.clip(ice);
            s.fill(ice, theme.at(Tone.ICE_FILL));
            s.stroke(cracks(), Pen.of(theme.at(Tone.ICE_CRACK), Math.max(0.07, 1.1 * view.px())));
        }
        s.restore();
    }

    /** Cells with more than a trace, row by row joined to rectangles. */
    private Path cells(float[] values) {
        double c = cell();
        Path.Builder b = Path.builder();
        for (int row = 0; row < snapshot.ny(); row++) {
            int from = -1;
            for (int col = 0; col <= snapshot.nx(); col++) {
                boolean on = col < snapshot.nx() && values[row * snapshot.nx() + col] > SOME;
                if (on && from < 0) {
                    from = col;
                } else if (!on && from >= 0) {
                    b.rectangle(from * c - 0.02, row * c - 0.02, (col - from) * c + 0.04, c + 0.04);
                    from = -1;
                }
            }
        }
        return b.build();
    }

    private Path cracks() {
        double step = 0.9;
        Path tile = Path.svg("M0 .2L.9 .5M.3 0L.5 .9M0 .8L.4 .45");
        Path.Builder b = Path.builder();
        double lean = 0.42;
        double c = Deterministic.cos(lean);
        double s = Deterministic.sin(lean);
        double reach = shapes.size().x() + shapes.size().y();
        for (double v = -reach; v < reach; v += step) {
            for (double u = -reach; u < reach; u += step) {
                double x = u * c - v * s;
                double y = u * s + v * c;
                if (iced(x, y)) {
                    turned(b, tile, x, y, c, s);
                }
            }
        }
        return b.build();
    }

    private boolean iced(double x, double y) {
        for (double dx = -1; dx <= 1; dx++) {
            for (double dy = -1; dy <= 1; dy++) {
                int col = (int) Math.floor((x + dx) / cell());
                int row = (int) Math.floor((y + dy) / cell());
                boolean in = col >= 0 && row >= 0 && col < snapshot.nx() && row < snapshot.ny();
                if (in && snapshot.ice()[row * snapshot.nx() + col] > SOME) {
                    return true;
                }
            }
        }
        return false;
    }

    private static void turned(Path.Builder b, Path tile, double x, double y, double c, double s) {
        tile.walk(new LineWalker() {
            @Override
            public void moveTo(double u, double v) {
                b.moveTo(x + u * c - v * s, y + u * s + v * c);
            }

            @Override
            public void lineTo(double u, double v) {
                b.lineTo(x + u * c - v * s, y + u * s + v * c);
            }
        });
    }

    /** Water that comes up where a pipe leaks. */
    void leaks(Surface s) {
        for (Snapshot.Leak leak : snapshot.leaks()) {
            double litres = Math.max(0, leak.flow()) * 60_000;
            double r = Math.min(4.5, 0.7 + 0.28 * Math.sqrt(litres));
            Colour c = theme.at(Tone.WET).mix(Colour.BLACK, 0.25);
            Paint stain = new Paint.Radial(
                    leak.x(),
                    leak.y(),
                    r,
                    List.of(
                            new Paint.Stop(0, c.fade(0.75)),
                            new Paint.Stop(0.7, c.fade(0.5)),
                            new Paint.Stop(1, c.fade(0))));
            s.fill(Path.circle(leak.x(), leak.y(), r), stain);
            Pen ripple = Pen.of(theme.at(Tone.STREAK).fade(0.6), Math.max(0.05, view.px()));
            s.stroke(Path.circle(leak.x(), leak.y(), r * 0.22), ripple);
            s.stroke(Path.circle(leak.x(), leak.y(), r * 0.42), ripple);
        }
    }
}
