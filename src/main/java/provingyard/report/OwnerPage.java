package provingyard.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Costs;
import provingyard.scenario.SeasonPlan;
import provingyard.season.Season;
import provingyard.setup.Cautions;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.study.Debrief;
import provingyard.study.WholeWorth;
import provingyard.study.Worth;
import provingyard.study.WorthStudy;

/**
 * One sheet for the owner of the property: what each sensor does there in plain words, what it saves and when it has
 * paid for itself, with the spread over years, the cautions and what was assumed.
 */
public final class OwnerPage {

    private static final double GALLONS = 3.785411784;
    private static final double SQUARE_FEET = 9.290304;
    private static final double LEAST = 0.005;
    /** Column of what is saved a season. */
    private static final int SEASON = 3;
    /** The plan takes half of the sheet: its letters are the larger. */
    private static final double LETTERING = 2.7;

    private final Debrief debrief;
    private final WorthStudy.Result worth;
    private final PageWords words;
    private final PageCharts charts;

    private OwnerPage(Debrief debrief, String language, UnitSystem units) {
        this.debrief = debrief;
        worth = debrief.worth().orElseThrow();
        words = new PageWords(debrief.season().site().scenario(), language, units);
        charts = new PageCharts(words);
    }

    /** Whether there is something to tell an owner: a sensor is placed, and what it is worth is known. */
    public static boolean tells(Debrief debrief) {
        return debrief.worth().stream().flatMap(w -> w.kinds().stream()).anyMatch(Worth::placed);
    }

    /** The page in a language and a system of units. */
    public static HtmlPage of(Debrief debrief, String language, UnitSystem units) {
        return new OwnerPage(debrief, language, units).page(1);
    }

    /** The page for a sheet of paper: the plan is made smaller until all of it fits on one. */
    public static byte[] pdf(Debrief debrief, String language, UnitSystem units, Paper paper) throws IOException {
        OwnerPage owner = new OwnerPage(debrief, language, units);
        byte[] sheet = Pdf.of(owner.page(1), paper);
        for (double plan = 0.9; Pdf.pages(sheet) > 1 && plan > 0.3; plan -= 0.1) {
            sheet = Pdf.of(owner.page(plan), paper);
        }
        return sheet;
    }

    /** {@code plan}: share of its column that the plan takes. */
    private HtmlPage page(double plan) {
        HtmlPage page = new HtmlPage(words.language(), words.say("owner.title") + ": " + words.title(), "owner");
        made(page, "foot paper");
        page.element("h1", "", words.say("owner.title"));
        page.element("p", "sub", whose());
        top(page, plan);
        sensors(page);
        also(page);
        page.open("table", "plain").open("tbody", "").open("tr", "");
        page.open("td", "cell half");
        page.element("h2", "", words.say("owner.cautions")).list("", cautions()).close();
        page.open("td", "cell half right");
        page.element("h2", "", words.say("owner.assumed")).list("", assumed()).close();
        page.close().close().close();
        made(page, "foot screen");
        return page;
    }

    private void made(HtmlPage page, String look) {
        String hash = BooksPart.beginning(debrief.season().site().contentHash());
        page.element(
                "div",
                look,
                words.say(
                        "owner.made",
                        Season.ENGINE,
                        hash,
                        Integer.toString(WorthStudy.FIRST_DRAW),
                        Integer.toString(WorthStudy.FIRST_DRAW + worth.whole().draws() - 1),
                        Long.toString(words.scenario().season().seed())));
    }

    private String whose() {
        SeasonPlan season = words.scenario().season();
        String line = words.say(
                "owner.for",
                words.title(),
                Integer.toString(worth.whole().draws()),
                Integer.toString(season.days()),
                words.date(season.from()));
        return debrief.learner().isBlank() ? line : line + " " + words.say("owner.prepared", debrief.learner());
    }

    private void top(HtmlPage page, double plan) {
        byte[] yard = new PlanPictures(debrief.season(), words, LETTERING).sensors(List.of());
        page.open("table", "plain").open("tbody", "").open("tr", "");
        page.open("td", "cell yard");
        String share = Math.round(100 * plan) + "%";
        page.plan(yard, words.say("owner.plan", words.title()), "width:" + share)
                .close();
        page.open("td", "cell right");
        whole(page);
        page.close().close().close().close();
    }

    /** What all of it is worth together against the clock alone. */
    private void whole(HtmlPage page) {
        WholeWorth whole = worth.whole();
        page.element("div", "figure", words.about(Math.abs(whole.moneyAYear())));
        page.lead(words.say(whole.moneyAYear() >= 0 ? "owner.whole" : "owner.wholeMore"));
        page.paragraph(words.say("owner.spread", words.ends(Show.MONEY, aYear(whole.money(), whole.seasonsAYear()))));
        saved(page, "owner.wholeWater", Show.VOLUME, whole.water());
        saved(page, "owner.wholeIce", Show.ICE, whole.ice());
        String price = words.about(whole.price());
        page.paragraph(
                Double.isInfinite(whole.paybackYears())
                        ? words.say("owner.wholeNever", price)
                        : words.say("owner.wholePrice", price, words.payback(whole.paybackYears())));
        if (worth.unsolvedMinutes() > 0) {
            page.lead(words.say("worth.unsolved", words.number(worth.unsolvedMinutes())));
        }
    }

