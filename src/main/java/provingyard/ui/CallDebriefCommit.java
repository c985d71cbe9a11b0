package provingyard.ui;

import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.call.Call;
import provingyard.learner.SiteProgress;

/** Before a service call's debrief: which test would you change, and why? */
final class CallDebriefCommit extends VBox {

    private static final double BAR = 120;

    private final Words words;
    private final ToggleGroup group = new ToggleGroup();
    private final TextField why = new TextField();
    private final Consumer<CallDebriefModel.Said> onSaid;
    private final Label waiting = new Label();
    private final ProgressBar bar = new ProgressBar();

    CallDebriefCommit(Words words, Call call, CallDebriefWords names, Consumer<CallDebriefModel.Said> onSaid) {
        super(12);
        this.words = words;
        this.onSaid = onSaid;
        setId("call-commit");
        getStyleClass().add("commit");
        FlowPane choices = new FlowPane(8, 8);
        choices.setPrefWrapLength(600);
        for (Call.Note note : call.notes()) {
            if (note.test().action().kind().judged()) {
                String text = note.number() + "  " + names.name(note.test());
                choices.getChildren().add(choice(note.number(), text, CallDebriefSigns.of(note.test())));
            }
        }
        choices.getChildren().add(choice(0, text("review.commit.none"), IconNode.of("ok", 18)));
        why.setId("call-commit-why");
        why.setTextFormatter(new TextFormatter<>(
                change -> change.getControlNewText().length() > SiteProgress.LONGEST ? null : change));
        why.setPromptText(text("review.commit.prompt"));
        why.setAccessibleText(text("review.commit.why"));
        why.setOnAction(e -> commit());
        Button go = new Button(text("review.commit.go"));
        go.setId("call-commit-go");
        go.getStyleClass().add("main");
        go.setMinWidth(Region.USE_PREF_SIZE);
        go.setOnAction(e -> commit());
        go.disableProperty().bind(group.selectedToggleProperty().isNull());
        bar.setPrefWidth(BAR);
        bar.setMinWidth(BAR);
        waiting.getStyleClass().addAll("small", "ink2");
        waiting.setWrapText(true);
        waiting.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(waiting, Priority.ALWAYS);
        waiting.setMaxWidth(Double.MAX_VALUE);
        HBox buttons = new HBox(10, bar, waiting, go);
        buttons.setAlignment(Pos.CENTER_RIGHT);
        buttons.setMinHeight(Region.USE_PREF_SIZE);
        getChildren()
                .addAll(
                        label("review.commit.title", "page-title"),
                        label("review.commit.ask", "ink2"),
                        choices,
                        label("review.commit.why", "strong"),
                        why,
                        buttons);
    }

    private String text(String key) {
        return CallDebriefWords.say(words, key);
    }

    private Label label(String key, String style) {
        Label label = new Label(text(key));
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private ToggleButton choice(int number, String text, IconNode icon) {
        ToggleButton button = new ToggleButton(text);
        button.setId("call-commit-" + number);
        button.setGraphic(icon);
        button.getStyleClass().add("commit-choice");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setUserData(number);
        button.setToggleGroup(group);
        return button;
    }

    private void commit() {
        if (group.getSelectedToggle() != null) {
            onSaid.accept(new CallDebriefModel.Said(
                    (Integer) group.getSelectedToggle().getUserData(),
                    why.getText().strip()));
        }
    }

    /** What was chosen and written so far. */
    CallDebriefModel.Said draft() {
        Object chosen = group.getSelectedToggle() == null
                ? null
                : group.getSelectedToggle().getUserData();
        return new CallDebriefModel.Said(chosen == null ? -1 : (Integer) chosen, why.getText());
    }

    /** Takes over what was chosen and written before, such as in another language. */
    void take(CallDebriefModel.Said draft) {
        why.setText(draft.why());
        group.getToggles().stream()
                .filter(t -> t.getUserData().equals(draft.test()))
                .forEach(group::selectToggle);
    }

    /** Says how far the debrief behind it is. */
    void at(CallDebriefModel.Stage stage) {
        boolean done = stage == CallDebriefModel.Stage.DONE;
        bar.setVisible(!done);
        waiting.setText(
                done
                        ? ""
                        : text(
                                stage == CallDebriefModel.Stage.REFERENCE
                                        ? "review.wait.reference"
                                        : "review.wait.review"));
    }

    void focusFirst() {
        ((ToggleButton) group.getToggles().get(0)).requestFocus();
    }
}
