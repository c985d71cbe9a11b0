package provingyard.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheets of pages. */
final class Styles {

    private static final String COMMON = read("page.css");
    private static final String SCREEN = read("screen.css");
    private static final String PAPER = read("paper.css");

    private Styles() {}

    /** For a browser, with the letters that a page needs. */
    static String screen(String shown) {
        return PageFonts.embedded(shown) + COMMON + SCREEN;
    }

    /** For paper. */
    static String paper(Paper paper) {
        return "@page{size:" + paper.css() + "}\n" + COMMON + PAPER;
    }

    private static String read(String name) {
        String path = "/provingyard/report/" + name;
        try (InputStream in = Styles.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("no style sheet " + path);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
