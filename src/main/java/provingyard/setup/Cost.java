package provingyard.setup;

import provingyard.scenario.Kit;

/**
 * What a set-up's sensors cost.
 *
 * @param spent USD for what is placed
 * @param left USD of the budget that are left; negative when it is overdrawn
 */
public record Cost(double spent, double left) {

    /** Price of each placed sensor by the kit; kinds that the kit lacks count nothing (reading refuses them). */
    public static Cost of(SetUp setUp, Kit kit) {
        double spent = 0;
        for (Placement sensor : setUp.sensors()) {
            Kit.Item item = kit.item(sensor.kind());
            spent += item == null ? 0 : item.price();
        }
        return new Cost(spent, kit.budget() - spent);
    }

    /** Whether the budget holds. */
    public boolean withinBudget() {
        return left >= 0;
    }
}
