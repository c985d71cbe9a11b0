package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.Node;
import provingyard.quantity.Display;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Text;
import provingyard.text.Texts;

/** The window's texts, live: whatever is bound here changes with the language and the units. */
public final class Words {

    private final ObjectProperty<Texts> texts = new SimpleObjectProperty<>(Texts.of("ui", "en"));
    private final ObjectProperty<UnitSystem> units = new SimpleObjectProperty<>(UnitSystem.US);

    /** The language, {@code en} or {@code es}. */
    public String language() {
        return texts.get().language();
    }

    /** Changes the language of everything that is bound. */
    public void speak(String language) {
        texts.set(Texts.of("ui", language));
    }

    /** The units in which everything is shown. */
    public ObjectProperty<UnitSystem> units() {
        return units;
    }

    /** Shows quantities in the units and the language of now. */
    public Display display() {
        return Display.of(units.get(), language());
    }

    /** What changes when the language does. */
    public Observable languageChanges() {
        return texts;
    }

    /**
     * Runs a change of a view whenever language or units change, as long as the view is shown in a window. A view that is
     * gone is told nothing, and is not kept alive by this.
     */
    void follow(Node view, Runnable change) {
        ChangeListener<Object> listener = (o, was, is) -> {
            if (view.getScene() != null) {
                change.run();
            }
        };
        view.getProperties().put(listener, listener);
        texts.addListener(new WeakChangeListener<>(listener));
        units.addListener(new WeakChangeListener<>(listener));
    }

    /** A text now. */
    public String say(String key, Object... values) {
        return texts.get().say(key, values);
    }

    /** A document's text now, its quantities in the units of now. */
    public String say(Text text) {
        return text == null ? "" : display().sentence(text.in(language()));
    }

    /** A live text; values that are observable are followed. */
    public StringBinding live(String key, Object... values) {
        List<Observable> sources = new ArrayList<>(List.of(texts, units));
        for (Object value : values) {
            if (value instanceof Observable observable) {
                sources.add(observable);
            }
        }
        return Bindings.createStringBinding(
                () -> {
                    Object[] now = new Object[values.length];
                    for (int i = 0; i < values.length; i++) {
                        now[i] = values[i] instanceof ObservableValue<?> v ? v.getValue() : values[i];
                    }
                    return texts.get().say(key, now);
                },
                sources.toArray(Observable[]::new));
    }

    /** A live document text. */
    public StringBinding live(Text text) {
        return Bindings.createStringBinding(() -> say(text), texts);
    }

    /** Binds a property to a live text. */
    public void bind(StringProperty property, String key, Object... values) {
        property.bind(live(key, values));
    }
}
