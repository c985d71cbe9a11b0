package provingyard.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import provingyard.call.CallMap;
import provingyard.call.CallReview;
import provingyard.call.ReviewedTest;
import provingyard.diagnosis.Belief;
import provingyard.picture.Colour;
import provingyard.picture.FontRole;
import provingyard.picture.Path;
import provingyard.picture.Pen;
import provingyard.picture.Surface;
import provingyard.picture.TextStyle;
import provingyard.picture.Theme;
import provingyard.picture.Tone;
import provingyard.picture.View;
import provingyard.scenario.Point;

/** What a service call's debrief draws over the yard: how likely each part was, where it was, and a test's reading. */
final class CallDebriefArt {

    /** Probability from which a part carries a number. */
    private static final double NUMBERED = 0.08;

    /** A run whose likeliest cell has less than this times its share is likely all along. */
    private static final double ALIKE = 1.6;

    /** Probability from which a device is marked. */
    private static final double MARKED = 0.02;

    /** What is shown: a belief, and the test after which it was held; null at the start. */
    record Moment(Belief belief, ReviewedTest test, String pin) {}

    private final CallReview review;
    private final View seen;
    private final Theme theme;
    private final double lettering;
    private final Moment moment;

    CallDebriefArt(CallReview review, View seen, double lettering, Moment moment) {
        this.review = review;
        this.seen = seen;
        this.lettering = lettering;
        this.moment = moment;
        theme = seen.theme();
    }

    void draw(Surface s) {
        mains(s);
        devices(s);
        numbers(s);
        review.places().forEach(p -> truth(s, seen.x(p.x()), seen.y(p.y())));
        pin(s);
    }

    private Path way(List<Point> points) {
        return Path.polyline(points.stream()
                .map(p -> new Point(seen.x(p.x()), seen.y(p.y())))
                .toList());
    }

    /** As wide and as dark as a part is likely; a light case keeps it apart from the plan. */
    private void mains(Surface s) {
        for (CallMap.Stretch m : review.map().mains()) {
            double p = moment.belief().ofClass(m.repairClass());
            if (p > 0.003) {
                s.stroke(way(m.way()), Pen.of(theme.at(Tone.HALO), width(p) + 3));
            }
        }
        for (CallMap.Stretch m : review.map().mains()) {
            double p = moment.belief().ofClass(m.repairClass());
            if (p > 0.003) {
                Colour shade = theme.at(Tone.BELIEF).fade(Math.min(1, 0.4 + 3.2 * p));
                s.stroke(way(m.way()), Pen.of(shade, width(p)));
            }
        }
    }

    private static double width(double p) {
        return Math.min(20, 4 + 92 * p);
    }

    private void devices(Surface s) {
        for (Map.Entry<Point, Double> spot : spots().entrySet()) {
            double p = spot.getValue();
            if (p >= MARKED) {
                double x = seen.x(spot.getKey().x());
                double y = seen.y(spot.getKey().y());
                double r = 5 + 9 * Math.sqrt(p);
                s.fill(Path.circle(x, y, r + 1.5), theme.at(Tone.HALO));
                s.fill(Path.circle(x, y, r), theme.at(Tone.BELIEF).fade(Math.min(1, 0.3 + 2 * p)));
                s.stroke(Path.circle(x, y, r), Pen.of(theme.at(Tone.BELIEF), 1.6));
            }
        }
    }

    /** Probability by place: several faults of one device lie on each other. */
    private Map<Point, Double> spots() {
        Map<Point, Double> sums = new LinkedHashMap<>();
        review.map()
                .spots()
                .forEach((repairClass, at) -> sums.merge(at, moment.belief().ofClass(repairClass), Double::sum));
        return sums;
    }

    /** A number with the places where it may stand, the best first. */
    private record Number(List<Point> places, String text, double p) {}

    /** One number for each run of the main and each device that is likely enough, none over another or the truth. */
    private void numbers(Surface s) {
        List<Number> all = new ArrayList<>();
        review.map().mains().stream().map(CallMap.Stretch::pipe).distinct().forEach(p -> run(p, all));
        spots().forEach((at, p) -> {
            if (p >= NUMBERED) {
                Point above = new Point(seen.x(at.x()), seen.y(at.y()) - 17 * lettering);
                Point below = new Point(seen.x(at.x()), seen.y(at.y()) + 27 * lettering);
                all.add(new Number(List.of(above, below), percent(p), p));
            }
        });
        all.sort((a, b) -> Double.compare(b.p(), a.p()));
        List<double[]> taken = new ArrayList<>();
        for (Point p : review.places()) {
            taken.add(new double[] {seen.x(p.x()) - 12, seen.y(p.y()) - 12, seen.x(p.x()) + 12, seen.y(p.y()) + 12});
        }
        pill(s).ifPresent(taken::add);
        all.forEach(n -> number(s, n, taken));
    }

