package provingyard.scenario;

import com.fasterxml.jackson.databind.EnumNamingStrategies.CamelCaseStrategy;
import com.fasterxml.jackson.databind.annotation.EnumNaming;

/** The five kinds of sensor, in the order in which they are always listed. */
@EnumNaming(CamelCaseStrategy.class)
public enum SensorKind {
    RAIN,
    WIND,
    FREEZE,
    FLOW,
    SOIL
}
