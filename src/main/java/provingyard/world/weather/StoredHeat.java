package provingyard.world.weather;

import java.lang.ref.SoftReference;
import provingyard.numeric.Deterministic;

/**
 * Heat of the sun in the outer layer of walls, by the bearing they face: how many K their surface is over the air.
 *
 * <p>A wall in steady sun I (W/m2) stands a I / h over the air, with a = 0.65 the absorptance of brick or render and h
 * = 25 W/(m2 K) its outer heat transfer (surface resistance 0.04 m2 K/W of ISO 6946, from memory); it gets there, and
 * cools again, with a time constant of 6 h (common practice for masonry, no source). Shade by neighbours is left out.
 * Immutable; {@link Series} for all minutes of a weather.
 */
public final class StoredHeat {

    private static final int SIDES = 8;
    private static final double GAIN = 0.65 / 25;
    private static final double KEPT_IN_A_MINUTE = Deterministic.exp(-60.0 / (6 * 3600));
    private static final double GROUND_ALBEDO = 0.2;

    /** The beam is divided by the sine of at least this height, degrees, so that a grazing sun stays finite. */
    private static final double LOWEST_SUN = 3;

    private static final double[] EAST = new double[SIDES];
    private static final double[] NORTH = new double[SIDES];

    static {
        for (int i = 0; i < SIDES; i++) {
            EAST[i] = Deterministic.sin(i * 2 * Math.PI / SIDES);
            NORTH[i] = Deterministic.cos(i * 2 * Math.PI / SIDES);
        }
    }

    private final double[] kelvin;
    private final int first;

    private StoredHeat(double[] kelvin, int first) {
        this.kelvin = kelvin;
        this.first = first;
    }

    /**
     * The walls' heat after each minute of a weather, 64 bytes a minute; given up where memory is short, and then worked
     * out again. Safe for several threads.
     */
    public static final class Series {

        private final WeatherSeries weather;
        private SoftReference<double[]> kept = new SoftReference<>(null);

        private Series(WeatherSeries weather) {
            this.weather = weather;
        }

        /** Walls that begin as cold as the air. */
        public static Series of(WeatherSeries weather) {
            return new Series(weather);
        }

        /** All of it, for as long as somebody holds it. */
        public synchronized Whole whole() {
            double[] kelvin = kept.get();
            if (kelvin == null) {
                kelvin = lived(weather);
                kept = new SoftReference<>(kelvin);
            }
            return new Whole(kelvin);
        }

        private static double[] lived(WeatherSeries weather) {
            Whole whole = new Whole(new double[SIDES * weather.ticks()]);
            StoredHeat last = none();
            for (int tick = 0; tick < weather.ticks(); tick++) {
                StoredHeat next = whole.after(tick);
                next.follow(last, weather.at(tick));
                last = next;
            }
            return whole.kelvin;
        }
    }

    /** The heat after each minute; immutable. */
    public static final class Whole {

        private final double[] kelvin;

        private Whole(double[] kelvin) {
            this.kelvin = kelvin;
        }

        /** The heat after a minute. */
        public StoredHeat after(long tick) {
            return new StoredHeat(kelvin, SIDES * (int) tick);
        }
    }

    /** Walls as cold as the air. */
    public static StoredHeat none() {
        return new StoredHeat(new double[SIDES], 0);
    }

    /** The heat after one more minute of weather. */
    public StoredHeat after(Weather w) {
        StoredHeat next = none();
        next.follow(this, w);
        return next;
    }

    /** Becomes what a minute of weather makes of an earlier state. */
    private void follow(StoredHeat before, Weather w) {
        if (w.sun() <= 0) {
            for (int i = 0; i < SIDES; i++) {
                kelvin[first + i] = before.kelvin[before.first + i] * KEPT_IN_A_MINUTE;
            }
            return;
        }
        double altitude = Math.toRadians(Math.max(0, w.sunAltitude()));
        double bearing = Math.toRadians(w.sunBearing());
        double level = beam(w) * Deterministic.cos(altitude);
        double towardEast = level * Deterministic.sin(bearing);
        double towardNorth = level * Deterministic.cos(bearing);
        double even = 0.5 * w.sun() * (diffuseShare(w) + GROUND_ALBEDO);
        for (int i = 0; i < SIDES; i++) {
            double sun = even + Math.max(0, towardEast * EAST[i] + towardNorth * NORTH[i]);
            kelvin[first + i] = GAIN * sun + KEPT_IN_A_MINUTE * (before.kelvin[before.first + i] - GAIN * sun);
        }
    }

    /** K by which the surface of a wall that faces a bearing (degrees) is over the air; between the eight, linear. */
    public double facing(double bearing) {
        return facing(Facing.of(bearing));
    }

    /** The same of a wall whose bearing was looked at before. */
    double facing(Facing wall) {
        return (1 - wall.share) * kelvin[first + wall.side] + wall.share * kelvin[first + (wall.side + 1) % SIDES];
    }

    /** A bearing between two of the eight: the one before it, and how far it is on the way to the next. */
    record Facing(int side, double share) {

        static Facing of(double bearing) {
            double sides = turned(bearing) / (360.0 / SIDES);
            return new Facing((int) sides % SIDES, sides - Math.floor(sides));
        }
    }

    /** A bearing in degrees within 0 to 360; the remainder operator would cost more than all else that is asked of it. */
    static double turned(double bearing) {
        boolean within = bearing >= 0 && bearing < 360;
        return within ? bearing : bearing - 360 * Math.floor(bearing / 360);
    }

    /** Radiation in W/m2 on a plate that looks into the sun, at most 1000; 0 by night. */
    static double beam(Weather w) {
        if (w.sunAltitude() <= 0) {
            return 0;
        }
        double height = Deterministic.sin(Math.toRadians(Math.max(LOWEST_SUN, w.sunAltitude())));
        return Math.min(1000, w.sun() * (1 - diffuseShare(w)) / height);
    }

    /**
     * Share of the global radiation that comes from the sky and not from the sun's disc: 0.15 clear to 1 overcast, in
     * between linear in cloud. Common practice, no source.
     */
    static double diffuseShare(Weather w) {
        return 0.15 + 0.85 * w.cloud();
    }
}
