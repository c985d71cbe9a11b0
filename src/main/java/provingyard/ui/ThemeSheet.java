package provingyard.ui;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
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
    }

    private ThemeSheet() {}

    /**
     * The sheet's address, to be put into a scene.
     *
     * @param em size of the root's letters in px, by which everything grows
     */
    static String of(Theme theme, double em) {
        StringBuilder css = new StringBuilder(".root {\n  -fx-font-size: " + em + "px;\n");
        ROLES.forEach((role, tone) -> css.append("  -py-")
                .append(role)
                .append(": ")
                .append(theme.at(tone).hex())
                .append(";\n"));
        css.append("}\n");
        return "data:text/css;base64,"
                + Base64.getEncoder().encodeToString(css.toString().getBytes(StandardCharsets.UTF_8));
    }
}
