package provingyard.sensor;

import provingyard.setup.Placement;

/**
 * What a setting would have done over past days, from hourly values at the sensor's place. A middle unit without noise:
 * an aid for the trainee's eye beside a setting, not a replay of a season. Flow has no such view: what it does depends
 * on the pipes.
 *
 * @param days whole days looked at
 * @param daysTripped days in which it was tripped at some time
 * @param tripped for each hour, whether it was tripped at its end
 */
public record WouldHave(int days, int daysTripped, boolean[] tripped) {

    private static final int HOURS = 24;
    private static final double HOUR = 3600;

    /** A rain sensor: rain (and spray) caught and evaporation allowed in each hour, both in m. */
    public static WouldHave rain(Placement.Rain p, double[] caught, double[] drying) {
        boolean[] tripped = new boolean[caught.length];
        boolean[] within = new boolean[caught.length];
        double depth = RainSensor.MEDIAN_UNIT * p.trip();
        double held = 0;
        boolean was = false;
        for (int i = 0; i < caught.length; i++) {
            boolean filled = RainSensor.trips(RainSensor.hold(held, caught[i], 0, p), depth, was);
            held = RainSensor.hold(held, caught[i], drying[i], p);
            was = RainSensor.trips(held, depth, filled);
            tripped[i] = was;
            within[i] = was || filled;
        }
        return of(tripped, within);
    }

    /** A wind sensor: mean speed of each hour in m/s. */
    public static WouldHave wind(Placement.Wind p, double[] speed) {
        boolean[] tripped = new boolean[speed.length];
        boolean was = false;
        double since = 0;
        for (int i = 0; i < speed.length; i++) {
            since = was ? since + HOUR : 0;
            was = WindSensor.trips(speed[i], was, since, p);
            tripped[i] = was;
        }
        return of(tripped, tripped);
    }

    /** A freeze sensor: temperature at the end of each hour in °C. */
    public static WouldHave freeze(Placement.Freeze p, double[] temperature) {
        boolean[] tripped = new boolean[temperature.length];
        boolean was = false;
        for (int i = 0; i < temperature.length; i++) {
            was = FreezeSensor.trips(temperature[i], was, p);
            tripped[i] = was;
        }
        return of(tripped, tripped);
    }

    /** A soil sensor: volume share at the end of each hour; tripped is wet. */
    public static WouldHave soil(Placement.Soil p, double[] water) {
        boolean[] tripped = new boolean[water.length];
        for (int i = 0; i < water.length; i++) {
            tripped[i] = water[i] >= p.wet();
        }
        return of(tripped, tripped);
    }

    private static WouldHave of(boolean[] tripped, boolean[] within) {
        int days = within.length / HOURS;
        int count = 0;
        for (int day = 0; day < days; day++) {
            boolean any = false;
            for (int hour = 0; hour < HOURS; hour++) {
                any |= within[day * HOURS + hour];
            }
            count += any ? 1 : 0;
        }
        return new WouldHave(days, count, tripped);
    }
}
