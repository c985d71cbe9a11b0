package provingyard.sensor;

import java.util.List;
import provingyard.numeric.Deterministic;
import provingyard.numeric.RandomStreams;
import provingyard.setup.Placement;

/**
 * A rain sensor: an element that swells with the water it holds and opens a contact.
 *
 * <p>Held water h (m): each minute h = min(C, h + rain + spray), then h = max(0, h - beta(vent) e s / s0), where e is the
 * evaporation (m) that the place allows in the minute, s the set point, s0 = 6.35 mm, and C = 1.5 s the capacity. The
 * set point says how much rain moves the contact, not how fast the element dries: what dries in a day is a share of its
 * swelling, the same at every set point, so that a lower set point holds back more, as in trials of expanding disks
 * (University of Florida, 2008, from memory). It trips when h is at its unit's trip depth s f or over, and re-arms at
 * 0.8 of that. f is lognormal (median 0.55, sigma 0.45, clipped to 0.2 to 1.3), drawn once per unit: the mean and spread
 * of ln(depth / set point) of the six configurations with a set point in a five-year field evaluation of rain sensors
 * (University of Florida, abstract: 1.9 at 3; 1.6, 3.8, 4.3, 5.8 at 6; 6.6 at 13 mm) are -0.59 and 0.43. Capacity and
 * re-arm share: common practice, no source; beta near 1.25 with that capacity gives the savings that field trials
 * published (McCready, Dukes and Miller 2009), and others that were not used to choose it: shared/model.md.
 */
public final class RainSensor extends Sensor {

    /** Set points in m that are usual: 1/8, 1/4 and 1/2 in (common practice, no source). */
    public static final List<Double> USUAL_SET_POINTS = List.of(0.003175, 0.00635, 0.0127);

    /** Water held when full, as a multiple of the set point. */
    public static final double CAPACITY = 1.5;

    /** Re-arms when no more than this share of the trip depth is held. */
    public static final double REARM = 0.8;

    /** Median trip depth of real units as a share of their set point. */
    public static final double MEDIAN_UNIT = 0.55;

    /** Set point in m at which an element loses what its place evaporates times {@link #drying}. */
    private static final double REFERENCE_SET_POINT = 0.00635;

    private static final double UNIT_SPREAD = 0.45;
    private static final double LEAST_UNIT = 0.2;
    private static final double MOST_UNIT = 1.3;

    private final Placement.Rain placement;
    private final double unit;
    private Surroundings.Air air;
    private double held;
    private boolean swollen;

    RainSensor(Placement.Rain placement, RandomStreams streams) {
        this(placement, unit(key(streams, placement, "unit")));
    }

    private RainSensor(Placement.Rain placement, double unit) {
        super(placement);
        this.placement = placement;
        this.unit = unit;
    }

    /** Trip depth of a unit as a share of its set point. */
    static double unit(long key) {
        double factor = MEDIAN_UNIT * Deterministic.exp(UNIT_SPREAD * RandomStreams.gaussian(key, 0));
        return Math.max(LEAST_UNIT, Math.min(MOST_UNIT, factor));
    }

    /**
     * Drying as a multiple of the place's evaporation for a vent opening of 0 to 1: 0.5 shut, 1.25 half open, 3 open
     * (beta = 0.5 + 0.5 v + 2 v2; the range is common practice, no source).
     */
    public static double drying(double vent) {
        return 0.5 + 0.5 * vent + 2 * vent * vent;
    }

    /**
     * Days that a full element needs to dry out, whatever its set point.
     *
     * @param vent opening, 0 to 1
     * @param evaporation of the place in m per day
     */
    public static double daysToDry(double vent, double evaporation) {
        return CAPACITY * REFERENCE_SET_POINT / (drying(vent) * evaporation);
    }

    /** Days that a full element of a middle unit stays tripped; arguments as {@link #daysToDry}. */
    public static double daysTripped(double vent, double evaporation) {
        return (CAPACITY - REARM * MEDIAN_UNIT) * REFERENCE_SET_POINT / (drying(vent) * evaporation);
    }

    /** Water held after a time of catching and drying, all in m. */
    static double hold(double held, double caught, double evaporation, Placement.Rain p) {
        double full = Math.min(CAPACITY * p.trip(), held + caught);
        return Math.max(0, full - drying(p.vent()) * evaporation * (p.trip() / REFERENCE_SET_POINT));
    }

    /** Whether an element that holds so much is tripped, given whether it was. */
    static boolean trips(double held, double tripDepth, boolean was) {
        return was ? held > REARM * tripDepth : held >= tripDepth;
    }

    /** Depth in m at which this unit really trips. */
    public double tripDepth() {
        return unit * placement.trip();
    }

    @Override
    Placement placement() {
        return placement;
    }

    @Override
    void settle(Surroundings truth) {
        air = truth.air(placement.at(), placement.height());
    }

    @Override
    void minute(long tick, SensorFaults faults) {
        double caught = air.rain() + air.spray();
        if (held + caught > 0) {
            held = hold(held, caught, air.drying(), placement);
        }
        swollen = trips(held, tripDepth(), swollen);
        wireCut = faults.has(SensorFaults.Kind.WIRE_CUT, this);
        if (!faults.has(SensorFaults.Kind.RAIN_NO_RADIO, this)) {
            show(faults);
        }
    }

    private void show(SensorFaults faults) {
        if (faults.has(SensorFaults.Kind.RAIN_STUCK_WET, this)) {
            shown = CAPACITY * placement.trip();
            tripped = true;
        } else if (faults.has(SensorFaults.Kind.RAIN_STUCK_DRY, this)) {
            shown = 0;
            tripped = false;
        } else {
            shown = held;
            tripped = swollen;
        }
    }

    @Override
    double truth() {
        return held;
    }

    @Override
    RainSensor copy() {
        return carryTo(placement);
    }

    @Override
    Sensor reset(Placement next) {
        boolean stays = next instanceof Placement.Rain p
                && p.at().equals(placement.at())
                && p.mount() == placement.mount()
                && p.height() == placement.height();
        return stays ? carryTo((Placement.Rain) next) : null;
    }

    private RainSensor carryTo(Placement.Rain next) {
        RainSensor other = new RainSensor(next, unit);
        other.held = held;
        other.swollen = swollen;
        other.showAs(this);
        return other;
    }
}
