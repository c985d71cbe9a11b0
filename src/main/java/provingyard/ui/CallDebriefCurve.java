package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import provingyard.call.CallReview;
import provingyard.call.CallReview.CurvePoint;
import provingyard.picture.Colour;
import provingyard.picture.FontRole;
import provingyard.picture.Path;
import provingyard.picture.Pen;
import provingyard.picture.Surface;
import provingyard.picture.TextStyle;
import provingyard.picture.Theme;
import provingyard.picture.Tone;
import provingyard.scenario.Point;

/** Bits that could be expected against minutes: the trainee's way solid with dots, the expert's dashed. */
final class CallDebriefCurve {

    private static final double TALL = 150;
    private static final double TOP = 18;
    private static final double LEFT = 26;
    private static final double BELOW = 34;

    private final CallDebriefWords sayings;
    private final Theme theme;

    CallDebriefCurve(CallDebriefWords sayings, Theme theme) {
        this.sayings = sayings;
        this.theme = theme;
    }

    ChartPane of(CallReview review, double lettering) {
        return new ChartPane((s, w) -> draw(s, w, review), lettering, accessible(review));
    }

    /** What it shows in words. */
    String accessible(CallReview review) {
        CurvePoint you = last(review.yours());
        CurvePoint expert = last(review.experts());
        return sayings.say(
                "review.curve.accessible",
                sayings.bits(you.expected()),
                sayings.wholeMinutes(you.minutes()),
                sayings.bits(expert.expected()),
                sayings.wholeMinutes(expert.minutes()));
    }

    private static CurvePoint last(CallReview.Way way) {
        return way.curve().get(way.curve().size() - 1);
    }

    /** Draws it in a width of px; gives the height taken. */
    double draw(Surface s, double width, CallReview review) {
        CurvePoint you = last(review.yours());
        CurvePoint expert = last(review.experts());
        double minutes = Math.max(5, Math.max(you.minutes(), expert.minutes()));
        double bits = Math.max(1, Math.max(you.expected(), expert.expected()));
        String yours = sayings.say("review.curve.you");
        String experts = sayings.say("review.curve.expert");
        double room = Math.max(s.textWidth(yours, FontRole.BOLD, 12), s.textWidth(experts, FontRole.BOLD, 12)) + 18;
        double right = Math.min(width, 704) - room;
        axes(s, right, minutes, bits);
        line(s, review.experts().curve(), right, minutes, bits, false);
        line(s, review.yours().curve(), right, minutes, bits, true);
        double a = y(you.expected(), bits);
        double b = y(expert.expected(), bits);
        double ax = x(you.minutes(), minutes, right);
        double bx = x(expert.minutes(), minutes, right);
        boolean near = Math.abs(a - b) < 15 && Math.abs(ax - bx) < room;
        double shift = near ? (a <= b ? -1 : 1) * (15 - Math.abs(a - b)) / 2 : 0;
        s.text(yours, ax + 10, a + 4 + shift, TextStyle.of(FontRole.BOLD, 12, theme.at(Tone.ACCENT)));
        s.text(experts, bx + 10, b + 4 - shift, TextStyle.of(FontRole.BOLD, 12, theme.at(Tone.INK_2)));
        return TALL + BELOW;
    }

    private static double x(double value, double most, double right) {
        return LEFT + (right - LEFT) * value / most;
    }

    private static double y(double value, double most) {
        return TOP + (TALL - TOP) * (1 - value / most);
    }

    private void axes(Surface s, double right, double minutes, double bits) {
        TextStyle number = TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_2));
        for (int b = 1; b <= bits; b++) {
            if (bits < 4 || b % 2 == 0) {
                s.stroke(Path.segment(LEFT, y(b, bits), right, y(b, bits)), Pen.of(theme.at(Tone.HAIRLINE), 1));
                s.text(Integer.toString(b), LEFT - 6, y(b, bits) + 4, number.end());
            }
        }
        s.stroke(Path.segment(LEFT, TALL, right, TALL), Pen.of(theme.at(Tone.INK), 1.6));
        int step = minutes > 120 ? 30 : minutes > 40 ? 10 : 5;
        for (int m = 0; m <= minutes; m += step) {
            s.text(Integer.toString(m), x(m, minutes, right), TALL + 16, number.middle());
        }
        s.text(sayings.say("review.curve.minutes"), right, TALL + 31, number.end());
    }

    private void line(Surface s, List<CurvePoint> curve, double right, double minutes, double bits, boolean own) {
        List<Point> way = new ArrayList<>();
        curve.forEach(c -> way.add(new Point(x(c.minutes(), minutes, right), y(c.expected(), bits))));
        Colour colour = theme.at(own ? Tone.ACCENT : Tone.INK_2);
        Pen pen = Pen.of(colour, own ? 2.6 : 2);
        s.stroke(Path.polyline(way), own ? pen : pen.dashed(6, 4));
        for (int i = 1; i < way.size(); i++) {
            Point p = way.get(i);
            s.fill(Path.circle(p.x(), p.y(), own ? 4.2 : 3), own ? colour : theme.at(Tone.PAPER));
            s.stroke(Path.circle(p.x(), p.y(), own ? 4.2 : 3), Pen.of(own ? theme.at(Tone.PAPER) : colour, 1.4));
        }
    }
}
