package provingyard.picture;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * All that decides how things look: colours by role, and a few strengths.
 *
 * @param name stable name, such as {@code light}
 * @param dark whether the ground is darker than what is written on it
 * @param shadow alpha of drawn shadows
 * @param wetness greatest alpha of the wetness layer
 * @param grain alpha of the lawn's grain
 * @param lines factor on px line widths
 * @param letters least size of the plan's texts in px
 * @param marker diameter of a sensor's disc in px
 */
public record Theme(
        String name,
        boolean dark,
        Map<Tone, Colour> colours,
        double shadow,
        double wetness,
        double grain,
        double lines,
        double letters,
        double marker) {

    public static final Theme LIGHT =
            new Theme("light", false, read(ThemeColours.LIGHT, none()), 0.26, 0.42, 0.16, 1, 12, 30);

    public static final Theme DARK =
            new Theme("dark", true, read(ThemeColours.DARK, LIGHT.colours), 0.42, 0.36, 0.16, 1, 12, 30);

    /** The dark interface over a colder plan; lamps are lit. */
    public static final Theme NIGHT =
            new Theme("night", true, read(ThemeColours.NIGHT, DARK.colours), 0.55, 0.27, 0.16, 1, 12, 30);

    /** The light interface over the same night plan, a little lifted. */
    public static final Theme MOONLIT = new Theme("moonlit", true, moonlit(), 0.5, 0.27, 0.16, 1, 12, 30);

    /** Light, the plan at 55 % under white, 2 px lines, no shadows. */
    public static final Theme HIGH_CONTRAST = new Theme(
            "highContrast", false, read(ThemeColours.HIGH_CONTRAST, pale(LIGHT.colours)), 0, 0.42, 0, 1.7, 13, 32);

    /** For the wall: black on white, great signs, no names. */
    public static final Theme PROJECTOR =
            new Theme("projector", false, read(ThemeColours.PROJECTOR, LIGHT.colours), 0.16, 0.42, 0.16, 1.6, 22, 48);

    public static final List<Theme> ALL = List.of(LIGHT, MOONLIT, DARK, NIGHT, HIGH_CONTRAST, PROJECTOR);

    /** The colour of a role. */
    public Colour at(Tone tone) {
        return colours.get(tone);
    }

    /** A px length in this theme. */
    public double px(double width) {
        return width * lines;
    }

    /** The same interface over the plan by night; high contrast and projector know no night. */
    public Theme night() {
        return this == LIGHT ? MOONLIT : this == DARK ? NIGHT : this;
    }

    /** Whether lamps are lit in this theme. */
    boolean isNight() {
        return this == NIGHT || this == MOONLIT;
    }

    /** The theme of the same interface for a sun's altitude in degrees: the night's under {@link Light#NIGHTFALL}. */
    public Theme under(double sunAltitude) {
        return sunAltitude < Light.NIGHTFALL ? night() : this;
    }

    private static Map<Tone, Colour> none() {
        return Map.of();
    }

    private static Map<Tone, Colour> read(String text, Map<Tone, Colour> base) {
        Map<Tone, Colour> all = new EnumMap<>(Tone.class);
        all.putAll(base);
        for (String pair : text.trim().split("\\s+")) {
            int eq = pair.indexOf('=');
            all.put(Tone.valueOf(pair.substring(0, eq)), Colour.of(pair.substring(eq + 1)));
        }
        return Collections.unmodifiableMap(all);
    }

    /** Interface and notes by light, the plan by night. */
    private static Map<Tone, Colour> moonlit() {
        Map<Tone, Colour> all = new EnumMap<>(NIGHT.colours);
        for (Tone tone : Tone.values()) {
            if (tone.compareTo(Tone.OFF_SITE) < 0 || tone.compareTo(Tone.PLATE) >= 0) {
                all.put(tone, LIGHT.at(tone));
            } else if (tone.compareTo(Tone.SKYLIGHT) < 0 && tone != Tone.SEAM) {
                all.put(tone, NIGHT.at(tone).mix(LIGHT.at(tone), 0.1));
            }
        }
        return Collections.unmodifiableMap(all);
    }

    /** The ground's and plants' tones at 55 % under white. */
    private static Map<Tone, Colour> pale(Map<Tone, Colour> base) {
        Map<Tone, Colour> all = new EnumMap<>(base);
        for (Tone tone : Tone.values()) {
            boolean ground = tone.compareTo(Tone.OFF_SITE) >= 0 && tone.compareTo(Tone.SKYLIGHT) <= 0;
            if (ground && tone != Tone.SEAM) {
                all.put(tone, Colour.WHITE.mix(base.get(tone), 0.55));
            }
        }
        return all;
    }
}
