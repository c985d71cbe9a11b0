package provingyard.diagnosis;

/** What a policy does next. */
public sealed interface Move {

    /** Does something. */
    record Do(Action action) implements Move {}

    /** States what has to be repaired. */
    record Declare(String repairClass) implements Move {}
}
