package provingyard.ui;

import provingyard.quantity.Show;
import provingyard.scenario.SensorKind;

/** How each kind's reading is shown. */
final class Readouts {

    private Readouts() {}

    static Show of(SensorKind kind) {
        return switch (kind) {
            case RAIN -> Show.DEPTH;
            case WIND -> Show.SPEED;
            case FREEZE -> Show.TEMPERATURE;
            case FLOW -> Show.FLOW;
            case SOIL -> Show.FRACTION;
        };
    }
}
