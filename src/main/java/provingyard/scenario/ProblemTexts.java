package provingyard.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.Set;

/** The problems' texts of one language. */
final class ProblemTexts {

    private static final ProblemTexts ENGLISH = load("en");
    private static final ProblemTexts SPANISH = load("es");

    private final Properties texts;

    private ProblemTexts(Properties texts) {
        this.texts = texts;
    }

    /** Texts of {@code "es"}, else English. */
    static ProblemTexts of(String language) {
        return "es".equals(language) ? SPANISH : ENGLISH;
    }

    /** The text of a key with its places filled: {0}, {1}, and so on. */
    String fill(String key, List<String> parts) {
        String text = texts.getProperty(key);
        if (text == null) {
            throw new IllegalStateException("no text for " + key);
        }
        StringBuilder filled = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            boolean place = text.charAt(i) == '{' && i + 2 < text.length() && text.charAt(i + 2) == '}';
            int part = place ? text.charAt(i + 1) - '0' : -1;
            if (part >= 0 && part < 10) {
                filled.append(part < parts.size() ? parts.get(part) : "");
                i += 2;
            } else {
                filled.append(text.charAt(i));
            }
        }
        return filled.toString();
    }

    Set<String> keys() {
        return texts.stringPropertyNames();
    }

    private static ProblemTexts load(String language) {
        String path = "/provingyard/scenario/problems_" + language + ".properties";
        try (InputStream in = ProblemTexts.class.getResourceAsStream(path)) {
            Properties texts = new Properties();
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return new ProblemTexts(texts);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
