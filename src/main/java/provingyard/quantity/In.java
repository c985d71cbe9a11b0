package provingyard.quantity;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says of which dimension a number is. In files such a number is a text with its unit ({@code "15 ft"}); in the
 * program it is a {@code double} in the dimension's inner unit.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD, ElementType.PARAMETER, ElementType.METHOD})
public @interface In {
    /** The dimension. */
    Dimension value();
}
