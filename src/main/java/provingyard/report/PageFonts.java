package provingyard.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import provingyard.picture.FontRole;
import provingyard.picture.Fonts;

/** The program's fonts for pages. A page carries only the letters that it shows: some 15 kB a face instead of 380. */
final class PageFonts {

    /** A face under the name that the style sheets use. */
    record Face(FontRole role, String family, int weight) {}

    /** The faces of pages. */
    static final List<Face> FACES = List.of(
            new Face(FontRole.TEXT, "Yard Sans", 400),
            new Face(FontRole.STRONG, "Yard Sans", 600),
            new Face(FontRole.TITLE, "Yard Serif", 600));

    /** What is kept of a font: not its ligatures, which point at letters that are left out and cannot be searched. */
    private static final List<String> TABLES = List.of(
            "head", "hhea", "hmtx", "maxp", "loca", "glyf", "cmap", "post", "name", "OS/2", "cvt ", "fpgm", "prep");

    private PageFonts() {}

    /** The faces with the letters of a text, as a style sheet; a face that cannot be read is left out. */
    static String embedded(String shown) {
        StringBuilder css = new StringBuilder();
        for (Face face : FACES) {
            try {
                String data = Base64.getEncoder().encodeToString(letters(face, shown));
                css.append("@font-face{font-family:'").append(face.family()).append("';font-weight:");
                css.append(face.weight())
                        .append(";src:url(data:font/ttf;base64,")
                        .append(data);
                css.append(")}\n");
            } catch (IOException e) {
                // The browser's own letters stand in.
            }
        }
        return css.toString();
    }

    /** A face with the letters of a text. */
    static byte[] letters(Face face, String shown) throws IOException {
        try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(Fonts.open(face.role())))) {
            TTFSubsetter few = new TTFSubsetter(font, TABLES);
            shown.codePoints().distinct().forEach(few::add);
            // Without it no browser takes the font.
            for (char c = ' '; c <= '~'; c++) {
                few.add(c);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            few.writeToStream(out);
            return out.toByteArray();
        }
    }
}
