package provingyard.picture;

import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.SensorKind;

/** The few words and numbers that the plan writes itself, in both languages and unit systems. */
final class Words {

    private static final double MM_H_IN_M_S = 3.6e6;

    private Words() {}

    private static boolean spanish(View view) {
        return "es".equals(view.language());
    }

    /** What a tripped sensor does, for its pill. */
    static String tripped(SensorKind kind, View view) {
        return switch (kind) {
            case RAIN, WIND, FREEZE -> spanish(view) ? "retiene" : "held";
            case FLOW -> spanish(view) ? "cortó" : "shut";
            case SOIL -> spanish(view) ? "húmedo" : "wet";
        };
    }

    /** °C in the view's units, with a true minus. */
    static String temperature(double celsius, View view) {
        boolean us = view.units() == UnitSystem.US;
        return signed(Math.round(us ? celsius * 9 / 5 + 32 : celsius)) + (us ? " °F" : " °C");
    }

    private static String signed(long value) {
        return value < 0 ? "−" + -value : Long.toString(value);
    }

    /** m/s in the view's units. */
    static String speed(double metresPerSecond, View view) {
        return display(view).text(Show.SPEED, metresPerSecond);
    }

    /** mm/h in the view's units. */
    static String rainRate(double millimetresPerHour, View view) {
        return display(view).text(Show.RATE, millimetresPerHour / MM_H_IN_M_S);
    }

    private static Display display(View view) {
        return Display.of(view.units(), view.language());
    }
}
