package provingyard.picture;

import provingyard.numeric.Deterministic;
import provingyard.scenario.Point;
import provingyard.season.Snapshot;

/** What cells show: wetness, shelter, wet film and ice. Metres, north up. */
final class WetArt {

    /** mm of water or ice below which nothing is drawn. */
    private static final double SOME = 0.03;

    /** mm of ice from which it shows cracks. */
    private static final double ICED = 0.1;

    /** Share of the available water from which wetness is drawn no stronger. */
    private static final double DRAINING = 1.25;

    /** m within the yard's edge over which a film fades. */
    private static final double SOFT_EDGE = 2;

    /** Parts of a cell's side on paving. */
    private static final int PAVING_FINER = 3;

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

    /**
     * Blue where the root zone is wet: alpha rises with the square of the available water, so that spots stand out, and
     * is greatest where water drains.
     */
    void wetness(Surface s) {
        int nx = snapshot.nx();
        int ny = snapshot.ny();
        PlantedCells planted = shapes.planted().nx() == nx && shapes.planted().ny() == ny
                ? shapes.planted()
                : PlantedCells.of(shapes.yard(), nx, ny, shapes.base().planted());
        int finer = PlantedCells.FINER;
        int w = nx * finer;
        int h = ny * finer;
        float[] fine = Fields.finer(new CellField(nx, ny, snapshot.wetness()), planted.cells(), finer)
                .values();
        int[] argb = new int[w * h];
        int rgb = theme.at(Tone.WET).argb() & 0xFFFFFF;
        for (int row = 0; row < h; row++) {
            for (int col = 0; col < w; col++) {
                double share = Math.max(0, Math.min(DRAINING, fine[row * w + col])) / DRAINING;
                double a = planted.fine()[row * w + col] ? theme.wetness() * share * share : 0;
                argb[(h - 1 - row) * w + col] = (int) Math.round(255 * a) << 24 | rgb;
            }
        }
        image(s, new Pixels(w, h, argb), theme.dark() ? Surface.Blend.NORMAL : Surface.Blend.MULTIPLY);
    }

    /** Violet where the wind is kept off. */
    void shelter(Surface s, CellField field) {
        CellField fine = Fields.finer(field, null, 2);
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

    /** Wet film on paving, then ice with its cracks, both smooth within the paving's edges. */
    void paving(Surface s) {
        boolean[] paved = new boolean[snapshot.paving().length];
        for (int i = 0; i < paved.length; i++) {
            paved[i] = !Float.isNaN(snapshot.paving()[i]);
        }
        if (some(snapshot.film())) {
            CellField film = fadedAtEdge(smooth(snapshot.film(), paved));
            overPaving(s, film, theme.at(Tone.FILM), 0.02, 0.7, theme.dark() ? 0.3 : 0.36);
        }
        if (some(snapshot.ice())) {
            CellField ice = smooth(snapshot.ice(), paved);
            overPaving(s, ice, theme.at(Tone.ICE_FILL), 0.04, 0.14, 0.94);
            s.save();
            s.clip(pavedPath());
            s.stroke(cracks(ice), Pen.of(theme.at(Tone.ICE_CRACK), Math.max(0.07, 1.1 * view.px())));
            s.restore();
        }
    }

    private static boolean some(float[] values) {
        for (float v : values) {
            if (v > SOME) {
                return true;
            }
        }
        return false;
    }

    private CellField smooth(float[] values, boolean[] counts) {
        return Fields.finer(new CellField(snapshot.nx(), snapshot.ny(), values), counts, PAVING_FINER);
    }

    /** Walks and streets go on beyond the yard, where no film is known: it ends softly there. */
    private CellField fadedAtEdge(CellField film) {
        float[] faded = film.values().clone();
        double cell = shapes.size().x() / film.nx();
        for (int row = 0; row < film.ny(); row++) {
            for (int col = 0; col < film.nx(); col++) {
                int cells = Math.min(Math.min(col, film.nx() - 1 - col), Math.min(row, film.ny() - 1 - row));
                faded[row * film.nx() + col] *= (float) Math.min(1, (cells + 0.5) * cell / SOFT_EDGE);
            }
        }
        return new CellField(film.nx(), film.ny(), faded);
    }

    private Path pavedPath() {
        return shapes.paved().isEmpty()
                ? Path.rectangle(0, 0, shapes.size().x(), shapes.size().y())
                : shapes.paved();
    }

    /** A colour on the paving, from nothing at {@code low} mm to {@code most} alpha at {@code high} mm. */
    private void overPaving(Surface s, CellField field, Colour colour, double low, double high, double most) {
        int w = field.nx();
        int h = field.ny();
        int[] argb = new int[w * h];
        for (int row = 0; row < h; row++) {
            for (int col = 0; col < w; col++) {
                double t = Math.max(0, Math.min(1, (field.values()[row * w + col] - low) / (high - low)));
                int a = (int) Math.round(255 * most * t * t * (3 - 2 * t));
                argb[(h - 1 - row) * w + col] = a << 24 | colour.argb() & 0xFFFFFF;
            }
        }
        double kx = w / shapes.size().x();
        double ky = h / shapes.size().y();
        s.save();
        s.translate(0, shapes.size().y());
        s.scale(1 / kx, -1 / ky);
        s.tile(pavedPath().mapped(kx, -ky, 0, h), new Pixels(w, h, argb));
        s.restore();
    }

    private Path cracks(CellField ice) {
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
                if (iced(ice, x, y)) {
                    turned(b, tile, x, y, c, s);
                }
            }
        }
        return b.build();
    }

    private boolean iced(CellField ice, double x, double y) {
        int col = (int) Math.floor(x / shapes.size().x() * ice.nx());
        int row = (int) Math.floor(y / shapes.size().y() * ice.ny());
        boolean in = col >= 0 && row >= 0 && col < ice.nx() && row < ice.ny();
        return in && ice.at(col, row) > ICED;
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
}
