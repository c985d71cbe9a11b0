package provingyard.report;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.score.Loss;
import provingyard.season.Ledger;
import provingyard.season.Outcome;
import provingyard.season.Season;
import provingyard.study.Debrief;

/**
 * The ledger of a season as comma-separated values: both balances, ice, leaks and losses of the clock alone, the trainee
 * and the mark, a row each with its unit.
 */
public final class LedgerCsv {

    private final Story story;
    private final Debrief debrief;
    private final PageWords words;
    private final Csv csv = new Csv();

    private LedgerCsv(Story story, String language, UnitSystem units) {
        this.story = story;
        debrief = story.debrief();
        words = new PageWords(debrief.season().site().scenario(), language, units);
    }

    /** The file's bytes. */
    public static byte[] of(Story story, String language, UnitSystem units) {
        return new LedgerCsv(story, language, units).bytes();
    }

    private byte[] bytes() {
        csv.texts(List.of(
                        words.say("csv.part"),
                        words.say("csv.entry"),
                        words.say("csv.unit"),
                        words.say("page.you"),
                        words.say("page.clock"),
                        words.say("page.mark")))
                .end();
        about();
        site();
        irrigation();
        ice();
        leaks();
        losses();
        return csv.bytes();
    }

    private void about() {
        Season season = debrief.season();
        about("csv.site", words.title());
        about("csv.learner", debrief.learner());
        about("csv.setUp", story.setUp());
        about("about.from", season.clock(0).toLocalDate().toString());
        about("about.engine", Season.ENGINE);
        about("about.content", season.site().contentHash());
        about("about.ledger", season.ledgerHash());
        begin("csv.about", words.say("about.seed"), "");
        csv.text(Long.toString(season.seed())).text("").text("").end();
        begin("csv.about", words.say("about.days"), "");
        csv.number(season.outcome().days()).text("").text("").end();
    }

    private void about(String key, String value) {
        begin("csv.about", words.say(key), "");
        csv.text(value).text("").text("").end();
    }

    private void begin(String part, String entry, String unit) {
        csv.text(words.say(part)).text(entry).text(unit);
    }

    private void site() {
        water("supplied", Ledger.Water::supplied);
        water("rain", Ledger.Water::rain);
        water("evapotranspiration", Ledger.Water::evapotranspiration);
        water("drift", Ledger.Water::drift);
        water("walkEvaporation", Ledger.Water::walkEvaporation);
        water("runoff", Ledger.Water::runoff);
        water("below", Ledger.Water::below);
        water("offSite", Ledger.Water::offSite);
        water("leaked", Ledger.Water::leaked);
        water("storeChange", Ledger.Water::storeChange);
        row(
                "balance.site",
                words.say("balance.closure"),
                "1",
                o -> o.ledger().water().closure());
    }

    private void water(String key, ToDoubleFunction<Ledger.Water> term) {
        String entry = words.say("balance." + key);
        row(
                "balance.site",
                entry,
                Show.VOLUME,
                o -> term.applyAsDouble(o.ledger().water()));
    }

    private void irrigation() {
        share("supplied", Ledger.Irrigation::supplied);
        share("used", Ledger.Irrigation::used);
        share("drift", Ledger.Irrigation::drift);
        share("overspray", Ledger.Irrigation::overspray);
        share("runoff", Ledger.Irrigation::runoff);
        share("below", Ledger.Irrigation::below);
        share("leaked", Ledger.Irrigation::leaked);
        share("storeChange", Ledger.Irrigation::storeChange);
        String closure = words.say("balance.closure");
        row("balance.irrigation", closure, "1", o -> o.ledger().irrigation().closure());
    }

    private void share(String key, ToDoubleFunction<Ledger.Irrigation> term) {
        String entry = words.say("balance." + key);
        row(
                "balance.irrigation",
                entry,
                Show.VOLUME,
                o -> term.applyAsDouble(o.ledger().irrigation()));
    }

    private void ice() {
        row("ice.title", words.say("page.iced"), Show.ICE, o -> o.ledger().ice().areaHours());
        row(
                "ice.title",
                words.say("page.icedPeople"),
                Show.ICE,
                o -> o.ledger().ice().areaHoursInTraffic());
        row(
                "ice.title",
                words.say("csv.mornings"),
                count(),
                o -> o.ledger().ice().mornings());
    }

    private void leaks() {
        row("csv.leaks", words.say("csv.leaksHappened"), count(), o -> o.leaks().happened());
        row("csv.leaks", words.say("csv.leaksFound"), count(), o -> o.leaks().found());
        row("csv.leaks", words.say("csv.leaksLate"), count(), o -> o.leaks().late());
        row("csv.leaks", words.say("page.falseAlarms"), count(), o -> o.leaks().falseAlarms());
    }

    private String count() {
        return words.say("csv.count");
    }

    private void losses() {
        for (Loss.Kind kind : Loss.Kind.values()) {
            loss(words.window("loss." + kind.name()), l -> l.money(kind));
        }
        loss(words.say("cost.total"), Loss::total);
    }

    private void loss(String entry, ToDoubleFunction<Loss> money) {
        begin("csv.loss", entry, "USD");
        csv.number(money.applyAsDouble(debrief.standing().trainee()));
        csv.number(money.applyAsDouble(debrief.standing().clock()));
        csv.number(debrief.standing().mark().map(money::applyAsDouble).orElse(Double.NaN))
                .end();
    }

    private void row(String part, String entry, Show show, ToDoubleFunction<Outcome> value) {
        Display display = words.display();
        row(part, entry, display.unit(show), o -> display.shown(show, value.applyAsDouble(o)));
    }

    private void row(String part, String entry, String unit, ToDoubleFunction<Outcome> value) {
        begin(part, entry, unit);
        Optional<Outcome> mark = debrief.best();
        csv.number(value.applyAsDouble(debrief.season().outcome()));
        csv.number(value.applyAsDouble(debrief.clock()));
        csv.number(mark.map(value::applyAsDouble).orElse(Double.NaN)).end();
    }
}
