package provingyard.picture;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Point;

/** What a service call lays over the plan: how likely each part of the main is, and where readings were taken. px. */
public final class CallArt {

    /** Probability from which a part is drawn, and from which its per cent are written. */
    private static final double SEEN = 0.004;

    private static final double WRITTEN = 0.08;

    private static final double LEAST_BAND = 4;
    private static final double BAND = 92;
    private static final double WIDEST_BAND = 26;

    private static final double PILL_HEIGHT = 28;
    private static final double EDGE = 6;

    /** px of a pill's near edge from the place that it belongs to, to either side, and of its middle, up and down. */
    private static final double[] ASIDE = {16, -16, 52, -52, 96, -96};

    private static final double[] ALOFT = {-32, 32, -50, 50, -66, 66, -84, 84, -100, 100};

    /** px² of overlap that a pill takes rather than to lie a px farther off. */
    private static final double NEARER = 1.5;

    /** px that scale bar, north and wind take in the lower left corner. */
    private static final double SCALE_WIDE = 340;

    private static final double SCALE_TALL = 46;

    /** px that a mark reaches from its place. */
    private static final double MARK = 14;

    /** px that a letter reaches from its middle. */
    private static final double LETTER = 7;

    /** px between two letters under which one of them moves aside. */
    private static final double CROWDED = 30;

    /**
     * A part of a pipe and how likely what is wrong is there.
     *
     * @param from share of the pipe's way at which it begins
     * @param to share at which it ends
     */
    public record Part(String pipe, double from, double to, double probability) {}

    /** A numbered reading at a place. */
    public record Reading(Point at, int number, String text) {}

    private CallArt() {}

    /** Shades the parts of the main. */
    public static void belief(Surface s, YardShapes shapes, View view, List<Part> parts) {
        Colour belief = view.theme().at(Tone.BELIEF);
        Colour halo = view.theme().at(Tone.HALO);
        List<Part> seen = parts.stream().filter(p -> p.probability() >= SEEN).toList();
        for (Part part : seen) {
            s.stroke(Path.polyline(way(shapes, view, part)), Pen.of(halo.fade(0.8), width(part) + 3));
        }
        for (Part part : seen) {
            double alpha = Math.min(0.95, 0.3 + 3.2 * part.probability());
            s.stroke(Path.polyline(way(shapes, view, part)), Pen.of(belief.fade(alpha), width(part)));
        }
    }

    /**
     * Writes the shares of the likely parts, the likeliest first; none over another one, or over what is taken, to which
     * they are added: left, top, right and bottom of each.
     */
    public static void shares(
            Surface s,
            YardShapes shapes,
            View view,
            List<Part> parts,
            List<double[]> taken,
            java.util.function.DoubleFunction<String> percent) {
        parts.stream()
                .filter(p -> p.probability() >= WRITTEN)
                .sorted(java.util.Comparator.comparingDouble(p -> -p.probability()))
                .forEach(p -> write(s, shapes, view, p, percent.apply(p.probability()), taken));
    }

    private static void write(Surface s, YardShapes shapes, View view, Part part, String text, List<double[]> taken) {
        List<Point> way = way(shapes, view, part);
        Point middle = Polygons.along(way, Polygons.length(way) / 2);
        double size = view.letters(Math.min(16, 12 + 12 * part.probability()));
        double wide = s.textWidth(text, FontRole.BOLD, size);
        double off = Math.max(MARK, width(part) / 2) + 4;
        double[][] middles = {
            {middle.x(), middle.y() - off - size / 2},
            {middle.x() - off - wide / 2, middle.y()},
            {middle.x() + off + wide / 2, middle.y()},
            {middle.x(), middle.y() + off + size / 2}
        };
        for (double[] at : middles) {
            double[] box = {at[0] - wide / 2 - 2, at[1] - size / 2, at[0] + wide / 2 + 2, at[1] + size / 2};
            if (taken.stream().allMatch(t -> common(t, box) == 0)) {
                taken.add(box);
                TextStyle style = TextStyle.of(FontRole.BOLD, size, view.theme().at(Tone.BELIEF))
                        .middle()
                        .halo(view.theme().at(Tone.HALO), 4);
                s.text(text, at[0], at[1] + 0.36 * size, style);
                return;
            }
        }
    }

