package provingyard.call;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import provingyard.call.FieldTest.Measure;
import provingyard.call.FieldTest.Quantity;
import provingyard.diagnosis.Action.Leg;
import provingyard.diagnosis.Instrument;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.world.hydraulics.ClosedSection;
import provingyard.world.hydraulics.Hands;
import provingyard.world.hydraulics.WaterFlows;

/**
 * Pressure decay: the main, or a section of it between shut valves, is cut off under pressure and a gauge on it watched for ten
 * minutes. A leak within lets the pressure fall, one outside does not ({@link ClosedSection} has the law); since pipe and water
 * give little, leaks empty it long before the ten minutes are over. Minutes and accuracies are common practice, no source.
 */
final class DecayKit implements TestKit {

    /** The whole main behind the meter's stop. */
    static final String WHOLE = "pressureDecay";

    /** What lies beyond a valve, up to the next ones. */
    static final String SECTION = "sectionDecay";

    private static final double CONNECT = 2;
    private static final double WATCH = 10;
    private static final double MINUTE = 60;
    private static final double KPA_A_MINUTE = 1e3 / MINUTE;

    /**
     * A gauge against a watch: half a kPa a minute for its reading at both ends and for what sun and cold water do to the pipe
     * meanwhile; a fifth of the fall for the air in the pipe, which nobody knows.
     */
    private static final Instrument GAUGE =
            new Instrument(0.5 * KPA_A_MINUTE, 0.2, 0.2 * KPA_A_MINUTE, 0, 10e3 * KPA_A_MINUTE);

    /** Metres beyond a fitting at which its test port sits. */
    private static final double PORT = 0.05;

    /** Metres before a zone valve at which what passes it leaves the main. */
    private static final double BEFORE = 0.01;

    /** Exponent of what flows through an opening that stays as it is. */
    private static final double ORIFICE = 0.5;

    /** A section with the gauge on it. */
    private record Watched(Fitting port, ClosedSection section) {}

    /** Where water is lost, by which law. */
    private record Spot(String pipe, double along, double exponent) {}

    private final Ground ground;
    private final Map<FieldTest, Watched> tests = new LinkedHashMap<>();

    DecayKit(Ground ground) {
        this.ground = ground;
        Set<String> stop = Set.of(ground.meter());
        add(WHOLE, "", watched(first(), stop));
        Set<String> shut = new LinkedHashSet<>(stop);
        ground.fittings(FittingKind.ISOLATION_VALVE).forEach(f -> shut.add(f.id()));
        if (shut.size() > 1) {
            add(SECTION, ground.pointOfConnection(), watched(first(), shut));
            ground.fittings(FittingKind.ISOLATION_VALVE).stream()
                    .filter(f -> ground.pipes().mainline().contains(f.on()))
                    .forEach(f -> section(f, shut));
        }
    }

    /** Where the gauge of the whole main sits: beyond its regulator, or else at the point of connection. */
    private Fitting first() {
        return ground.fittings(FittingKind.REGULATOR).stream()
                .filter(f -> ground.pipes().mainline().contains(f.on()))
                .findFirst()
                .orElseGet(() -> fitting(ground.pointOfConnection()).orElseThrow());
    }

    private Optional<Fitting> fitting(String id) {
        return ground.scenario().plumbing().fittings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst();
    }

    private Watched watched(Fitting port, Set<String> shut) {
        return new Watched(port, ground.pipes().closed(port.on(), port.along() + PORT, shut));
    }

    /** On a ring two valves may lead into the same section: one of them is enough. */
    private void section(Fitting valve, Set<String> shut) {
        boolean known = tests.entrySet().stream()
                .anyMatch(e -> e.getKey().kind().equals(SECTION)
                        && e.getValue().section().holds(valve.on(), valve.along() + PORT));
        if (!known) {
            add(SECTION, valve.id(), watched(valve, shut));
        }
    }

    private void add(String kind, String target, Watched watched) {
        Set<String> shut = toShut(watched.section());
        List<Leg> legs = new ArrayList<>();
        for (Leg leg : ground.allOpen(true)) {
            if (!shut.contains(leg.place())) {
                legs.add(leg);
            }
        }
        shut.forEach(id -> legs.add(new Leg(id, Ground.TURN, Map.of(Handled.valve(id), Handled.SHUT))));
        legs.add(new Leg(watched.port().id(), CONNECT + WATCH, Map.of()));
        Measure measure = new Measure.Number(Quantity.PRESSURE_RATE, GAUGE, 0);
        var at = ground.places().get(watched.port().id());
        tests.put(FieldTest.plain(kind, target, at, Tool.GAUGE, legs, measure, null), watched);
    }

    /** The isolation valves at its ends; the meter's stop as well where it is fed through something else. */
    private Set<String> toShut(ClosedSection section) {
        Set<String> shut = new LinkedHashSet<>();
        boolean fed = false;
        for (String end : section.boundary()) {
            FittingKind kind = fitting(end).orElseThrow().kind();
            if (kind == FittingKind.ISOLATION_VALVE) {
                shut.add(end);
            } else {
                fed |= kind != FittingKind.ZONE_VALVE;
            }
        }
        if (fed) {
            shut.add(ground.meter());
        }
        return shut;
    }

    @Override
    public List<FieldTest> tests() {
        return List.copyOf(tests.keySet());
    }

    @Override
    public Expected expected(FieldTest test, SiteState state, Case wrong) {
        Watched watched = tests.get(test);
        WaterFlows before = beforeShut(state, wrong);
        WaterFlows still = beforeShut(state, Case.SOUND);
        double start = atGauge(watched, before);
        List<ClosedSection.Loss> losses = wrong.faults().stream()
                .flatMap(f -> loss(f, watched, before, still).stream())
                .toList();
        double fall = Double.isNaN(start) ? 0 : watched.section().fall(start, losses, WATCH * MINUTE);
        return new Expected.Number(Math.min(fall, GAUGE.high()));
    }

    /** What flows at rest before the last valves are shut. */
    private WaterFlows beforeShut(SiteState state, Case wrong) {
        boolean[] none = new boolean[ground.pipes().zones().size()];
        Hands hands = Hands.of(ground.hands(state).opened(), List.of());
        return ground.pipes().flows(none, ground.pipes().masterOpenAtRest(), hands, wrong.faults());
    }

    /** What a fault loses in a section: a leak at its place, a valve that does not hold at its own. */
    private Optional<ClosedSection.Loss> loss(int fault, Watched watched, WaterFlows before, WaterFlows still) {
        FaultPlan plan = ground.fault(fault);
        Optional<Spot> spot =
                switch (plan.kind()) {
                    case MAINLINE_BREAK, MAINLINE_LEAK, LATERAL_BREAK ->
                        Optional.of(new Spot(plan.on(), plan.along(), plan.leakExponent()));
                    case VALVE_STUCK_OPEN, VALVE_WEEPS ->
                        fitting(plan.on()).map(v -> new Spot(v.on(), v.along() - BEFORE, ORIFICE));
                    default -> Optional.empty();
                };
        return spot.filter(s -> watched.section().holds(s.pipe(), s.along()))
                .map(s -> new ClosedSection.Loss(
                        before.lost(fault),
                        before.pressureAt(s.pipe(), s.along()),
                        s.exponent(),
                        still.pressureAt(s.pipe(), s.along()) - atGauge(watched, still)))
                .filter(l -> l.flow() > 0 && l.pressure() > 0);
    }

    private static double atGauge(Watched watched, WaterFlows flows) {
        return flows.pressureAt(watched.port().on(), watched.port().along() + PORT);
    }
}
