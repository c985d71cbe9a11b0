package provingyard.setup;

import com.fasterxml.jackson.databind.EnumNamingStrategies.CamelCaseStrategy;
import com.fasterxml.jackson.databind.annotation.EnumNaming;

/** What a sensor above ground is fixed to. */
@EnumNaming(CamelCaseStrategy.class)
public enum Mount {
    /** A post of its own. */
    POST,
    /** A building's wall, below the eave. */
    WALL,
    /** The roof's edge or gutter, above the eave. */
    ROOF_EDGE,
    FENCE,
    /** A branch of a tree. */
    BRANCH
}
