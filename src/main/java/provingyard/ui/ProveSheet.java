package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.picture.Icons;
import provingyard.picture.ProofPlot;
import provingyard.picture.Theme;
import provingyard.quantity.Show;
import provingyard.season.Proof;
import provingyard.setup.Cautions;

/** Prove it: each placed sensor with its tests, what they showed, and that everything is back as it was. */
final class ProveSheet extends VBox {

    private static final double USUAL_TEXT = 14;
    private static final double LEAST_PLOT = 360;

    private final YardModel model;
    private final Words words;
    private final ProvingPlan plan;
    private final VBox list = new VBox(2);
    private final VBox detail = new VBox(10);
    private final ScrollPane page = new ScrollPane(detail);
    private final Label progress = new Label();
    private Theme theme = Theme.LIGHT;
    private String chosen;

    ProveSheet(YardModel model, Words words, Runnable close) {
        this.model = model;
        this.words = words;
        plan = new ProvingPlan(model, words);
        setId("prove");
        getStyleClass().addAll("sheet", "prove");
        setSpacing(12);
        setVisible(false);
        ScrollPane tests = scroll(new ScrollPane(list));
        tests.getStyleClass().add("prove-list");
        scroll(page);
        page.viewportBoundsProperty().addListener((o, was, is) -> {
            if (was.getWidth() != is.getWidth()) {
                refresh();
            }
        });
        HBox.setHgrow(page, Priority.ALWAYS);
        detail.getStyleClass().add("prove-detail");
        HBox both = new HBox(16, tests, page);
        VBox.setVgrow(both, Priority.ALWAYS);
        both.setMinHeight(0);
        getChildren().addAll(head(close), both);
        model.draftProperty().addListener(o -> refresh());
        model.proofsProperty().addListener(o -> refresh());
        words.languageChanges().addListener(o -> refresh());
        words.units().addListener(o -> refresh());
    }

    private static ScrollPane scroll(ScrollPane pane) {
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setMinHeight(0);
        return pane;
    }

    void theme(Theme next) {
        theme = next;
        refresh();
    }

