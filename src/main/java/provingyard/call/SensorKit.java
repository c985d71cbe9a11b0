package provingyard.call;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import provingyard.call.FieldTest.Measure;
import provingyard.call.FieldTest.Quantity;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Action.Leg;
import provingyard.diagnosis.Instrument;
import provingyard.diagnosis.SiteState;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.season.Exposure;
import provingyard.season.SensorTroubles;
import provingyard.sensor.Readings;
import provingyard.sensor.SensorFaults;
import provingyard.sensor.Sensors;
import provingyard.setup.FlowWatch;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.world.hydraulics.WaterFlows;

/**
 * Tests of the controller's memory and of the sensors that are installed, by the season's own sensors, controller and
 * pipes; and the request for a licensed tester of the backflow assembly, which is no test. All minutes and accuracies are
 * common practice, no source.
 *
 * <ul>
 *   <li>{@link #RECORDS}: {@link LastDays}.
 *   <li>{@link #BYPASS}: the circuit says which valves are drawn with the sensors' loop bridged, the pipes whether the
 *       zone's water is seen.
 *   <li>{@link #WET}: a sensor of this make, dry at first, gets twice its set point of water in four minutes. What a rain
 *       before the call may have left in it is not looked at: calls are for dry days.
 *   <li>{@link #SPIN}: its cups are turned as by a wind of 5 m/s for as long as it averages.
 *   <li>{@link #FREEZE}, {@link #CORE}: the sensors live the last two hours before the arrival with the case's troubles,
 *       in the sun, wind and soil of the season; shown is compared with the truth at their place, over five minutes.
 *   <li>{@link #FLOW}: the sensor counts for five minutes what the pipes say, the meter's flow is the pipes' at the meter;
 *       0 where the meter stands still.
 * </ul>
 */
final class SensorKit implements TestKit {

    static final String RECORDS = "readRecords";
    static final String BYPASS = "bypassSensors";
    static final String WET = "wetRainSensor";
    static final String FREEZE = "compareFreeze";
    static final String SPIN = "spinCups";
    static final String CORE = "soilCore";
    static final String FLOW = "compareFlow";
    static final String TESTER = "orderBackflowTester";

    /** Answers of {@link #WET}, in order. */
    static final List<String> TRIPS = List.of("trips", "doesNotTrip", "alreadyTripped");

    /** Answers of {@link #SPIN}, in order. */
    static final List<String> TURNS = List.of("turns", "stuck");

    private static final int WETTING = 4;
    private static final int COMPARED = 5;
    private static final int SETTLING = 120;
    private static final double WATER_OVER_SET_POINT = 2;
    private static final double SPUN = 5;
    private static final double MINUTE = 60;

    /** m3/s under which a meter is said to stand still: 0.06 L/min. */
    private static final double STILL = 1e-6;

    private static final Instrument THERMOMETER = new Instrument(0.5, 0, 0.1, -20, 20);
    private static final Instrument SCALE = new Instrument(0.03, 0, 0.005, -0.6, 0.6);
    private static final Instrument METER = new Instrument(0.015, 0, 0.005, 0, 3);

    private final Ground ground;
    private final LastDays days;
    private final List<FieldTest> tests;
    private final Map<SensorFaults, Map<String, Double>> offs = new ConcurrentHashMap<>();

    SensorKit(Ground ground) {
        this.ground = ground;
        days = ground.days();
        tests = all();
    }

    private List<FieldTest> all() {
        List<FieldTest> all = new ArrayList<>();
        List<String> answers =
                Stream.of(LastDays.Answer.values()).map(LastDays.Answer::key).toList();
        all.add(test(RECORDS, "", CallSite.CONTROLLER, 4, Tool.RECORDS, new Measure.Answers(answers)));
        all.add(bypass());
        ground.installed().sensors().forEach(s -> ofSensor(s).ifPresent(all::add));
        fitting(FittingKind.BACKFLOW_PREVENTER).ifPresent(f -> all.add(tester(f)));
        return List.copyOf(all);
    }

    private FieldTest test(String kind, String target, String place, double minutes, Tool tool, Measure measure) {
        List<Leg> legs = List.of(new Leg(place, minutes, Map.of()));
        return FieldTest.plain(kind, target, ground.places().get(place), tool, legs, measure, null);
    }

