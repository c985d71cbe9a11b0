package provingyard.ui;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The bar above a service call's debrief: what it is, and what can be done with it once it is shown. */
final class CallDebriefTop extends HBox {

    /** What its buttons do. */
    interface Acts {

        void back();

        void toggleExpert();

        void fork();
    }

    private final CallDebriefWords sayings;
    private final Label title = new Label();
    private final Label subtitle = new Label();
    private final Label chip = new Label();
    private final Button back = new Button();
    private final MenuButton save = new MenuButton();
    private final Button watch = new Button();
    private final Button fork = new Button();

    CallDebriefTop(CallDebriefWords sayings, boolean practice, List<MenuItem> saving, Acts acts) {
        super(12);
        this.sayings = sayings;
        getStyleClass().add("top-bar");
        back.setId("call-debrief-back");
        back.setGraphic(IconNode.of("back", 18));
        back.getStyleClass().add("quiet");
        back.setOnAction(e -> acts.back());
        title.getStyleClass().add("section-title");
        subtitle.getStyleClass().addAll("small", "ink2");
        subtitle.setWrapText(true);
        subtitle.setMinHeight(USE_PREF_SIZE);
        VBox names = new VBox(title, subtitle);
        names.setAlignment(Pos.CENTER_LEFT);
        names.setMinWidth(0);
        HBox.setHgrow(names, Priority.ALWAYS);
        chip.setId("call-debrief-practice");
        chip.getStyleClass().add("practice-chip");
        chip.setMinWidth(USE_PREF_SIZE);
        chip.setVisible(practice);
        chip.setManaged(practice);
        save.setId("call-debrief-save");
        save.setMinWidth(USE_PREF_SIZE);
        save.getItems().setAll(saving);
        watch.setId("call-debrief-watch");
        watch.setMinWidth(USE_PREF_SIZE);
        watch.setOnAction(e -> acts.toggleExpert());
        fork.setId("call-debrief-fork");
        fork.getStyleClass().add("main");
        fork.setMinWidth(USE_PREF_SIZE);
        fork.setOnAction(e -> acts.fork());
        getChildren().addAll(back, names, chip, save, watch, fork);
        for (Region act : List.of(save, watch, fork)) {
            act.managedProperty().bind(act.visibleProperty());
        }
    }

    /** What it says before the debrief may be shown. */
    void before(String site) {
        title.setText(sayings.say("review.title"));
        subtitle.setText(site);
        say(false);
    }

    /**
     * What it says of a debrief that is shown.
     *
     * @param outcome the line below its name
     * @param forked number of the test that a fork begins with
     */
    void shown(boolean experts, String outcome, int forked) {
        title.setText(sayings.say(experts ? "review.title.expert" : "review.title"));
        subtitle.setText(outcome);
        watch.setText(sayings.say(experts ? "review.unwatch" : "review.watch"));
        fork.setText(sayings.say("review.fork", forked));
        fork.setDisable(experts);
        say(true);
    }

    /** The call is being lived again for a fork. */
    void forking() {
        fork.setDisable(true);
    }

    private void say(boolean revealed) {
        back.setAccessibleText(sayings.say("review.back"));
        chip.setText(sayings.say("review.practice"));
        save.setText(sayings.say("review.save"));
        fork.setAccessibleHelp(sayings.say("review.fork.note"));
        save.setVisible(revealed);
        watch.setVisible(revealed);
        fork.setVisible(revealed);
    }
}
