package provingyard.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A table as comma-separated values (RFC 4180): rows end with CR LF, every text is quoted, numbers are not and have a
 * decimal point in every language. The file is UTF-8 with a byte order mark, since the spreadsheet programs that people
 * open it with take it for another encoding without one.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe before it, as OWASP advises against CSV
 * injection; numbers stay numbers.
 */
final class Csv {

    private static final String MARK = "\uFEFF";
    private static final String END = "\r\n";
    /** Signs with which a formula begins, plain and full width, and spaces that hide one. */
    private static final String FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";
    /** Digits that tell apart what a season can differ in, without the noise of units. */
    private static final MathContext DIGITS = new MathContext(12);

    private final StringBuilder text = new StringBuilder(MARK);
    private boolean rowBegun;

    /** A cell with a text. */
    Csv text(String value) {
        separate();
        String safe = value.isEmpty() || FORMULA.indexOf(value.charAt(0)) < 0 ? value : "'" + value;
        text.append('"').append(safe.replace("\"", "\"\"")).append('"');
        return this;
    }

    /** Cells with texts. */
    Csv texts(List<String> values) {
        values.forEach(this::text);
        return this;
    }

    /** A cell with a number; empty where it is not finite. */
    Csv number(double value) {
        separate();
        if (Double.isFinite(value)) {
            BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS);
            text.append(
                    rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
        }
        return this;
    }

    /** Ends the row. */
    Csv end() {
        text.append(END);
        rowBegun = false;
        return this;
    }

    /** The file's bytes. */
    byte[] bytes() {
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void separate() {
        if (rowBegun) {
            text.append(',');
        }
        rowBegun = true;
    }
}
