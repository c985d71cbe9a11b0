package provingyard.ui;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.picture.Colour;
import provingyard.picture.Theme;
import provingyard.picture.Tone;

/** A theme's colour roles as a style sheet, so that window and plan share one table of colours. */
final class ThemeSheet {

    private static final Map<String, Tone> ROLES = new LinkedHashMap<>();

    static {
        ROLES.put("paper", Tone.PAPER);
        ROLES.put("sheet", Tone.SHEET);
        ROLES.put("sunk", Tone.SUNK);
        ROLES.put("ink", Tone.INK);
        ROLES.put("ink2", Tone.INK_2);
        ROLES.put("ink3", Tone.INK_3);
        ROLES.put("hairline", Tone.HAIRLINE);
        ROLES.put("accent", Tone.ACCENT);
        ROLES.put("on-accent", Tone.ON_ACCENT);
        ROLES.put("accent-soft", Tone.ACCENT_SOFT);
        ROLES.put("water", Tone.WATER);
        ROLES.put("ice", Tone.ICE);
        ROLES.put("alarm", Tone.ALARM);
        ROLES.put("alarm-soft", Tone.ALARM_SOFT);
        ROLES.put("caution", Tone.CAUTION);
        ROLES.put("caution-soft", Tone.CAUTION_SOFT);
        ROLES.put("good", Tone.GOOD);
        ROLES.put("good-soft", Tone.GOOD_SOFT);
        ROLES.put("belief", Tone.BELIEF);
    }

    private ThemeSheet() {}

    /**
     * All style sheets of a theme: the base style, the program's own shapes, and the theme's colours.
     *
     * @param em size of the root's letters in px, by which everything grows
     */
    static List<String> all(Theme theme, double em) {
        String base =
                theme.dark() ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet();
        return List.of(
                base, ThemeSheet.class.getResource("/provingyard/ui/yard.css").toExternalForm(), of(theme, em));
    }

    /** Roles of controls, made from the theme's own colours so that they differ from what they lie on in every theme. */
    static Map<String, Colour> made(Theme theme) {
        Colour sunk = theme.at(Tone.SUNK);
        Colour ink = theme.at(Tone.INK);
        Colour accent = theme.at(Tone.ACCENT);
        Colour onAccent = theme.at(Tone.ON_ACCENT);
        boolean flat = theme.at(Tone.SHEET).equals(sunk) || theme.at(Tone.INK_2).equals(ink);
        Map<String, Colour> made = new LinkedHashMap<>();
        made.put("hover", sunk.mix(ink, 0.08));
        made.put("pressed", sunk.mix(ink, 0.16));
        made.put("track", sunk.mix(ink, 0.14));
        made.put("accent-hover", accent.mix(onAccent, 0.12));
        made.put("accent-pressed", accent.mix(onAccent, 0.22));
        made.put("chosen", flat ? accent : theme.at(Tone.SHEET));
        made.put("on-chosen", flat ? onAccent : ink);
        made.put("edge", flat ? ink : Colour.WHITE.fade(0));
        return made;
    }

    private static String of(Theme theme, double em) {
        StringBuilder css = new StringBuilder(".root {\n  -fx-font-size: " + em + "px;\n");
        ROLES.forEach((role, tone) -> css.append("  -py-")
                .append(role)
                .append(": ")
                .append(theme.at(tone).hex())
                .append(";\n"));
        made(theme)
                .forEach((role, colour) -> css.append("  -py-")
                        .append(role)
                        .append(": ")
                        .append(colour.hex())
                        .append(";\n"));
        css.append("}\n");
        return "data:text/css;base64,"
                + Base64.getEncoder().encodeToString(css.toString().getBytes(StandardCharsets.UTF_8));
    }
}
