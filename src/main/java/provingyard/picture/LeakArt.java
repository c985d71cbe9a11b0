package provingyard.picture;

import java.util.List;
import provingyard.season.Snapshot;

/** Water that comes up where a pipe breaks: only where so much is lost that it shows. Metres, north up. */
final class LeakArt {

    /** Least and greatest radius of a stain, m. */
    private static final double LEAST = 0.7;

    private static final double MOST = 5;

    /** Water that stands in a metre of wetted ground, m (a drawing convention). */
    private static final double DEPTH = 0.12;

    private static final int BUBBLES = 9;

    private final View view;
    private final Theme theme;
    private final List<Snapshot.Leak> leaks;

    LeakArt(View view, Snapshot snapshot) {
        this.view = view;
        this.theme = view.theme();
        this.leaks = snapshot.leaks().stream()
                .filter(leak -> leak.surfaces() && leak.flow() > 0)
                .toList();
    }

    /** Radius of the stain: it grows with what ran out. */
    static double radius(Snapshot.Leak leak) {
        double volume = leak.flow() * leak.minutes() * 60;
        return Math.min(MOST, LEAST + Math.sqrt(Math.max(0, volume) / (Math.PI * DEPTH)) * 0.6);
    }

    void stains(Surface s) {
        Colour wet = theme.at(Tone.WET).mix(Colour.BLACK, theme.dark() ? 0.1 : 0.3);
        for (Snapshot.Leak leak : leaks) {
            double r = radius(leak);
            Path.Builder outline = Path.builder();
            Dice dice = new Dice("stain " + Math.round(leak.x() * 10) + " " + Math.round(leak.y() * 10));
            for (int i = 0; i < 7; i++) {
                double a = Math.toRadians(360 / 7.0 * i + dice.between(-20, 20));
                double out = r * dice.between(0.25, 0.5);
                double x = leak.x() + out * provingyard.numeric.Deterministic.cos(a);
                double y = leak.y() + out * provingyard.numeric.Deterministic.sin(a);
                outline.circle(x, y, r * dice.between(0.4, 0.62));
            }
            s.layer(0.62, 0.16, l -> l.fill(outline.build(), wet));
            s.layer(0.4, 0.1, l -> l.fill(Path.circle(leak.x(), leak.y(), r * 0.36), wet));
        }
    }

    /** Rings that well up and widen. */
    void bubbles(Surface s) {
        double px = 1 / view.scale();
        for (Snapshot.Leak leak : leaks) {
            Dice dice = new Dice("bubbles " + Math.round(leak.x() * 10));
            double reach = Math.min(1.1, 0.35 + 0.2 * Math.sqrt(leak.flow() * 1000));
            Path.Builder rings = Path.builder();
            Path.Builder drops = Path.builder();
            for (int i = 0; i < BUBBLES; i++) {
                double age = view.seconds() * dice.between(0.7, 1.2) + dice.next();
                age -= Math.floor(age);
                double x = leak.x() + dice.between(-0.6, 0.6) * reach;
                double y = leak.y() + dice.between(-0.6, 0.6) * reach;
                if (i % 3 == 0) {
                    rings.circle(leak.x(), leak.y(), reach * (0.2 + 1.4 * age));
                } else {
                    drops.circle(x, y, (0.05 + 0.13 * age) * Math.max(1, 4 * px / 0.18));
                }
            }
            Colour light = theme.at(Tone.STREAK);
            s.stroke(rings.build(), Pen.of(light.fade(0.55), 1.2 * px));
            s.fill(drops.build(), light.fade(0.3));
            s.stroke(drops.build(), Pen.of(light.fade(0.9), px));
        }
    }
}
