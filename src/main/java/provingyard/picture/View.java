package provingyard.picture;

import java.util.EnumSet;
import java.util.Set;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Point;

/**
 * What part of the yard is seen, and how. The yard's north is up.
 *
 * @param width px
 * @param height px
 * @param scale px per m
 * @param centreX m east, in the middle of the picture
 * @param centreY m north, in the middle of the picture
 * @param free what panels leave of the picture, for scale bar and north
 * @param lettering size of the texts beside the theme's, 1 for just that; 0 for no texts, scale bar and north
 * @param language {@code en} or {@code es}
 * @param seconds running time of moving water; the same value draws the same pixels
 * @param blurred whether time runs so fast that a turning stream is seen as its sector only
 * @param shelter share of the wind that comes through per cell, or null
 */
public record View(
        int width,
        int height,
        double scale,
        double centreX,
        double centreY,
        Free free,
        Theme theme,
        Set<Layer> layers,
        double lettering,
        String language,
        UnitSystem units,
        Marks marks,
        double seconds,
        boolean blurred,
        CellField shelter) {

    /** Margins in px that lie under panels. */
    public record Free(double left, double top, double right, double bottom) {
        public static final Free ALL = new Free(0, 0, 0, 0);
    }

    public View {
        layers = layers.isEmpty() ? Set.of() : Set.copyOf(layers);
    }

    /** A view with pipes, spray and wetness, in English and metric, that shows the whole yard in the free part. */
    public static View fit(Point yard, int width, int height, Free free, Theme theme) {
        double w = Math.max(20, width - free.left - free.right);
        double h = Math.max(20, height - free.top - free.bottom);
        double scale = Math.min(w / (yard.x() * 1.03), h / (yard.y() * 1.03));
        double midX = free.left + w / 2;
        double midY = free.top + h / 2;
        return new View(
                width,
                height,
                scale,
                yard.x() / 2 - (midX - width / 2.0) / scale,
                yard.y() / 2 + (midY - height / 2.0) / scale,
                free,
                theme,
                EnumSet.of(Layer.PIPES, Layer.SPRAY, Layer.WETNESS),
                1,
                "en",
                UnitSystem.METRIC,
                Marks.NONE,
                0,
                false,
                null);
    }

    /** px from the left of a place m east. */
    public double x(double east) {
        return width / 2.0 + (east - centreX) * scale;
    }

    /** px from the top of a place m north. */
    public double y(double north) {
        return height / 2.0 - (north - centreY) * scale;
    }

    /** The place on the yard under a pixel. */
    public Point yard(double px, double py) {
        return new Point(centreX + (px - width / 2.0) / scale, centreY - (py - height / 2.0) / scale);
    }

    /** m that one px is. */
    public double px() {
        return theme.lines() / scale;
    }

    /** Turns a surface from px to m, north up; between save and restore. */
    void toMetres(Surface s) {
        s.translate(x(0), y(0));
        s.scale(scale, -scale);
    }

    public boolean shows(Layer layer) {
        return layers.contains(layer);
    }

    public View at(double pxPerMetre, double east, double north) {
        return new View(
                width,
                height,
                pxPerMetre,
                east,
                north,
                free,
                theme,
                layers,
                lettering,
                language,
                units,
                marks,
                seconds,
                blurred,
                shelter);
    }

    public View theme(Theme other) {
        return new View(
                width, height, scale, centreX, centreY, free, other, layers, lettering, language, units, marks, seconds,
                blurred, shelter);
    }

    public View layers(Set<Layer> shown) {
        return new View(
                width, height, scale, centreX, centreY, free, theme, shown, lettering, language, units, marks, seconds,
                blurred, shelter);
    }

    /** The same without texts, scale bar and north, or with them in the theme's size. */
    public View labels(boolean written) {
        return lettering(written ? 1 : 0);
    }

    /** The same with texts of another size beside the theme's; 0 for none. */
    public View lettering(double size) {
        return new View(
                width, height, scale, centreX, centreY, free, theme, layers, size, language, units, marks, seconds,
                blurred, shelter);
    }

    /** Whether texts are written. */
    public boolean labels() {
        return lettering > 0;
    }

    /** A size in px of the theme's texts, in this view's lettering. */
    double letters(double px) {
        return px * Math.max(1e-3, lettering);
    }

    public View in(String otherLanguage, UnitSystem system) {
        return new View(
                width,
                height,
                scale,
                centreX,
                centreY,
                free,
                theme,
                layers,
                lettering,
                otherLanguage,
                system,
                marks,
                seconds,
                blurred,
                shelter);
    }

    public View marks(Marks other) {
        return new View(
                width, height, scale, centreX, centreY, free, theme, layers, lettering, language, units, other, seconds,
                blurred, shelter);
    }

    public View seconds(double time) {
        return new View(
                width, height, scale, centreX, centreY, free, theme, layers, lettering, language, units, marks, time,
                blurred, shelter);
    }

    /** The same while time runs so fast that turning streams blur, or not. */
    public View blurred(boolean fast) {
        return new View(
                width, height, scale, centreX, centreY, free, theme, layers, lettering, language, units, marks, seconds,
                fast, shelter);
    }

    /** The same without what ground and canopies do not depend on. */
    View plain() {
        return new View(
                width,
                height,
                scale,
                centreX,
                centreY,
                Free.ALL,
                theme,
                Set.of(),
                0,
                "en",
                UnitSystem.METRIC,
                Marks.NONE,
                0,
                false,
                null);
    }

    public View shelter(CellField field) {
        return new View(
                width, height, scale, centreX, centreY, free, theme, layers, lettering, language, units, marks, seconds,
                blurred, field);
    }
}
