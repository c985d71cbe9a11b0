/**
 * The weather of a season: takes the document's weather plan, place, dates, random streams and data files; gives one
 * series of air, dew point, wind, sun, cloud, rain and reference evapotranspiration by the minute, and the physics
 * behind it as static functions. Measured, hourly, generated and scripted sources and the author's events end in the
 * same series, so nothing downstream knows where a minute came from.
 *
 * <p>Tick 0 is 00:00 standard time of the first day; a tick is one minute. Knows scenario, quantity, numeric and
 * world.yard; must not know hydraulics, ground, sensors, control or the season.
 */
package provingyard.world.weather;
