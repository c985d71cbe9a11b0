package provingyard.scenario;

import com.fasterxml.jackson.databind.EnumNamingStrategies.CamelCaseStrategy;
import com.fasterxml.jackson.databind.annotation.EnumNaming;

/** The two kinds of work. */
@EnumNaming(CamelCaseStrategy.class)
public enum Work {
    /** Choose, place and set sensors. */
    TUNE,
    /** Find a fault. */
    SERVICE_CALL
}
