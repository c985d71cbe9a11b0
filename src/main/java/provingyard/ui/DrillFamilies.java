package provingyard.ui;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import provingyard.drill.Family;
import provingyard.drill.Progress;
import provingyard.drill.Result;
import provingyard.drill.Standing;

/** Where a learner stands with each family: a sign, its name, its last whole cards as boxes, and the same in words. */
final class DrillFamilies extends GridPane {

    DrillFamilies(Progress progress, DrillWords sayings) {
        setId("drill-families");
        setHgap(14);
        setVgap(7);
        for (Family family : Family.values()) {
            Standing standing = progress.at(family);
            Label name = DrillSheet.plain(sayings.family(family), "strong");
            Label words = DrillSheet.label(sayings.standing(standing), "ink2");
            words.setId("drill-standing-" + family.name());
            if (standing.mastered()) {
                words.setGraphic(DrillSheet.sign(true));
            }
            addRow(family.ordinal(), name, boxes(standing), words);
        }
    }

    /** A filled box for a good card, a framed one for another, a faint one for one that was not played yet. */
    private static HBox boxes(Standing standing) {
        HBox boxes = new HBox(4);
        boxes.setAlignment(Pos.CENTER_LEFT);
        List<Result> last = standing.lastWhole();
        for (int i = 0; i < Standing.LAST; i++) {
            Region box = new Region();
            box.getStyleClass().add("drill-pip");
            if (i >= last.size()) {
                box.getStyleClass().add("no-card");
            } else if (last.get(i).points() >= Standing.GOOD) {
                box.getStyleClass().add("good-card");
            }
            boxes.getChildren().add(box);
        }
        boxes.setMinWidth(Region.USE_PREF_SIZE);
        return boxes;
    }
}
