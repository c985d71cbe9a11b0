package provingyard.quantity;

import java.util.List;

/** How a quantity is shown: of which dimension, in which units of the two systems, and how finely. */
public enum Show {
    /** Distances on the yard. */
    LENGTH(Dimension.LENGTH, "m", 3, "ft", 2),
    /** Depths of water, pipe sizes. */
    DEPTH(Dimension.LENGTH, "mm", 2, "in", 3),
    /** Sensor depths and short heights. */
    SHORT_LENGTH(Dimension.LENGTH, "cm", 2, "in", 2),
    AREA(Dimension.AREA, "m2", 2, "ft2", 1),
    /** Small openings. */
    OPENING(Dimension.AREA, "mm2", 2, "in2", 4),
    /** Volumes; metric ones under a cubic metre are in litres. */
    VOLUME(Dimension.VOLUME, "m3", 3, "gal", 2),
    FLOW(Dimension.FLOW, "L/min", 2, "gpm", 3),
    PRESSURE(Dimension.PRESSURE, "bar", 3, "psi", 2),
    TEMPERATURE(Dimension.TEMPERATURE, "°C", 1, "°F", 1),
    TEMPERATURE_DIFFERENCE(Dimension.TEMPERATURE_DIFFERENCE, "K", 1, "°F", 1),
    SPEED(Dimension.SPEED, "m/s", 2, "mph", 2),
    RATE(Dimension.RATE, "mm/h", 2, "in/h", 3),
    /** Durations; the unit is chosen by size: s, min, h or d. */
    DURATION(Dimension.DURATION, "min", 2, "min", 2),
    ANGLE(Dimension.ANGLE, "°", 1, "°", 1),
    FRACTION(Dimension.FRACTION, "%", 2, "%", 2),
    /** US dollars, always with two decimals. */
    MONEY(Dimension.MONEY, "USD", 2, "USD", 2),
    PULSES(Dimension.PULSES, "pulses/L", 4, "pulses/gal", 4),
    /** Iced area times time, given in m2 h. */
    ICE(null, "m\u00b2\u00b7h", 3, "ft\u00b2\u00b7h", 2);

    /** What stands in sentences; of lengths each by its own units. */
    static final List<Show> SPOKEN =
            List.of(FLOW, PRESSURE, TEMPERATURE, SPEED, RATE, VOLUME, AREA, LENGTH, DEPTH, SHORT_LENGTH);

    private final Dimension dimension;
    private final String metric;
    private final int metricDecimals;
    private final String us;
    private final int usDecimals;

    Show(Dimension dimension, String metric, int metricDecimals, String us, int usDecimals) {
        this.dimension = dimension;
        this.metric = metric;
        this.metricDecimals = metricDecimals;
        this.us = us;
        this.usDecimals = usDecimals;
    }

    /** The dimension, or null for iced area times time, which files do not have. */
    public Dimension dimension() {
        return dimension;
    }

    /** Symbol of the unit in a system, as files have it. */
    String symbol(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    /** Decimals of values under one. */
    int decimals(UnitSystem system) {
        return system == UnitSystem.US ? usDecimals : metricDecimals;
    }
}
