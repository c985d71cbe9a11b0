package provingyard.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import provingyard.quantity.Dimension.Unit;

/**
 * Shows inner values to people: suited units, sensible decimals, a no-break space before the unit, a true minus, and in
 * Spanish a decimal comma.
 *
 * @param system the system of units
 * @param language {@code "en"} or {@code "es"}
 */
public record Display(UnitSystem system, String language) {

    private static final Pattern IN_BRACES = Pattern.compile("\\{([^{}]{1,40})\\}");
    private static final String SPACE = "\u00a0";
    private static final String MINUS = "\u2212";
    /** The only unit that is a word and not a sign. */
    private static final String PULSES = "pulses";

    private static final String PULSES_IN_SPANISH = "pulsos";
    private static final double SQUARE_FEET = 1 / 0.09290304;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    private static final double DAY = 86400;

    /** How values are shown in a system and a language. */
    public static Display of(UnitSystem system, String language) {
        return new Display(system, language);
    }

    /**
     * Number and unit, such as {@code 18.3 m}; a dash for a value that is not finite.
     *
     * @param show what kind of value
     * @param inner the value in the dimension's inner unit (iced area times time: m2 h)
     */
    public String text(Show show, double inner) {
        if (Double.isNaN(inner) || Double.isInfinite(inner)) {
            return "\u2013";
        }
        if (show == Show.MONEY) {
            return number(inner, 2, true) + SPACE + "USD";
        }
        if (show == Show.DURATION) {
            return duration(inner);
        }
        if (show == Show.VOLUME && system == UnitSystem.METRIC && Math.abs(inner) < 1) {
            return number(inner * 1000, fitting(inner * 1000, 2), false) + SPACE + "L";
        }
        return number(show, inner) + SPACE + unit(show);
    }

    /**
     * A sentence whose quantities stand in braces as files write them: {@code more than {10 gpm}}. Each is shown in this
     * system; braces around anything else stay as they are.
     */
    public String sentence(String written) {
        return IN_BRACES.matcher(written).replaceAll(found -> {
            String shown = Show.SPOKEN.stream()
                    .flatMap(show -> spoken(show, found.group(1)).stream())
                    .findFirst()
                    .orElse(found.group());
            return Matcher.quoteReplacement(shown);
        });
    }

    private Optional<String> spoken(Show show, String quantity) {
        boolean theirs = List.of(show.symbol(UnitSystem.METRIC), show.symbol(UnitSystem.US)).stream()
                .anyMatch(symbol -> quantity.trim().endsWith(" " + symbol));
        boolean only = Show.SPOKEN.stream()
                        .filter(s -> s.dimension() == show.dimension())
                        .count()
                == 1;
        return (theirs || only) && Quantities.parse(show.dimension(), quantity) instanceof Parsed.Value value
                ? Optional.of(text(show, value.inner()))
                : Optional.empty();
    }

    /** The number alone, in {@link #unit}. */
    public String number(Show show, double inner) {
        double shown = shown(show, inner);
        boolean even = show == Show.TEMPERATURE || show == Show.TEMPERATURE_DIFFERENCE;
        int decimals = even ? show.decimals(system) : fitting(shown, show.decimals(system));
        return number(shown, decimals, show == Show.MONEY);
    }

    /** A finite number that has no unit, such as a number of years, with at most so many decimals. */
    public String plain(double value, int decimals) {
        return number(value, decimals, false);
    }

    /** The unit, such as {@code ft} or {@code m²}. */
    public String unit(Show show) {
        String symbol = show.symbol(system);
        if (show == Show.PULSES) {
            return "es".equals(language) ? symbol.replace(PULSES, PULSES_IN_SPANISH) : symbol;
        }
        boolean power = symbol.matches("(m|mm|ft|in)[23]");
        return power ? symbol.replace('2', '\u00b2').replace('3', '\u00b3') : symbol;
    }

    /** The value in {@link #unit}, unrounded, for sliders and axes. */
    public double shown(Show show, double inner) {
        if (show == Show.ICE) {
            return system == UnitSystem.US ? inner * SQUARE_FEET : inner;
        }
        return unitOf(show).fromInner(inner);
    }

    /** The inner value of a value in {@link #unit}. */
    public double inner(Show show, double shown) {
        if (show == Show.ICE) {
            return system == UnitSystem.US ? shown / SQUARE_FEET : shown;
        }
        return unitOf(show).toInner(shown);
    }

    /**
     * Reads what a person typed: a bare number is in {@link #unit}; any unit of the dimension may be given; in Spanish
     * a decimal comma is taken.
     *
     * @throws IllegalArgumentException for iced area times time, which nobody types
     */
    public Parsed read(Show show, String typed) {
        if (show == Show.ICE) {
            throw new IllegalArgumentException("nobody types " + show);
        }
        String text = "es".equals(language)
                ? typed.replaceFirst("(?<=\\d),(?=\\d)", ".").replace(PULSES_IN_SPANISH, PULSES)
                : typed;
        return Quantities.parse(show.dimension(), text, unitOf(show));
    }

    private Unit unitOf(Show show) {
        for (Unit unit : show.dimension().units()) {
            if (unit.symbol().equals(show.symbol(system))) {
                return unit;
            }
        }
        throw new IllegalStateException(show + " has no unit " + show.symbol(system));
    }

    private String duration(double seconds) {
        double size = Math.abs(seconds);
        if (size < MINUTE && size > 0) {
            return number(seconds, fitting(seconds, 1), false) + SPACE + "s";
        }
        if (size < 2 * HOUR) {
            return number(seconds / MINUTE, fitting(seconds / MINUTE, 2), false) + SPACE + "min";
        }
        return size < 2 * DAY
                ? number(seconds / HOUR, 1, false) + SPACE + "h"
                : number(seconds / DAY, 1, false) + SPACE + "d";
    }

    /** One decimal less for each power of ten. */
    private static int fitting(double value, int decimals) {
        double size = Math.abs(value);
        int left = decimals;
        for (double limit = 1; size >= limit && left > 0; limit *= 10) {
            left--;
        }
        return left;
    }

    private String number(double value, int decimals, boolean keepZeros) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String digits = rounded.abs().toPlainString();
        if (!keepZeros && digits.contains(".")) {
            digits = digits.replaceFirst("0+$", "").replaceFirst("\\.$", "");
        }
        int point = digits.indexOf('.');
        String whole = point < 0 ? digits : digits.substring(0, point);
        String rest = point < 0 ? "" : digits.substring(point + 1);
        String text = grouped(whole) + (rest.isEmpty() ? "" : ("es".equals(language) ? "," : ".") + rest);
        return rounded.signum() < 0 ? MINUS + text : text;
    }

    /** Thousands set apart in numbers of five digits or more. */
    private String grouped(String whole) {
        if (whole.length() < 5) {
            return whole;
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < whole.length(); i++) {
            if (i > 0 && (whole.length() - i) % 3 == 0) {
                text.append("es".equals(language) ? SPACE : ",");
            }
            text.append(whole.charAt(i));
        }
        return text.toString();
    }
}