    private void saved(HtmlPage page, String key, Show show, Worth.Span season) {
        if (season.mean() != 0) {
            Worth.Span year = aYear(season, worth.whole().seasonsAYear());
            page.paragraph(words.say(key, words.text(show, year.mean()), words.ends(show, year)));
        }
    }

    private static Worth.Span aYear(Worth.Span season, double seasons) {
        return new Worth.Span(season.mean() * seasons, season.low() * seasons, season.high() * seasons);
    }

    private void sensors(HtmlPage page) {
        Table table = new Table("stack");
        List<String> head = new ArrayList<>();
        for (String key : List.of("sensor", "does", "price", "season", "year", "payback")) {
            head.add(words.say("owner." + key));
        }
        if (isYear()) {
            head.remove(SEASON);
        }
        table.head(head);
        worth.kinds().stream().filter(Worth::placed).forEach(w -> table.row(row(w)));
        page.table(table);
    }

    /** Where a year has one season, its column would say the same twice. */
    private boolean isYear() {
        return worth.whole().seasonsAYear() == 1;
    }

    private List<Cell> row(Worth w) {
        Worth.Span money = w.money();
        Worth.Span year = aYear(money, w.seasonsAYear());
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(words.window("kind." + w.kind().name()))
                        .with(charts.icon(w.kind()))
                        .look("who own"),
                Cell.text(does(w)).look("block"),
                Cell.number(words.about(w.price())),
                Cell.number(words.about(money.mean())).below(words.ends(Show.MONEY, money)),
                Cell.number(words.about(year.mean()))
                        .below(words.ends(Show.MONEY, year))
                        .look("own"),
                Cell.number(words.payback(w.paybackYears())).look("wrap")));
        if (isYear()) {
            cells.remove(SEASON);
        }
        return cells;
    }

    /** What the sensors of a kind do here, in plain words. */
    private String does(Worth w) {
        SetUp setUp = debrief.season().setUp();
        Set<String> sentences = setUp.of(w.kind()).stream()
                .map(p -> does(p, setUp))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return String.join(" ", sentences);
    }

    private String does(Placement placement, SetUp setUp) {
        if (placement instanceof Placement.Flow f) {
            return flow(f, setUp.flowWatch());
        }
        if (SensorWords.action(placement, setUp) == Interlock.Action.NONE) {
            return words.say("owner.idle");
        }
        if (placement instanceof Placement.Rain r) {
            return words.say("owner.RAIN", words.text(Show.DEPTH, r.trip()));
        }
        if (placement instanceof Placement.Wind v) {
            return words.say("owner.WIND", words.text(Show.SPEED, v.trip()));
        }
        if (placement instanceof Placement.Freeze f) {
            return words.say("owner.FREEZE", words.text(Show.TEMPERATURE, f.below()));
        }
        return words.say("owner.SOIL", words.text(Show.SHORT_LENGTH, ((Placement.Soil) placement).depth()));
    }

    private String flow(Placement.Flow sensor, FlowWatch watch) {
        if (!sensor.id().equals(watch.sensor())) {
            return words.say("owner.idle");
        }
        boolean shuts = watch.onZone() != FlowWatch.Action.ALARM || watch.onUnscheduled() != FlowWatch.Action.ALARM;
        return words.say(shuts ? "owner.FLOW_SHUT" : "owner.FLOW");
    }

    /** Kinds that are not placed and would save money, in one line. */
    private void also(HtmlPage page) {
        List<String> also = worth.kinds().stream()
                .filter(w -> !w.placed() && w.moneyAYear() > LEAST)
                .map(w -> words.say(
                        "owner.also", words.sensor(w.kind()), words.about(w.price()), words.about(w.moneyAYear())))
                .toList();
        if (!also.isEmpty()) {
            page.note(words.say("owner.alsoTitle") + ". " + String.join("; ", also) + ".");
        }
    }

    /** Each caution that belongs to what is placed, once, in the order in which they are always shown. */
    private List<String> cautions() {
        Set<String> keys = new TreeSet<>(Comparator.comparingInt(Cautions.ALL::indexOf));
        debrief.season().setUp().sensors().forEach(p -> keys.addAll(Cautions.of(p)));
        // An owner reads of these whatever is placed.
        keys.addAll(List.of(Cautions.NOT_WINTERISED, Cautions.CODES));
        return keys.stream().map(k -> Cautions.text(k, words.language())).toList();
    }

    private List<String> assumed() {
        Costs costs = words.scenario().costs();
        WholeWorth any = worth.whole();
        boolean us = words.units() == UnitSystem.US;
        String water = words.money(us ? costs.water() * GALLONS : costs.water());
        String ice = words.money(us ? costs.icedWalk() * SQUARE_FEET : costs.icedWalk());
        return List.of(
                words.say("owner.assumed.draws", Integer.toString(any.draws())),
                words.say("owner.assumed.single"),
                words.say("owner.assumed.water", words.say(us ? "owner.per.water" : "owner.per.waterMetric", water)),
                words.say("owner.assumed.ice", words.say(us ? "owner.per.ice" : "owner.per.iceMetric", ice)),
                words.say("owner.assumed.leak", words.money(costs.missedLeak()), words.money(costs.falseAlarm())),
                isYear()
                        ? words.say("owner.assumed.one")
                        : words.say("owner.assumed.year", words.number(any.seasonsAYear())),
                words.say("owner.assumed.no"));
    }
}
