package provingyard.scenario;

import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/**
 * Scoring weights in money.
 *
 * @param water USD per m3 wasted, and for the refill of soil left drier
 * @param icedWalk USD per m2 and hour of ice from irrigation in foot traffic
 * @param missedLeak USD for each leak not found
 * @param lateLeak USD for each leak found later than {@code lateAfter}
 * @param lateAfter s
 * @param falseAlarm USD each
 * @param dryPlant USD per m2 and day of full stress beyond {@code stressAllowed}
 * @param stressAllowed the lesson's Ks: stress counts below it
 * @param deadPlant USD per m2 of plants that die
 * @param sensorLife s of service over which a sensor's price is spread
 * @param leastGap USD: a site whose mean gap is smaller teaches nothing
 */
public record Costs(
        @In(Dimension.PRICE_OF_WATER) double water,
        @In(Dimension.PRICE_OF_ICE) double icedWalk,
        @In(Dimension.MONEY) double missedLeak,
        @In(Dimension.MONEY) double lateLeak,
        @In(Dimension.DURATION) double lateAfter,
        @In(Dimension.MONEY) double falseAlarm,
        @In(Dimension.PRICE_OF_DRYNESS) double dryPlant,
        @In(Dimension.FRACTION) double stressAllowed,
        @In(Dimension.PRICE_OF_AREA) double deadPlant,
        @In(Dimension.DURATION) double sensorLife,
        @In(Dimension.MONEY) double leastGap) {}
