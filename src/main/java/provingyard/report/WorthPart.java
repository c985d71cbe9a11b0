package provingyard.report;

import java.util.ArrayList;
import java.util.List;
import provingyard.quantity.Show;
import provingyard.study.Debrief;
import provingyard.study.WholeWorth;
import provingyard.study.Worth;
import provingyard.study.WorthStudy;

/** What each kind of sensor, and all of them together, is worth on the site, with the spread over draws of the weather. */
final class WorthPart {

    /** Column of what is saved a year; where a year has one season it would say the same as the one before. */
    private static final int YEAR = 5;

    private final Debrief debrief;
    private final PageWords words;
    private final PageCharts charts;

    WorthPart(Debrief debrief, PageWords words, PageCharts charts) {
        this.debrief = debrief;
        this.words = words;
        this.charts = charts;
    }

    void write(HtmlPage page) {
        debrief.worth().filter(w -> !w.kinds().isEmpty()).ifPresent(w -> write(page, w));
    }

    private void write(HtmlPage page, WorthStudy.Result worth) {
        page.open("div", "keep");
        page.heading(
                words.say("worth.title"),
                words.say("worth.aside", words.number(worth.whole().draws())));
        Table table = new Table("stack");
        List<String> head = new ArrayList<>();
        for (String key : List.of("sensor", "price", "water", "ice", "season", "year", "payback")) {
            head.add(words.say("worth." + key));
        }
        if (worth.whole().seasonsAYear() == 1) {
            head.remove(YEAR);
        }
        table.head(head);
        worth.kinds().forEach(w -> table.row(row(w)));
        if (worth.kinds().stream().anyMatch(Worth::placed)) {
            table.sum(row(worth.whole()));
        }
        page.table(table);
        page.note(words.say("worth.read"));
        if (worth.unsolvedMinutes() > 0) {
            page.lead(words.say("worth.unsolved", words.number(worth.unsolvedMinutes())));
        }
        page.close();
    }

    private List<Cell> row(Worth w) {
        Cell name = Cell.text(words.window("kind." + w.kind().name()))
                .with(charts.icon(w.kind()))
                .below(words.say(w.placed() ? "worth.placed" : "worth.notPlaced"));
        return row(name, w.price(), List.of(w.water(), w.ice(), w.money()), w.seasonsAYear(), w.paybackYears());
    }

    private List<Cell> row(WholeWorth w) {
        Cell name = Cell.text(words.say("worth.whole")).below(words.say("worth.wholeAside"));
        return row(name, w.price(), List.of(w.water(), w.ice(), w.money()), w.seasonsAYear(), w.paybackYears());
    }

    private List<Cell> row(Cell name, double price, List<Worth.Span> saved, double seasons, double payback) {
        List<Cell> cells = new ArrayList<>(List.of(
                name,
                Cell.number(words.money(price)),
                span(Show.VOLUME, saved.get(0)),
                span(Show.ICE, saved.get(1)),
                span(Show.MONEY, saved.get(2)),
                Cell.number(words.about(saved.get(2).mean() * seasons)).look("own"),
                Cell.number(words.payback(payback)).look("wrap")));
        if (seasons == 1) {
            cells.remove(YEAR);
        }
        return cells;
    }

    private Cell span(Show show, Worth.Span span) {
        if (span.mean() == 0 && span.low() == 0 && span.high() == 0) {
            return Cell.number("–");
        }
        String mean = show == Show.MONEY ? words.about(span.mean()) : words.text(show, span.mean());
        return Cell.number(mean).below(words.ends(show, span));
    }
}
