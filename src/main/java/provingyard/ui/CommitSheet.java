package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.learner.SiteProgress;
import provingyard.picture.Icons;
import provingyard.study.Choice;
import provingyard.study.Commitment;

/** Before the debrief opens: which one decision would you change, and why? */
final class CommitSheet extends VBox {

    private static final int COLUMNS = 48;

    private final Words words;
    private final List<Choice> open;
    private final ToggleGroup group = new ToggleGroup();
    private final FlowPane choices = new FlowPane(8, 8);
    private final TextField why = new TextField();
    private final Button go = new Button();
    private final ProgressBar bar = new ProgressBar();
    private final Consumer<Commitment> committed;

    CommitSheet(YardModel model, Words words, Consumer<Commitment> committed, Runnable later) {
        this.words = words;
        this.committed = committed;
        open = Choice.open(model.scenario());
        setId("commit");
        getStyleClass().addAll("sheet", "commit");
        setSpacing(12);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        setVisible(false);
        Label title = label("commit.title", "page-title");
        Label ask = label("commit.ask", "ink2");
        choices.setPrefWrapLength(560);
        fill();
        why.setId("commit-why");
        why.setPrefColumnCount(COLUMNS);
        why.setTextFormatter(new TextFormatter<>(
                change -> change.getControlNewText().length() > SiteProgress.LONGEST ? null : change));
        why.promptTextProperty().bind(words.live("commit.whyPrompt"));
        why.accessibleTextProperty().bind(words.live("commit.why"));
        why.setOnAction(e -> commit());
        Label whyName = label("commit.why", "strong");
        whyName.setLabelFor(why);
        go.setId("commit-go");
        go.getStyleClass().add("main");
        go.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(go.textProperty(), "commit.go");
        go.setOnAction(e -> commit());
        go.disableProperty().bind(group.selectedToggleProperty().isNull());
        Button wait = new Button();
        wait.setId("commit-later");
        wait.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(wait.textProperty(), "commit.later");
        wait.setOnAction(e -> later.run());
        bar.setId("commit-progress");
        bar.setPrefWidth(120);
        bar.setAccessibleText(words.say("result.wait"));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox buttons = new HBox(10, bar, gap, wait, go);
        buttons.setAlignment(Pos.CENTER_RIGHT);
        buttons.setMinHeight(Region.USE_PREF_SIZE);
        getChildren().addAll(title, ask, choices, whyName, why, buttons);
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                later.run();
                e.consume();
            }
        });
        words.languageChanges().addListener(o -> fill());
    }

    private Label label(String key, String style) {
        Label label = new Label();
        words.bind(label.textProperty(), key);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private void fill() {
        Object chosen = group.getSelectedToggle() == null
                ? null
                : group.getSelectedToggle().getUserData();
        group.getToggles().clear();
        List<Node> buttons = new ArrayList<>();
        for (Choice choice : open) {
            buttons.add(button(choice.name(), words.say("choice." + choice.name()), icon(choice)));
        }
        buttons.add(button("", words.say("commit.nothing"), IconNode.of("ok", 18)));
        choices.getChildren().setAll(buttons);
        group.getToggles().stream().filter(t -> t.getUserData().equals(chosen)).forEach(group::selectToggle);
    }

    static IconNode icon(Choice choice) {
        return choice.kind().map(k -> new IconNode(Icons.of(k), 18)).orElseGet(() -> IconNode.of("log", 18));
    }

    private ToggleButton button(String choice, String text, IconNode icon) {
        ToggleButton button = new ToggleButton(text);
        button.setId("commit-" + (choice.isEmpty() ? "nothing" : choice));
        button.setGraphic(icon);
        button.getStyleClass().add("commit-choice");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setUserData(choice);
        button.setToggleGroup(group);
        return button;
    }

    private void commit() {
        if (group.getSelectedToggle() == null) {
            return;
        }
        String chosen = (String) group.getSelectedToggle().getUserData();
        committed.accept(new Commitment(
                chosen.isEmpty() ? null : Choice.valueOf(chosen), why.getText().strip()));
    }

    /** Asks anew. */
    void open() {
        group.selectToggle(null);
        why.clear();
        setVisible(true);
        choices.getChildren().get(0).requestFocus();
    }

    /** Whether the debrief behind it is still worked out. */
    void working(boolean now) {
        bar.setVisible(now);
    }
}
