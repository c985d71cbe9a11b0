package provingyard.sensor;

import provingyard.scenario.Point;

/**
 * The true yard in one minute, as sensors may ask it. The season answers from its weather, ground and pipes.
 *
 * <p>Places are in m on the yard, heights in m above the ground, depths in m below it.
 */
public interface Surroundings {

    /** Air temperature in °C at a spot: with walls, vents and cold pools, without any sensor's error. */
    double airTemperature(Point at, double height);

    /** Radiation in W/m2 from sun and sky on a small flat body at a spot. */
    double sunOn(Point at, double height);

    /** Wind in m/s at a spot, the mean of this minute. */
    double wind(Point at, double height);

    /** Rain in m (volume per area) that an open cup at a spot catches in this minute. */
    double rain(Point at, double height);

    /** Sprinkler water in m (volume per area) that an open cup at a spot catches in this minute. */
    double spray(Point at, double height);

    /** Evaporation in m that a wet flat body at a spot could lose in this minute. */
    double drying(Point at, double height);

    /**
     * Water in the soil as a volume share, averaged over the cells whose centre is within {@code support} m of the
     * place (its own cell at least).
     */
    double soilWater(Point at, double depth, double support);

    /** Catalogue id of the soil at a place, or null under paving. */
    String soilAt(Point at);

    /** Flow in m3/s through a pipe at a distance from its {@code from} end, positive away from that end. */
    double flow(String pipe, double along);

    /** How far the pipe runs straight around a place. */
    StraightPipe straightPipe(String pipe, double along);

    /**
     * Straight pipe around a place.
     *
     * @param upstream m to the next bend, tee, valve or meter on the side the water comes from
     * @param downstream m to the next on the other side
     * @param inner inner diameter of the pipe there in m
     */
    record StraightPipe(double upstream, double downstream, double inner) {}
}
