package provingyard.ui;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** A field for a time of day. What is not understood is said when it is entered, and the old time stays. */
final class TimeField extends TextField {

    static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("HH:mm");
    private static final int COLUMNS = 4;

    private final Words words;
    private final Consumer<LocalTime> onTake;
    private final ReadOnlyStringWrapper complaint = new ReadOnlyStringWrapper("");
    private LocalTime value = LocalTime.MIDNIGHT;

    TimeField(Words words, Consumer<LocalTime> onTake) {
        this.words = words;
        this.onTake = onTake;
        setAlignment(Pos.CENTER);
        setPrefColumnCount(COLUMNS);
        setOnAction(e -> typed());
        focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                typed();
            }
        });
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE && !getText().equals(WRITTEN.format(value))) {
                show(value, isEditable());
                e.consume();
            }
        });
    }

    /** What is wrong with what was entered, in words; empty when nothing is. */
    ReadOnlyStringProperty complaintProperty() {
        return complaint.getReadOnlyProperty();
    }

    void show(LocalTime time, boolean editable) {
        value = time;
        setText(WRITTEN.format(time));
        setEditable(editable);
        setDisable(!editable);
        complain("");
    }

    private void typed() {
        Optional<LocalTime> time = Schedules.time(getText());
        complain(time.isPresent() ? "" : words.say("schedule.notATime", getText()));
        time.ifPresent(t -> {
            boolean other = !t.equals(value);
            show(t, isEditable());
            if (other) {
                onTake.accept(t);
            }
        });
    }

    private void complain(String text) {
        complaint.set(text);
        getStyleClass().remove("bad");
        if (!text.isEmpty()) {
            getStyleClass().add("bad");
        }
    }
}
