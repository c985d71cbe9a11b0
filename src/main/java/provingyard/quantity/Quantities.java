package provingyard.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import provingyard.quantity.Dimension.Unit;
import provingyard.quantity.Parsed.Reason;
import provingyard.quantity.Parsed.Refused;
import provingyard.quantity.Parsed.Value;

/**
 * Reads and writes quantities as files have them: {@code "18 gpm"}, {@code "15ft"}, {@code "1 1/2 in"}.
 *
 * <p>A number is a decimal with a point, with an exponent where wanted, a fraction {@code 1/4}, or a whole and a
 * fraction {@code 1 1/2} or {@code 1-1/2}. A hyphen or a true minus may stand before it. The space before the unit may
 * be left out.
 */
public final class Quantities {

    /** Longest text that is looked at, in characters. */
    public static final int LONGEST = 60;

    private static final String WHOLE_AND_FRACTION = "(?:(\\d{1,9})[ -])?(\\d{1,9})/(\\d{1,9})";
    private static final String DECIMAL = "(\\d+(?:\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,4})?";
    private static final Pattern NUMBER =
            Pattern.compile("([+-]?) ?(?:" + WHOLE_AND_FRACTION + "|" + DECIMAL + ")(?![\\d.])");
    private static final Pattern COMMA = Pattern.compile("[+-]? ?\\d*,\\d.*");

    private Quantities() {}

    /**
     * Reads a quantity.
     *
     * @param dimension the kind wanted; {@link Dimension#FRACTION} also takes a number without a unit
     * @param text number and unit
     * @return the value in the inner unit, or why not
     */
    public static Parsed parse(Dimension dimension, String text) {
        return parse(dimension, text, dimension == Dimension.FRACTION ? dimension.inner() : null);
    }

    /** Reads a quantity whose unit may be left out; the bare unit then counts (null: a unit is needed). */
    static Parsed parse(Dimension dimension, String text, Unit bare) {
        if (text == null || text.isBlank()) {
            return new Refused(Reason.EMPTY, "", 0, example(dimension));
        }
        if (text.length() > LONGEST) {
            return new Refused(Reason.TOO_LONG, text.substring(0, LONGEST), 0, "");
        }
        String plain = plain(text);
        int start = plain.length() - plain.stripLeading().length();
        Matcher number = NUMBER.matcher(plain).region(start, plain.length());
        boolean found = number.lookingAt();
        if (plain.indexOf(',') >= 0 && COMMA.matcher(plain.strip()).matches()) {
            String pointed = plain.strip().replaceFirst(",", ".");
            return new Refused(Reason.COMMA, text.strip(), start, pointed);
        }
        if (!found) {
            return new Refused(Reason.NO_NUMBER, text.strip(), start, example(dimension));
        }
        if (number.group(4) != null && Long.parseLong(number.group(4)) == 0) {
            return new Refused(Reason.ZERO_DENOMINATOR, number.group(), number.start(), "");
        }
        double value = value(number);
        if (Double.isInfinite(value)) {
            return new Refused(Reason.NOT_FINITE, number.group(), number.start(), "");
        }
        return withUnit(dimension, value, plain.substring(number.end()), number.end(), bare);
    }

    private static Parsed withUnit(Dimension dimension, double value, String rest, int at, Unit bare) {
        String symbol = rest.strip();
        int begin = at + rest.length() - rest.stripLeading().length();
        if (symbol.isEmpty()) {
            return bare == null
                    ? new Refused(Reason.NO_UNIT, "", at, dimension.inner().symbol())
                    : finite(bare.toInner(value), at);
        }
        for (Unit unit : dimension.units()) {
            if (unit.symbol().equals(symbol) && !symbol.equals("1")) {
                return finite(unit.toInner(value), at);
            }
        }
        return new Refused(Reason.UNKNOWN_UNIT, symbol, begin, nearest(dimension, symbol));
    }

    private static Parsed finite(double inner, int at) {
        return Double.isInfinite(inner)
                ? new Refused(Reason.NOT_FINITE, "", at, "")
                : new Value(inner == 0 ? 0.0 : inner);
    }

    private static double value(Matcher number) {
        double size;
        if (number.group(4) != null) {
            double whole = number.group(2) == null ? 0 : Double.parseDouble(number.group(2));
            size = whole + Double.parseDouble(number.group(3)) / Double.parseDouble(number.group(4));
        } else {
            String exponent = number.group(6) == null ? "" : number.group(6);
            size = Double.parseDouble(number.group(5) + exponent);
        }
        return number.group(1).equals("-") ? -size : size;
    }

    /** One spelling for signs that look alike, each one character, so that positions stay. */
    private static String plain(String text) {
        return text.replace('\u2212', '-')
                .replace('\u2013', '-')
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\u2009', ' ')
                .replace('\u00ba', '\u00b0')
                .replace('\u00b2', '2')
                .replace('\u00b3', '3')
                .replace('\t', ' ');
    }

    /**
     * The shortest text that reads back as exactly this value: the shortest double and the inner unit.
     *
     * @throws IllegalArgumentException when the value is not finite
     */
    public static String exact(Dimension dimension, double inner) {
        if (Double.isNaN(inner) || Double.isInfinite(inner)) {
            throw new IllegalArgumentException("no text for " + inner);
        }
        String number = Double.toString(inner);
        if (number.endsWith(".0")) {
            number = number.substring(0, number.length() - 2);
        }
        return dimension == Dimension.FRACTION
                ? number
                : number + " " + dimension.inner().symbol();
    }

    /** Symbols accepted for a dimension, in the order in which messages list them. */
    public static List<String> symbols(Dimension dimension) {
        List<String> symbols = new ArrayList<>();
        for (Unit unit : dimension.units()) {
            if (!unit.symbol().equals("1")) {
                symbols.add(unit.symbol());
            }
        }
        return symbols;
    }

    /** A text that would be read, for messages. */
    public static String example(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "15 ft";
            case AREA -> "0.4 in2";
            case VOLUME -> "50 gal";
            case FLOW -> "18 gpm";
            case PRESSURE -> "60 psi";
            case RATE -> "1.5 in/h";
            case TEMPERATURE -> "37 °F";
            case TEMPERATURE_DIFFERENCE -> "4 K";
            case SPEED -> "9 mph";
            case DURATION -> "10 min";
            case ANGLE -> "90 deg";
            case FRACTION -> "80 %";
            default -> "1 " + dimension.inner().symbol();
        };
    }

    /** The unit of a dimension nearest to a wrong one, or an empty text when none is near. */
    private static String nearest(Dimension dimension, String symbol) {
        String trimmed = symbol.endsWith(".") ? symbol.substring(0, symbol.length() - 1) : symbol;
        return switch (trimmed.toLowerCase(Locale.ROOT)) {
            case "feet", "foot", "'", "pies", "pie" -> dimension == Dimension.LENGTH ? "ft" : "";
            case "inch", "inches", "\"", "pulgadas" -> dimension == Dimension.LENGTH ? "in" : "";
            case "f", "c", "deg f", "deg c" -> {
                boolean thermal = dimension == Dimension.TEMPERATURE || dimension == Dimension.TEMPERATURE_DIFFERENCE;
                yield thermal ? "°" + trimmed.substring(trimmed.length() - 1).toUpperCase(Locale.ROOT) : "";
            }
            case "hr", "hrs", "hour", "hours" -> dimension == Dimension.DURATION ? "h" : "";
            default -> Nearest.of(trimmed, symbols(dimension)).orElse("");
        };
    }
}
