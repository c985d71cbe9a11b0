package provingyard.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/**
 * The texts of one part of the program in one language, from {@code /provingyard/text/<part>_<language>.properties}
 * (UTF-8). Values go into a text by {@link MessageFormat}; numbers are shown by the caller, so that units and decimals
 * are right.
 */
public final class Texts {

    /** The languages of the program. */
    public static final List<String> LANGUAGES = List.of("en", "es");

    private final String language;
    private final Map<String, String> texts;

    private Texts(String language, Map<String, String> texts) {
        this.language = language;
        this.texts = texts;
    }

    /**
     * The texts of a part.
     *
     * @param part such as {@code cli}
     * @param language {@code en} or {@code es}; anything else counts as {@code en}
     */
    public static Texts of(String part, String language) {
        String known = LANGUAGES.contains(language) ? language : "en";
        String name = "/provingyard/text/" + part + "_" + known + ".properties";
        try (InputStream in = Texts.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no texts " + name);
            }
            try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
                Properties properties = new Properties();
                properties.load(reader);
                Map<String, String> texts = new TreeMap<>();
                properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
                return new Texts(known, texts);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The language. */
    public String language() {
        return language;
    }

    /** The locale that numbers and dates follow. */
    public Locale locale() {
        return language.equals("es") ? Locale.forLanguageTag("es-US") : Locale.US;
    }

    /** All keys with their patterns, in the order of the keys. */
    public Map<String, String> all() {
        return new TreeMap<>(texts);
    }

    /** Whether there is a text with this key. */
    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /**
     * The text with a key.
     *
     * @param values what {@code {0}}, {@code {1}}… stand for
     * @return the text; a missing key gives the key in double brackets, which a test looks for
     */
    public String say(String key, Object... values) {
        String pattern = texts.get(key);
        if (pattern == null) {
            return "[[" + key + "]]";
        }
        return new MessageFormat(pattern, Locale.ROOT).format(values);
    }
}
