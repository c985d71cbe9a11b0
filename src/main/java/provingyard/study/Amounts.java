package provingyard.study;

import provingyard.score.Loss;

/**
 * A season's loss in the measures that people ask for. A value, or a difference of two.
 *
 * @param water m3 wasted: drift, overspray, runoff, below the roots and leaks (no litre twice)
 * @param ice m2 h of iced walk during foot traffic
 * @param leaks USD for leaks missed or found late and for false alarms, without their water
 * @param plants USD for plants dry or dead, and for the refill of soil left drier
 * @param sensors USD of the sensors' price that falls on the season
 * @param money USD of all of it, water and ice included
 */
public record Amounts(double water, double ice, double leaks, double plants, double sensors, double money) {

    /** Nothing. */
    public static final Amounts NONE = new Amounts(0, 0, 0, 0, 0, 0);

    /** What a season lost. */
    public static Amounts of(Loss loss) {
        double water = loss.entry(Loss.Kind.DRIFT).amount()
                + loss.entry(Loss.Kind.OVERSPRAY).amount()
                + loss.entry(Loss.Kind.RUNOFF).amount()
                + loss.entry(Loss.Kind.BELOW_ROOTS).amount()
                + loss.entry(Loss.Kind.LEAK).amount();
        double leaks =
                loss.money(Loss.Kind.MISSED_LEAK) + loss.money(Loss.Kind.LATE_LEAK) + loss.money(Loss.Kind.FALSE_ALARM);
        double plants =
                loss.money(Loss.Kind.DRY_PLANTS) + loss.money(Loss.Kind.DEAD_PLANTS) + loss.money(Loss.Kind.REFILL);
        double ice = loss.entry(Loss.Kind.ICED_WALK).amount();
        return new Amounts(water, ice, leaks, plants, loss.money(Loss.Kind.SENSORS), loss.total());
    }

    /** The sum of both, measure by measure. */
    public Amounts plus(Amounts other) {
        return new Amounts(
                water + other.water,
                ice + other.ice,
                leaks + other.leaks,
                plants + other.plants,
                sensors + other.sensors,
                money + other.money);
    }

    /** This less the other, measure by measure. */
    public Amounts minus(Amounts other) {
        return plus(other.times(-1));
    }

    /** So many times as much. */
    public Amounts times(double factor) {
        return new Amounts(
                water * factor, ice * factor, leaks * factor, plants * factor, sensors * factor, money * factor);
    }
}
