package provingyard.picture;

import java.util.List;
import provingyard.scenario.Plumbing.DripLine;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Plumbing.Head;
import provingyard.scenario.Point;

/** Pipes, drip lines, heads, and what sits in the pipes. */
final class PipeArt {

    private final YardShapes shapes;
    private final View view;
    private final Theme theme;
    private final Live live;

    PipeArt(YardShapes shapes, View view, Live live) {
        this.shapes = shapes;
        this.view = view;
        this.theme = view.theme();
        this.live = live;
    }

    /** Pipes on the ground. Metres, north up. */
    void pipes(Surface s) {
        double px = view.px();
        Colour halo = theme.at(Tone.HALO);
        for (PipeMap.Run r : shapes.pipes().risers()) {
            lateral(s, r, px, halo);
        }
        for (PipeMap.Run r : shapes.pipes().runs()) {
            if (r.zone() != null) {
                lateral(s, r, px, halo);
            }
        }
        for (DripLine d : shapes.scenario().plumbing().drips()) {
            drip(s, d, px);
        }
        // Case and core in two rounds, so that joints of the mainline stay open inside.
        Pen[] pens = {
            Pen.of(halo.fade(0.6), 6.2 * px).round(),
            Pen.of(theme.at(Tone.PIPE), 4.2 * px).round(),
            Pen.of(theme.at(Tone.PIPE_CORE), 1.5 * px).round()
        };
        for (Pen pen : pens) {
            for (PipeMap.Run r : shapes.pipes().runs()) {
                if (r.zone() == null) {
                    s.stroke(Path.polyline(r.way()), pen);
                }
            }
        }
        selectedPipe(s, px);
    }

    private void lateral(Surface s, PipeMap.Run r, double px, Colour halo) {
        Path way = Path.polyline(r.way());
        boolean running = live.open(r.zone());
        s.stroke(way, Pen.of(halo.fade(0.55), 3.2 * px).round());
        s.stroke(way, Pen.of(theme.at(Tone.LATERAL), (running ? 2.2 : 1.3) * px).round());
    }

    private void drip(Surface s, DripLine d, double px) {
        boolean running = live.open(d.zone());
        Colour c = theme.at(running ? Tone.SPRAY_EDGE : Tone.LATERAL);
        double r = (running ? 1.25 : 0.9) * px;
        double step = Math.max(0.28, 4.2 * px);
        double length = Polygons.length(d.way());
        Path.Builder dots = Path.builder();
        for (double at = step / 2; at < length; at += step) {
            Point p = Polygons.along(d.way(), at);
            dots.circle(p.x(), p.y(), r);
        }
        s.fill(dots.build(), c);
    }

    private void selectedPipe(Surface s, double px) {
        List<Point> way = shapes.pipes().ways().get(view.marks().selected());
        if (way != null) {
            s.stroke(Path.polyline(way), Pen.of(theme.at(Tone.HALO), 9 * px).round());
            s.stroke(Path.polyline(way), Pen.of(theme.at(Tone.SELECTED), 5 * px).round());
        }
    }

    /** Heads over all. px. */
    void heads(Surface s) {
        for (Head h : shapes.scenario().plumbing().heads()) {
            boolean on = live.spraying(h);
            boolean chosen = h.id().equals(view.marks().selected());
            Path dot = Path.circle(
                    view.x(h.at().x()), view.y(h.at().y()), (on ? 3.6 : 2.9) * Math.min(1.35, theme.lines()));
            s.fill(dot, theme.at(on ? Tone.SPRAY_EDGE : Tone.HEAD));
            s.stroke(dot, Pen.of(theme.at(on ? Tone.HALO : Tone.HEAD_RING), theme.px(1.3)));
            if (chosen) {
                ring(s, view.x(h.at().x()), view.y(h.at().y()), 8);
            } else if (h.id().equals(view.marks().hovered())) {
                s.stroke(Path.circle(view.x(h.at().x()), view.y(h.at().y()), 7), Pen.of(theme.at(Tone.LABEL), 2));
            }
        }
    }

