package provingyard.report;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.scenario.YardPlan;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.study.Choice;
import provingyard.study.Worth;
import provingyard.text.Texts;

/** What pages say, in one language and one system of units, about one site. */
final class PageWords {

    private static final String SPACE = "\u00a0";
    private static final String PLUS = "+";
    private static final double WEEKS_A_YEAR = 365.25 / 7;
    private static final double MONTHS_A_YEAR = 12;
    private static final double MANY_MONTHS = 24;
    private static final double FEW_WEEKS = 8;

    private final Scenario scenario;
    private final Texts texts;
    private final Texts window;
    private final Display display;
    private final List<String> days;
    private final List<String> months;

    PageWords(Scenario scenario, String language, UnitSystem units) {
        this.scenario = scenario;
        texts = Texts.of("report", language);
        window = Texts.of("ui", language);
        display = Display.of(units, texts.language());
        days = List.of(window.say("ribbon.dayNames").split(","));
        months = List.of(window.say("ribbon.monthNames").split(","));
    }

    Scenario scenario() {
        return scenario;
    }

    String language() {
        return texts.language();
    }

    UnitSystem units() {
        return display.system();
    }

    Display display() {
        return display;
    }

    /** A text of the pages. */
    String say(String key, Object... values) {
        return texts.say(key, values);
    }

    /** A text that pages have in common with the window. */
    String window(String key, Object... values) {
        return window.say(key, values);
    }

    /** The window's texts, for what is drawn alike there and on pages. */
    Texts windowTexts() {
        return window;
    }

    /** Whether the window has a text with a key. */
    boolean windowHas(String key) {
        return window.has(key);
    }

    /** The site's title. */
    String title() {
        return scenario.title().in(language());
    }

    String text(Show show, double value) {
        return display.text(show, value);
    }

    /** Money to the cent. */
    String money(double usd) {
        return display.text(Show.MONEY, usd);
    }

    /** Money to the dollar, for what is only estimated. */
    String about(double usd) {
        return display.text(Show.MONEY, Math.rint(usd)).replaceFirst("[.,]00(?=" + SPACE + ")", "");
    }

    /** A difference with its sign; nothing for one that would be shown as nought. */
    String signed(Show show, double value) {
        String text = display.text(show, value);
        boolean nought = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        if (nought) {
            return display.text(show, 0);
        }
        return value > 0 ? PLUS + text : text;
    }

    /** The two ends of a span, their unit once where it is the same; one where both are shown alike. */
    String ends(Show show, Worth.Span span) {
        String low = show == Show.MONEY ? about(span.low()) : text(show, span.low());
        String high = show == Show.MONEY ? about(span.high()) : text(show, span.high());
        if (low.equals(high)) {
            return high;
        }
        String unit = high.substring(high.lastIndexOf(SPACE));
        boolean once = low.endsWith(unit);
        return say("worth.span", once ? low.substring(0, low.length() - unit.length()) : low, high);
    }

    /** How long until something has paid for itself. */
    String payback(double years) {
        if (Double.isInfinite(years)) {
            return say("payback.never");
        }
        double weeks = years * WEEKS_A_YEAR;
        if (weeks < FEW_WEEKS) {
            return weeks <= 1 ? say("payback.week") : say("payback.weeks", number(Math.ceil(weeks)));
        }
        double whole = Math.rint(years * MONTHS_A_YEAR);
        return whole < MANY_MONTHS
                ? say("payback.months", number(whole))
                : say("payback.years", number(Math.rint(10 * years) / 10));
    }

    /** A plain number, as the language writes it: a bare length has its decimals. */
    String number(double value) {
        return Display.of(UnitSystem.METRIC, language()).number(Show.LENGTH, value);
    }

    /** A date with its year. */
    String date(LocalDate date) {
        return date.getDayOfMonth() + SPACE + months.get(date.getMonthValue() - 1) + SPACE + date.getYear();
    }

    /** A day of the season with its weekday. */
    String day(LocalDate date) {
        return days.get(date.getDayOfWeek().getValue() - 1)
                + SPACE
                + date.getDayOfMonth()
                + SPACE
                + months.get(date.getMonthValue() - 1);
    }

    /** The weekday of a number, Monday 1. */
    String weekday(int number) {
        return days.get(number - 1);
    }

    /** Time of day. */
    String time(LocalDateTime at) {
        return at.toLocalTime().withSecond(0).withNano(0).toString();
    }

    /** A kind of sensor by its name. */
    String sensor(SensorKind kind) {
        return window.say("sensor." + kind.name());
    }

    /** A choice by its name. */
    String choice(Choice choice) {
        return choice.kind().map(k -> window.say("kind." + k.name())).orElseGet(() -> say("share.schedule"));
    }

    /** A sensor by its name: with a number where a set-up has several of its kind. */
    String sensor(Placement sensor, SetUp setUp) {
        String name = sensor(sensor.kind());
        String number = sensor.id().replaceAll(".*?(\\d*)$", "$1");
        return setUp.of(sensor.kind()).size() > 1 && !number.isEmpty() ? name + SPACE + number : name;
    }

    /** What a fitting, walk or other thing of the site is called; its id where it has no name. */
    String thing(String id) {
        for (Plumbing.Fitting fitting : scenario.plumbing().fittings()) {
            if (fitting.id().equals(id) && fitting.label() != null) {
                return fitting.label().in(language());
            }
        }
        for (YardPlan.Surface surface : scenario.yard().surfaces()) {
            if (surface.id().equals(id)) {
                return surface.label() != null
                        ? surface.label().in(language())
                        : window.say("surface." + surface.kind().name()) + " (" + id + ")";
            }
        }
        return id;
    }
}
