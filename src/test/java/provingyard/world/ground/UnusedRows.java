package provingyard.world.ground;

import java.util.Map;
import java.util.TreeMap;

/** Published rows that no formula of the ground is checked against, by the beginning of their id, with the reason. */
final class UnusedRows {

    static final Map<String, String> REASONS = new TreeMap<>(Map.ofEntries(
            Map.entry("fao56-ex0", "reference evapotranspiration: the weather package's"),
            Map.entry("fao56-ex1", "reference evapotranspiration: the weather package's"),
            Map.entry("fao56-ex2", "reference evapotranspiration: the weather package's"),
            Map.entry("fao56-eq", "reference evapotranspiration: the weather package's"),
            Map.entry("fao56-an", "reference evapotranspiration: the weather package's"),
            Map.entry("hargreaves", "reference evapotranspiration: the weather package's"),
            Map.entry("fao56-t19", "ranges for the catalogue's soils, checked with the catalogue"),
            Map.entry("fao56-t12", "crop coefficients for the catalogue's plants"),
            Map.entry("fao56-t22", "root depths for the catalogue's plants; irrigated turf roots less deep"),
            Map.entry("rawls83", "parameters for the catalogue's soils, checked with the catalogue"),
            Map.entry("horton", "another infiltration law than the one used"),
            Map.entry("usda-maxpr", "a table for schedules, from another model of infiltration"),
            Map.entry("nist-concrete", "material data, used as inputs of the pavement test"),
            Map.entry("asphalt-props", "ranges for the catalogue's pavings"),
            Map.entry("albedo", "ranges for the catalogue's pavings"),
            Map.entry("surfdiff", "air near the ground: local climate, the weather package's"),
            Map.entry("smith1973", "a forecast rule for grass minimum; not computed"),
            Map.entry("stull", "wet bulb: not used, rain arrives half way to the dew point"),
            Map.entry("topp-uncertainty", "a standard error, for sensors' noise"),
            Map.entry("playan05-E17", "moving laterals, which no yard has"),
            Map.entry("trimmer87-3.18", "the equation misses the paper's own table here by 40 % (7.7 against 5.5)"),
            Map.entry("wind-uniformity", "a range for whole systems, checked with patterns in wind"),
            Map.entry("wdel-field", "a measured range, not a formula"),
            Map.entry("weather-", "measured weather: the weather package's")));

    private UnusedRows() {}
}
