package provingyard.report;

import java.time.LocalDateTime;
import java.util.List;
import provingyard.quantity.Show;
import provingyard.season.Outcome;
import provingyard.study.Debrief;

/** Leaks, and how soon the flow watch found them. */
final class LeaksPart {

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
        List<LeakStory> leaks = LeakStory.of(debrief.season());
        if (leaks.isEmpty()) {
            page.paragraph(words.say("leak.none")).close();
            return;
        }
        Table table = new Table("");
        table.head(List.of(words.say("leak.what"), words.say("leak.began"), words.say("leak.found")));
        leaks.forEach(leak -> table.row(row(leak)));
        page.table(table);
        page.paragraph(words.say(
                        "leak.water",
                        words.text(Show.VOLUME, outcome.ledger().irrigation().leaked())))
                .close();
    }

    private List<Cell> row(LeakStory leak) {
        LocalDateTime began = debrief.season().clock(leak.began());
        return List.of(
                Cell.text(words.say("fault." + leak.kind().name(), words.thing(leak.on()))),
                Cell.name(words.day(began.toLocalDate())).below(words.time(began)),
                found(leak));
    }

    private Cell found(LeakStory leak) {
        if (!leak.found()) {
            return Cell.text(words.say("leak.not")).look("loss");
        }
        boolean late = leak.after() > words.scenario().costs().lateAfter();
        String after = words.text(Show.DURATION, leak.after());
        return Cell.text(words.say(late ? "leak.late" : "leak.after", after)).look(late ? "loss" : "own");
    }
}
