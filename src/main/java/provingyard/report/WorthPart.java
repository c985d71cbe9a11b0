package provingyard.report;

import java.util.ArrayList;
import java.util.List;
import provingyard.quantity.Show;
import provingyard.study.Debrief;
import provingyard.study.Worth;

/** What each kind of sensor is worth on the site, with its spread over draws of the weather. */
final class WorthPart {

    private final Debrief debrief;
    private final PageWords words;
    private final PageCharts charts;

    WorthPart(Debrief debrief, PageWords words, PageCharts charts) {
        this.debrief = debrief;
        this.words = words;
        this.charts = charts;
    }

    void write(HtmlPage page) {
        List<Worth> worth = debrief.worth();
        if (worth.isEmpty()) {
            return;
        }
        page.open("div", "keep");
        page.heading(
                words.say("worth.title"),
                words.say("worth.aside", words.number(worth.get(0).draws())));
        Table table = new Table("stack");
        List<String> head = new ArrayList<>();
        for (String key : List.of("sensor", "price", "water", "ice", "season", "year", "payback")) {
            head.add(words.say("worth." + key));
        }
        table.head(head);
        worth.forEach(w -> table.row(row(w)));
        page.table(table);
        page.note(words.say("worth.read")).close();
    }

    private List<Cell> row(Worth w) {
        return List.of(
                Cell.text(words.window("kind." + w.kind().name()))
                        .with(charts.icon(w.kind()))
                        .below(words.say(w.placed() ? "worth.placed" : "worth.notPlaced")),
                Cell.number(words.money(w.price())),
                span(Show.VOLUME, w.water()),
                span(Show.ICE, w.ice()),
                span(Show.MONEY, w.money()),
                Cell.number(words.about(w.moneyAYear())).look("own"),
                Cell.number(words.payback(w.paybackYears())).look("wrap"));
    }

    private Cell span(Show show, Worth.Span span) {
        if (span.mean() == 0 && span.low() == 0 && span.high() == 0) {
            return Cell.number("–");
        }
        String mean = show == Show.MONEY ? words.about(span.mean()) : words.text(show, span.mean());
        return Cell.number(mean).below(words.ends(show, span));
    }
}
