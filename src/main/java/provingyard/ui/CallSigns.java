package provingyard.ui;

import javafx.scene.input.KeyCode;
import provingyard.call.Tool;

/** The sign and the key of each tool: the same on every site, so that the hand learns them. */
final class CallSigns {

    private CallSigns() {}

    static String icon(Tool tool) {
        return switch (tool) {
            case METER -> "meter";
            case ISOLATE -> "key";
            case RUN_ZONE -> "zone";
            case GAUGE -> "gauge";
            case MULTIMETER -> "ohms";
            case RECORDS -> "log";
            case LOOK -> "look";
            case LISTEN -> "listen";
            case PROBE -> "probe";
            case DIG -> "dig";
            case SENSOR_CHECK -> "cup";
            case REQUEST -> "flags";
            case PUT_BACK -> "undo";
        };
    }

    static KeyCode key(Tool tool) {
        return switch (tool) {
            case METER -> KeyCode.DIGIT1;
            case ISOLATE -> KeyCode.DIGIT2;
            case RUN_ZONE -> KeyCode.DIGIT3;
            case GAUGE -> KeyCode.DIGIT4;
            case MULTIMETER -> KeyCode.DIGIT5;
            case RECORDS -> KeyCode.DIGIT6;
            case LOOK -> KeyCode.DIGIT7;
            case LISTEN -> KeyCode.DIGIT8;
            case PROBE -> KeyCode.DIGIT9;
            case DIG -> KeyCode.DIGIT0;
            case SENSOR_CHECK -> KeyCode.C;
            case REQUEST -> KeyCode.M;
            case PUT_BACK -> KeyCode.B;
        };
    }

    /** The tool of a key; null for other keys. */
    static Tool tool(KeyCode code) {
        for (Tool tool : Tool.values()) {
            KeyCode key = key(tool);
            boolean pad =
                    key.isDigitKey() && code.isKeypadKey() && code.getName().endsWith(key.getName());
            if (key == code || pad) {
                return tool;
            }
        }
        return null;
    }
}
