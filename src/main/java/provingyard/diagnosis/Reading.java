package provingyard.diagnosis;

/** What a test gave. */
public sealed interface Reading {

    /** A number shown by an instrument, in its unit. */
    record Shown(double value) implements Reading {}

    /** One of the categories of a look, such as dry, damp, ponding; counted from 0. */
    record Seen(int category) implements Reading {}
}