    /** Fittings over all. px. */
    void fittings(Surface s) {
        for (PipeMap.Place p : shapes.pipes().fittings().values()) {
            s.save();
            s.translate(view.x(p.at().x()), view.y(p.at().y()));
            double k = Math.min(1, Math.max(0.6, view.scale() / 10)) * (theme == Theme.PROJECTOR ? 1.3 : 1);
            s.scale(k, k);
            symbol(s, p.fitting(), p.direction());
            if (p.fitting().id().equals(view.marks().selected())) {
                ring(s, 0, 0, 14);
            } else if (p.fitting().id().equals(view.marks().hovered())) {
                s.stroke(Path.circle(0, 0, 12), Pen.of(theme.at(Tone.LABEL), 2));
            }
            s.restore();
        }
    }

    private void ring(Surface s, double x, double y, double r) {
        s.stroke(Path.circle(x, y, r), Pen.of(theme.at(Tone.HALO), 5));
        s.stroke(Path.circle(x, y, r), Pen.of(theme.at(Tone.SELECTED), 2.5));
    }

    private void symbol(Surface s, Fitting f, double direction) {
        Colour pipe = theme.at(Tone.PIPE);
        Colour halo = theme.at(Tone.HALO);
        switch (f.kind()) {
            case ZONE_VALVE -> {
                box(s, 7, 5.5, 2.5, halo, pipe);
                Colour bow = theme.at(live.open(f.id()) ? Tone.SPRAY_EDGE : Tone.PIPE);
                s.fill(Path.svg("M-4.6 -3L4.6 3V-3L-4.6 3Z"), bow);
            }
            case MASTER_VALVE -> {
                box(s, 9, 7, 2.5, halo, pipe);
                s.fill(Path.svg("M-6 -4L6 4V-4L-6 4Z"), pipe);
                boolean shut = live.snapshot() != null && !live.snapshot().masterOpen();
                s.fill(Path.circle(0, 0, 2.6), shut ? theme.at(Tone.PLATE_ALARM) : halo);
                s.stroke(Path.circle(0, 0, 2.6), Pen.of(pipe, 1.2));
            }
            case ISOLATION_VALVE -> {
                s.fill(Path.circle(0, 0, 6), halo);
                s.stroke(Path.circle(0, 0, 6), Pen.of(pipe, 1.4));
                s.fill(Path.svg("M-3.2 -2.2L3.2 2.2V-2.2L-3.2 2.2Z"), pipe);
            }
            case METER -> {
                box(s, 8, 6, 0, halo, pipe);
                s.stroke(
                        Path.svg("M-5 -3H5V3H-5ZM-2 -3V3M1 -3V3"),
                        Pen.of(pipe, 1.1).sharp());
            }
            case BACKFLOW_PREVENTER -> {
                box(s, 6, 4.5, 0, halo, pipe);
                arrow(s, direction, pipe);
            }
            case REGULATOR, FILTER, CHECK_VALVE -> {
                box(s, 5.5, 4.5, 4.5, halo, pipe);
                if (f.kind() == FittingKind.FILTER) {
                    s.stroke(Path.svg("M-2.5 -2.5L2.5 2.5M-2.5 0L0 2.5M0 -2.5L2.5 0"), Pen.of(pipe, 0.9));
                } else {
                    arrow(s, direction, pipe);
                }
            }
        }
    }

    private static void box(Surface s, double halfWidth, double halfHeight, double radius, Colour fill, Colour line) {
        Path box = Path.rounded(-halfWidth, -halfHeight, 2 * halfWidth, 2 * halfHeight, radius);
        s.fill(box, fill);
        s.stroke(box, Pen.of(line, 1.5));
    }

    private static void arrow(Surface s, double direction, Colour line) {
        s.save();
        s.rotate(-direction);
        s.stroke(Path.svg("M-3.4 0H3.4M1 -2.5L3.5 0L1 2.5"), Pen.of(line, 1.3));
        s.restore();
    }
}
