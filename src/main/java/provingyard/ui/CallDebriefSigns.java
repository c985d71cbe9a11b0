package provingyard.ui;

import provingyard.call.CallReview;
import provingyard.call.FieldTest;
import provingyard.picture.Icons;

/** The sign of what a technician takes in hand for a test. */
final class CallDebriefSigns {

    /** Name of the sign of what stands out. */
    static String of(CallReview.Remark remark) {
        boolean unsafe = remark == CallReview.Remark.UNSAFE;
        return remark.good() ? "ok" : unsafe ? "alarm" : "caution";
    }

    private static final double SIZE = 18;

    private CallDebriefSigns() {}

    static IconNode of(FieldTest test) {
        return IconNode.of(CallSigns.icon(test.tool()), SIZE);
    }

    static Icons.Icon icon(FieldTest test) {
        return Icons.get(CallSigns.icon(test.tool()));
    }
}