    /** What marks take: left, top, right and bottom of each. */
    public static List<double[]> boxes(View view, List<Point> marks) {
        List<double[]> boxes = new ArrayList<>();
        marks.forEach(m -> {
            double x = view.x(m.x());
            double y = view.y(m.y());
            boxes.add(new double[] {x - MARK, y - MARK, x + MARK, y + MARK});
        });
        return boxes;
    }

    private static double width(Part part) {
        return Math.min(WIDEST_BAND, LEAST_BAND + BAND * part.probability());
    }

    private static List<Point> way(YardShapes shapes, View view, Part part) {
        List<Point> whole = shapes.pipes().ways().get(part.pipe());
        double length = Polygons.length(whole);
        return Polygons.part(whole, part.from() * length, part.to() * length).stream()
                .map(p -> new Point(view.x(p.x()), view.y(p.y())))
                .toList();
    }

    /**
     * Writes the letters of valves beside them.
     *
     * @return what they take: left, top, right and bottom of each
     */
    public static List<double[]> valves(Surface s, View view, java.util.Map<String, Point> valves) {
        TextStyle style = TextStyle.of(
                        FontRole.BOLD, view.letters(14), view.theme().at(Tone.LABEL))
                .middle()
                .halo(view.theme().at(Tone.HALO), 4);
        List<Point> written = new ArrayList<>();
        valves.forEach((letter, at) -> {
            Point below = new Point(view.x(at.x()), view.y(at.y()) + 31);
            boolean free = written.stream().noneMatch(w -> w.distance(below) < CROWDED);
            Point place = free ? below : new Point(below.x() + 32, below.y() - 26);
            written.add(place);
            s.text(letter, place.x(), place.y(), style);
        });
        return written.stream()
                .map(w -> new double[] {w.x() - LETTER, w.y() - 2 * LETTER, w.x() + LETTER, w.y() + 4})
                .toList();
    }

    /** Numbers the places of readings; pills cover neither each other nor what is taken, nor scale bar and north. */
    public static void readings(Surface s, View view, List<Reading> readings, List<double[]> others) {
        List<double[]> taken = new ArrayList<>(others);
        double foot = view.height() - view.free().bottom();
        double left = view.free().left();
        taken.add(new double[] {left, foot - view.letters(SCALE_TALL), left + view.letters(SCALE_WIDE), foot});
        List<Marks.Pin> pins = new ArrayList<>();
        for (Reading reading : readings) {
            double big = Math.max(1, view.letters(1));
            double width = s.textWidth(reading.text(), FontRole.STRONG, 13 * big) + 38 * big;
            pins.add(pin(view, reading, width, PILL_HEIGHT * big, taken));
        }
        new NoteArt(view.marks(Marks.NONE.pins(pins))).draw(s);
    }

    private static Marks.Pin pin(View view, Reading reading, double width, double height, List<double[]> taken) {
        double x = view.x(reading.at().x());
        double y = view.y(reading.at().y());
        double[] best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double aloft : ALOFT) {
            for (double aside : ASIDE) {
                double left = aside > 0 ? x + aside : x + aside - width;
                double[] box = {left, y + aloft - height / 2, left + width, y + aloft + height / 2};
                double cost = NEARER * Math.hypot(aside, aloft)
                        + outside(view, box)
                        + taken.stream().mapToDouble(t -> common(t, box)).sum();
                if (cost < least - 1e-9) {
                    least = cost;
                    best = box;
                }
            }
        }
        taken.add(best);
        double middle = (best[1] + best[3]) / 2;
        return new Marks.Pin(reading.at(), reading.number(), reading.text(), best[0] - x, middle - y);
    }

    /** px² of a box that panels would cover, counted more than what lies on other pills. */
    private static double outside(View view, double[] box) {
        View.Free free = view.free();
        double[] room = {
            free.left() + EDGE,
            free.top() + EDGE,
            view.width() - free.right() - EDGE,
            view.height() - free.bottom() - EDGE
        };
        double whole = (box[2] - box[0]) * (box[3] - box[1]);
        return 4 * (whole - common(room, box));
    }

    private static double common(double[] a, double[] b) {
        double w = Math.min(a[2], b[2]) - Math.max(a[0], b[0]);
        double h = Math.min(a[3], b[3]) - Math.max(a[1], b[1]);
        return w > 0 && h > 0 ? w * h : 0;
    }
}
