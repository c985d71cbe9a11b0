package provingyard.picture;

import provingyard.numeric.Deterministic;
import provingyard.season.Snapshot;

/** Rain that falls and wind that blows, as they are this minute; they move while time runs. px. */
final class AirArt {

    /** Wind in m/s from which it is seen. */
    private static final double BREEZE = 2;

    private static final double AREA = 1280.0 * 480;
    private static final int MOST_DROPS = 320;
    private static final int MOST_RIPPLES = 40;

    private final View view;
    private final Theme theme;
    private final Snapshot.Sky sky;
    private final double windX;
    private final double windY;

    AirArt(View view, Snapshot.Sky sky) {
        this.view = view;
        this.theme = view.theme();
        this.sky = sky;
        double toward = Math.toRadians(sky.windFrom() + 180);
        windX = Deterministic.sin(toward);
        windY = -Deterministic.cos(toward);
    }

    /** How many drops are drawn for a rain in mm/h on the usual area: more for more, but never a wall. */
    static int drops(double millimetresPerHour) {
        return millimetresPerHour <= 0.02 ? 0 : (int) Math.min(MOST_DROPS, 46 + 64 * Math.sqrt(millimetresPerHour));
    }

    /** How many strokes are drawn for a wind in m/s. */
    static int wisps(double metresPerSecond) {
        return metresPerSecond < BREEZE ? 0 : (int) Math.min(24, 5 + 2.4 * (metresPerSecond - BREEZE));
    }

    void draw(Surface s) {
        wind(s);
        rain(s);
    }

    private void rain(Surface s) {
        double share = Math.min(1.4, view.width() * (double) view.height() / AREA);
        int n = (int) (drops(sky.rainRate()) * share);
        if (n == 0) {
            return;
        }
        double lean = Math.min(0.9, sky.wind() * 0.09);
        double dx = windX * lean;
        double dy = 1 + 0.5 * windY * lean;
        Dice dice = new Dice("rain");
        Path.Builder falling = Path.builder();
        for (int i = 0; i < n; i++) {
            double length = dice.between(9, 19) * theme.lines();
            double way = view.seconds() * dice.between(520, 760);
            double x = wrap(dice.next() * view.width() + way * dx, view.width());
            double y = wrap(dice.next() * view.height() + way * dy, view.height());
            falling.moveTo(x, y);
            falling.lineTo(x + dx * length, y + dy * length);
        }
        s.stroke(falling.build(), Pen.of(rainColour(), theme.px(1.1)).round());
        ripples(s, Math.min(MOST_RIPPLES, n / 5));
    }

    private Colour rainColour() {
        return theme.dark()
                ? theme.at(Tone.STREAK).fade(0.5)
                : theme.at(Tone.WATER).mix(Colour.BLACK, 0.25).fade(0.42);
    }

    /** Rings where drops strike, widening. */
    private void ripples(Surface s, int n) {
        Dice dice = new Dice("ripples");
        Path.Builder rings = Path.builder();
        for (int i = 0; i < n; i++) {
            double age = view.seconds() * dice.between(1.1, 1.8) + dice.next();
            long life = (long) Math.floor(age);
            Dice here = new Dice("ripple " + i + " " + life);
            double r = 1.2 + 4.6 * (age - life);
            double x = here.next() * view.width();
            double y = here.next() * view.height();
            rings.append(Path.ellipse(x, y, r, r * 0.8));
        }
        s.stroke(rings.build(), Pen.of(rainColour().fade(0.75), theme.px(0.9)));
    }

    private static double wrap(double v, double size) {
        return v - Math.floor(v / size) * size;
    }

    /** Long thin strokes that sail with the wind, fading in and out. */
    private void wind(Surface s) {
        int n = wisps(sky.wind());
        Dice dice = new Dice("wind");
        Path.Builder[] pale = {Path.builder(), Path.builder(), Path.builder()};
        for (int i = 0; i < n; i++) {
            double age = view.seconds() * dice.between(0.16, 0.28) + dice.next();
            long life = (long) Math.floor(age);
            Dice here = new Dice("wisp " + i + " " + life);
            double t = age - life;
            double length = here.between(46, 96) * (0.7 + 0.06 * sky.wind());
            double go = (t - 0.5) * (70 + 26 * sky.wind());
            double x = here.next() * view.width() + windX * go;
            double y = here.next() * view.height() + windY * go;
            double bend = here.between(-0.1, 0.1) * length;
            wisp(pale[Math.min(2, (int) (3 * 2 * Math.min(t, 1 - t)))], x, y, length, bend);
        }
        double[] alpha = {0.12, 0.26, 0.4};
        Colour colour = theme.dark() ? theme.at(Tone.STREAK) : theme.at(Tone.STREAK);
        for (int k = 0; k < pale.length; k++) {
            Path path = pale[k].build();
            if (!path.isEmpty()) {
                s.stroke(
                        path, Pen.of(colour.fade(alpha[k] * 0.9), theme.px(2.2)).round());
            }
        }
    }

    /** A stroke with a fainter companion, both bent once. */
    private void wisp(Path.Builder b, double x, double y, double length, double bend) {
        for (int k = 0; k < 2; k++) {
            double off = k * 5;
            double from = k * 0.28;
            double ax = x - windY * off + windX * length * from;
            double ay = y + windX * off + windY * length * from;
            double l = length * (1 - 1.4 * from);
            double ex = ax + windX * l;
            double ey = ay + windY * l;
            double mx = (ax + ex) / 2 - windY * bend;
            double my = (ay + ey) / 2 + windX * bend;
            b.moveTo(ax, ay);
            b.quadTo(mx, my, ex, ey);
        }
    }
}
