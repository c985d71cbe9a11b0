package provingyard.ui;

import provingyard.call.FieldTest;
import provingyard.call.Tool;
import provingyard.picture.Icons;

/** The sign of what a technician takes in hand for a test. */
final class CallDebriefSigns {

    private static final double SIZE = 18;

    private CallDebriefSigns() {}

    static IconNode of(FieldTest test) {
        return IconNode.of(name(test.tool()), SIZE);
    }

    static Icons.Icon icon(FieldTest test) {
        return Icons.get(name(test.tool()));
    }

    static String name(Tool tool) {
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
            case REQUEST -> "flag";
            case PUT_BACK -> "undo";
        };
    }
}
