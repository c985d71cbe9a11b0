package provingyard.drill;

/**
 * What came of a card.
 *
 * @param form how much of it was done for the trainee
 * @param session number of the session, from 1
 * @param points of the score, 0 to 100; 0 for an example
 * @param met whether its goal was met; an example has none and counts as met
 */
public record Result(Form form, int session, int points, boolean met) {

    /** An example that was shown or skipped. */
    public static Result shown(int session) {
        return new Result(Form.EXAMPLE, session, 0, true);
    }
}
