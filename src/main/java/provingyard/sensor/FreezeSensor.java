package provingyard.sensor;

import provingyard.numeric.RandomStreams;
import provingyard.setup.Mount;
import provingyard.setup.Placement;

/**
 * A freeze sensor: a small body that follows the air.
 *
 * <p>The body's temperature B follows the air T and the sun on it: dB/dt = (T + R - B) / tau, one backward Euler step a
 * minute. tau = 15 min / (1 + sqrt(v)) with the wind v in m/s: forced convection grows with the root of speed; 15 min
 * is common practice, no source. Radiation error R = 0.006 K m2/W x mount x sun / (1 + v): 4.8 K in 800 W/m2 and still
 * air for a small housing without shield, more where the mount itself warms (common practice, no source). The reading
 * is B + unit offset (uniform within 0.5 K, drawn per unit) + noise of 0.1 K (common practice, no source).
 */
public final class FreezeSensor extends Sensor {

    /** Usual trip in °C: 3 °C, about 37 °F (common practice, no source). */
    public static final double USUAL_BELOW = 3;

    /** Usual re-arm in °C (common practice, no source). */
    public static final double USUAL_REARM = 4;

    private static final double TIME_CONSTANT = 900;
    private static final double SUN_WARMING = 0.006;
    private static final double UNIT_OFFSET = 0.5;
    private static final double NOISE = 0.1;
    private static final double MINUTE = 60;

    private final Placement.Freeze placement;
    private final long noise;
    private final double offset;
    private final double sunWarming;
    private Surroundings.Air air;
    private double truth;
    private double body = Double.NaN;

    FreezeSensor(Placement.Freeze placement, RandomStreams streams) {
        this(placement, key(streams, placement, "noise"), offset(key(streams, placement, "unit")));
    }

    private FreezeSensor(Placement.Freeze placement, long noise, double offset) {
        super(placement);
        this.placement = placement;
        this.noise = noise;
        this.offset = offset;
        sunWarming = SUN_WARMING * mountWarming(placement.mount());
    }

    /** Offset of a unit in K. */
    static double offset(long key) {
        return UNIT_OFFSET * (2 * RandomStreams.uniform(key, 0) - 1);
    }

    /** Time in s in which the body covers 63 % of a step in air that moves at a speed in m/s. */
    static double timeConstant(double wind) {
        return TIME_CONSTANT / (1 + Math.sqrt(Math.max(0, wind)));
    }

    /** How much the mount adds to the sun's warming: what is behind the housing warms too. */
    static double mountWarming(Mount mount) {
        return switch (mount) {
            case POST -> 1;
            case BRANCH -> 0.8;
            case FENCE -> 1.1;
            case WALL, ROOF_EDGE -> 1.3;
        };
    }

    /** Whether a temperature in °C is tripped, given whether it was. */
    static boolean trips(double temperature, boolean was, Placement.Freeze p) {
        return was ? temperature < p.rearm() : temperature < p.below();
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
        truth = air.temperature();
        double wind = Math.max(0, air.wind());
        double sun = Math.max(0, air.sun());
        double toward = truth + sunWarming * sun / (1 + wind);
        double follow = MINUTE / timeConstant(wind);
        body = Double.isNaN(body) ? toward : body + (toward - body) * follow / (1 + follow);
        double warm = faults.amount(SensorFaults.Kind.FREEZE_READS_WARM, this);
        shown = body + offset + warm + NOISE * RandomStreams.noise(noise, tick);
        tripped = trips(shown, tripped, placement);
        wireCut = faults.has(SensorFaults.Kind.WIRE_CUT, this);
    }

    @Override
    double truth() {
        return truth;
    }

    @Override
    FreezeSensor copy() {
        return carryTo(placement);
    }

    @Override
    Sensor reset(Placement next) {
        boolean stays = next instanceof Placement.Freeze p
                && p.at().equals(placement.at())
                && p.mount() == placement.mount()
                && p.height() == placement.height();
        return stays ? carryTo((Placement.Freeze) next) : null;
    }

    private FreezeSensor carryTo(Placement.Freeze next) {
        FreezeSensor other = new FreezeSensor(next, noise, offset);
        other.truth = truth;
        other.body = body;
        other.showAs(this);
        return other;
    }
}
