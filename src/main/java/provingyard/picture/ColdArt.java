package provingyard.picture;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Point;
import provingyard.season.Snapshot;

/** Cold air near the ground: closed lines of equal temperature, each with its value on a dark pill. */
final class ColdArt {

    /** The warmest line drawn, °C. */
    private static final int WARMEST = 1;

    /** Most lines drawn at once. */
    private static final int LINES = 4;

    /** Smallest ring drawn, m2. */
    private static final double LEAST_AREA = 6;

    static final Colour PILL = Colour.of("#10151D");
    static final Colour ON_PILL = Colour.of("#E6F0FF");
    static final double PILL_ALPHA = 0.92;

    private record Ring(int level, List<Point> line) {}

    private final YardShapes shapes;
    private final View view;
    private final Theme theme;
    private final List<Ring> rings = new ArrayList<>();
    private int coldest = Integer.MAX_VALUE;

    ColdArt(YardShapes shapes, View view, Snapshot snapshot) {
        this.shapes = shapes;
        this.view = view;
        this.theme = view.theme();
        CellField fine = Fields.finer(new CellField(snapshot.nx(), snapshot.ny(), snapshot.cold()), null, 2);
        double cell = shapes.size().x() / fine.nx();
        float least = Float.POSITIVE_INFINITY;
        for (float v : fine.values()) {
            least = Math.min(least, v);
        }
        if (!Float.isFinite(least)) {
            return;
        }
        int from = (int) Math.floor(least) + 1;
        for (int level = from; level <= WARMEST && level < from + LINES; level++) {
            for (List<Point> ring : Fields.under(fine, level)) {
                List<Point> metres = ring.stream()
                        .map(p -> new Point(p.x() * cell, p.y() * cell))
                        .toList();
                if (Math.abs(Polygons.area(metres)) > LEAST_AREA && !isEdge(metres, 1.5 * cell)) {
                    rings.add(new Ring(level, metres));
                    coldest = Math.min(coldest, level);
                }
            }
        }
    }

    /** Whether a ring only follows the yard's edge: then all of the yard is colder, and there is no line to draw. */
    private boolean isEdge(List<Point> ring, double reach) {
        Point size = shapes.size();
        return ring.stream()
                .allMatch(p -> p.x() < reach || p.y() < reach || p.x() > size.x() - reach || p.y() > size.y() - reach);
    }

    /** Fills and lines. Metres, north up. */
    void lines(Surface s) {
        double px = view.px();
        s.save();
        s.clip(Path.rectangle(0, 0, shapes.size().x(), shapes.size().y()));
        for (Ring r : rings) {
            // A ring that runs with the clock holds warmer air.
            if (Polygons.area(r.line()) > 0) {
                s.fill(Polygons.smooth(r.line()), theme.at(Tone.COLD_FILL).fade(0.1));
            }
        }
        for (Ring r : rings) {
            Pen pen = Pen.of(theme.at(Tone.COLD_LINE).fade(0.8), 1.3 * px);
            s.stroke(Polygons.smooth(r.line()), r.level() == coldest ? pen : pen.dashed(5 * px, 4 * px));
        }
        s.restore();
    }

    /** Values, one on each ring where it lies farthest from sensors and from those written already. px. */
    void values(Surface s, List<Point> sensors) {
        List<Point> taken = new ArrayList<>();
        for (Point p : sensors) {
            taken.add(new Point(view.x(p.x()), view.y(p.y()) - SensorArt.rise(theme)));
        }
        for (Marks.Note n : view.marks().notes()) {
            for (double across = 20; across < 160; across += 40) {
                taken.add(new Point(view.x(n.at().x()) + n.dx() + across, view.y(n.at().y()) + n.dy() + 20));
            }
        }
        for (Ring r : rings) {
            if (Math.abs(Polygons.area(r.line())) < 4 * LEAST_AREA) {
                continue;
            }
            Point best = null;
            double most = -1;
            for (Point p : r.line()) {
                double x = view.x(p.x());
                double y = view.y(p.y());
                boolean seen = x > view.free().left() + 40
                        && x < view.width() - view.free().right() - 40
                        && y > view.free().top() + 16
                        && y < view.height() - view.free().bottom() - 40
                        && p.y() < shapes.size().y() - 1
                        && p.y() > 1;
                double d = taken.stream()
                        .mapToDouble(q -> q.distance(new Point(x, y)))
                        .min()
                        .orElse(1000 - y);
                d = Math.min(d, 260) - Math.abs(y - view.height() / 2.0) * 0.02;
                if (seen && d > most) {
                    most = d;
                    best = new Point(x, y);
                }
            }
            if (best != null && most > 44) {
                taken.add(best);
                pill(s, best, Words.temperature(r.level(), view));
            }
        }
    }

    private void pill(Surface s, Point at, String text) {
        double w = s.textWidth(text, FontRole.STRONG, view.letters(12)) + 14;
        double h = view.letters(19);
        s.fill(Path.rounded(at.x() - w / 2, at.y() - h / 2, w, h, h / 2), PILL.fade(PILL_ALPHA));
        s.text(
                text,
                at.x(),
                at.y() + view.letters(4.2),
                TextStyle.of(FontRole.STRONG, view.letters(12), ON_PILL).middle());
    }
}
