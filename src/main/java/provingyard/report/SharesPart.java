package provingyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import provingyard.picture.Charts;
import provingyard.quantity.Show;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.study.Amounts;
import provingyard.study.Choice;
import provingyard.study.Commitment;
import provingyard.study.Debrief;
import provingyard.study.Mark;
import provingyard.study.Shares;

/** What each decision cost against the mark, and what the trainee had named before this was shown. */
final class SharesPart {

    /** USD under which a share counts as nothing: it would be shown as 0.00. */
    private static final double LEAST = 0.005;

    private final Debrief debrief;
    private final PageWords words;
    private final PageCharts charts;
    private final PlanPictures plans;

    SharesPart(Debrief debrief, PageWords words, PageCharts charts, PlanPictures plans) {
        this.debrief = debrief;
        this.words = words;
        this.charts = charts;
        this.plans = plans;
    }

    /** What the trainee named, beside what was computed. */
    void commitment(HtmlPage page) {
        if (debrief.commitment().isEmpty()) {
            return;
        }
        Commitment named = debrief.commitment().get();
        page.open("div", "keep");
        page.heading(words.say("commit.title"));
        page.open("div", "said");
        page.lead(
                named.choice() == null
                        ? words.say("commit.nothing")
                        : words.say("commit.named", words.choice(named.choice())));
        if (named.why() != null && !named.why().isBlank()) {
            page.paragraph(words.say("commit.why", named.why()));
        }
        page.paragraph(computed(named)).close().close();
    }

    private String computed(Commitment named) {
        if (debrief.shares().isEmpty()) {
            return words.say("commit.open");
        }
        Optional<Shares.Share> worst = worst(debrief.shares().get());
        if (worst.isEmpty()) {
            return words.say("commit.noneCost");
        }
        Choice choice = worst.get().choice();
        double cost = worst.get().cost().money();
        return choice == named.choice()
                ? words.say("commit.hit") + " " + words.say("commit.computed", words.choice(choice), words.money(cost))
                : words.say("commit.computed", words.choice(choice), words.money(cost));
    }

    /** The share that cost most; empty where none cost anything. */
    private static Optional<Shares.Share> worst(Shares shares) {
        Shares.Share worst = null;
        for (Shares.Share share : shares.shares()) {
            double cost = share.cost().money();
            if (cost >= LEAST && (worst == null || cost > worst.cost().money())) {
                worst = share;
            }
        }
        return Optional.ofNullable(worst);
    }

    void write(HtmlPage page) {
        if (debrief.shares().isEmpty()) {
            return;
        }
        Shares shares = debrief.shares().get();
        page.open("div", "keep");
        page.heading(
                words.say("share.title"),
                words.say("share.aside", words.money(shares.gap().money())));
        List<Charts.Share> bars = bars(shares);
        String said = bars.stream()
                .map(b -> b.name() + " " + b.valueText() + " " + b.why())
                .collect(Collectors.joining("; "));
        page.chart(charts.shares(bars), said).close();
        page.open("div", "keep");
        table(page, shares);
        page.note(words.say("share.read")).close();
    }

    private List<Charts.Share> bars(Shares shares) {
        List<Charts.Share> bars = new ArrayList<>();
        for (Shares.Share share : shares.shares()) {
            double value =
                    Math.abs(share.cost().money()) < LEAST ? 0 : -share.cost().money();
            SensorKind kind = share.choice().kind().orElse(null);
            bars.add(new Charts.Share(
                    kind, words.choice(share.choice()), value, words.signed(Show.MONEY, value), why(share.choice())));
        }
        return bars;
    }

    private String why(Choice choice) {
        Optional<SetUp> mark = debrief.mark().map(Mark::setUp);
        if (mark.isEmpty()) {
            return "";
        }
        SetUp own = debrief.season().setUp();
        if (choice.kind().isEmpty()) {
            boolean same = Objects.equals(own.schedule(), mark.get().schedule());
            return words.say(same ? "share.same" : "share.otherwise");
        }
        List<Placement> yours = own.of(choice.kind().get());
        List<Placement> marks = mark.get().of(choice.kind().get());
        if (yours.isEmpty() || marks.isEmpty()) {
            String key = !yours.isEmpty() ? "share.without" : marks.isEmpty() ? "share.same" : "share.notBought";
            return words.say(key);
        }
        boolean moved = yours.size() != marks.size()
                || marks.stream().anyMatch(m -> yours.stream().noneMatch(y -> plans.together(y, m)));
        SensorWords sensors = new SensorWords(words);
        boolean set = settings(sensors, yours, own).equals(settings(sensors, marks, mark.get()));
        return words.say(moved ? "share.elsewhere" : set ? "share.same" : "share.otherwise");
    }

    private static List<List<String>> settings(SensorWords sensors, List<Placement> of, SetUp setUp) {
        return of.stream().map(p -> sensors.settings(p, setUp)).toList();
    }

    private void table(HtmlPage page, Shares shares) {
        Table table = new Table("stack");
        table.head(List.of(
                words.say("share.choice"),
                words.say("share.water"),
                words.say("share.ice"),
                words.say("share.leaks"),
                words.say("share.plants"),
                words.say("share.sensors"),
                words.say("share.money")));
        for (Shares.Share share : shares.shares()) {
            table.row(row(words.choice(share.choice()), share.cost()));
        }
        page.table(table.sum(row(words.say("share.sum"), shares.gap())));
    }

    private List<Cell> row(String name, Amounts cost) {
        return List.of(
                Cell.text(name),
                Cell.number(words.signed(Show.VOLUME, cost.water())),
                Cell.number(words.signed(Show.ICE, cost.ice())),
                Cell.number(words.signed(Show.MONEY, cost.leaks())),
                Cell.number(words.signed(Show.MONEY, cost.plants())),
                Cell.number(words.signed(Show.MONEY, cost.sensors())),
                Cell.number(words.signed(Show.MONEY, cost.money())).look("own"));
    }
}
