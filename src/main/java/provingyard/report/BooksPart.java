package provingyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import provingyard.quantity.Show;
import provingyard.score.Loss;
import provingyard.season.Ledger;
import provingyard.season.Season;
import provingyard.study.Debrief;
import provingyard.study.Standing;

/** The books of a season: what it cost, both water balances with their closure, and how all was computed. */
final class BooksPart {

    private static final int FINGERPRINT = 16;

    private final Debrief debrief;
    private final PageWords words;

    BooksPart(Debrief debrief, PageWords words) {
        this.debrief = debrief;
        this.words = words;
    }

    /** What each entry cost the clock alone, the trainee and the mark. */
    void costs(HtmlPage page) {
        Standing standing = debrief.standing();
        page.open("div", "keep").heading(words.say("cost.title"));
        Table table = new Table("");
        table.head(List.of(
                words.say("cost.entry"), words.say("page.clock"), words.say("page.you"), words.say("page.mark")));
        for (Loss.Kind kind : Loss.Kind.values()) {
            table.row(row(
                    words.window("loss." + kind.name()),
                    standing.clock().money(kind),
                    standing.trainee().money(kind),
                    standing.mark().map(m -> m.money(kind)).orElse(Double.NaN)));
        }
        page.table(table.sum(row(
                words.say("cost.total"),
                standing.clock().total(),
                standing.trainee().total(),
                standing.mark().map(Loss::total).orElse(Double.NaN))));
        page.close();
    }

    private List<Cell> row(String name, double clock, double trainee, double mark) {
        return List.of(
                Cell.text(name),
                Cell.number(words.money(clock)),
                Cell.number(words.money(trainee)).look("own"),
                Cell.number(words.money(mark)));
    }

    /** Both balances. */
    void balances(HtmlPage page) {
        Ledger ledger = debrief.season().ledger();
        page.heading(words.say("balance.title"), words.say("balance.aside"));
        page.open("div", "pair books").open("div", "");
        balance(page, "balance.site", ofSite(ledger.water()), ledger.water().closure());
        page.close().open("div", "");
        balance(
                page,
                "balance.irrigation",
                ofIrrigation(ledger.irrigation()),
                ledger.irrigation().closure());
        page.close().close();
    }

    private record Term(String key, double volume) {}

    private static List<Term> ofSite(Ledger.Water w) {
        return List.of(
                new Term("balance.supplied", w.supplied()),
                new Term("balance.rain", w.rain()),
                new Term("balance.evapotranspiration", w.evapotranspiration()),
                new Term("balance.drift", w.drift()),
                new Term("balance.walkEvaporation", w.walkEvaporation()),
                new Term("balance.runoff", w.runoff()),
                new Term("balance.below", w.below()),
                new Term("balance.offSite", w.offSite()),
                new Term("balance.leaked", w.leaked()),
                new Term("balance.storeChange", w.storeChange()));
    }

    private static List<Term> ofIrrigation(Ledger.Irrigation i) {
        return List.of(
                new Term("balance.supplied", i.supplied()),
                new Term("balance.used", i.used()),
                new Term("balance.drift", i.drift()),
                new Term("balance.overspray", i.overspray()),
                new Term("balance.runoff", i.runoff()),
                new Term("balance.below", i.below()),
                new Term("balance.leaked", i.leaked()),
                new Term("balance.storeChange", i.storeChange()));
    }

    private void balance(HtmlPage page, String title, List<Term> terms, double closure) {
        Table table = new Table("");
        table.head(List.of(words.say(title), ""));
        for (Term term : terms) {
            table.row(Cell.text(words.say(term.key())), Cell.number(words.text(Show.VOLUME, term.volume())));
        }
        String share = String.format(Locale.ROOT, "%.1e", closure);
        page.table(table.sum(List.of(Cell.text(words.say("balance.closure")), Cell.number(share))));
    }

    /** How all of it was computed, so that it can be computed again. */
    void about(HtmlPage page) {
        Season season = debrief.season();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(words.say("about.seed"), Long.toString(season.seed())));
        rows.add(List.of(
                words.say("about.days"), Integer.toString(season.outcome().days())));
        rows.add(List.of(words.say("about.from"), words.date(season.clock(0).toLocalDate())));
        rows.add(List.of(words.say("about.engine"), Season.ENGINE));
        rows.add(List.of(words.say("about.content"), beginning(season.site().contentHash())));
        rows.add(List.of(words.say("about.ledger"), beginning(season.ledgerHash())));
        debrief.mark().ifPresent(m -> rows.add(List.of(words.say("about.draws"), Integer.toString(m.draws()))));
        page.open("div", "keep").heading(words.say("about.title"));
        Table table = new Table("about");
        rows.forEach(r -> table.row(Cell.text(r.get(0)), Cell.number(r.get(1))));
        page.table(table).close();
        if (season.unsolvedMinutes() > 0) {
            page.lead(words.say("about.unsolved", Long.toString(season.unsolvedMinutes())));
        }
    }

    /** Enough of a fingerprint to tell two apart. */
    static String beginning(String hash) {
        return hash.substring(0, Math.min(FINGERPRINT, hash.length()));
    }
}
