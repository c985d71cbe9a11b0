package provingyard.ui;

import java.util.Arrays;
import java.util.Optional;
import javafx.scene.input.KeyCode;

/** What a service call answers to by keys, beside the keys of its instruments in {@link CallSigns}. */
enum CallKey {
    FINDING(KeyCode.F),
    WATER(KeyCode.W),
    LEFT(KeyCode.L),
    BACK(KeyCode.ESCAPE);

    private final KeyCode code;

    CallKey(KeyCode code) {
        this.code = code;
    }

    KeyCode code() {
        return code;
    }

    static Optional<CallKey> of(KeyCode code) {
        return Arrays.stream(values()).filter(k -> k.code == code).findFirst();
    }
}
