package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import provingyard.call.Tool;

/** The sheet of keys names every key that a service call and its debrief answer to. */
class KeysSheetTest {

    private static final Map<KeyCode, List<String>> CAPS = Map.of(
            KeyCode.ESCAPE, List.of("Esc"),
            KeyCode.LEFT, List.of("←"),
            KeyCode.RIGHT, List.of("→"),
            KeyCode.HOME, List.of("Home", "Inicio"),
            KeyCode.END, List.of("End", "Fin"));

    @BeforeAll
    static void window() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    /** The caps of all keys under a heading. */
    private static Set<String> caps(Words words, String area) {
        Set<String> caps = new HashSet<>();
        new FxRobot().interact(() -> {
            String head = words.say(area);
            Label found = labels(new KeysSheet(words, () -> {})).stream()
                    .filter(l -> l.getText().equals(head))
                    .findFirst()
                    .orElseThrow();
            labels(found.getParent()).stream()
                    .filter(l -> l.getStyleClass().contains("key-cap"))
                    .forEach(l -> caps.add(l.getText()));
        });
        return caps;
    }

    private static List<Label> labels(Node node) {
        if (node instanceof Label label) {
            return List.of(label);
        }
        return node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream()
                        .flatMap(n -> labels(n).stream())
                        .toList()
                : List.of();
    }

    private static boolean isListed(KeyCode code, Set<String> caps) {
        boolean digit = code.isDigitKey() && code != KeyCode.DIGIT0 && caps.contains("1…9");
        return digit
                || CAPS.getOrDefault(code, List.of(code.getName())).stream().anyMatch(caps::contains);
    }

    @Test
    void itNamesTheKeysOfACall() {
        for (String language : List.of("en", "es")) {
            Words words = new Words();
            words.speak(language);
            Set<String> caps = caps(words, "keys.call");
            for (Tool tool : Tool.values()) {
                assertTrue(isListed(CallSigns.key(tool), caps), tool + " in " + caps);
            }
            Arrays.stream(CallKey.values()).forEach(k -> assertTrue(isListed(k.code(), caps), k + " in " + caps));
        }
    }

    @Test
    void itNamesTheKeysOfItsDebrief() {
        for (String language : List.of("en", "es")) {
            Words words = new Words();
            words.speak(language);
            Set<String> caps = caps(words, "keys.callDebrief");
            Arrays.stream(CallDebriefKey.values())
                    .forEach(k -> assertTrue(isListed(k.code(), caps), k + " in " + caps));
        }
    }
}
