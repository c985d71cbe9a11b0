package provingyard.scenario;

/**
 * A text in both languages; a missing Spanish text is a warning and falls back to English. What is told in sentences may hold
 * quantities in braces, such as {@code {10 gpm}}, which are shown in the reader's units.
 */
public record Text(String en, String es) {

    /** The text in a language, {@code "en"} or {@code "es"}. */
    public String in(String language) {
        return "es".equals(language) && es != null && !es.isBlank() ? es : en;
    }
}
