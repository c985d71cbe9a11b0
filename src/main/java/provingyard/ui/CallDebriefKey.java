package provingyard.ui;

import java.util.Arrays;
import java.util.Optional;
import javafx.scene.input.KeyCode;

/** What a service call's debrief answers to by keys. */
enum CallDebriefKey {
    BACK(KeyCode.ESCAPE),
    BEFORE(KeyCode.LEFT),
    AFTER(KeyCode.RIGHT),
    START(KeyCode.HOME),
    LAST(KeyCode.END),
    EXPERT(KeyCode.E),
    FORK(KeyCode.F);

    private final KeyCode code;

    CallDebriefKey(KeyCode code) {
        this.code = code;
    }

    KeyCode code() {
        return code;
    }

    static Optional<CallDebriefKey> of(KeyCode code) {
        return Arrays.stream(values()).filter(k -> k.code == code).findFirst();
    }
}
