package provingyard.sensor;

import provingyard.numeric.RandomStreams;
import provingyard.setup.Placement;

/**
 * A cup wind sensor with a running mean.
 *
 * <p>Cups stand still below 0.5 m/s; above it they follow the wind u as a first-order system in the length of air that
 * passed: dU/dt = (u - U) u / L with a distance constant L of 3 m (the form is that of standards for rotating
 * anemometers; both numbers are usual for small cups, from memory), solved by one backward Euler step a minute. The
 * reading is the mean of the last minutes of the window (one at least), each with noise of 0.05 m/s and 2 % (common
 * practice, no source). It trips at the trip speed, and re-arms at the re-arm speed when it was tripped for the hold
 * time.
 */
public final class WindSensor extends Sensor {

    /** Usual trip for sprays in m/s: uniformity falls sharply above 4 m/s (Yacoubi et al. 2012). */
    public static final double USUAL_TRIP = 4;

    /** Usual re-arm in m/s (common practice, no source). */
    public static final double USUAL_REARM = 3;

    /** Speed in m/s below which the cups stand still. */
    public static final double THRESHOLD = 0.5;

    private static final double DISTANCE_CONSTANT = 3;
    private static final double NOISE = 0.05;
    private static final double NOISE_SHARE = 0.02;
    private static final double MINUTE = 60;

    private final Placement.Wind placement;
    private final long noise;
    private double[] window;
    private int filled;
    private int next;
    private Surroundings.Air air;
    private double truth;
    private double cups;
    private long trippedAt;

    WindSensor(Placement.Wind placement, RandomStreams streams) {
        this(placement, key(streams, placement, "noise"));
    }

    private WindSensor(Placement.Wind placement, long noise) {
        super(placement);
        this.placement = placement;
        this.noise = noise;
        window = new double[minutes(placement)];
    }

    private static int minutes(Placement.Wind placement) {
        return (int) Math.max(1, Math.round(placement.averaging() / MINUTE));
    }

    /** Whether a mean speed is tripped, given whether it was and for how many s. */
    static boolean trips(double mean, boolean was, double heldFor, Placement.Wind p) {
        return was ? mean > p.rearm() || heldFor < p.hold() : mean >= p.trip();
    }

    @Override
    Placement placement() {
        return placement;
    }

    @Override
    void settle(Surroundings surroundings) {
        air = surroundings.air(placement.at(), placement.height());
    }

    @Override
    void minute(long tick, SensorFaults faults) {
        truth = air.wind();
        turn(tick, faults.has(SensorFaults.Kind.WIND_SEIZED, this));
        window[next] = cups;
        next = next + 1 == window.length ? 0 : next + 1;
        filled = Math.min(filled + 1, window.length);
        shown = mean();
        boolean now = trips(shown, tripped, (tick - trippedAt) * MINUTE, placement);
        if (now && !tripped) {
            trippedAt = tick;
        }
        tripped = now;
        wireCut = faults.has(SensorFaults.Kind.WIRE_CUT, this);
    }

    private void turn(long tick, boolean seized) {
        if (seized) {
            cups = 0;
            return;
        }
        double driving = truth < THRESHOLD ? 0 : truth;
        double follow = Math.max(driving, THRESHOLD) * MINUTE / DISTANCE_CONSTANT;
        double still = cups + (driving - cups) * follow / (1 + follow);
        double error = driving == 0 ? 0 : (NOISE + NOISE_SHARE * still) * RandomStreams.noise(noise, tick);
        cups = Math.max(0, still + error);
    }

    /** Mean of the window in the order of its cells, so that copies sum alike. */
    private double mean() {
        double sum = 0;
        for (int i = 0; i < filled; i++) {
            sum += window[i];
        }
        return sum / filled;
    }

    @Override
    double truth() {
        return truth;
    }

    @Override
    WindSensor copy() {
        WindSensor other = carryTo(placement);
        other.window = window.clone();
        other.filled = filled;
        other.next = next;
        return other;
    }

    @Override
    Sensor reset(Placement other) {
        boolean stays = other instanceof Placement.Wind p
                && p.at().equals(placement.at())
                && p.mount() == placement.mount()
                && p.height() == placement.height();
        if (!stays) {
            return null;
        }
        Placement.Wind p = (Placement.Wind) other;
        WindSensor carried = carryTo(p);
        if (minutes(p) == window.length) {
            carried.window = window.clone();
            carried.filled = filled;
            carried.next = next;
        }
        return carried;
    }

    private WindSensor carryTo(Placement.Wind p) {
        WindSensor other = new WindSensor(p, noise);
        other.truth = truth;
        other.cups = cups;
        other.trippedAt = trippedAt;
        other.showAs(this);
        return other;
    }
}
