package provingyard.picture;

import provingyard.numeric.Deterministic;

/** An sRGB colour with alpha, as {@code 0xAARRGGBB}. */
public record Colour(int argb) implements Paint {

    public static final Colour WHITE = new Colour(0xFFFFFFFF);
    public static final Colour BLACK = new Colour(0xFF000000);

    /** From {@code #RRGGBB} or {@code #RRGGBBAA}. */
    public static Colour of(String hex) {
        long v = Long.parseLong(hex.substring(1), 16);
        return hex.length() == 7
                ? new Colour(0xFF000000 | (int) v)
                : new Colour((int) (((v & 0xFF) << 24) | (v >>> 8)));
    }

    public int alpha() {
        return argb >>> 24;
    }

    public int red() {
        return argb >> 16 & 0xFF;
    }

    public int green() {
        return argb >> 8 & 0xFF;
    }

    public int blue() {
        return argb & 0xFF;
    }

    /** The same colour with its alpha multiplied by a share. */
    public Colour fade(double share) {
        int a = (int) Math.round(alpha() * Math.max(0, Math.min(1, share)));
        return new Colour(a << 24 | argb & 0xFFFFFF);
    }

    /** This colour moved toward another by a share, 0 to 1. */
    public Colour mix(Colour other, double share) {
        return new Colour(part(alpha(), other.alpha(), share) << 24
                | part(red(), other.red(), share) << 16
                | part(green(), other.green(), share) << 8
                | part(blue(), other.blue(), share));
    }

    private static int part(int a, int b, double share) {
        return (int) Math.round(a + (b - a) * share);
    }

    /** {@code #RRGGBB}, or {@code #RRGGBBAA} where something shows through. */
    public String hex() {
        return alpha() == 255
                ? String.format("#%06X", argb & 0xFFFFFF)
                : String.format("#%06X%02X", argb & 0xFFFFFF, alpha());
    }

    /** Relative luminance, 0 to 1, as WCAG 2.2 defines it; alpha is ignored. */
    public double luminance() {
        return 0.2126 * linear(red()) + 0.7152 * linear(green()) + 0.0722 * linear(blue());
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Deterministic.pow((c + 0.055) / 1.055, 2.4);
    }

    /** Contrast ratio of two opaque colours, 1 to 21, as WCAG 2.2 defines it: (L1 + 0.05) / (L2 + 0.05). */
    public static double contrast(Colour a, Colour b) {
        double la = a.luminance();
        double lb = b.luminance();
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }
}
