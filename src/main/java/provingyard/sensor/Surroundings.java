package provingyard.sensor;

import provingyard.scenario.Point;

/**
 * The true yard, as sensors may ask it. A sensor asks once for its place and keeps it; what the place answers is what is
 * true there in the minute being lived. The season answers from its weather, ground and pipes.
 *
 * <p>Points are in m on the yard, heights in m above the ground, depths in m below it.
 */
public interface Surroundings {

    /** The air at a spot. */
    Air air(Point at, double height);

    /** The soil at a place, averaged over the cells whose centre is within {@code support} m (its own cell at least). */
    Soil soil(Point at, double depth, double support);

    /** A pipe at a distance from its {@code from} end. */
    Pipe pipe(String pipe, double along);

    /** What a spot above ground is exposed to in this minute. */
    interface Air {

        /** Air temperature in °C: with walls, vents and cold pools, without any sensor's error. */
        double temperature();

        /** Radiation in W/m2 from sun and sky on a small flat body. */
        double sun();

        /** Wind in m/s, the mean of this minute. */
        double wind();

        /** Rain in m (volume per area) that an open cup catches in this minute. */
        double rain();

        /** Sprinkler water in m (volume per area) that an open cup catches in this minute. */
        double spray();

        /** Evaporation in m that a wet flat body could lose in this minute. */
        double drying();
    }

    /** What a place in the ground holds. */
    interface Soil {

        /** Water as a volume share. */
        double water();

        /** Catalogue id of the soil, or null under paving. */
        String id();
    }

    /** What a place on a pipe sees. */
    interface Pipe {

        /** Flow in m3/s, positive away from the pipe's {@code from} end. */
        double flow();

        /** How far the pipe runs straight around the place. */
        StraightPipe straight();
    }

    /**
     * Straight pipe around a place.
     *
     * @param upstream m to the next bend, tee, valve or meter on the side the water comes from
     * @param downstream m to the next on the other side
     * @param inner inner diameter of the pipe there in m
     */
    record StraightPipe(double upstream, double downstream, double inner) {}
}
