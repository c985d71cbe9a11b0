package provingyard.sensor;

import provingyard.numeric.RandomStreams;
import provingyard.scenario.Catalogue;
import provingyard.setup.Placement;
import provingyard.world.ground.Dielectric;

/**
 * A soil moisture sensor: it measures the soil's permittivity and turns it into water by a calibration.
 *
 * <p>Standard curve: Topp, Davis and Annan 1980 (Water Resour. Res. 16:574). Fine soils bind water that the curve does
 * not see, coarse ones none: a soil's shift is 0.2 (wilting point - 0.12) as a volume share, so the reading is right
 * with its soil set and off by some hundredths with another (form and size common practice, no source; the curve's own
 * standard error is 0.013). A void beside the probe mixes air in by the refractive index model: root of permittivity =
 * (1 - g) root of the soil's + g. The probe is read every ten minutes with noise of 0.15 in permittivity (common
 * practice, no source).
 *
 * <p>Wet (tripped) at the wet point and over; it stays so until 0.005 under it, so that noise does not chatter. Dry at
 * the dry point and under; it stays so until it was wet.
 */
public final class SoilSensor extends Sensor {

    /** Radius in m over which the probe averages (common practice, no source). */
    public static final double SUPPORT = 0.12;

    /** Usual depth in m: the active root zone of turf (common practice, no source). */
    public static final double USUAL_DEPTH = 0.1;

    private static final double BOUND_WATER = 0.2;
    private static final double UNSHIFTED_WILTING_POINT = 0.12;
    private static final double USUAL_VOID = 0.25;
    private static final double NOISE = 0.15;
    private static final double CHATTER = 0.005;
    private static final int EVERY = 10;

    private final Placement.Soil placement;
    private final Catalogue catalogue;
    private final long noise;
    private Surroundings.Soil soil;
    private double soilShift;
    private double truth;
    private boolean read;

    SoilSensor(Placement.Soil placement, Catalogue catalogue, RandomStreams streams) {
        this(placement, catalogue, key(streams, placement, "noise"));
    }

    private SoilSensor(Placement.Soil placement, Catalogue catalogue, long noise) {
        super(placement);
        this.placement = placement;
        this.catalogue = catalogue;
        this.noise = noise;
    }

    /** Volume share of water of a mineral soil of a permittivity (Topp et al. 1980). */
    public static double topp(double permittivity) {
        return Dielectric.waterContent(permittivity);
    }

    /** Permittivity at which {@link #topp} gives a volume share: five Newton steps from its authors' inverse curve. */
    static double permittivity(double water) {
        double k = 3.03 + water * (9.3 + water * (146 - water * 76.7));
        for (int i = 0; i < 5; i++) {
            k -= (topp(k) - water) / (2.92e-2 + k * (-1.1e-3 + k * 1.29e-5));
        }
        return Math.max(1, k);
    }

    /** Volume share by which the standard curve reads low in a soil. */
    static double shift(double wiltingPoint) {
        return BOUND_WATER * (wiltingPoint - UNSHIFTED_WILTING_POINT);
    }

    private double shiftOf(String soil) {
        for (Catalogue.Soil known : catalogue.soils()) {
            if (known.id().equals(soil)) {
                return shift(known.wiltingPoint());
            }
        }
        return 0;
    }

    @Override
    Placement placement() {
        return placement;
    }

    @Override
    void settle(Surroundings surroundings) {
        soil = surroundings.soil(placement.at(), placement.depth(), SUPPORT);
        soilShift = shiftOf(soil.id());
    }

    @Override
    void minute(long tick, SensorFaults faults) {
        wireCut = faults.has(SensorFaults.Kind.WIRE_CUT, this);
        if (read && tick % EVERY != 0) {
            return;
        }
        read = true;
        truth = soil.water();
        shown = shown(tick, faults);
        tripped = tripped ? shown > placement.wet() - CHATTER : shown >= placement.wet();
        dry = shown <= placement.dry() || dry && !tripped;
    }

    private double shown(long tick, SensorFaults faults) {
        double seen = permittivity(truth - soilShift);
        if (faults.has(SensorFaults.Kind.SOIL_VOID, this)) {
            double amount = faults.amount(SensorFaults.Kind.SOIL_VOID, this);
            double share = amount > 0 ? Math.min(1, amount) : USUAL_VOID;
            double index = (1 - share) * Math.sqrt(seen) + share;
            seen = index * index;
        }
        double noisy = Math.max(1, seen + NOISE * RandomStreams.noise(noise, tick));
        return Math.max(0, topp(noisy) + shiftOf(placement.soil()));
    }

    @Override
    double truth() {
        return truth;
    }

    @Override
    SoilSensor copy() {
        return carryTo(placement);
    }

    @Override
    Sensor reset(Placement next) {
        boolean stays =
                next instanceof Placement.Soil p && p.at().equals(placement.at()) && p.depth() == placement.depth();
        return stays ? carryTo((Placement.Soil) next) : null;
    }

    private SoilSensor carryTo(Placement.Soil next) {
        SoilSensor other = new SoilSensor(next, catalogue, noise);
        other.truth = truth;
        other.read = read;
        other.showAs(this);
        return other;
    }
}
