package provingyard.ui;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.learner.Look;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;

/** How the window looks and speaks; everything changes at once, and is kept with the learner. */
final class SettingsSheet extends VBox {

    private static final int TEXT_STEP = 10;

    private final Words words;
    private final Shell shell;

    SettingsSheet(Words words, Shell shell, Runnable close) {
        super(14);
        this.words = words;
        this.shell = shell;
        setId("settings");
        getStyleClass().add("settings");
        Label title = new Label();
        words.bind(title.textProperty(), "settings.title");
        title.getStyleClass().add("page-title");
        Button done = new Button();
        done.setId("settings-done");
        done.getStyleClass().add("main");
        words.bind(done.textProperty(), "settings.done");
        done.setOnAction(e -> close.run());
        Label kept = new Label();
        kept.textProperty()
                .bind(words.live("settings.kept", shell.learnerName(shell.book().current())));
        kept.getStyleClass().addAll("small", "ink2");
        kept.setWrapText(true);
        HBox.setHgrow(kept, Priority.ALWAYS);
        kept.setMaxWidth(Double.MAX_VALUE);
        HBox foot = new HBox(12, kept, done);
        foot.setAlignment(Pos.CENTER_LEFT);
        done.setMinWidth(Region.USE_PREF_SIZE);
        getChildren()
                .addAll(
                        title,
                        row("settings.language", language()),
                        row("settings.units", units()),
                        row("settings.theme", theme()),
                        row("settings.textSize", textSize()),
                        row("settings.motion", motion()),
                        new Hairline(),
                        foot);
    }

    private VBox row(String key, Node control) {
        Label label = new Label();
        label.getStyleClass().add("strong");
        words.bind(label.textProperty(), key);
        label.setLabelFor(control);
        VBox row = new VBox(6, label, control);
        return row;
    }

    private Node language() {
        // Each language is named in itself, so that whoever is lost in the other one finds the way.
        return new Segments<>(
                        "settings-language",
                        List.of(
                                new Segments.Choice<>("en", "en", Bindings.createStringBinding(() -> "English"), null),
                                new Segments.Choice<>("es", "es", Bindings.createStringBinding(() -> "Español"), null)),
                        words.language(),
                        shell::speak)
                .following(words.languageChanges(), words::language);
    }

    private Node units() {
        return new Segments<>(
                        "settings-units",
                        List.of(
                                new Segments.Choice<>(UnitSystem.US, "US", words.live("settings.us"), null),
                                new Segments.Choice<>(
                                        UnitSystem.METRIC, "METRIC", words.live("settings.metric"), null)),
                        words.units().get(),
                        next -> words.units().set(next))
                .following(words.units(), words.units()::get);
    }

    private Node theme() {
        List<Segments.Choice<Theme>> choices = Shell.THEMES.stream()
                .map(t -> new Segments.Choice<>(t, t.name(), words.live("theme." + t.name()), null))
                .toList();
        return new Segments<>("settings-theme", choices, shell.theme().get(), shell::theme)
                .following(shell.theme(), shell.theme()::get);
    }

    private Node textSize() {
        Slider slider = new Slider(Look.SMALLEST, Look.LARGEST, shell.textSize().get());
        slider.setId("settings-text-size");
        slider.setMajorTickUnit(TEXT_STEP);
        slider.setMinorTickCount(0);
        slider.setBlockIncrement(TEXT_STEP);
        slider.setSnapToTicks(true);
        slider.accessibleTextProperty().bind(words.live("settings.textSize"));
        HBox.setHgrow(slider, Priority.ALWAYS);
        Label value = new Label();
        value.getStyleClass().add("value");
        value.setMinWidth(Region.USE_PREF_SIZE);
        value.setStyle("-fx-pref-width: 4em; -fx-alignment: center-right;");
        value.textProperty().bind(words.live("settings.percent", shell.textSize()));
        slider.valueProperty().addListener((o, was, is) -> {
            // While it is dragged the sheet would grow away under the pointer.
            if (!slider.isValueChanging()) {
                shell.textSize(snapped(is.doubleValue()));
            }
        });
        slider.valueChangingProperty().addListener((o, was, is) -> {
            if (!is) {
                shell.textSize(snapped(slider.getValue()));
            }
        });
        HBox box = new HBox(12, slider, value);
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    private static int snapped(double value) {
        return (int) Math.round(value / TEXT_STEP) * TEXT_STEP;
    }

    private Node motion() {
        CheckBox box = new CheckBox();
        box.setId("settings-still");
        words.bind(box.textProperty(), "settings.still");
        box.setWrapText(true);
        box.setSelected(shell.still().get());
        box.selectedProperty().addListener((o, was, is) -> shell.still(is));
        return box;
    }
}
