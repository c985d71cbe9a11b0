package provingyard.world.electric;

/**
 * Two wires that touch.
 *
 * @param wire valve whose wire it is
 * @param other valve whose wire it is, or {@link Wiring#COMMON}
 * @param metres from the controller along the route in m
 * @param ohms of the touch, above 0
 */
public record WireShort(String wire, String other, double metres, double ohms) {

    public WireShort {
        Conditions.above(metres, "metres");
        Conditions.above(ohms, "ohms");
    }
}
