package provingyard.ui;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.Locale;
import provingyard.report.MomentWords;
import provingyard.scenario.Scenario;
import provingyard.study.Moment;

/** How moments are told on the screen: when, and in one sentence what, why and what helps. */
final class MomentSayings {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private final Words words;
    private final Scenario scenario;

    MomentSayings(Words words, Scenario scenario) {
        this.words = words;
        this.scenario = scenario;
    }

    /** What happened and what brought it about, in few words. */
    String title(Moment moment) {
        return said().title(moment);
    }

    private MomentWords said() {
        return new MomentWords(scenario, words.language(), words.units().get());
    }

    /** What happened, why, what it cost and what would have helped. */
    String sentence(Moment moment) {
        return said().sentence(moment);
    }

    /** Weekday, day and month, such as Mon 21 Oct. */
    String day(long tick) {
        LocalDateTime at = at(tick);
        Locale locale = Locale.forLanguageTag(words.language());
        return at.getDayOfWeek().getDisplayName(TextStyle.SHORT, locale)
                + " "
                + at.getDayOfMonth()
                + " "
                + at.getMonth().getDisplayName(TextStyle.SHORT, locale);
    }

    /** Time of day, such as 05:02. */
    String clock(long tick) {
        return at(tick).format(CLOCK);
    }

    private LocalDateTime at(long tick) {
        return scenario.season().from().atStartOfDay().plusMinutes(tick);
    }
}
