package provingyard.picture;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.EnumMap;
import java.util.Map;

/** The program's fonts for Java2D, read from {@code assets/fonts/} on the class path, else in the working directory. */
public final class Fonts {

    private static final String DIRECTORY = "assets/fonts/";
    private static final Map<FontRole, Font> LOADED = load();

    private Fonts() {}

    /** The face of a role at a size in px. */
    public static Font font(FontRole role, double size) {
        return LOADED.get(role).deriveFont((float) size);
    }

    /** Opens a role's font file, for other back ends; the caller closes it. */
    public static InputStream open(FontRole role) throws IOException {
        InputStream in = Fonts.class.getClassLoader().getResourceAsStream(DIRECTORY + role.file());
        return in != null ? in : Files.newInputStream(java.nio.file.Path.of(DIRECTORY + role.file()));
    }

    private static Map<FontRole, Font> load() {
        Map<FontRole, Font> fonts = new EnumMap<>(FontRole.class);
        for (FontRole role : FontRole.values()) {
            fonts.put(role, load(role));
        }
        return fonts;
    }

    /** A missing font is no reason to draw nothing: the JDK's own sans or serif stands in. */
    private static Font load(FontRole role) {
        try (InputStream in = open(role)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            String family = role == FontRole.TITLE ? Font.SERIF : role == FontRole.CODE ? Font.MONOSPACED : Font.SANS_SERIF;
            return new Font(family, role == FontRole.TEXT || role == FontRole.CODE ? Font.PLAIN : Font.BOLD, 12);
        }
    }
}
