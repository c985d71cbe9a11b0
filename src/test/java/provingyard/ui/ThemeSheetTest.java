package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.picture.Colour;
import provingyard.picture.Theme;
import provingyard.picture.Tone;

/** What is written on a control can be read in every state and theme: 4.5:1 by WCAG 2.2. */
class ThemeSheetTest {

    private static final double READABLE = 4.5;

    private static java.util.List<Theme> themes() {
        return Theme.ALL;
    }

    private static void readable(Theme theme, String what, Colour text, Colour ground) {
        double contrast = Colour.contrast(text, ground);
        assertTrue(contrast >= READABLE, () -> theme.name() + ", " + what + ": " + contrast);
    }

    @ParameterizedTest
    @MethodSource("themes")
    void controlsReadInEveryState(Theme theme) {
        Map<String, Colour> made = ThemeSheet.made(theme);
        Colour ink = theme.at(Tone.INK);
        Colour onAccent = theme.at(Tone.ON_ACCENT);
        readable(theme, "button", ink, theme.at(Tone.SUNK));
        readable(theme, "button under the hand", ink, made.get("hover"));
        readable(theme, "pressed button", ink, made.get("pressed"));
        readable(theme, "button that cannot", theme.at(Tone.INK_3), theme.at(Tone.SUNK));
        readable(theme, "one of several", theme.at(Tone.INK_2), theme.at(Tone.SUNK));
        readable(theme, "chosen one of several", made.get("on-chosen"), made.get("chosen"));
        readable(theme, "main button", onAccent, theme.at(Tone.ACCENT));
        readable(theme, "main button under the hand", onAccent, made.get("accent-hover"));
        readable(theme, "pressed main button", onAccent, made.get("accent-pressed"));
        readable(theme, "caution", ink, theme.at(Tone.CAUTION_SOFT));
        readable(theme, "alarm", ink, theme.at(Tone.ALARM_SOFT));
        readable(theme, "row in hand", ink, theme.at(Tone.ACCENT_SOFT));
    }

    @ParameterizedTest
    @MethodSource("themes")
    void theChosenOneDiffersFromItsNeighbours(Theme theme) {
        double contrast = Colour.contrast(ThemeSheet.made(theme).get("chosen"), theme.at(Tone.SUNK));
        assertTrue(contrast > 1.1, () -> theme.name() + ": " + contrast);
    }
}
