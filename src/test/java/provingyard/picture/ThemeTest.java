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
                Tone.INK,
                Tone.INK_2,
                Tone.INK_3,
                Tone.ACCENT,
                Tone.WATER,
                Tone.ICE,
                Tone.ALARM,
                Tone.CAUTION,
                Tone.GOOD,
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

    @ParameterizedTest
    @MethodSource("themes")
    void textsReadOnSoftGroundsAndTheRibbon(Theme theme) {
        Tone[] soft = {
            Tone.ACCENT_SOFT,
            Tone.WATER_SOFT,
            Tone.ICE_SOFT,
            Tone.ALARM_SOFT,
            Tone.CAUTION_SOFT,
            Tone.GOOD_SOFT,
            Tone.NIGHT,
            Tone.FUTURE
        };
        for (Tone ground : soft) {
            readable(theme, Tone.INK, ground);
            readable(theme, Tone.INK_2, ground);
        }
        for (Tone ground : new Tone[] {Tone.NIGHT, Tone.FUTURE}) {
            for (Tone text : new Tone[] {Tone.INK_3, Tone.WATER, Tone.ICE, Tone.ALARM}) {
                readable(theme, text, ground);
            }
        }
    }

    /** Names lie on a halo that lets a little of the ground through, by day, by night and at every dusk between. */
    @ParameterizedTest
    @MethodSource("themes")
    void namesReadThroughTheirHaloOnEveryGroundOfThePlanAtAnyHour(Theme theme) {
        Colour label = theme.at(Tone.LABEL);
        Colour halo = theme.at(Tone.HALO);
        Theme day = theme == Theme.MOONLIT ? Theme.LIGHT : theme == Theme.NIGHT ? Theme.DARK : theme;
        for (Tone tone : Tone.values()) {
            if (tone.compareTo(Tone.OFF_SITE) < 0 || tone.compareTo(Tone.SKYLIGHT) > 0 || tone == Tone.SEAM) {
                continue;
            }
            for (double night = 0; night <= 1; night += 0.125) {
                Colour ground = day.at(tone).mix(day.night().at(tone), night);
                Colour behind = ground.mix(halo, LabelArt.HALO);
                double c = Colour.contrast(label, behind);
                assertTrue(c >= 4.5, theme.name() + ": name on " + tone + " at night " + night + " is " + c);
            }
        }
    }

    @Test
    void valuesOfColdAirReadOnTheirPills() {
        for (Theme theme : Theme.ALL) {
            for (Tone ground : new Tone[] {Tone.LAWN, Tone.WALK, Tone.ROOF_S, Tone.CANOPY}) {
                Colour pill = theme.at(ground).mix(ColdArt.PILL, ColdArt.PILL_ALPHA);
                assertTrue(Colour.contrast(ColdArt.ON_PILL, pill) >= 4.5, theme.name() + " " + ground);
            }
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
        assertEquals(Theme.MOONLIT, Theme.LIGHT.under(-30));
        assertEquals(Theme.LIGHT, Theme.LIGHT.under(5));
        assertEquals(Theme.HIGH_CONTRAST, Theme.HIGH_CONTRAST.under(-30));
        assertEquals(Theme.PROJECTOR, Theme.PROJECTOR.under(-30));
    }
}
