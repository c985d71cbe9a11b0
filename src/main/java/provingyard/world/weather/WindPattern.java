package provingyard.world.weather;

import java.time.LocalDate;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.Deterministic;
import provingyard.numeric.RandomStreams;

/**
 * Wind by the minute: the day's mean kept, times the month's day curve, times seeded gusts; and its direction from the
 * rose.
 *
 * <p>Gusts: lognormal, relative deviation about 0.3 with a memory of 45 min (first-order autoregression in steps of
 * 10 min) and 0.1 of minute noise. Days meet over the last and first three hours at the calmer one's mean. Direction:
 * spells of 8 h in the mean with a bearing drawn from the rose, approached within about 40 min, with a wander of some
 * 8 degrees. All these numbers: own choice, no source.
 */
final class WindPattern {

    private static final int STEP = 10;
    private static final double MEMORY = 45.0;
    private static final double GUST = 0.3;
    private static final double MINUTE_NOISE = 0.1;
    private static final double MEETING = 180.0;
    private static final double SHORTEST_SPELL = 60.0;
    private static final double MORE_SPELL = 420.0;
    private static final double TURNING = 40.0;
    private static final double WANDER = 8.0;
    private static final int SECTORS = 8;
    private static final double SECTOR = 45.0;

    private final RandomStreams streams;

    WindPattern(RandomStreams streams) {
        this.streams = streams;
    }

    /** Fills the speed so that each day's minutes have the day's mean. */
    void fillSpeed(double[] wind, List<DayValues> days, LocalDate from, DiurnalShape shape) {
        double[] gust = gusts(wind.length);
        for (int day = 0; day < days.size(); day++) {
            double mean = days.get(day).wind();
            double before = Math.min(mean, days.get(Math.max(0, day - 1)).wind());
            double after =
                    Math.min(mean, days.get(Math.min(days.size() - 1, day + 1)).wind());
            int month = from.plusDays(day).getMonthValue();
            int start = day * SeasonSun.MINUTES;
            double plain = 0.0;
            double raised = 0.0;
            for (int minute = 0; minute < SeasonSun.MINUTES; minute++) {
                double inside = inside(minute);
                double edge = minute < SeasonSun.MINUTES / 2 ? before : after;
                double base = edge + (mean - edge) * inside;
                int t = start + minute;
                wind[t] = base * shape.wind(month, minute) * gust[t];
                plain += wind[t];
                raised += wind[t] * inside;
            }
            if (mean > 0.0) {
                bringToMean(wind, start, mean, plain, raised);
            }
        }
    }

    /** 0 at midnight, 1 from three hours away. */
    private static double inside(int minute) {
        return Math.min(1.0, Math.min(minute + 0.5, SeasonSun.MINUTES - minute - 0.5) / MEETING);
    }

    /** Scales the inner day, and the edges less, so that the mean is met and neighbours still meet. */
    private static void bringToMean(double[] wind, int start, double mean, double plain, double raised) {
        double lift = (mean * SeasonSun.MINUTES - plain) / raised;
        // Less than a tenth would be left at noon: scale the whole day instead (only where gusts and edges conspire).
        boolean even = lift < -0.9;
        double scale = mean * SeasonSun.MINUTES / plain;
        for (int minute = 0; minute < SeasonSun.MINUTES; minute++) {
            wind[start + minute] *= even ? scale : 1.0 + lift * inside(minute);
        }
    }

    private double[] gusts(int ticks) {
        UniformRandomProvider random = streams.sequence("weather.gusts");
        double keep = Deterministic.exp(-STEP / MEMORY);
        double renew = Math.sqrt(1.0 - keep * keep);
        double[] gust = new double[ticks];
        double from = Draws.gaussian(random);
        for (int start = 0; start < ticks; start += STEP) {
            double to = keep * from + renew * Draws.gaussian(random);
            for (int i = 0; i < STEP && start + i < ticks; i++) {
                double slow = from + (to - from) * i / STEP;
                double fast = Math.max(-2.5, Math.min(2.5, Draws.gaussian(random)));
                gust[start + i] = Deterministic.exp(GUST * slow) * (1.0 + MINUTE_NOISE * fast);
            }
            from = to;
        }
        return gust;
    }

    /** Fills the bearing from which it blows. */
    void fillDirection(double[] windFrom, List<Double> rose) {
        double[] share = shares(rose);
        UniformRandomProvider random = streams.sequence("weather.direction");
        double keep = Deterministic.exp(-1.0 / TURNING);
        double renew = Math.sqrt(1.0 - keep * keep);
        double target = bearing(share, random);
        double heading = target;
        double wander = 0.0;
        double left = SHORTEST_SPELL + Draws.exponential(random, MORE_SPELL);
        for (int t = 0; t < windFrom.length; t++) {
            if (left <= 0.0) {
                target = bearing(share, random);
                left = SHORTEST_SPELL + Draws.exponential(random, MORE_SPELL);
            }
            left -= 1.0;
            heading = circle(heading + turn(heading, target) * (1.0 - keep));
            wander = keep * wander + renew * WANDER * Draws.gaussian(random);
            windFrom[t] = circle(heading + wander);
        }
    }

    private static double[] shares(List<Double> rose) {
        double[] share = new double[SECTORS];
        double sum = 0.0;
        for (int i = 0; i < SECTORS; i++) {
            share[i] = rose == null || rose.size() != SECTORS ? 1.0 : Math.max(0.0, rose.get(i));
            sum += share[i];
        }
        for (int i = 0; i < SECTORS; i++) {
            share[i] = sum > 0.0 ? share[i] / sum : 1.0 / SECTORS;
        }
        return share;
    }

    private static double bearing(double[] share, UniformRandomProvider random) {
        double u = random.nextDouble();
        int sector = 0;
        while (sector < SECTORS - 1 && u >= share[sector]) {
            u -= share[sector];
            sector++;
        }
        return circle(sector * SECTOR + (random.nextDouble() - 0.5) * SECTOR);
    }

    /** Degrees brought into 0 (included) to 360. */
    static double circle(double degrees) {
        double turned = degrees % 360.0;
        double positive = turned < 0.0 ? turned + 360.0 : turned;
        return positive >= 360.0 ? 0.0 : positive;
    }

    /** Shortest turn in degrees, -180 to 180, from one bearing to another. */
    static double turn(double from, double to) {
        return circle(to - from + 180.0) - 180.0;
    }
}
