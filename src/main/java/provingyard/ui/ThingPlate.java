package provingyard.ui;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A small sheet beside the pointed thing: its name and its state in words. */
final class ThingPlate extends VBox {

    private static final double GAP = 18;
    private static final double MARGIN = 8;

    /** What a plate says. */
    record Saying(String name, List<String> lines) {

        static final Saying NOTHING = new Saying("", List.of());

        String whole() {
            return lines.isEmpty() ? name : name + ". " + String.join(". ", lines);
        }
    }

    private final Label name = new Label();
    private final VBox lines = new VBox();
    private Saying said = Saying.NOTHING;

    ThingPlate() {
        setId("plate");
        getStyleClass().addAll("sheet", "plate");
        setMouseTransparent(true);
        setManaged(false);
        setVisible(false);
        setAccessibleRole(AccessibleRole.TEXT);
        name.getStyleClass().add("strong");
        name.setId("plate-name");
        getChildren().addAll(name, lines);
    }

    /** Says something, or hides where there is nothing to say. */
    void say(Saying next) {
        setVisible(!next.name().isEmpty());
        if (next.equals(said)) {
            return;
        }
        said = next;
        name.setText(next.name());
        while (lines.getChildren().size() > next.lines().size()) {
            lines.getChildren().remove(lines.getChildren().size() - 1);
        }
        for (int i = 0; i < next.lines().size(); i++) {
            if (i == lines.getChildren().size()) {
                Label line = new Label();
                line.getStyleClass().addAll("small", "ink2");
                line.setMinWidth(Region.USE_PREF_SIZE);
                lines.getChildren().add(line);
            }
            ((Label) lines.getChildren().get(i)).setText(next.lines().get(i));
        }
        setAccessibleText(next.whole());
    }

    Saying said() {
        return said;
    }

    /** Lies beside a place, wholly within what panels leave free. */
    void beside(double x, double y, double left, double top, double right, double bottom) {
        applyCss();
        double w = Math.ceil(prefWidth(-1));
        double h = Math.ceil(prefHeight(w));
        double px = x + GAP + w + MARGIN <= right ? x + GAP : x - GAP - w;
        double py = y + GAP + h + MARGIN <= bottom ? y + GAP : y - GAP - h;
        double heldX = Math.max(left + MARGIN, Math.min(right - w - MARGIN, px));
        double heldY = Math.max(top + MARGIN, Math.min(bottom - h - MARGIN, py));
        resizeRelocate(Math.round(heldX), Math.round(heldY), w, h);
    }
}
