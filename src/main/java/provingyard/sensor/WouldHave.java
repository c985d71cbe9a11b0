package provingyard.sensor;

import provingyard.setup.Placement;

/**
 * What a setting would have done over past days, from values at the sensor's place in equal steps of time. A middle unit
 * without noise: an aid for the trainee's eye beside a setting, not a replay of a season. Flow has no such view: what it
 * does depends on the pipes.
 *
 * @param days whole days looked at
 * @param daysTripped days in which it was tripped at some time
 * @param tripped for each step, whether it was tripped at its end
 * @param byDay for each whole day, whether it was tripped at some time
 * @param extreme for each whole day, what it would have shown at its furthest: the most water held in m, the strongest
 *     mean wind in m/s, the lowest temperature in °C, the most soil water as a volume share
 */
public record WouldHave(int days, int daysTripped, boolean[] tripped, boolean[] byDay, double[] extreme) {

    private static final int HOURS = 24;
    private static final double DAY = 86400;

    /** A rain sensor: rain (and spray) caught and evaporation allowed in each hour, both in m. */
    public static WouldHave rain(Placement.Rain p, double[] caught, double[] drying) {
        return rain(p, caught, drying, HOURS);
    }

    /** The same in so many steps a day. */
    public static WouldHave rain(Placement.Rain p, double[] caught, double[] drying, int steps) {
        Days days = new Days(caught.length, steps, false);
        double depth = rainTrip(p);
        double held = 0;
        boolean was = false;
        for (int i = 0; i < caught.length; i++) {
            double filled = RainSensor.hold(held, caught[i], 0, p);
            boolean within = RainSensor.trips(filled, depth, was);
            held = RainSensor.hold(held, caught[i], drying[i], p);
            was = RainSensor.trips(held, depth, within);
            days.step(i, was, was || within, filled);
        }
        return days.all();
    }

    /** Water in m that a middle unit of a rain sensor holds when it trips. */
    public static double rainTrip(Placement.Rain p) {
        return RainSensor.MEDIAN_UNIT * p.trip();
    }

    /** A wind sensor: mean speed of each hour in m/s. */
    public static WouldHave wind(Placement.Wind p, double[] speed) {
        return wind(p, speed, HOURS);
    }

    /** The same in so many steps a day; its own averaging time is kept where a step is shorter. */
    public static WouldHave wind(Placement.Wind p, double[] speed, int steps) {
        Days days = new Days(speed.length, steps, false);
        double step = DAY / steps;
        int window = (int) Math.max(1, Math.round(p.averaging() / step));
        boolean was = false;
        double since = 0;
        for (int i = 0; i < speed.length; i++) {
            double mean = mean(speed, i, window);
            since = was ? since + step : 0;
            was = WindSensor.trips(mean, was, since, p);
            days.step(i, was, was, mean);
        }
        return days.all();
    }

    private static double mean(double[] values, int last, int window) {
        int from = Math.max(0, last - window + 1);
        double sum = 0;
        for (int i = from; i <= last; i++) {
            sum += values[i];
        }
        return sum / (last - from + 1);
    }

    /** A freeze sensor: temperature at the end of each hour in °C. */
    public static WouldHave freeze(Placement.Freeze p, double[] temperature) {
        return freeze(p, temperature, HOURS);
    }

    /** The same in so many steps a day. */
    public static WouldHave freeze(Placement.Freeze p, double[] temperature, int steps) {
        Days days = new Days(temperature.length, steps, true);
        boolean was = false;
        for (int i = 0; i < temperature.length; i++) {
            was = FreezeSensor.trips(temperature[i], was, p);
            days.step(i, was, was, temperature[i]);
        }
        return days.all();
    }

    /** A soil sensor: volume share at the end of each hour; tripped is wet. */
    public static WouldHave soil(Placement.Soil p, double[] water) {
        return soil(p, water, HOURS);
    }

    /** The same in so many steps a day. */
    public static WouldHave soil(Placement.Soil p, double[] water, int steps) {
        Days days = new Days(water.length, steps, false);
        for (int i = 0; i < water.length; i++) {
            boolean wet = water[i] >= p.wet();
            days.step(i, wet, wet, water[i]);
        }
        return days.all();
    }

    /** Gathers steps to days. */
    private static final class Days {

        private final int steps;
        private final boolean lowest;
        private final boolean[] tripped;
        private final boolean[] byDay;
        private final double[] extreme;

        Days(int length, int steps, boolean lowest) {
            this.steps = steps;
            this.lowest = lowest;
            tripped = new boolean[length];
            byDay = new boolean[length / steps];
            extreme = new double[byDay.length];
        }

        void step(int i, boolean atEnd, boolean within, double value) {
            tripped[i] = atEnd;
            int day = i / steps;
            if (day < byDay.length) {
                byDay[day] |= within;
                boolean first = i % steps == 0;
                boolean further = lowest ? value < extreme[day] : value > extreme[day];
                extreme[day] = first || further ? value : extreme[day];
            }
        }

        WouldHave all() {
            int count = 0;
            for (boolean any : byDay) {
                count += any ? 1 : 0;
            }
            return new WouldHave(byDay.length, count, tripped, byDay, extreme);
        }
    }
}
