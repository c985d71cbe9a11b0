package provingyard.quantity;

/** The two systems in which quantities are shown. */
public enum UnitSystem {
    /** Feet, gallons, psi, degrees Fahrenheit. */
    US,
    /** Metres, litres, bar, degrees Celsius. */
    METRIC
}
