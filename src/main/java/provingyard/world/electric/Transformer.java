package provingyard.world.electric;

/**
 * The secondary side of the controller's transformer, as a source behind a resistance (Thévenin), and what protects it.
 * The mains side is no part of the model: it is work for an electrician.
 *
 * @param volts V (root mean square) without load
 * @param ohms inner resistance in ohm
 * @param hertz 60 or 50 Hz
 * @param limit A (root mean square) that the protection stands; more for longer than an inrush and it opens
 * @param protection what opens
 * @param dead gives nothing
 * @param blown the fuse is blown
 */
public record Transformer(
        double volts, double ohms, double hertz, double limit, Protection protection, boolean dead, boolean blown) {

    /** How the secondary is protected. */
    public enum Protection {
        /** Stays open until it is replaced. */
        FUSE,
        /** Cuts off while the load is too large. */
        OVERLOAD_LIMIT
    }

    /** Without volts at its terminals. */
    boolean silent() {
        return dead || blown;
    }

    Transformer asDead() {
        return new Transformer(volts, ohms, hertz, limit, protection, true, blown);
    }

    Transformer asBlown(boolean isBlown) {
        return new Transformer(volts, ohms, hertz, limit, protection, dead, isBlown);
    }
}