    /** The switch is on from the first leg on, until it is put back. */
    private FieldTest bypass() {
        List<Leg> legs = new ArrayList<>(ground.allOpen(false));
        legs.add(new Leg(CallSite.CONTROLLER, 1, Map.of(Handled.BYPASS, Handled.ON)));
        legs.add(new Leg(CallSite.CONTROLLER, 1, Map.of()));
        return FieldTest.plain(
                BYPASS,
                "",
                ground.places().get(CallSite.CONTROLLER),
                Tool.SENSOR_CHECK,
                legs,
                new Measure.Answers(ElectricKit.RUNS),
                zone());
    }

    private FieldTest tester(Fitting backflow) {
        Leg leg = new Leg(CallSite.CONTROLLER, 3, Map.of("tester", "asked"));
        Action action = new Action(TESTER, Action.Kind.REQUEST, List.of(leg), Map.of(), null, null, Set.of());
        return new FieldTest(TESTER, "", ground.places().get(backflow.id()), Tool.REQUEST, action, null, null);
    }

    private Optional<FieldTest> ofSensor(Placement sensor) {
        String id = sensor.id();
        return switch (sensor.kind()) {
            case RAIN -> Optional.of(test(WET, id, id, 4, Tool.SENSOR_CHECK, new Measure.Answers(TRIPS)));
            case WIND -> Optional.of(test(SPIN, id, id, 3, Tool.SENSOR_CHECK, new Measure.Answers(TURNS)));
            case FREEZE ->
                Optional.of(test(FREEZE, id, id, 5, Tool.SENSOR_CHECK, number(Quantity.KELVIN, THERMOMETER)));
            case SOIL -> Optional.of(test(CORE, id, id, 10, Tool.SENSOR_CHECK, number(Quantity.SHARE, SCALE)));
            case FLOW -> fitting(FittingKind.METER).flatMap(meter -> compareFlow((Placement.Flow) sensor, meter));
        };
    }

    /** The zone is started at the controller, the meter is watched where it is; not where no zone's water passes. */
    private Optional<FieldTest> compareFlow(Placement.Flow sensor, Fitting meter) {
        List<Leg> legs = new ArrayList<>(ground.allOpen(false));
        legs.add(new Leg(CallSite.CONTROLLER, 1, Map.of()));
        legs.add(new Leg(meter.id(), 6, Map.of()));
        Measure share = number(Quantity.SHARE, METER);
        String zone = ground.pipes().zones().stream()
                .max(Comparator.comparingDouble(z -> passing(sensor, z)))
                .orElseThrow();
        return passing(sensor, zone) < STILL
                ? Optional.empty()
                : Optional.of(FieldTest.plain(
                        FLOW, sensor.id(), ground.places().get(meter.id()), Tool.METER, legs, share, zone));
    }

    /** m3/s that pass a flow sensor on a sound site while a zone runs. */
    private double passing(Placement.Flow sensor, String zone) {
        SiteState found = SiteState.at(CallSite.CONTROLLER, Map.of());
        return Math.abs(ground.running(zone, found, Case.SOUND).at(sensor.on(), sensor.along()));
    }

    private static Measure number(Quantity quantity, Instrument instrument) {
        return new Measure.Number(quantity, instrument, 0);
    }

    /** The zone with the most heads, the first of equals: what takes much is measured best. */
    private String zone() {
        List<Plumbing.Head> heads = ground.scenario().plumbing().heads();
        // The first of equals stays.
        return ground.pipes().zones().stream()
                .min(Comparator.comparingLong(
                        z -> -heads.stream().filter(h -> h.zone().equals(z)).count()))
                .orElseThrow();
    }

    private Optional<Fitting> fitting(FittingKind kind) {
        return ground.scenario().plumbing().fittings().stream()
                .filter(f -> f.kind() == kind)
                .findFirst();
    }

    @Override
    public List<FieldTest> tests() {
        return tests;
    }

    @Override
    public Expected expected(FieldTest test, SiteState state, Case wrong) {
        return switch (test.kind()) {
            case RECORDS -> days.odds(wrong);
            case BYPASS -> sure(bypassed(test.runs(), state, wrong) ? 0 : 1, ElectricKit.RUNS);
            case WET -> sure(wetted(test.target(), wrong), TRIPS);
            case SPIN -> sure(spun(test.target(), wrong) ? 0 : 1, TURNS);
            case FREEZE, CORE -> new Expected.Number(off(test.target(), wrong));
            case FLOW -> new Expected.Number(overMeter(test, state, wrong));
            default -> throw new IllegalArgumentException(test.kind() + " reads nothing");
        };
    }

