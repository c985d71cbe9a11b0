package provingyard.ui;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.DoubleConsumer;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;

/**
 * One setting: its name, an exact field with its unit, the same in the other system's unit, and a slider on which the
 * usual range is a thicker band.
 */
final class SettingRow extends VBox {

    /** Alike in both systems, or too long to stand beside. */
    private static final Set<Show> NO_OTHER = EnumSet.of(Show.FRACTION, Show.DURATION, Show.PULSES);

    private final Setting setting;
    private final Words words;
    private final QuantityField field;
    private final ScaleSlider slider;
    private final Label other = new Label();
    private double value;

    /**
     * A row.
     *
     * @param onMove told of each value that the slider passes
     * @param onChange told of a value that is to be set
     */
    SettingRow(Setting setting, Words words, DoubleConsumer onMove, DoubleConsumer onChange) {
        this.setting = setting;
        this.words = words;
        String name = setting.key().replace('.', '-');
        field = new QuantityField(setting.show(), setting.least(), setting.most(), words, v -> take(v, onChange));
        field.setId("field-" + name);
        field.accessibleTextProperty().bind(words.live(setting.key()));
        field.accessibleHelpProperty()
                .bind(Bindings.createStringBinding(this::usual, words.languageChanges(), words.units()));
        slider = new ScaleSlider(
                setting,
                words,
                v -> {
                    field.show(v);
                    showOther(v);
                    onMove.accept(v);
                },
                v -> take(v, onChange));
        slider.slider().setId("slider-" + name);
        getChildren().addAll(top(), slider, complaint());
        getStyleClass().add("setting-row");
    }

    private HBox top() {
        Label label = new Label();
        words.bind(label.textProperty(), setting.key());
        label.getStyleClass().add("strong");
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.setLabelFor(field);
        label.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(label, Priority.ALWAYS);
        label.setMinWidth(60);
        Tooltip usual = new Tooltip();
        usual.textProperty().bind(field.accessibleHelpProperty());
        label.setTooltip(usual);
        field.setMinWidth(Region.USE_PREF_SIZE);
        other.getStyleClass().addAll("small", "ink3");
        other.setMinWidth(Region.USE_PREF_SIZE);
        HBox top = new HBox(label, field, other);
        top.getStyleClass().add("setting-top");
        top.setAlignment(Pos.BASELINE_LEFT);
        return top;
    }

    private Label complaint() {
        Label complaint = new Label();
        complaint.setId(field.getId() + "-complaint");
        complaint.textProperty().bind(field.complaintProperty());
        complaint.visibleProperty().bind(field.complaintProperty().isNotEmpty());
        complaint.managedProperty().bind(complaint.visibleProperty());
        complaint.getStyleClass().addAll("alarm", "small");
        complaint.setGraphic(IconNode.of("alarm", 14));
        complaint.setWrapText(true);
        complaint.setMinHeight(Region.USE_PREF_SIZE);
        return complaint;
    }

    private String usual() {
        Display d = words.display();
        Setting.Usual usual = setting.usual();
        return usual == null
                ? words.say(
                        "setting.outOfRange",
                        d.text(setting.show(), setting.least()),
                        d.text(setting.show(), setting.most()))
                : words.say("setting.usual", d.text(setting.show(), usual.from()), d.text(setting.show(), usual.to()));
    }

    /** Shows a value in the setting's inner unit. */
    void show(double inner, boolean editable) {
        value = inner;
        slider.show(inner, editable);
        field.show(inner, editable);
        showOther(inner);
    }

    /** The value in the other system, where that has another unit. */
    private void showOther(double inner) {
        boolean metric = words.units().get() == UnitSystem.METRIC;
        Display rest = Display.of(metric ? UnitSystem.US : UnitSystem.METRIC, words.language());
        boolean same = NO_OTHER.contains(setting.show());
        other.setText(same ? "" : rest.text(setting.show(), inner));
        other.setManaged(!same);
    }

    private void take(double next, DoubleConsumer onChange) {
        if (Math.abs(next - value) > 1e-12) {
            value = next;
            onChange.accept(next);
        }
    }
}
