package provingyard.world.electric;

/**
 * A cut through a wire.
 *
 * @param metres from the controller along the wire in m
 * @param leakOhms from each bare end to earth in saturated soil in ohm; infinite where both stay dry
 */
public record Cut(double metres, double leakOhms) {

    public Cut {
        Conditions.above(metres, "metres");
        Conditions.above(leakOhms, "leakOhms");
    }
}
