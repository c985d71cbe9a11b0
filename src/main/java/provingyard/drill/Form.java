package provingyard.drill;

/** How much of a card is done for the trainee; each family comes in this order. */
public enum Form {
    /** The reference's way is replayed with what each reading says. */
    EXAMPLE,
    /** The reference's first tests are done, the trainee finishes. */
    HALF,
    /** The trainee does it. */
    WHOLE
}
