package provingyard.world.hydraulics;

/** How a solve ended. Only {@link #CONVERGED} is an answer. */
public enum SolveStatus {
    /** Never solved since the state was made. */
    NOT_SOLVED,
    /** All laws hold within the tolerances. */
    CONVERGED,
    /** The iterations ran out; heads and flows are the last try, not an answer. */
    NOT_CONVERGED
}