    private static Expected sure(int answer, List<String> of) {
        return Expected.Odds.sure(answer, of.size());
    }

    private boolean bypassed(String zone, SiteState state, Case wrong) {
        return ground.isSeen(zone, ground.running(zone, state, wrong));
    }

    private SensorFaults troubles(Case wrong) {
        List<FaultPlan> plans = wrong.faults().stream().map(ground::fault).toList();
        return SensorTroubles.of(plans);
    }

    /** One installed sensor alone, which has seen nothing yet. */
    private Sensors alone(String id) {
        Placement placement = ground.installed().sensor(id).orElseThrow();
        SetUp only = new SetUp(List.of(placement), List.of(), FlowWatch.OFF, null);
        return Sensors.of(ground.scenario(), only, streams());
    }

    private RandomStreams streams() {
        return new RandomStreams(ground.scenario().season().seed());
    }

    private int wetted(String id, Case wrong) {
        Placement.Rain rain = (Placement.Rain) ground.installed().sensor(id).orElseThrow();
        Sensors sensor = alone(id);
        SensorFaults troubles = troubles(wrong);
        if (sensor.minute(0, new ByHand(0, 0, null, null), troubles)
                .all()
                .get(0)
                .tripped()) {
            return TRIPS.indexOf("alreadyTripped");
        }
        ByHand pouring = new ByHand(WATER_OVER_SET_POINT * rain.trip() / WETTING, 0, null, null);
        Readings last = Readings.NONE;
        for (int tick = 1; tick <= WETTING; tick++) {
            last = sensor.minute(tick, pouring, troubles);
        }
        return last.all().get(0).tripped() ? TRIPS.indexOf("trips") : TRIPS.indexOf("doesNotTrip");
    }

    private boolean spun(String id, Case wrong) {
        Placement.Wind wind = (Placement.Wind) ground.installed().sensor(id).orElseThrow();
        Sensors sensor = alone(id);
        ByHand spinning = new ByHand(0, SPUN, null, null);
        Readings last = Readings.NONE;
        for (int tick = 0; tick <= wind.averaging() / MINUTE; tick++) {
            last = sensor.minute(tick, spinning, troubles(wrong));
        }
        return last.all().get(0).shown() > SPUN / 2;
    }

    /** Shown minus true at the arrival, in the unit of the reading. */
    private double off(String id, Case wrong) {
        return offs.computeIfAbsent(troubles(wrong), this::offs).get(id);
    }

    private Map<String, Double> offs(SensorFaults troubles) {
        Exposure exposure = days.exposure();
        Exposure.Again around = exposure.again(ground.pipes());
        Sensors sensors = Sensors.of(ground.scenario(), ground.installed(), streams());
        Map<String, Double> sums = new HashMap<>();
        for (long tick = Math.max(exposure.from(), exposure.until() - SETTLING); tick < exposure.until(); tick++) {
            around.go(tick, null);
            Readings shown = sensors.minute(tick, around, troubles);
            if (tick >= exposure.until() - COMPARED) {
                shown.all()
                        .forEach(r -> sums.merge(
                                r.id(), (r.shown() - sensors.truth(r.id()).orElseThrow()) / COMPARED, Double::sum));
            }
        }
        return sums;
    }

    /** Flow that a sensor shows over the meter's while a zone runs. */
    private double overMeter(FieldTest test, SiteState state, Case wrong) {
        WaterFlows flows = ground.running(test.runs(), state, wrong);
        Fitting meter = fitting(FittingKind.METER).orElseThrow();
        double metered = flows.at(meter.on(), meter.along());
        if (metered < STILL) {
            return 0;
        }
        Sensors sensor = alone(test.target());
        ByHand flowing = new ByHand(0, 0, flows, ground.pipes());
        double sum = 0;
        for (int tick = 0; tick < COMPARED; tick++) {
            sum += sensor.minute(tick, flowing, troubles(wrong)).all().get(0).shown();
        }
        return sum / COMPARED / metered;
    }
}
