package provingyard.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Something wrong with a document, as a value: where it is, what was found, what is allowed, what was probably meant.
 *
 * @param code what is wrong; its texts are in {@code problems_en.properties} and {@code problems_es.properties}
 * @param severity how much it matters
 * @param file name of the document as the reader was given it
 * @param line from 1
 * @param column from 1
 * @param pointer JSON pointer (RFC 6901) of the place; empty for the whole document
 * @param found what was found, as it stands in the file
 * @param details what the code's text names besides: limits, kinds, names
 * @param maybe nearest match, empty when there is none
 */
public record Problem(
        Code code,
        Severity severity,
        String file,
        int line,
        int column,
        String pointer,
        String found,
        List<String> details,
        String maybe) {

    private static final int LONGEST_FOUND = 80;

    /** What can be wrong with a document. The names are stable. */
    public enum Code {
        SYN_EMPTY,
        SYN_NOT_JSON,
        SYN_ENDS_EARLY,
        SYN_COMMENT,
        SYN_COMMA,
        SYN_DUPLICATE,
        SYN_TRAILING,
        SYN_LIMIT,
        SYN_NUMBER,
        SCH_UNKNOWN,
        SCH_MISSING,
        SCH_KIND,
        SCH_CHOICE,
        SCH_RANGE,
        SCH_PATTERN,
        SCH_COUNT,
        SCH_LENGTH,
        SCH_TWICE,
        SCH_DATE,
        SCH_RULE,
        SCH_BINDING,
        QTY_NUMBER,
        QTY_COMMA,
        QTY_UNIT,
        QTY_NO_UNIT,
        QTY_SIZE,
        QTY_RANGE,
        REF_UNKNOWN,
        REF_TWICE,
        REF_EMPTY_ZONE,
        REF_NO_RUN,
        REF_NEEDS,
        REF_FILE,
        REF_SITE,
        REF_CUT_OFF,
        REF_REPLACES,
        REF_SEEN,
        REF_UNSEEN,
        GEO_OUTSIDE,
        GEO_CORNERS,
        GEO_ALONG,
        GEO_CELLS,
        GEO_BASE,
        GEO_DAY,
        TXT_SPANISH,
        PLA_ORDER,
        PLA_ODD,
        SET_NOT_IN_KIT,
        SET_MOST,
        SET_BUDGET,
        SET_LOCKED,
        SET_ACTION,
        DEF_FILLED;

        /** Short name in messages: {@code REF-UNKNOWN}. */
        public String id() {
            return name().replace('_', '-');
        }

        /** Key of its texts in the bundles: {@code ref-unknown}. */
        public String key() {
            return id().toLowerCase(Locale.ROOT);
        }
    }

    public Problem {
        details = List.copyOf(details);
        found = found.length() > LONGEST_FOUND ? found.substring(0, LONGEST_FOUND) + "\u2026" : found;
    }

    /** Whether the document cannot be used. */
    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** What is wrong and what is allowed, in {@code "en"} or {@code "es"}. */
    public String text(String language) {
        ProblemTexts texts = ProblemTexts.of(language);
        List<String> parts = new ArrayList<>(List.of(found));
        parts.addAll(details);
        String text =
                texts.fill(code.key() + ".found", parts) + " \u2013 " + texts.fill(code.key() + ".allowed", parts);
        return maybe.isEmpty()
                ? text
                : text + (text.endsWith("\u2026") ? " " : ". ") + texts.fill("maybe", List.of(maybe));
    }

    /** One line: {@code file:line:column: CODE severity pointer - found - allowed. Maybe "x"?} */
    public String line(String language) {
        String word =
                ProblemTexts.of(language).fill("severity." + severity.name().toLowerCase(Locale.ROOT), List.of());
        String where = pointer.isEmpty() ? "/" : pointer;
        return file + ":" + line + ":" + column + ": " + code.id() + " " + word + " " + where + " \u2013 "
                + text(language);
    }
}
