package provingyard.ui;

import java.util.function.IntFunction;
import javafx.beans.property.IntegerProperty;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import provingyard.picture.Colour;
import provingyard.picture.FontRole;
import provingyard.picture.Path;
import provingyard.picture.Pen;
import provingyard.picture.Surface;
import provingyard.picture.TextStyle;
import provingyard.picture.Theme;
import provingyard.picture.Tone;

/** Time from the start to the finding, with a stop after each test; the arrow keys of the screen move it. */
final class CallDebriefScrub extends Region {

    private static final double EDGE = 28;
    private static final double STOP = 9;

    private final Canvas canvas = new Canvas();
    private final IntegerProperty at;
    private final IntFunction<String> names;
    private int stops;
    private Theme theme = Theme.LIGHT;
    private double lettering = 1;

    /**
     * A bar.
     *
     * @param at number of the test after which the belief is shown, 0 for the start
     * @param names what a stop is called below the bar; empty for those whose number says all
     */
    CallDebriefScrub(IntegerProperty at, IntFunction<String> names) {
        this.at = at;
        this.names = names;
        setId("call-debrief-scrub");
        getStyleClass().add("focus-ring");
        getChildren().add(canvas);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        setOnMousePressed(this::go);
        setOnMouseDragged(this::go);
        at.addListener(o -> {
            draw();
            setAccessibleText(names.apply(at.get()));
            notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
        });
    }

    void show(int tests, Theme look, double size) {
        stops = tests;
        theme = look;
        lettering = size;
        setAccessibleText(names.apply(at.get()));
        requestLayout();
    }

    private void go(MouseEvent e) {
        requestFocus();
        double share = (e.getX() - EDGE) / Math.max(1, getWidth() - 2 * EDGE);
        at.set((int) Math.max(0, Math.min(stops, Math.rint(share * stops))));
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.ceil(26 + 22 * lettering);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        draw();
    }

    private double x(int stop) {
        return EDGE + (getWidth() - 2 * EDGE) * stop / Math.max(1, stops);
    }

    private void draw() {
        var g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        Surface s = new CanvasSurface(g);
        double y = 15;
        int now = at.get();
        Colour accent = theme.at(Tone.ACCENT);
        s.stroke(
                Path.segment(x(0), y, x(stops), y),
                Pen.of(theme.at(Tone.HAIRLINE), 4).round());
        s.stroke(Path.segment(x(0), y, x(now), y), Pen.of(accent, 4).round());
        for (int i = 0; i <= stops; i++) {
            double r = i == 0 ? 5 : i == now ? STOP + 1 : STOP;
            s.fill(Path.circle(x(i), y, r), i == now ? accent : theme.at(Tone.SHEET));
            s.stroke(Path.circle(x(i), y, r), Pen.of(i == now ? accent : theme.at(Tone.INK_2), 1.6));
            if (i > 0 && (x(1) - x(0) > 22 || i == now)) {
                Colour ink = i == now ? theme.at(Tone.ON_ACCENT) : theme.at(Tone.INK);
                s.text(
                        Integer.toString(i),
                        x(i),
                        y + 4.4,
                        TextStyle.of(FontRole.BOLD, 12, ink).middle());
            }
        }
        words(s, now);
    }

    private void words(Surface s, int now) {
        double y = getHeight() - 6;
        double size = 12 * lettering;
        TextStyle quiet = TextStyle.of(FontRole.TEXT, size, theme.at(Tone.INK_2));
        TextStyle loud = TextStyle.of(FontRole.BOLD, size, theme.at(Tone.ACCENT));
        double half = s.textWidth(names.apply(now), FontRole.BOLD, size) / 2;
        double at = Math.max(half + 2, Math.min(getWidth() - half - 2, x(now)));
        s.text(names.apply(now), at, y, loud.middle());
        double left = s.textWidth(names.apply(0), FontRole.TEXT, size);
        if (now != 0 && at - half > left + 20) {
            s.text(names.apply(0), EDGE - 14, y, quiet);
        }
        double right = s.textWidth(names.apply(-1), FontRole.TEXT, size);
        if (at + half < getWidth() - right - 20) {
            s.text(names.apply(-1), getWidth() - 6, y, quiet.end());
        }
    }
}
