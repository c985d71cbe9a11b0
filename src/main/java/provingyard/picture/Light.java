package provingyard.picture;

import provingyard.season.Snapshot;

/**
 * The light on the plan: how far it is night, and by what each colour is multiplied (low sun is warm, clouds are grey,
 * rain darkens). Drawing conventions in small steps, so that a picture is not made anew for what nobody sees.
 *
 * @param night 0 by day to 1 by night
 * @param red factor, 0 to 1
 * @param green factor
 * @param blue factor
 */
public record Light(double night, double red, double green, double blue) {

    /** Plain daylight. */
    public static final Light DAY = new Light(0, 1, 1, 1);

    /** Sun altitude in degrees under which the night's colours lead. */
    static final double NIGHTFALL = -2;

    /** Degrees above and under nightfall within which day and night blend. */
    private static final double DUSK = 6;

    private static final double STEPS = 32;

    /** The light under a sky; plain daylight where a theme has no night. */
    public static Light of(Theme theme, Snapshot.Sky sky) {
        if (sky == null || theme.night() == theme) {
            return DAY;
        }
        double altitude = sky.sunAltitude();
        double night = smooth((NIGHTFALL + DUSK - altitude) / (2 * DUSK));
        double cloud = clamp(sky.cloud());
        double warm = smooth((altitude + 6) / 8) * smooth((16 - altitude) / 13) * (1 - 0.8 * cloud);
        double rain = sky.rainRate() > 0 ? clamp(0.35 + Math.sqrt(sky.rainRate() / 16)) * (1 - 0.4 * night) : 0;
        double grey = 1 - 0.1 * cloud * (1 - night);
        return new Light(
                step(night),
                step(grey * (1 - 0.2 * rain)),
                step(grey * (1 - 0.16 * rain) * (1 - 0.06 * warm)),
                step(grey * (1 - 0.11 * rain) * (1 - 0.19 * warm)));
    }

    private static double clamp(double v) {
        return Double.isFinite(v) ? Math.max(0, Math.min(1, v)) : 0;
    }

    private static double smooth(double v) {
        double t = clamp(v);
        return t * t * (3 - 2 * t);
    }

    private static double step(double v) {
        return Math.round(v * STEPS) / STEPS;
    }

    /** Premultiplied pixels of day and night blended and multiplied by this light. */
    int[] on(int[] day, int[] by) {
        int share = (int) Math.round(256 * night);
        int[] r = table(red);
        int[] g = table(green);
        int[] b = table(blue);
        int[] out = new int[day.length];
        for (int i = 0; i < out.length; i++) {
            int p = share == 0 ? day[i] : share == 256 ? by[i] : blend(day[i], by[i], share);
            out[i] = p & 0xFF000000 | r[p >> 16 & 255] << 16 | g[p >> 8 & 255] << 8 | b[p & 255];
        }
        return out;
    }

    private static int[] table(double factor) {
        int[] table = new int[256];
        for (int i = 0; i < 256; i++) {
            table[i] = (int) (i * factor + 0.5);
        }
        return table;
    }

    /** Two channels at a time. */
    private static int blend(int a, int b, int share) {
        int rest = 256 - share;
        int low = ((a & 0xFF00FF) * rest + (b & 0xFF00FF) * share >>> 8) & 0xFF00FF;
        int high = ((a >>> 8 & 0xFF00FF) * rest + (b >>> 8 & 0xFF00FF) * share) & 0xFF00FF00;
        return low | high;
    }
}
