package provingyard.sensor;

import provingyard.numeric.RandomStreams;
import provingyard.setup.Placement;

/**
 * A flow sensor: a wheel that gives pulses.
 *
 * <p>frequency (1/s) = K (Q + offset) with the K and offset of its body ({@link FlowBody}), nothing below 0.1 m/s
 * through its bore. Where the pipe runs straight for less than 10 diameters before and 5 behind it, swirl biases Q by up
 * to 12 % and 8 % (linear in what is missing; whether it reads high or low is drawn for the place) and adds noise:
 * straight lengths from memory, sizes common practice, no source. Noise of 0.5 % otherwise. Pulses are counted whole
 * each minute, the fraction is carried on. The controller shows Q = frequency / K - offset with what was typed into it.
 * A body of another size than its pipe has all the water pass its own bore: a large one is blind to more.
 */
public final class FlowSensor extends Sensor {

    private static final double STRAIGHT_BEFORE = 10;
    private static final double STRAIGHT_BEHIND = 5;
    private static final double BIAS_BEFORE = 0.12;
    private static final double BIAS_BEHIND = 0.08;
    private static final double NOISE = 0.005;
    private static final double NOISE_BY_SWIRL = 0.02;
    private static final double MINUTE = 60;
    private static final double LITRES = 1000;

    private final Placement.Flow placement;
    private final FlowBody body;
    private final long noise;
    private final long siting;
    private Surroundings.Pipe pipe;
    private double bias;
    private double swirl;
    private double truth;
    private double carried;

    FlowSensor(Placement.Flow placement, RandomStreams streams) {
        this(placement, key(streams, placement, "noise"), key(streams, placement, "siting"));
    }

    private FlowSensor(Placement.Flow placement, long noise, long siting) {
        super(placement);
        this.placement = placement;
        this.noise = noise;
        this.siting = siting;
        body = FlowBody.of(placement.size());
    }

    /** Flow in m3/s that a placed sensor cannot see: what moves slower than its lowest velocity. */
    public static double cannotSeeBelow(Placement.Flow placement) {
        return FlowBody.of(placement.size()).cannotSeeBelow();
    }

    /**
     * Largest share by which too little straight pipe makes it read wrong, 0 with enough.
     *
     * @param pipe straight lengths and inner diameter
     */
    public static double sitingError(Surroundings.StraightPipe pipe) {
        return BIAS_BEFORE * missing(pipe.upstream(), STRAIGHT_BEFORE * pipe.inner())
                + BIAS_BEHIND * missing(pipe.downstream(), STRAIGHT_BEHIND * pipe.inner());
    }

    private static double missing(double has, double needs) {
        return needs <= 0 ? 0 : Math.max(0, Math.min(1, 1 - has / needs));
    }

    @Override
    Placement placement() {
        return placement;
    }

    @Override
    void settle(Surroundings surroundings) {
        pipe = surroundings.pipe(placement.on(), placement.along());
        double error = sitingError(pipe.straight());
        bias = RandomStreams.uniform(siting, 0) < 0.5 ? -error : error;
        swirl = error / (BIAS_BEFORE + BIAS_BEHIND);
    }

    @Override
    void minute(long tick, SensorFaults faults) {
        truth = pipe.flow();
        wireCut = faults.has(SensorFaults.Kind.WIRE_CUT, this);
        boolean turns = Math.abs(truth) >= body.cannotSeeBelow() && !faults.has(SensorFaults.Kind.FLOW_JAMMED, this);
        double exact = turns ? exactPulses(tick) + carried : carried;
        int whole = (int) Math.floor(exact);
        carried = exact - whole;
        pulses = wireCut ? 0 : whole;
        boolean wrongFactor = faults.has(SensorFaults.Kind.FLOW_FACTOR_WRONG, this);
        shown = wrongFactor ? shown() * faults.amount(SensorFaults.Kind.FLOW_FACTOR_WRONG, this) : shown();
    }

    /** Pulses of this minute before they are counted. */
    private double exactPulses(long tick) {
        double error = bias + (NOISE + NOISE_BY_SWIRL * swirl) * RandomStreams.noise(noise, tick);
        double seen = Math.max(0, Math.abs(truth) * (1 + error) + body.offset());
        return body.pulses() * LITRES * seen * MINUTE;
    }

    private double shown() {
        if (pulses == 0 || placement.pulses() <= 0) {
            return 0;
        }
        return Math.max(0, pulses / MINUTE / (placement.pulses() * LITRES) - placement.offset());
    }

    @Override
    double truth() {
        return truth;
    }

    @Override
    FlowSensor copy() {
        return carryTo(placement);
    }

    @Override
    Sensor reset(Placement next) {
        boolean stays = next instanceof Placement.Flow p
                && p.on().equals(placement.on())
                && p.along() == placement.along()
                && p.size() == placement.size();
        return stays ? carryTo((Placement.Flow) next) : null;
    }

    private FlowSensor carryTo(Placement.Flow next) {
        FlowSensor other = new FlowSensor(next, noise, siting);
        other.truth = truth;
        other.carried = carried;
        other.showAs(this);
        return other;
    }
}
