package provingyard.picture;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.text.Texts;

/** The words, days and times of the ribbon in one language, from the window's texts. */
final class RibbonWords {

    private static final Map<String, RibbonWords> KNOWN = new ConcurrentHashMap<>();

    private final Texts texts;
    private final List<String> days;
    private final List<String> months;

    private RibbonWords(String language) {
        texts = Texts.of("ui", language);
        days = List.of(texts.say("ribbon.dayNames").split(","));
        months = List.of(texts.say("ribbon.monthNames").split(","));
    }

    /** The words of a language, read once. */
    static RibbonWords of(String language) {
        return KNOWN.computeIfAbsent(language, RibbonWords::new);
    }

    /** A lane's name. */
    String lane(String name) {
        return texts.say("ribbon.lane." + name);
    }

    /** The name of the zones' lanes. */
    String zones(int count) {
        return count == 1 ? texts.say("ribbon.lane.zone") : texts.say("ribbon.lane.zones", count);
    }

    /** The air's lane with its unit. */
    String air(UnitSystem units) {
        return texts.say("ribbon.lane.air", units == UnitSystem.US ? "°F" : "°C");
    }

    /** Depth of rain in mm. */
    String depth(double mm, UnitSystem units) {
        return Display.of(units, texts.language()).text(Show.DEPTH, mm / 1000);
    }

    /** A sign's word for several that stand together. */
    String times(String word, int count) {
        return count < 2 || word.isEmpty() ? word : texts.say("ribbon.times", word, count);
    }

    /** A sensor's word with how often and how many minutes in all it held. */
    String held(String word, int count, double minutes) {
        String time = Display.of(UnitSystem.METRIC, texts.language()).text(Show.DURATION, minutes * 60);
        if (word.isEmpty()) {
            return "";
        }
        return count < 2 ? texts.say("ribbon.held", word, time) : texts.say("ribbon.heldTimes", word, count, time);
    }

    /** Day n after the first day: {@code Thu 10}, or {@code 10 Oct} where months matter. */
    String day(LocalDateTime start, long n, boolean month) {
        LocalDate d = start.toLocalDate().plusDays(n);
        return month
                ? d.getDayOfMonth() + " " + months.get(d.getMonthValue() - 1)
                : days.get(d.getDayOfWeek().getValue() - 1) + " " + d.getDayOfMonth();
    }

    /** {@code 06:12}. */
    static String clock(LocalDateTime start, long tick) {
        LocalDateTime t = start.plusMinutes(tick);
        return String.format(Locale.ROOT, "%02d:%02d", t.getHour(), t.getMinute());
    }
}
