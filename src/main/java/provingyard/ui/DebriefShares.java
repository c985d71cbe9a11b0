package provingyard.ui;

import java.util.List;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import provingyard.quantity.Show;
import provingyard.scenario.SensorKind;
import provingyard.setup.SetUp;
import provingyard.study.Amounts;
import provingyard.study.Choice;
import provingyard.study.Debrief;
import provingyard.study.Shares;
import provingyard.study.Worth;
import provingyard.study.WorthStudy;

/** What each choice cost against the mark, as signed bars, and beside it what each kind of sensor is worth on the site. */
final class DebriefShares {

    /** USD under which a choice counts as even with the mark's. */
    private static final double EVEN = 0.5;

    private static final double MONTHS = 12;
    private static final double WEEKS = 52;

    private final Words words;

    DebriefShares(Words words) {
        this.words = words;
    }

    /** The rows; values that are not there yet stand as a dash. */
    Node grid(Debrief debrief) {
        GridPane grid = new GridPane();
        grid.setId("shares");
        grid.getStyleClass().add("share-grid");
        ColumnConstraints name = column(HPos.LEFT, false);
        ColumnConstraints bar = column(HPos.LEFT, true);
        bar.setMinWidth(200);
        grid.getColumnConstraints()
                .addAll(name, bar, column(HPos.LEFT, false), column(HPos.RIGHT, false), column(HPos.RIGHT, false));
        head(grid, 3, "debrief.savesYear");
        head(grid, 4, "debrief.payback");
        ShareBar.Scale scale = scale(debrief.shares());
        if (debrief.shares().isPresent()) {
            grid.add(ShareBar.head(scale, small("debrief.cost"), small("debrief.gained")), 1, 0);
        }
        int line = 1;
        for (Choice choice : Choice.open(debrief.season().site().scenario())) {
            grid.add(new Hairline(), 0, line++, 5, 1);
            row(grid, line++, choice, debrief, scale);
        }
        return grid;
    }

    private static ColumnConstraints column(HPos side, boolean grows) {
        ColumnConstraints column = new ColumnConstraints();
        column.setHalignment(side);
        column.setHgrow(grows ? Priority.ALWAYS : Priority.NEVER);
        return column;
    }

    private ShareBar.Scale scale(Optional<Shares> shares) {
        double lost = 0;
        double gained = 0;
        String longest = "";
        for (Shares.Share share : shares.map(Shares::shares).orElse(List.of())) {
            double cost = share.cost().money();
            lost = Math.max(lost, cost);
            gained = Math.max(gained, -cost);
            longest = signed(cost).length() > longest.length() ? signed(cost) : longest;
        }
        return new ShareBar.Scale(lost, gained, longest);
    }

    private void head(GridPane grid, int column, String key) {
        grid.add(small(key), column, 0);
    }

    private Label small(String key) {
        Label label = new Label(words.say(key));
        label.getStyleClass().addAll("small", "ink2");
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    private void row(GridPane grid, int line, Choice choice, Debrief debrief, ShareBar.Scale scale) {
        Label name = new Label(words.say("choice." + choice.name()));
        name.getStyleClass().add("strong");
        name.setMinWidth(Region.USE_PREF_SIZE);
        HBox named = new HBox(8, CommitSheet.icon(choice), name);
        named.setAlignment(Pos.CENTER_LEFT);
        grid.add(named, 0, line);
        Optional<Shares.Share> share = debrief.shares()
                .flatMap(s -> s.shares().stream()
                        .filter(one -> one.choice() == choice)
                        .findFirst());
        if (share.isPresent()) {
            double cost = share.get().cost().money();
            double shown = Math.abs(cost) < EVEN ? 0 : cost;
            ShareBar bar = new ShareBar(shown, scale, signed(shown));
            bar.setId("share-" + choice.name());
            String parts = parts(share.get().cost());
            bar.setAccessibleText(name.getText() + ", " + signed(shown) + ". " + parts);
            Tooltip.install(bar, new Tooltip(parts));
            grid.add(bar, 1, line);
            Label why = new Label(words.say("why." + why(choice, debrief, shown)));
            why.getStyleClass().add("ink2");
            why.setMinWidth(Region.USE_PREF_SIZE);
            grid.add(why, 2, line);
        } else {
            grid.add(quiet("–"), 1, line);
        }
        choice.kind()
                .ifPresent(kind -> worth(
                        grid,
                        line,
                        kind,
                        debrief.worth().map(WorthStudy.Result::kinds).orElse(List.of())));
    }

    /** What the share is made of, each with its sign: more than the mark, or less. */
    private String parts(Amounts cost) {
        return words.say(
                "debrief.parts",
                more(Show.VOLUME, cost.water()),
                more(Show.ICE, cost.ice()),
                more(Show.MONEY, cost.leaks()),
                more(Show.MONEY, cost.plants()),
                more(Show.MONEY, cost.sensors()));
    }

    private String more(Show show, double amount) {
        return (amount > 0 ? "+" : "") + words.display().text(show, amount);
    }

    private void worth(GridPane grid, int line, SensorKind kind, List<Worth> all) {
        Optional<Worth> worth = all.stream().filter(w -> w.kind() == kind).findFirst();
        Label year = strong(worth.map(w -> money(w.moneyAYear())).orElse("–"));
        worth.ifPresent(w -> year.setTooltip(new Tooltip(words.say(
                "debrief.spread", money(w.money().low()), money(w.money().high()), Integer.toString(w.draws())))));
        grid.add(year, 3, line);
        grid.add(strong(worth.map(w -> payback(w.paybackYears())).orElse("–")), 4, line);
    }

    private String payback(double years) {
        if (!Double.isFinite(years)) {
            return words.say("payback.never");
        }
        if (years * WEEKS < 9) {
            return words.say("payback.weeks", number(Math.max(1, years * WEEKS)));
        }
        return years < 2
                ? words.say("payback.months", number(years * MONTHS))
                : words.say("payback.years", number(years));
    }

    private static String number(double value) {
        return Long.toString(Math.round(value));
    }

    /** Key of the reason for a share: how the choice differs from the mark's. */
    static String why(Choice choice, Debrief debrief, double cost) {
        SetUp mine = debrief.season().setUp();
        SetUp mark = debrief.mark().orElseThrow().setUp();
        if (choice.kind().isEmpty()) {
            return mine.schedule() == null && mark.schedule() == null
                            || mine.schedule() != null && mine.schedule().equals(mark.schedule())
                    ? "same"
                    : "schedule";
        }
        SensorKind kind = choice.kind().get();
        boolean have = !mine.of(kind).isEmpty();
        boolean has = !mark.of(kind).isEmpty();
        if (have != has) {
            return have ? "extra" : "missing";
        }
        if (cost < 0) {
            return "better";
        }
        return !have || cost == 0 ? "same" : "other";
    }

    private String signed(double cost) {
        return cost == 0 ? money(0) : (cost > 0 ? "−" : "+") + money(Math.abs(cost));
    }

    private String money(double usd) {
        return words.display().text(Show.MONEY, usd);
    }

    private static Label quiet(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("ink2");
        return label;
    }

    private static Label strong(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("strong");
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }
}
