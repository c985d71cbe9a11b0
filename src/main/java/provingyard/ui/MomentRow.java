package provingyard.ui;

import javafx.geometry.Pos;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.quantity.Show;
import provingyard.report.MomentWords;
import provingyard.study.Moment;

/** One moment in a list: what happened and what it came to, and below when, why and what would have helped. */
final class MomentRow extends HBox {

    private Runnable act = () -> {};

    MomentRow(Words words, MomentSayings sayings, Moment moment) {
        super(10);
        getStyleClass().add("moment-row");
        setFocusTraversable(true);
        setMinWidth(0);
        String when = sayings.day(moment.tick()) + ", " + sayings.clock(moment.tick());
        Label title = wrapped(sayings.title(moment));
        title.getStyleClass().add("strong");
        HBox.setHgrow(title, Priority.ALWAYS);
        double lost = moment.money();
        Label money = new Label((lost > 0 ? "−" : "+") + words.display().text(Show.MONEY, Math.abs(lost)));
        money.getStyleClass().addAll("strong", lost > 0 ? "share-lost-text" : "share-gained-text");
        money.setMinWidth(Region.USE_PREF_SIZE);
        HBox top = new HBox(10, title, money);
        Label sentence = wrapped(when + ". " + sayings.sentence(moment));
        sentence.getStyleClass().addAll("small", "ink2");
        VBox texts = new VBox(1, top, sentence);
        texts.setMinWidth(0);
        HBox.setHgrow(texts, Priority.ALWAYS);
        getChildren().addAll(IconNode.of(MomentWords.icon(moment.what()), 20), texts);
        setAlignment(Pos.TOP_LEFT);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(
                title.getText() + ", " + money.getText() + ". " + sentence.getText() + " " + words.say("moments.go"));
        setOnMouseClicked(e -> act.run());
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
                act.run();
                e.consume();
            }
        });
    }

    private static Label wrapped(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinWidth(0);
        label.setMaxWidth(Double.MAX_VALUE);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** What is done when it is chosen. */
    void onAct(Runnable next) {
        act = next;
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.FIRE) {
            act.run();
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }
}
