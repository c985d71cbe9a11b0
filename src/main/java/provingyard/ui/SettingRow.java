package provingyard.ui;

import java.util.function.DoubleConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.quantity.Parsed;
import provingyard.quantity.Show;

/**
 * One setting: its name, an exact field with unit, a slider, and the usual range in words. A value typed with another
 * unit is understood; one that is not understood, or out of range, is marked and said, and the old value stays.
 */
final class SettingRow extends VBox {

    /** What a setting is: key of its name, how it is shown, and its range in inner units. */
    record Setting(String key, Show show, double least, double most) {}

    private final Setting setting;
    private final Words words;
    private final DoubleConsumer onChange;
    private final TextField field = new TextField();
    private final Slider slider = new Slider();
    private final Label complaint = new Label();
    private double value;
    private boolean showing;

    SettingRow(Setting setting, Words words, DoubleConsumer onChange) {
        this.setting = setting;
        this.words = words;
        this.onChange = onChange;
        setSpacing(2);
        Label name = new Label();
        words.bind(name.textProperty(), setting.key());
        name.getStyleClass().add("strong");
        name.setWrapText(true);
        name.setLabelFor(field);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox.setHgrow(name, Priority.SOMETIMES);
        field.setId("field-" + setting.key().replace('.', '-'));
        slider.setId("slider-" + setting.key().replace('.', '-'));
        field.setPrefColumnCount(7);
        field.setMinWidth(118);
        field.setAlignment(Pos.CENTER_RIGHT);
        HBox top = new HBox(8, name, gap, field);
        top.setAlignment(Pos.CENTER_LEFT);
        slider.setMin(setting.least());
        slider.setMax(setting.most());
        slider.setBlockIncrement((setting.most() - setting.least()) / 20);
        slider.accessibleTextProperty().bind(words.live(setting.key()));
        field.accessibleTextProperty().bind(words.live(setting.key()));
        complaint.getStyleClass().addAll("alarm", "small");
        complaint.setWrapText(true);
        complaint.managedProperty().bind(complaint.visibleProperty());
        complaint.setVisible(false);
        Tooltip usual = new Tooltip();
        usual.textProperty()
                .bind(words.live("setting.range", words.units())
                        .concat(": ")
                        .concat(javafx.beans.binding.Bindings.createStringBinding(
                                () -> show(setting.least()) + " – " + show(setting.most()),
                                words.units(),
                                words.languageChanges())));
        field.setTooltip(usual);
        getChildren().addAll(top, slider, complaint);
        field.setOnAction(e -> typed());
        field.focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                typed();
            }
        });
        slider.valueProperty().addListener((o, was, is) -> {
            if (!showing && !slider.isValueChanging()) {
                take(is.doubleValue());
            } else if (!showing) {
                field.setText(show(is.doubleValue()));
            }
        });
        slider.valueChangingProperty().addListener((o, was, is) -> {
            if (!is && !showing) {
                take(slider.getValue());
            }
        });
    }

    /** Shows a value in the setting's inner unit. */
    void show(double inner, boolean editable) {
        value = inner;
        showing = true;
        slider.setValue(inner);
        if (!field.isFocused()) {
            field.setText(show(inner));
        }
        showing = false;
        field.setDisable(!editable);
        slider.setDisable(!editable);
        if (!field.isFocused()) {
            quiet();
        }
    }

    private String show(double inner) {
        return words.display().text(setting.show(), inner);
    }

    private void typed() {
        if (field.getText().equals(show(value))) {
            quiet();
            return;
        }
        Parsed parsed = words.display().read(setting.show(), field.getText());
        if (!(parsed instanceof Parsed.Value typed)) {
            complain(words.say("setting.notUnderstood", field.getText(), show(value)));
            return;
        }
        double next = typed.inner();
        if (next < setting.least() - 1e-9 || next > setting.most() + 1e-9) {
            complain(words.say("setting.outOfRange", show(setting.least()), show(setting.most())));
            return;
        }
        take(next);
        field.setText(show(next));
    }

    private void take(double next) {
        quiet();
        if (Math.abs(next - value) > 1e-12) {
            value = next;
            onChange.accept(next);
        }
    }

    private void complain(String text) {
        complaint.setText(text);
        complaint.setVisible(true);
        if (!field.getStyleClass().contains("bad")) {
            field.getStyleClass().add("bad");
        }
    }

    private void quiet() {
        complaint.setVisible(false);
        field.getStyleClass().remove("bad");
    }
}