    private void number(Surface s, Number n, List<double[]> taken) {
        double size = (12 + Math.min(4, 8 * n.p())) * lettering;
        double half = s.textWidth(n.text(), FontRole.BOLD, size) / 2;
        for (Point place : n.places()) {
            double x = Math.max(half + 4, Math.min(seen.width() - half - 4, place.x()));
            double y = Math.max(size + 2, place.y());
            double[] box = {x - half - 3, y - size, x + half + 3, y + 3};
            if (taken.stream().noneMatch(t -> t[0] < box[2] && box[0] < t[2] && t[1] < box[3] && box[1] < t[3])) {
                taken.add(box);
                TextStyle style = TextStyle.of(FontRole.BOLD, size, theme.at(Tone.BELIEF))
                        .middle()
                        .halo(theme.at(Tone.SHEET), 4);
                s.text(n.text(), x, y, style);
                return;
            }
        }
    }

    /** What a run of the main adds up to: at its likeliest cell, or in its middle where all are alike. */
    private void run(String pipe, List<Number> all) {
        List<CallMap.Stretch> cells = new ArrayList<>(
                review.map().mains().stream().filter(m -> m.pipe().equals(pipe)).toList());
        double sum = cells.stream().mapToDouble(this::belief).sum();
        if (sum < NUMBERED) {
            return;
        }
        CallMap.Stretch middle = cells.get(cells.size() / 2);
        cells.sort((a, b) -> Double.compare(belief(b), belief(a)));
        if (belief(cells.get(0)) < ALIKE * sum / cells.size()) {
            cells.remove(middle);
            cells.add(0, middle);
        }
        List<Point> places = new ArrayList<>();
        for (CallMap.Stretch cell : cells) {
            Point at = cell.way().get(cell.way().size() / 2);
            double away = width(belief(cell)) / 2 + 6;
            double x = seen.x(at.x());
            double y = seen.y(at.y());
            places.add(new Point(x, y - away));
            places.add(new Point(x, y + away + 12 * lettering));
            places.add(new Point(x + away + 18 * lettering, y + 4));
        }
        all.add(new Number(places, percent(sum), sum));
    }

    private double belief(CallMap.Stretch cell) {
        return moment.belief().ofClass(cell.repairClass());
    }

    private static String percent(double p) {
        return p > 0.99 ? "> 99\u00a0%" : Math.round(p * 100) + "\u00a0%";
    }

    private void truth(Surface s, double x, double y) {
        s.fill(Path.circle(x, y, 10), theme.at(Tone.SHEET));
        s.stroke(Path.circle(x, y, 9), Pen.of(theme.at(Tone.ALARM), 2.4));
        s.stroke(Path.segment(x - 4, y - 4, x + 4, y + 4), Pen.of(theme.at(Tone.ALARM), 2.4));
        s.stroke(Path.segment(x - 4, y + 4, x + 4, y - 4), Pen.of(theme.at(Tone.ALARM), 2.4));
    }

    /** The plate of the test's reading: left, top, right, bottom; empty where none is shown. */
    private Optional<double[]> pill(Surface s) {
        if (moment.test() == null || moment.test().note().test().where() == null) {
            return Optional.empty();
        }
        Point at = moment.test().note().test().where();
        double x = seen.x(at.x());
        double y = seen.y(at.y());
        double w = s.textWidth(moment.pin(), FontRole.STRONG, 13 * lettering) + 40 * lettering;
        double h = 26 * lettering;
        double left = Math.max(6, Math.min(seen.width() - w - 6, x - w / 2 + (x < seen.width() / 2 ? 50 : -50)));
        double top = y < seen.height() / 2 ? y + 34 : y - 34 - h;
        return Optional.of(new double[] {left, top, left + w, top + h});
    }

    /** The test's number and reading on a plate, its leader ending where it was taken. */
    private void pin(Surface s) {
        pill(s).ifPresent(box -> pin(s, box));
    }

    private void pin(Surface s, double[] box) {
        Point at = moment.test().note().test().where();
        double x = seen.x(at.x());
        double y = seen.y(at.y());
        double h = box[3] - box[1];
        double cy = (box[1] + box[3]) / 2;
        Colour ink = theme.at(Tone.INK);
        s.stroke(Path.segment(x, y, (box[0] + box[2]) / 2, cy), Pen.of(ink, 1.6));
        s.fill(Path.circle(x, y, 3.5), ink);
        s.stroke(Path.circle(x, y, 3.5), Pen.of(theme.at(Tone.SHEET), 1));
        Path pill = Path.rounded(box[0], box[1], box[2] - box[0], h, h / 2);
        s.fill(pill, theme.at(Tone.SHEET));
        s.stroke(pill, Pen.of(ink, 1.4));
        s.fill(Path.circle(box[0] + h / 2, cy, h / 2 - 3), ink);
        TextStyle number = TextStyle.of(FontRole.BOLD, 12.5 * lettering, theme.at(Tone.SHEET));
        s.text(Integer.toString(moment.test().number()), box[0] + h / 2, cy + 4.4 * lettering, number.middle());
        TextStyle text = TextStyle.of(FontRole.STRONG, 13 * lettering, ink);
        s.text(moment.pin(), box[0] + h + 3, cy + 4.6 * lettering, text);
    }
}
