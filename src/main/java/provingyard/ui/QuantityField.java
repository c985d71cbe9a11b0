package provingyard.ui;

import java.util.function.DoubleConsumer;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Control;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.text.Text;
import org.controlsfx.validation.ValidationMessage;
import org.controlsfx.validation.ValidationResult;
import org.controlsfx.validation.ValidationSupport;
import org.controlsfx.validation.decoration.ValidationDecoration;
import provingyard.quantity.Parsed;
import provingyard.quantity.Show;

/**
 * A field for one quantity: any unit of its kind may be typed, a bare number is in the unit shown. What is not understood
 * or out of range is marked while it is typed and said when it is entered; the old value then stays. Esc takes back what
 * was typed.
 */
final class QuantityField extends TextField {

    private static final double CARET = 4;
    private static final double ROUNDING = 1e-9;

    private final Show show;
    private final double least;
    private final double most;
    private final Words words;
    private final DoubleConsumer onTake;
    private final boolean bare;
    private final ReadOnlyStringWrapper complaint = new ReadOnlyStringWrapper("");
    private Runnable onEmpty;
    private double value = Double.NaN;

    QuantityField(Show show, double least, double most, Words words, DoubleConsumer onTake) {
        this(show, least, most, words, onTake, false);
    }

    /** A field that shows its number without the unit, which then stands over it. */
    static QuantityField bare(Show show, double least, double most, Words words, DoubleConsumer onTake) {
        return new QuantityField(show, least, most, words, onTake, true);
    }

    private QuantityField(Show show, double least, double most, Words words, DoubleConsumer onTake, boolean bare) {
        this.show = show;
        this.least = least;
        this.most = most;
        this.words = words;
        this.onTake = onTake;
        this.bare = bare;
        getStyleClass().add("quantity");
        setAlignment(Pos.CENTER_RIGHT);
        textProperty().addListener(o -> requestLayout());
        promptTextProperty().addListener(o -> requestLayout());
        setOnAction(e -> typed());
        focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                typed();
            }
        });
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE && !getText().equals(written(value))) {
                show(value);
                e.consume();
            }
        });
        ValidationSupport support = new ValidationSupport();
        support.setValidationDecorator(new Marked());
        support.registerValidator(
                this,
                false,
                (control, text) -> ValidationResult.fromErrorIf(
                        control, wrong(getText()), !wrong(getText()).isEmpty()));
    }

    /** As wide as what it shows. */
    @Override
    protected double computePrefWidth(double height) {
        String longest = getText().isEmpty() && getPromptText() != null ? getPromptText() : getText();
        Text measure = new Text(longest);
        measure.setFont(getFont());
        return snapSizeX(measure.getLayoutBounds().getWidth() + CARET + snappedLeftInset() + snappedRightInset());
    }

    /** Lets an empty field mean something: no value. */
    void onEmpty(Runnable then) {
        onEmpty = then;
    }

    /** What is wrong with what was entered, in words; empty when nothing is. */
    ReadOnlyStringProperty complaintProperty() {
        return complaint.getReadOnlyProperty();
    }

    /** Shows a value in the inner unit; NaN for none. What is being typed is left alone. */
    void show(double inner, boolean editable) {
        value = inner;
        setEditable(editable);
        setDisable(!editable);
        if (!isFocused() || wrong(getText()).isEmpty()) {
            show(inner);
        }
    }

    /** Shows a value that is not set yet, as while a slider moves. */
    void show(double inner) {
        setText(written(inner));
        complaint.set("");
    }

    private String written(double inner) {
        if (Double.isNaN(inner)) {
            return "";
        }
        return bare ? words.display().number(show, inner) : words.display().text(show, inner);
    }

    private String wrong(String text) {
        if (text.equals(written(value)) || text.isBlank() && onEmpty != null) {
            return "";
        }
        double shown = Double.isNaN(value) ? least : value;
        if (!(words.display().read(show, text) instanceof Parsed.Value typed)) {
            return words.say("setting.notUnderstood", text, words.display().text(show, shown));
        }
        boolean within = typed.inner() >= least - ROUNDING && typed.inner() <= most + ROUNDING;
        return within
                ? ""
                : words.say(
                        "setting.outOfRange",
                        words.display().text(show, least),
                        words.display().text(show, most));
    }

    private void typed() {
        String wrong = wrong(getText());
        complaint.set(wrong);
        if (!wrong.isEmpty() || getText().equals(written(value))) {
            return;
        }
        if (getText().isBlank()) {
            onEmpty.run();
        } else if (words.display().read(show, getText()) instanceof Parsed.Value typed) {
            value = typed.inner();
            setText(written(value));
            onTake.accept(value);
        }
    }

    /** Marks the field by a style of its own instead of a sign over it. */
    private static final class Marked implements ValidationDecoration {

        @Override
        public void removeDecorations(Control target) {
            target.getStyleClass().remove("bad");
        }

        @Override
        public void applyValidationDecoration(ValidationMessage message) {
            if (!message.getTarget().getStyleClass().contains("bad")) {
                message.getTarget().getStyleClass().add("bad");
            }
        }

        @Override
        public void applyRequiredDecoration(Control target) {
            removeDecorations(target);
        }
    }
}
