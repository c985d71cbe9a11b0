package provingyard.diagnosis;

/** A way of going about a service call. The same inquiry gives the same move. Uses only what the trainee was shown. */
public interface Policy {

    /** Its name in commands and tables. */
    String name();

    /** What it does next. */
    Move next(Inquiry inquiry);
}
