package provingyard.world.hydraulics;

/** What a link of the network is. */
public enum LinkKind {
    /** A pipe with friction and minor losses, with or without a check valve. */
    PIPE,
    /** A valve, meter or fitting: a loss proportional to the square of flow. */
    VALVE,
    /** A device with a measured loss curve and no reverse flow, for example a backflow preventer. */
    DEVICE,
    /** A pressure reducing valve. */
    PRV,
    /** A pump with a three-point curve. */
    PUMP,
    /** The inner link of a supply given by its curve. */
    SUPPLY
}
