package provingyard.ui;

import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Titles and legends of the parts of a service call's debrief. */
final class CallDebriefParts {

    private final CallDebriefWords sayings;

    CallDebriefParts(CallDebriefWords sayings) {
        this.sayings = sayings;
    }

    /** A part with its title and a quiet word beside it. */
    VBox section(String key, String hint, Node body) {
        Label name = new Label(sayings.say(key));
        name.getStyleClass().add("section-title");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label note = new Label(sayings.say(hint));
        note.getStyleClass().addAll("small", "ink2");
        note.setWrapText(true);
        note.setMinHeight(Region.USE_PREF_SIZE);
        HBox head = new HBox(10, name, note);
        head.setAlignment(Pos.BASELINE_LEFT);
        return new VBox(6, head, body);
    }

    /** The strip of tests with what its bars and dots are. */
    VBox strip(CallDebriefStrip strip, boolean experts) {
        VBox box = section(experts ? "review.strip.expert" : "review.strip.title", "review.strip.hint", strip);
        HBox legend = new HBox(
                16,
                key("best", "call-debrief-best"),
                key("chosen", "call-debrief-chosen"),
                key("came", "call-debrief-came"));
        legend.getStyleClass().add("small");
        box.getChildren().add(1, legend);
        return box;
    }

    private Label key(String key, String style) {
        Region sign = new Region();
        sign.getStyleClass().add(style);
        Label label = new Label(sayings.say("review.strip." + key), sign);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    /** The plan with what its signs are. */
    StackPane plan(CallDebriefPlan plan, boolean wrong) {
        Label likely = new Label(sayings.say("review.plan.legend"));
        Region band = new Region();
        band.getStyleClass().add("call-debrief-band");
        likely.setGraphic(band);
        HBox box = new HBox(14, likely);
        if (wrong) {
            IconNode sign = IconNode.of("cross", 11);
            sign.getStyleClass().add("call-debrief-truth");
            box.getChildren().add(new Label(sayings.say("review.plan.truth"), sign));
        }
        box.getStyleClass().addAll("call-debrief-legend", "small");
        box.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        StackPane.setAlignment(box, Pos.BOTTOM_LEFT);
        StackPane.setMargin(box, new Insets(8));
        return new StackPane(plan, box);
    }
}
