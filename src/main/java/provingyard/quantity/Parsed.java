package provingyard.quantity;

/** What reading a quantity's text gave: a value, or the reason why not. */
public sealed interface Parsed {

    /** A value in the dimension's inner unit. */
    record Value(double inner) implements Parsed {}

    /**
     * Not a quantity of the wanted kind.
     *
     * @param reason why
     * @param found the part of the text that is wrong
     * @param at where that part begins in the text, from 0
     * @param maybe what was probably meant; empty when nothing comes near
     */
    record Refused(Reason reason, String found, int at, String maybe) implements Parsed {}

    /** Why a text is refused. */
    enum Reason {
        /** Nothing there. */
        EMPTY,
        /** Longer than any quantity. */
        TOO_LONG,
        /** It does not begin with a number. */
        NO_NUMBER,
        /** A comma in the number; files use a decimal point. */
        COMMA,
        /** A fraction with nothing under the line. */
        ZERO_DENOMINATOR,
        /** Too large for a number. */
        NOT_FINITE,
        /** A number alone where a unit is needed. */
        NO_UNIT,
        /** The unit is none of this dimension's. */
        UNKNOWN_UNIT
    }
}
