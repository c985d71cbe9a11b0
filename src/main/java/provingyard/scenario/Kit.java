package provingyard.scenario;

import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/** The sensors that may be carried in, and the money for them in USD. A null item is not in the kit. */
public record Kit(@In(Dimension.MONEY) double budget, Item rain, Item wind, Item freeze, Item flow, Item soil) {

    /** Price of one in USD, and the most that may be placed. */
    public record Item(@In(Dimension.MONEY) double price, int most) {}

    /** The item of a kind, or null where the kit has none. */
    public Item item(SensorKind kind) {
        return switch (kind) {
            case RAIN -> rain;
            case WIND -> wind;
            case FREEZE -> freeze;
            case FLOW -> flow;
            case SOIL -> soil;
        };
    }
}
