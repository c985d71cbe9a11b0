package provingyard.report;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Function;
import provingyard.quantity.Show;
import provingyard.study.Moment;

/** The moments that mattered, the costliest first, each with its sentence. */
final class MomentsPart {

    /** More would be a list and no lesson. */
    private static final int MOST = 12;

    private final Story story;
    private final PageWords words;
    private final PageCharts charts;

    MomentsPart(Story story, PageWords words, PageCharts charts) {
        this.story = story;
        this.words = words;
        this.charts = charts;
    }

    void write(HtmlPage page) {
        List<Moment> all = story.debrief().moments();
        if (all.isEmpty() || story.sentences().isEmpty()) {
            return;
        }
        List<Moment> shown = all.subList(0, Math.min(MOST, all.size()));
        page.open("div", "begin");
        page.heading(
                words.say("moments.title"),
                words.say("moments.aside", words.number(shown.size()), words.number(all.size())));
        Table table = new Table("stack moments");
        table.head(List.of(words.say("moments.when"), words.say("moments.what"), words.say("moments.money")));
        shown.forEach(m -> table.row(row(m, story.sentences().get())));
        page.table(table).close();
    }

    private List<Cell> row(Moment moment, Function<Moment, String> sentence) {
        LocalDateTime at = story.debrief().season().clock(moment.tick());
        String money = words.signed(Show.MONEY, -moment.money());
        Cell when = Cell.name(words.day(at.toLocalDate())).below(words.time(at));
        return List.of(
                moment.sensor() == null ? when : when.with(charts.icon(moment.sensor())),
                Cell.text(sentence.apply(moment)).look("block"),
                Cell.number(money).look(moment.money() > 0 ? "loss" : "gain"));
    }
}
