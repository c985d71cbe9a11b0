package provingyard.world.hydraulics;

/** What a link does in a solution. */
public enum LinkState {
    /** Open; it may carry no flow. */
    OPEN,
    /** Shut by hand or control, or a one-way link held shut by the pressure behind it. */
    CLOSED,
    /** A pressure reducing valve that holds its set pressure. */
    ACTIVE
}
