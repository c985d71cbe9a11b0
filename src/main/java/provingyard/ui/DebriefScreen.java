package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.picture.Theme;
import provingyard.study.Debrief;
import provingyard.study.Moment;

/** The debrief of a season: what every decision cost, and the minutes at which it mattered. */
final class DebriefScreen extends BorderPane {

    /** What can be done from here. */
    interface Acts {

        /** Back to the yard as it is. */
        void toYard();

        /** The yard at a moment's minute. */
        void to(Moment moment);

        /** The same season again, from its first minute, with the set-up as it stands. */
        void again();
    }

    /** em of width from which plan and moments stand beside the rest. */
    private static final double BESIDE_FROM = 84;

    private static final double LEFT_EM = 35.7;
    private static final double LEFT_SHARE = 0.37;

    private final YardModel model;
    private final Words words;
    private final DebriefModel debriefs;
    private final Acts acts;
    private final MomentSayings sayings;
    private final Saving saving;
    private final DebriefPlan plan;
    private final DebriefMoments moments;
    private final BeyondScore beyond;
    private final VBox head = new VBox(12);
    private final VBox left = new VBox(10);
    private final VBox rest = new VBox(22);
    private final ScrollPane scroll = new ScrollPane();
    private final ScrollPane leftScroll = new ScrollPane();
    private final VBox answer = new VBox();
    private final VBox shares = new VBox();
    private final Label subtitle = new Label();
    private final Label practice = new Label();
    private ProgressBar progress = new ProgressBar();
    private Theme theme = Theme.LIGHT;
    private double em = Shell.EM;
    private Boolean beside;

