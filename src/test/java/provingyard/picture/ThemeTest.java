package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ThemeTest {

    static Stream<Theme> themes() {
        return Theme.ALL.stream();
    }

    private static void readable(Theme theme, Tone text, Tone ground) {
        double c = Colour.contrast(theme.at(text), theme.at(ground));
        assertTrue(c >= 4.5, theme.name() + ": " + text + " on " + ground + " is " + c);
    }

    @ParameterizedTest
    @MethodSource("themes")
    void textPairsHaveEnoughContrast(Theme theme) {
        for (Tone ground : new Tone[] {Tone.PAPER, Tone.SHEET, Tone.SUNK}) {
            for (Tone text : new Tone[] {
                Tone.INK, Tone.INK_2, Tone.INK_3, Tone.ACCENT, Tone.WATER, Tone.ICE, Tone.ALARM, Tone.CAUTION, Tone.GOOD,
                Tone.BELIEF
            }) {
                readable(theme, text, ground);
            }
        }
        readable(theme, Tone.ON_ACCENT, Tone.ACCENT);
        readable(theme, Tone.ON_SELECTED, Tone.SELECTED);
        readable(theme, Tone.ON_DISC, Tone.DISC);
        readable(theme, Tone.INK, Tone.ACCENT_SOFT);
        readable(theme, Tone.ACCENT, Tone.ACCENT_SOFT);
        readable(theme, Tone.WATER, Tone.WATER_SOFT);
        readable(theme, Tone.ICE, Tone.ICE_SOFT);
        readable(theme, Tone.ALARM, Tone.ALARM_SOFT);
        readable(theme, Tone.CAUTION, Tone.CAUTION_SOFT);
        readable(theme, Tone.GOOD, Tone.GOOD_SOFT);
        readable(theme, Tone.ON_KEPT, Tone.KEPT);
        readable(theme, Tone.LABEL, Tone.HALO);
        readable(theme, Tone.PLATE_ALARM, Tone.PLATE);
        readable(theme, Tone.PLATE_ICE, Tone.PLATE);
        readable(theme, Tone.INK, Tone.PLATE);
        readable(theme, Tone.INK, Tone.NIGHT);
    }

    @ParameterizedTest
    @MethodSource("themes")
    void labelsReadOnLawnWalkAndRoof(Theme theme) {
        for (Tone ground : new Tone[] {Tone.LAWN, Tone.WALK, Tone.DRIVE, Tone.ROOF_S, Tone.ROOF_N, Tone.STREET}) {
            readable(theme, Tone.LABEL, ground);
        }
    }

    @Test
    void contrastOfKnownPairs() {
        assertEquals(21, Colour.contrast(Colour.BLACK, Colour.WHITE), 1e-9);
        // 4.54 is the published ratio of this grey on white.
        assertEquals(4.54, Colour.contrast(Colour.of("#767676"), Colour.WHITE), 0.005);
    }

    @Test
    void everyThemeHasEveryTone() {
        for (Theme theme : Theme.ALL) {
            assertEquals(Tone.values().length, theme.colours().size(), theme.name());
        }
        assertEquals(Theme.NIGHT, Theme.DARK.under(-3));
        assertEquals(Theme.DARK, Theme.DARK.under(5));
        assertEquals(Theme.LIGHT, Theme.LIGHT.under(-30));
    }
}
