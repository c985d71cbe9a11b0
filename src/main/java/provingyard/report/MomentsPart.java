package provingyard.report;

import java.time.LocalDateTime;
import java.util.List;
import provingyard.quantity.Show;
import provingyard.study.Debrief;
import provingyard.study.Moment;
import provingyard.study.Moments;

/** The moments that mattered, the costliest first, each with its sentence. */
final class MomentsPart {

    /** More would be a list and no lesson. */
    private static final int MOST = 12;

    /** Of what is alike, so that others are told too. */
    private static final int ALIKE = 3;

    private final Debrief debrief;
    private final PageWords words;
    private final PageCharts charts;
    private final MomentWords sayings;

    MomentsPart(Debrief debrief, PageWords words, PageCharts charts) {
        this.debrief = debrief;
        this.words = words;
        this.charts = charts;
        sayings = new MomentWords(words.scenario(), words.language(), words.units());
    }

    void write(HtmlPage page) {
        List<Moment> all = debrief.moments();
        if (all.isEmpty()) {
            return;
        }
        List<Moment> shown = Moments.topOf(all, ALIKE).stream().limit(MOST).toList();
        page.open("div", "begin");
        page.heading(
                words.say("moments.title"),
                words.say("moments.aside", words.number(shown.size()), words.number(all.size())));
        Table table = new Table("stack moments");
        table.head(List.of(words.say("moments.when"), words.say("moments.what"), words.say("moments.money")));
        shown.forEach(m -> table.row(row(m)));
        page.table(table).close();
    }

    private List<Cell> row(Moment moment) {
        LocalDateTime at = debrief.season().clock(moment.tick());
        String money = words.signed(Show.MONEY, -moment.money());
        return List.of(
                Cell.name(words.day(at.toLocalDate()))
                        .below(words.time(at))
                        .with(charts.sign(MomentWords.icon(moment.what()))),
                Cell.text(sayings.title(moment)).below(sayings.sentence(moment)).look("block told"),
                Cell.number(money).look(moment.money() > 0 ? "loss" : "gain"));
    }
}
