package provingyard.quantity;

import java.util.List;

/**
 * The kinds of quantity that the program knows, each with its inner (SI) unit and the units in which files and people
 * may give it. Inside the program every value is a {@code double} in the inner unit.
 *
 * <p>Factors: US customary to SI as in NIST Special Publication 811 (2008), appendix B; exact where the definition is.
 */
public enum Dimension {
    /** Metres. Also depths of water: {@code 6 mm}, {@code 1/4 in}. */
    LENGTH("m", u("mm", 1e-3), u("cm", 1e-2), u("km", 1e3), u("in", 0.0254), u("ft", 0.3048), u("yd", 0.9144)),
    /** Square metres. */
    AREA("m2", u("mm2", 1e-6), u("cm2", 1e-4), u("in2", 6.4516e-4), u("ft2", 0.09290304)),
    /** Cubic metres. */
    VOLUME("m3", u("L", 1e-3), u("gal", 3.785411784e-3), u("kgal", 3.785411784)),
    /** Cubic metres per second. */
    FLOW(
            "m3/s",
            u("m3/h", 1.0 / 3600),
            u("L/s", 1e-3),
            u("L/min", 1e-3 / 60),
            u("L/h", 1e-3 / 3600),
            u("gpm", 3.785411784e-3 / 60),
            u("gph", 3.785411784e-3 / 3600)),
    /** Pascals. */
    PRESSURE("Pa", u("kPa", 1e3), u("bar", 1e5), u("psi", 6894.757293168)),
    /** Application, infiltration or rain rate in metres per second. */
    RATE("m/s", u("mm/h", 1e-3 / 3600), u("in/h", 0.0254 / 3600), u("mm/d", 1e-3 / 86400)),
    /** Degrees Celsius. */
    TEMPERATURE("°C", new Unit("°F", 5.0 / 9, -32.0 * 5 / 9)),
    /** Difference of temperatures in kelvin. */
    TEMPERATURE_DIFFERENCE("K", u("°C", 1), u("°F", 5.0 / 9)),
    /** Metres per second. */
    SPEED("m/s", u("km/h", 1 / 3.6), u("mph", 0.44704), u("ft/s", 0.3048)),
    /** Seconds. */
    DURATION(
            "s",
            u("min", 60),
            u("h", 3600),
            u("d", 86400),
            u("days", 86400),
            u("day", 86400),
            u("years", 31557600),
            u("year", 31557600)),
    /** Degrees of angle. */
    ANGLE("deg", u("°", 1)),
    /** A share of one: {@code 80 %} is 0.8. */
    FRACTION("1", u("%", 0.01)),
    /** US dollars. */
    MONEY("USD"),
    /** US dollars per cubic metre. */
    PRICE_OF_WATER("USD/m3", u("USD/kgal", 1 / 3.785411784), u("USD/gal", 1 / 3.785411784e-3)),
    /** US dollars per square metre. */
    PRICE_OF_AREA("USD/m2", u("USD/ft2", 1 / 0.09290304)),
    /** US dollars per square metre and hour. */
    PRICE_OF_ICE("USD/m2h", u("USD/ft2h", 1 / 0.09290304)),
    /** US dollars per square metre and day. */
    PRICE_OF_DRYNESS("USD/m2d", u("USD/ft2d", 1 / 0.09290304)),
    /** Pulses per litre that a flow sensor gives. */
    PULSES("pulses/L", u("pulses/gal", 1 / 3.785411784)),
    /** Occurrences per season. */
    OCCURRENCE("per season"),
    /** Electrical resistance in ohms. */
    RESISTANCE("ohm", u("kohm", 1e3)),
    /** Thermal conductivity in W/(m K). */
    CONDUCTIVITY("W/mK"),
    /** Specific heat in J/(kg K). */
    SPECIFIC_HEAT("J/kgK"),
    /** Density in kg/m3. */
    DENSITY("kg/m3");

    private final List<Unit> units;

    Dimension(String inner, Unit... others) {
        Unit[] all = new Unit[others.length + 1];
        all[0] = new Unit(inner, 1, 0);
        System.arraycopy(others, 0, all, 1, others.length);
        units = List.of(all);
    }

    private static Unit u(String symbol, double factor) {
        return new Unit(symbol, factor, 0);
    }

    /** Units accepted for this kind; the first is the inner one. */
    public List<Unit> units() {
        return units;
    }

    /** The unit that values have inside the program. */
    public Unit inner() {
        return units.get(0);
    }

    /** A unit: inner = value * factor + offset. */
    public record Unit(String symbol, double factor, double offset) {

        /** The value in the dimension's inner unit. */
        public double toInner(double value) {
            return value * factor + offset;
        }

        /** A value of the inner unit expressed in this unit. */
        public double fromInner(double inner) {
            return (inner - offset) / factor;
        }
    }
}
