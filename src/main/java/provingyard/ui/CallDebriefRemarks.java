package provingyard.ui;

import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.call.CallReview;

/** What stands out in a service call, in plain words: unsafe first, then what could be better, then what was done well. */
final class CallDebriefRemarks extends VBox {

    CallDebriefRemarks(CallDebriefWords sayings, CallReview review) {
        super(6);
        Label name = new Label(sayings.say("review.remarks.title"));
        name.getStyleClass().add("panel-title");
        FlowPane flow = new FlowPane(18, 8);
        flow.setId("call-debrief-remarks");
        for (CallReview.Found found : review.remarks()) {
            Label label = new Label(sayings.remark(found), sign(found.remark()));
            label.setWrapText(true);
            label.setGraphicTextGap(8);
            label.setMinHeight(Region.USE_PREF_SIZE);
            label.maxWidthProperty().bind(flow.widthProperty());
            flow.getChildren().add(label);
        }
        getChildren().addAll(name, flow);
    }

    private static IconNode sign(CallReview.Remark remark) {
        boolean unsafe = remark == CallReview.Remark.UNSAFE;
        IconNode icon = IconNode.of(CallDebriefSigns.of(remark), 16);
        icon.getStyleClass().add(remark.good() ? "sign-good" : unsafe ? "sign-alarm" : "call-debrief-caution");
        return icon;
    }
}
