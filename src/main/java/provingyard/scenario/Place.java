package provingyard.scenario;

import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/**
 * An invented place.
 *
 * @param name its name
 * @param latitude degrees north
 * @param longitude degrees east
 * @param elevation m above the sea
 * @param utcOffset offset of standard time from UTC in s; no daylight saving
 */
public record Place(
        Text name,
        @In(Dimension.ANGLE) double latitude,
        @In(Dimension.ANGLE) double longitude,
        @In(Dimension.LENGTH) double elevation,
        @In(Dimension.DURATION) double utcOffset) {}
