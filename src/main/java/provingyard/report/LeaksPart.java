package provingyard.report;

import java.time.LocalDateTime;
import java.util.List;
import provingyard.quantity.Show;
import provingyard.season.Chronicle;
import provingyard.season.Outcome;
import provingyard.study.Debrief;

/** Leaks, how soon the flow watch found them, and what they lost. */
final class LeaksPart {

    private static final double MINUTE = 60;

    private final Debrief debrief;
    private final PageWords words;

    LeaksPart(Debrief debrief, PageWords words) {
        this.debrief = debrief;
        this.words = words;
    }

    void write(HtmlPage page) {
        Outcome outcome = debrief.season().outcome();
        page.open("div", "keep");
        page.heading(
                words.say("leak.title"),
                words.say("leak.aside", words.number(outcome.leaks().falseAlarms())));
        List<Chronicle.Leak> leaks = debrief.chronicle().leaks();
        if (leaks.isEmpty()) {
            page.paragraph(words.say("leak.none")).close();
            return;
        }
        Table table = new Table("");
        table.head(List.of(
                words.say("leak.what"), words.say("leak.began"), words.say("leak.found"), words.say("leak.lost")));
        leaks.forEach(leak -> table.row(row(leak)));
        double leaked = outcome.ledger().irrigation().leaked();
        table.sum(List.of(
                Cell.text(words.say("leak.all")),
                Cell.text(""),
                Cell.text(""),
                Cell.number(words.text(Show.VOLUME, leaked))));
        page.table(table).close();
    }

    private List<Cell> row(Chronicle.Leak leak) {
        LocalDateTime began = debrief.season().clock(leak.began());
        return List.of(
                Cell.text(words.say("fault." + leak.kind().name(), words.thing(leak.on()))),
                Cell.name(words.day(began.toLocalDate())).below(words.time(began)),
                found(leak),
                Cell.number(words.text(Show.VOLUME, leak.volume())));
    }

    /** As scoring sees it, times are counted from the leak's begin, whether it lost water at once or not. */
    private Cell found(Chronicle.Leak leak) {
        if (leak.found() == Chronicle.NEVER) {
            Cell not = Cell.text(words.say("leak.not")).look("loss");
            return leak.ended() == Chronicle.NEVER
                    ? not
                    : not.below(words.say("leak.people", duration(leak, leak.ended())));
        }
        boolean late = (leak.found() - leak.began()) * MINUTE
                > words.scenario().costs().lateAfter();
        return Cell.text(words.say(late ? "leak.late" : "leak.after", duration(leak, leak.found())))
                .look(late ? "loss" : "own");
    }

    private String duration(Chronicle.Leak leak, long until) {
        return words.text(Show.DURATION, (until - leak.began()) * MINUTE);
    }
}