    DebriefScreen(YardModel model, Words words, DebriefModel debriefs, Consumer<Throwable> onFailure, Acts acts) {
        this.model = model;
        this.words = words;
        this.debriefs = debriefs;
        this.acts = acts;
        setId("debrief");
        getStyleClass().add("debrief");
        setVisible(false);
        sayings = new MomentSayings(words, model.scenario());
        plan = new DebriefPlan(words);
        moments = new DebriefMoments(words, sayings, acts::to);
        beyond = new BeyondScore(model, words, this::debrief, debriefs::found, this::fill, onFailure);
        saving = new Saving(model, words, this::debrief, this);
        setTop(top());
        for (ScrollPane pane : List.of(scroll, leftScroll)) {
            pane.setFitToWidth(true);
            pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
            pane.setMinHeight(0);
        }
        debriefs.stateProperty().addListener((o, was, is) -> changed(was, is));
        widthProperty().addListener(o -> arrange());
        words.follow(this, this::fill);
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                acts.toYard();
                e.consume();
            }
        });
    }

    private HBox top() {
        Button back = new Button();
        back.setId("debrief-back");
        back.setGraphic(IconNode.of("back", 18));
        back.getStyleClass().add("quiet");
        back.accessibleTextProperty().bind(words.live("debrief.toYard"));
        back.setOnAction(e -> acts.toYard());
        Label title = new Label();
        title.textProperty()
                .bind(words.live("debrief.title", words.live(model.scenario().title())));
        title.getStyleClass().add("section-title");
        subtitle.getStyleClass().addAll("small", "ink2");
        VBox names = new VBox(title, subtitle);
        names.setAlignment(Pos.CENTER_LEFT);
        names.setMinWidth(120);
        practice.setId("debrief-practice");
        practice.getStyleClass().add("practice-chip");
        practice.setMinWidth(Region.USE_PREF_SIZE);
        practice.managedProperty().bind(practice.visibleProperty());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        MenuButton save = new MenuButton();
        save.setId("debrief-save");
        save.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(save.textProperty(), "debrief.save");
        save.getItems().setAll(saving.menu());
        Button yard = new Button();
        yard.setId("debrief-yard");
        yard.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(yard.textProperty(), "debrief.toYard");
        yard.setOnAction(e -> acts.toYard());
        Button again = new Button();
        again.setId("debrief-again");
        again.getStyleClass().add("main");
        again.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(again.textProperty(), "debrief.again");
        again.setOnAction(e -> acts.again());
        HBox bar = new HBox(12, back, names, practice, gap, save, yard, again);
        bar.getStyleClass().add("top-bar");
        return bar;
    }

    void look(Theme next, double size) {
        theme = next;
        em = size;
        beside = null;
        fill();
    }

    /** Opens it; {@code practised} is when practice began, or empty for the trainee's own season. */
    void open(Optional<String> practised) {
        practice.setVisible(practised.isPresent());
        practice.setText(practised.map(p -> words.say("debrief.practice", p)).orElse(""));
        setVisible(true);
        fill();
        lookup("#debrief-again").requestFocus();
    }

    private void fill() {
        if (!isVisible()) {
            return;
        }
        DebriefModel.State state = debriefs.stateProperty().get();
        Debrief debrief = state.debrief();
        if (debrief == null) {
            HBox wait = waiting(words.say("result.wait"), -1);
            wait.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
            setCenter(new StackPane(wait));
            beside = null;
            return;
        }
        double lettering = em / Shell.EM;
        subtitle.setText(words.say(
                "debrief.subtitle",
                Integer.toString(debrief.season().outcome().days()),
                words.say(model.scenario().subtitle())));
        DebriefScore score = new DebriefScore(words, theme, lettering);
        beyond.offer(debrief, practice.isVisible());
        head.getChildren().setAll(score.score(debrief, beyond.best()), answer, beyond);
        plan.look(theme, lettering);
        plan.show(debrief);
        moments.show(debrief);
        left.getChildren().setAll(plan, legend(), title("moments.title", "moments.hint"), moments);
        List<Node> sections = new ArrayList<>();
        sections.add(section("debrief.water", "", new DebriefWater(words, theme, lettering).chart(debrief)));
        sections.add(shares);
        new DebriefIce(words, theme, lettering, sayings)
                .section(debrief)
                .ifPresent(body -> sections.add(section("ice.title", "ice.hint", body)));
        new DebriefLeaks(words, sayings)
                .section(debrief)
                .ifPresent(body -> sections.add(section("leaks.title", "", body)));
        notProven().ifPresent(sections::add);
        rest.getChildren().setAll(sections);
        worked(state);
        arrange();
    }

    private Debrief debrief() {
        return debriefs.stateProperty().get().debrief();
    }

    /** What changed: all of it, what came meanwhile, or only how far the work is. */
    private void changed(DebriefModel.State was, DebriefModel.State is) {
        Debrief before = was.debrief();
        Debrief now = is.debrief();
        boolean same = before != null
                && now != null
                && before.season() == now.season()
                && before.mark().equals(now.mark());
        if (!same) {
            beyond.forget();
            fill();
        } else if (isVisible() && (now != before || was.stage() != is.stage())) {
            worked(is);
        } else {
            progress.setProgress(share(is));
        }
    }

    /** Shows what is worked out while the rest stands: the answer, shares and worth. */
    private void worked(DebriefModel.State state) {
        Debrief debrief = state.debrief();
        answer.getChildren().clear();
        new DebriefScore(words, theme, em / Shell.EM).answer(debrief).ifPresent(answer.getChildren()::add);
        answer.setManaged(!answer.getChildren().isEmpty());
        shares.getChildren().setAll(shares(state, debrief));
    }

    private static double share(DebriefModel.State state) {
        return state.of() == 0 ? -1 : state.done() / (double) state.of();
    }

    private VBox shares(DebriefModel.State state, Debrief debrief) {
        VBox box = section(
                "debrief.shares",
                debrief.mark().isPresent() ? "debrief.sharesHint" : "",
                new DebriefShares(words).grid(debrief));
        if (state.stage() == DebriefModel.Stage.SHARES || state.stage() == DebriefModel.Stage.WORTH) {
            String key = state.stage() == DebriefModel.Stage.SHARES ? "debrief.sharesWait" : "debrief.worthWait";
            box.getChildren().add(waiting(words.say(key), share(state)));
        }
        return box;
    }

    private HBox waiting(String text, double share) {
        progress = new ProgressBar(share);
        progress.setPrefWidth(160);
        Label label = new Label(text);
        label.getStyleClass().addAll("small", "ink2");
        label.setWrapText(true);
        HBox.setHgrow(label, Priority.ALWAYS);
        HBox box = new HBox(12, progress, label);
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    private VBox section(String key, String hint, Node body) {
        return new VBox(8, title(key, hint), body);
    }

    private HBox title(String key, String hint) {
        Label title = new Label(words.say(key));
        title.getStyleClass().add("section-title");
        title.setMinWidth(Region.USE_PREF_SIZE);
        HBox box = new HBox(12, title);
        box.setAlignment(Pos.BASELINE_LEFT);
        if (!hint.isEmpty()) {
            Label note = new Label(words.say(hint));
            note.getStyleClass().addAll("small", "ink2");
            note.setWrapText(true);
            box.getChildren().add(note);
        }
        return box;
    }

    private HBox legend() {
        Label yours = new Label(words.say("debrief.yours"));
        yours.setGraphic(dot("legend-yours"));
        Label marks = new Label(words.say("debrief.marks"));
        marks.setGraphic(dot("legend-marks-dot"));
        HBox box = new HBox(18, yours, marks);
        box.getStyleClass().add("small");
        return box;
    }

    private static Region dot(String style) {
        Region dot = new Region();
        dot.getStyleClass().addAll("legend-dot", style);
        return dot;
    }

    /** Names the sensors that nobody tested under their last settings; empty where all were. */
    private Optional<Node> notProven() {
        SensorNames names = new SensorNames(model, words);
        List<String> open = model.unproven().stream().map(names::of).toList();
        if (open.isEmpty()) {
            return Optional.empty();
        }
        Label said = new Label(words.say("result.notProven", String.join(", ", open)));
        said.setId("not-proven");
        said.setWrapText(true);
        said.setGraphic(IconNode.of("caution", 16));
        said.getStyleClass().add("caution");
        said.setMaxWidth(Double.MAX_VALUE);
        said.setMinHeight(Region.USE_PREF_SIZE);
        return Optional.of(said);
    }

    /** Plan and moments beside the rest where there is room, else one below the other. */
    private void arrange() {
        boolean wide = getWidth() >= BESIDE_FROM * em;
        if (beside != null && beside == wide) {
            leftScroll.setMinWidth(leftWidth());
            leftScroll.setPrefWidth(leftWidth());
            return;
        }
        beside = wide;
        head.setMaxWidth(Double.MAX_VALUE);
        if (wide) {
            leftScroll.setContent(left);
            VBox right = new VBox(22, head, rest);
            right.getStyleClass().add("debrief-column");
            scroll.setContent(right);
            leftScroll.setMinWidth(leftWidth());
            leftScroll.setPrefWidth(leftWidth());
            HBox both = new HBox(20, leftScroll, scroll);
            HBox.setHgrow(scroll, Priority.ALWAYS);
            both.setPadding(new Insets(16, 8, 0, 20));
            setCenter(both);
        } else {
            leftScroll.setContent(null);
            VBox one = new VBox(22, head, left, rest);
            one.getStyleClass().add("debrief-column");
            scroll.setContent(one);
            VBox only = new VBox(scroll);
            VBox.setVgrow(scroll, Priority.ALWAYS);
            only.setPadding(new Insets(16, 8, 0, 20));
            setCenter(only);
        }
    }

    private double leftWidth() {
        return Math.round(Math.max(LEFT_EM * em, LEFT_SHARE * getWidth()));
    }

    Saving saving() {
        return saving;
    }

    void dispose() {
        beyond.dispose();
        plan.dispose();
    }
}
