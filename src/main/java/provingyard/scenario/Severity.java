package provingyard.scenario;

/** How much a problem matters. */
public enum Severity {
    /** The document cannot be used. */
    ERROR,
    /** It can be used; the author should look. */
    WARNING,
    /** Said for completeness, such as a usual value that was filled in. */
    NOTE
}