    private HBox head(Runnable close) {
        Label title = new Label();
        words.bind(title.textProperty(), "prove.title");
        title.getStyleClass().add("section-title");
        title.setMinWidth(Region.USE_PREF_SIZE);
        progress.setId("prove-progress");
        progress.getStyleClass().add("ink2");
        progress.setMinWidth(0);
        progress.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(progress, Priority.ALWAYS);
        Button all = new Button();
        all.setId("prove-all");
        all.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(all.textProperty(), "prove.all");
        all.setOnAction(e -> plan.items().forEach(this::run));
        Button shut = new Button();
        shut.setId("prove-close");
        shut.setGraphic(IconNode.of("cross", 16));
        shut.getStyleClass().add("quiet");
        shut.accessibleTextProperty().bind(words.live("prove.close"));
        shut.setOnAction(e -> close.run());
        HBox box = new HBox(12, title, progress, all, shut);
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    /** Opens the sheet at the selected sensor's first test, or at the first one that was not made. */
    void open() {
        setVisible(true);
        String selected = model.selectedProperty().get();
        List<ProvingPlan.Item> items = plan.items();
        chosen = items.stream()
                .filter(i -> selected == null
                        ? i.proof().isEmpty()
                        : i.placement().id().equals(selected))
                .findFirst()
                .or(() -> items.stream().findFirst())
                .map(ProvingPlan.Item::id)
                .orElse(null);
        refresh();
        Node first = lookup("#prove-run");
        (first == null ? this : first).requestFocus();
    }

    private void refresh() {
        if (!isVisible()) {
            return;
        }
        List<ProvingPlan.Item> items = plan.items();
        boolean known = items.stream().anyMatch(i -> i.id().equals(chosen));
        chosen = known ? chosen : items.isEmpty() ? null : items.get(0).id();
        progress.setText(items.isEmpty() ? "" : plan.progress());
        list(items);
        detail.getChildren().clear();
        if (items.isEmpty()) {
            detail.getChildren().add(text("prove.none", "ink2"));
        }
        items.stream().filter(i -> i.id().equals(chosen)).findFirst().ifPresent(this::detail);
    }

    // The list

    private void list(List<ProvingPlan.Item> items) {
        boolean focused = list.getChildren().stream().anyMatch(Node::isFocused);
        ToggleGroup group = new ToggleGroup();
        List<Node> rows = new ArrayList<>();
        for (ProvingPlan.Item item : items) {
            rows.add(row(item, group));
        }
        list.getChildren().setAll(rows);
        if (focused) {
            rows.stream().filter(r -> ((ToggleButton) r).isSelected()).forEach(Node::requestFocus);
        }
    }

    private ToggleButton row(ProvingPlan.Item item, ToggleGroup group) {
        StackPane icon = new StackPane(new IconNode(Icons.of(item.placement().kind()), 20));
        icon.getStyleClass().add("kit-icon");
        Label name = new Label(plan.sensor(item));
        name.getStyleClass().add("strong");
        Label test = new Label(words.say("prove.test." + item.test().name()));
        test.getStyleClass().addAll("small", "ink2");
        VBox texts = new VBox(name, test);
        texts.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(texts, Priority.ALWAYS);
        texts.setMinWidth(0);
        HBox box = new HBox(10, icon, texts, state(item));
        box.setAlignment(Pos.CENTER_LEFT);
        box.prefWidthProperty().bind(list.widthProperty().subtract(14));
        ToggleButton row = new ToggleButton();
        row.setGraphic(box);
        row.setId("prove-" + item.id());
        row.getStyleClass().add("prove-row");
        row.setMaxWidth(Double.MAX_VALUE);
        row.setToggleGroup(group);
        row.setSelected(item.id().equals(chosen));
        row.setAccessibleText(plan.sensor(item) + ", " + test.getText() + ", " + words.say(stateKey(item)));
        row.setOnAction(e -> {
            chosen = item.id();
            refresh();
        });
        return row;
    }

    private static String stateKey(ProvingPlan.Item item) {
        if (item.proof().isEmpty()) {
            return "prove.state.open";
        }
        return item.good() ? "prove.state.good" : "prove.state.look";
    }

    private Label state(ProvingPlan.Item item) {
        Label state = new Label(words.say(stateKey(item)));
        state.getStyleClass().addAll("small", item.proof().isEmpty() ? "ink3" : item.good() ? "good" : "alarm");
        if (item.proof().isPresent()) {
            IconNode sign = IconNode.of(item.good() ? "ok" : "alarm", 13);
            sign.getStyleClass().add(item.good() ? "sign-good" : "sign-alarm");
            state.setGraphic(sign);
        }
        state.setMinWidth(Region.USE_PREF_SIZE);
        return state;
    }

    // The detail

    private void detail(ProvingPlan.Item item) {
        Label title = new Label(words.say("prove.test." + item.test().name()));
        title.getStyleClass().add("panel-title");
        title.setWrapText(true);
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        Button run = new Button(words.say(item.proof().isEmpty() ? "prove.run" : "prove.again"));
        run.setId("prove-run");
        run.getStyleClass().add("main");
        run.setMinWidth(Region.USE_PREF_SIZE);
        run.setOnAction(e -> run(item));
        HBox top = new HBox(12, title, run);
        top.setAlignment(Pos.CENTER_LEFT);
        detail.getChildren().add(top);
        int n = 1;
        for (String step : plan.steps(item.test())) {
            detail.getChildren().add(step(n++, step));
        }
        detail.getChildren().add(cautions(item));
        item.proof().ifPresent(this::proof);
    }

    private HBox step(int n, String text) {
        Label number = new Label(Integer.toString(n));
        number.getStyleClass().addAll("strong", "ink2");
        number.setMinWidth(14);
        HBox row = new HBox(8, number, wrapped(text));
        row.setAlignment(Pos.TOP_LEFT);
        return row;
    }

    private Node cautions(ProvingPlan.Item item) {
        VBox texts = new VBox(4);
        texts.getChildren().add(wrapped(words.say("prove.caution." + item.test().name())));
        if (Cautions.of(item.placement()).contains(Cautions.LADDER)) {
            texts.getChildren().add(wrapped(Cautions.text(Cautions.LADDER, words.language())));
        }
        HBox.setHgrow(texts, Priority.ALWAYS);
        HBox box = new HBox(10, IconNode.of("caution", 18), texts);
        box.getStyleClass().add("caution");
        return box;
    }

    private void proof(Proof proof) {
        detail.getChildren().addAll(new Hairline(), plot(proof), key());
        for (String line : plan.verdict(proof)) {
            Label label = wrapped(line);
            label.getStyleClass().add("verdict");
            detail.getChildren().add(label);
        }
        List<String> findings = plan.findings(proof);
        if (findings.isEmpty()) {
            detail.getChildren().add(signed("ok", "good", words.say("prove.fine")));
        }
        for (String finding : findings) {
            HBox box = signed("alarm", "alarm", finding);
            box.getStyleClass().add("wrong");
            detail.getChildren().add(box);
        }
        Label back = new Label(words.say("prove.back"));
        back.getStyleClass().add("strong");
        detail.getChildren().addAll(new Hairline(), back);
        for (String line : plan.restored(proof)) {
            detail.getChildren().add(signed("ok", "good", line));
        }
    }

    private HBox signed(String icon, String tone, String text) {
        IconNode sign = IconNode.of(icon, 15);
        sign.getStyleClass().add("sign-" + tone);
        HBox row = new HBox(8, sign, wrapped(text));
        row.setAlignment(Pos.TOP_LEFT);
        return row;
    }

    private Node plot(Proof proof) {
        Show show = Readouts.of(proof.test().kind());
        double limit = proof.verdict().setPoint();
        ProofPlot plot = new ProofPlot(
                proof,
                Double.isFinite(limit) ? words.display().text(show, limit) : "",
                words.display().text(show, ProofPlot.least(proof)),
                words.display().text(show, ProofPlot.most(proof)),
                words.say("prove.valve"),
                words.display().text(Show.DURATION, 60.0 * proof.minutes().size()));
        double zoom = progress.getFont().getSize() / USUAL_TEXT;
        double width = Math.max(LEAST_PLOT, page.getViewportBounds().getWidth() - 24);
        Canvas canvas = new Canvas(width, ProofPlot.HEIGHT * zoom);
        canvas.setId("prove-plot");
        canvas.setAccessibleText(String.join(" ", plan.verdict(proof)));
        canvas.getGraphicsContext2D().scale(zoom, zoom);
        plot.draw(new CanvasSurface(canvas.getGraphicsContext2D()), width / zoom, theme);
        return canvas;
    }

    private Label key() {
        Label key = wrapped(words.say("prove.key"));
        key.getStyleClass().addAll("small", "ink3");
        return key;
    }

    private Label text(String key, String style) {
        Label label = wrapped(words.say(key));
        label.getStyleClass().add(style);
        return label;
    }

    private static Label wrapped(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(label, Priority.ALWAYS);
        return label;
    }

    private void run(ProvingPlan.Item item) {
        model.prove(
                item.placement().id(),
                item.test(),
                proof -> Platform.runLater(() -> {
                    model.keep(proof);
                    Node run = lookup("#prove-run");
                    if (run != null) {
                        run.requestFocus();
                    }
                }));
    }
}
