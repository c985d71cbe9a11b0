package provingyard.scenario;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A number that came to the form later: it is left out of a document's fingerprint while it has its usual value, so that
 * documents written before, and all that was found for them, keep theirs.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface LeftOutOfHash {

    /** The usual value. */
    double at();
}
