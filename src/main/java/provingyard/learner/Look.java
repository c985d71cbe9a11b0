package provingyard.learner;

import java.util.List;
import provingyard.quantity.UnitSystem;

/**
 * How a learner wants the window.
 *
 * @param language {@code en} or {@code es}
 * @param units in which quantities are shown
 * @param theme one of {@link #THEMES}
 * @param textSize size of texts in percent, {@value #SMALLEST} to {@value #LARGEST}
 * @param still whether nothing moves that need not
 */
public record Look(String language, UnitSystem units, String theme, int textSize, boolean still) {

    /** Smallest size of texts, percent. */
    public static final int SMALLEST = 80;

    /** Largest size of texts, percent. */
    public static final int LARGEST = 200;

    /** Names of the themes, in the order in which they are offered. */
    public static final List<String> THEMES = List.of("light", "dark", "highContrast", "projector");

    public Look {
        language = language.equals("es") ? "es" : "en";
        theme = THEMES.contains(theme) ? theme : THEMES.get(0);
        textSize = Math.max(SMALLEST, Math.min(LARGEST, textSize));
    }

    /** What a new learner begins with. */
    public static Look first(String language, String country) {
        UnitSystem units = country.isEmpty() || country.equals("US") ? UnitSystem.US : UnitSystem.METRIC;
        return new Look(language, units, THEMES.get(0), 100, false);
    }

    public Look language(String next) {
        return new Look(next, units, theme, textSize, still);
    }

    public Look units(UnitSystem next) {
        return new Look(language, next, theme, textSize, still);
    }

    public Look theme(String next) {
        return new Look(language, units, next, textSize, still);
    }

    public Look textSize(int next) {
        return new Look(language, units, theme, next, still);
    }

    public Look still(boolean next) {
        return new Look(language, units, theme, textSize, next);
    }
}
