package provingyard.ui;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.call.FieldTest;
import provingyard.call.ReviewedTest;
import provingyard.call.TestSplit;

/** The card of a better test than the one chosen: its name, how both split what was left, and why. */
final class CallDebriefBetter extends HBox {

    /** Share of a bar from which its number stands in it. */
    private static final double ROOM = 0.12;

    private final CallDebriefWords sayings;

    CallDebriefBetter(CallDebriefWords sayings, ReviewedTest test, boolean experts) {
        super(14);
        this.sayings = sayings;
        setId("call-debrief-better");
        getStyleClass().addAll("sheet", "call-debrief-card");
        if (test.better().isEmpty()) {
            nothing(test);
            return;
        }
        ReviewedTest.Better better = test.better().get();
        FieldTest one = better.test();
        VBox text = new VBox(6);
        text.setMinWidth(0);
        HBox.setHgrow(text, Priority.ALWAYS);
        text.getChildren()
                .add(new VBox(quiet(sayings.say("review.better.title", test.number())), strong(sayings.name(one))));
        text.getChildren().add(split(sayings.name(one), one, better.split()));
        FieldTest own = test.note().test();
        if (test.split() != null) {
            text.getChildren()
                    .add(split(
                            sayings.say(experts ? "review.better.theirs" : "review.better.yours", sayings.name(own)),
                            own,
                            test.split()));
        }
        Label why = new Label(sayings.why(test, better));
        why.setWrapText(true);
        why.setMinHeight(Region.USE_PREF_SIZE);
        why.getStyleClass().add("ink2");
        text.getChildren().add(why);
        getChildren().setAll(icon(CallDebriefSigns.of(one)), text);
    }

    private void nothing(ReviewedTest test) {
        Label text = new Label(
                sayings.say(test.judged() ? "review.better.noneText" : "review.better.unjudged"),
                IconNode.of("ok", 16));
        text.getStyleClass().add("sign-good");
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        getChildren().setAll(text);
    }

    private static StackPane icon(IconNode icon) {
        StackPane box = new StackPane(icon);
        box.getStyleClass().add("kit-icon");
        return box;
    }

    private static Label quiet(String text) {
        Label label = new Label(text);
        label.getStyleClass().addAll("small", "ink2", "strong");
        return label;
    }

    private static Label strong(String text) {
        Label label = new Label(text);
        label.getStyleClass().addAll("strong", "value");
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private VBox split(String name, FieldTest test, TestSplit split) {
        Label label = new Label(name);
        label.getStyleClass().add("small");
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        List<String> parts = sayings.parts(test, split);
        Bar bar = new Bar();
        StringBuilder said = new StringBuilder();
        for (int i = 0; i < parts.size(); i++) {
            double share = split.shares().get(i);
            String percent = sayings.percent(share);
            said.append(i == 0 ? "" : " \u00b7 ")
                    .append(parts.get(i))
                    .append(' ')
                    .append(percent);
            bar.add(share, share >= ROOM ? percent : "", i);
        }
        Label below = new Label(said.toString());
        below.getStyleClass().addAll("small", "ink2");
        below.setWrapText(true);
        below.setMinHeight(Region.USE_PREF_SIZE);
        return new VBox(2, label, bar, below);
    }

    /** A bar of shares, its parts told apart by shade and by a gap. */
    private static final class Bar extends Region {

        private final java.util.ArrayList<Double> shares = new java.util.ArrayList<>();

        private Bar() {
            setMinHeight(18);
            setPrefHeight(18);
            setMinWidth(0);
        }

        void add(double share, String text, int index) {
            Label part = new Label(text);
            part.getStyleClass().addAll("small", "call-debrief-part", "call-debrief-part-" + Math.min(2, index));
            part.setAlignment(Pos.CENTER);
            part.setMinWidth(0);
            shares.add(share);
            getChildren().add(part);
        }

        @Override
        protected void layoutChildren() {
            double gaps = 2 * (shares.size() - 1);
            double x = 0;
            for (int i = 0; i < shares.size(); i++) {
                double w = Math.max(2, (getWidth() - gaps) * shares.get(i));
                getChildren().get(i).resizeRelocate(x, 0, w, getHeight());
                x += w + 2;
            }
        }
    }
}
