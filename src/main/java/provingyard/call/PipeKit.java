package provingyard.call;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import provingyard.call.FieldTest.Measure;
import provingyard.call.FieldTest.Quantity;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Instrument;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Plumbing.Head;
import provingyard.world.hydraulics.Hands;
import provingyard.world.hydraulics.WaterFlows;

/**
 * Tests with meter, gauge and valves. Each brings the valves into the state that it needs, so its minutes count what was
 * left shut before. Minutes and accuracies: common practice, no source; to read a meter with all uses off, wait and read
 * again is United States EPA WaterSense guidance.
 */
final class PipeKit implements TestKit {

    private static final double LITRE_A_MINUTE = 1e-3 / 60;

    /** A low-flow dial watched for two minutes. */
    static final Instrument WATCHED =
            new Instrument(0.5 * LITRE_A_MINUTE, 0, 0.1 * LITRE_A_MINUTE, 0, 400 * LITRE_A_MINUTE);

    /** The same over twenty minutes. */
    private static final Instrument WATCHED_LONG =
            new Instrument(0.05 * LITRE_A_MINUTE, 0, 0.05 * LITRE_A_MINUTE, 0, 400 * LITRE_A_MINUTE);

    /** A running zone's flow, timed at the meter. */
    private static final Instrument RUNNING =
            new Instrument(0.3 * LITRE_A_MINUTE, 0.03, 0.1 * LITRE_A_MINUTE, 0, 600 * LITRE_A_MINUTE);

    private static final Instrument CAUGHT = new Instrument(0.04, 0, 0.01, 0, 1);

    private static final Instrument GAUGE = new Instrument(10e3, 0, 2e3, 0, 1600e3);

    /** Drift of the supply's pressure from hour to hour, Pa. */
    private static final double SUPPLY_DRIFT = 10e3;

    /** Fittings of mains with a test port beyond them. */
    private static final List<FittingKind> GAUGED = List.of(
            FittingKind.FILTER, FittingKind.BACKFLOW_PREVENTER, FittingKind.REGULATOR, FittingKind.ISOLATION_VALVE);

    private static final double WATCH = 3;
    private static final double WATCH_LONG = 20;
    private static final double READ_AFTER_VALVE = 3;
    private static final double RUN = 4;
    private static final double RUN_BY_HAND = 5;
    private static final double CONNECT_GAUGE = 4;
    private static final double CANS = 20;

    /** Share of a zone's usual flow below which nobody would say that it runs. */
    private static final double RUNS = 0.1;

    private final Ground ground;
    private final Map<FieldTest, BiFunction<SiteState, Case, Expected>> tests = new LinkedHashMap<>();

    PipeKit(Ground ground) {
        this.ground = ground;
        meter();
        isolate();
        zones();
        pressures();
        masters();
        ground.pipes().zones().forEach(this::catchCans);
        putBack();
    }

    @Override
    public List<FieldTest> tests() {
        return List.copyOf(tests.keySet());
    }

    @Override
    public Expected expected(FieldTest test, SiteState state, Case wrong) {
        return tests.get(test).apply(state, wrong);
    }

    private void meter() {
        String meter = ground.meter();
        number("readMeter", "", Tool.METER, legs(true, meter, WATCH), flow(WATCHED), null, this::restFlow);
        number("watchMeter", "", Tool.METER, legs(true, meter, WATCH_LONG), flow(WATCHED_LONG), null, this::restFlow);
        for (Fitting master : ground.fittings(FittingKind.MASTER_VALVE)) {
            List<Action.Leg> legs = new ArrayList<>(ground.allOpen(false));
            legs.add(new Action.Leg(master.id(), Ground.TURN, Map.of(Handled.valve(master.id()), Handled.SHUT)));
            legs.add(new Action.Leg(meter, READ_AFTER_VALVE, Map.of()));
            number("shutMaster", master.id(), Tool.METER, legs, flow(WATCHED), null, this::restFlow);
        }
    }

    private void isolate() {
        for (Fitting valve : ground.fittings(FittingKind.ISOLATION_VALVE)) {
            if (valve.id().equals(ground.pointOfConnection())) {
                continue;
            }
            List<Action.Leg> legs = new ArrayList<>(ground.allOpen(true).stream()
                    .filter(l -> !l.place().equals(valve.id()))
                    .toList());
            legs.add(new Action.Leg(valve.id(), Ground.TURN, Map.of(Handled.valve(valve.id()), Handled.SHUT)));
            legs.add(new Action.Leg(ground.meter(), READ_AFTER_VALVE, Map.of()));
            add(
                    "isolate",
                    valve.id(),
                    valve.id(),
                    Tool.ISOLATE,
                    action("isolate", valve.id(), Action.Kind.SPLIT, legs, Set.of()),
                    flow(WATCHED),
                    null,
                    this::restFlow);
        }
    }

    private void zones() {
        for (String zone : ground.pipes().zones()) {
            List<Action.Leg> run = new ArrayList<>(ground.allOpen(false));
            run.add(new Action.Leg(CallSite.CONTROLLER, RUN, Map.of()));
            number(
                    "runZone",
                    zone,
                    Tool.RUN_ZONE,
                    run,
                    flow(RUNNING),
                    zone,
                    (state, wrong) -> new Expected.Number(
                            ground.running(zone, state, wrong).supply()));
            List<Action.Leg> byHand = new ArrayList<>(ground.allOpen(true));
            byHand.add(new Action.Leg(zone, RUN_BY_HAND, Map.of()));
            add(
                    FieldTest.OPEN_BY_HAND,
                    zone,
                    zone,
                    Tool.RUN_ZONE,
                    action(FieldTest.OPEN_BY_HAND, zone, Action.Kind.TEST, byHand, Set.of()),
                    new Measure.Answers(List.of("runs", "doesNotRun")),
                    zone,
                    (state, wrong) -> Expected.Odds.sure(runs(zone, ground.byHand(zone, state, wrong)) ? 0 : 1, 2));
        }
    }

    private boolean runs(String zone, WaterFlows now) {
        int z = ground.pipes().zones().indexOf(zone);
        double usual = ground.byHand(zone, SOUND_STATE, Case.SOUND).zones()[z];
        return now.zones()[z] > RUNS * usual;
    }

    private static final SiteState SOUND_STATE = SiteState.at(CallSite.CONTROLLER, Map.of());

    private void pressures() {
        String port = ground.pointOfConnection();
        number(
                "staticPressure",
                "",
                Tool.GAUGE,
                legs(true, port, CONNECT_GAUGE),
                gauge(),
                null,
                (state, wrong) -> pressure(ground.atRest(state, wrong), port));
        List<Fitting> ports = new ArrayList<>();
        for (FittingKind kind : GAUGED) {
            ports.addAll(ground.fittings(kind));
        }
        ports.forEach(this::flowingPressure);
        for (String zone : ground.pipes().zones()) {
            List<Head> heads = ground.scenario().plumbing().heads().stream()
                    .filter(h -> h.zone().equals(zone))
                    .toList();
            if (heads.isEmpty()) {
                continue;
            }
            Head last = heads.get(heads.size() - 1);
            List<Action.Leg> legs = new ArrayList<>(ground.allOpen(false));
            legs.add(new Action.Leg(last.id(), CONNECT_GAUGE, Map.of()));
            number(
                    "headPressure",
                    zone,
                    Tool.GAUGE,
                    legs,
                    gauge(),
                    zone,
                    (state, wrong) -> headPressure(ground.running(zone, state, wrong), last.id()));
        }
    }

    /** While its own zone runs, or on a main the last zone of the document. */
    private void flowingPressure(Fitting fitting) {
        String last = ground.pipes().zones().get(ground.pipes().zones().size() - 1);
        String zone = ground.pipes().laterals().entrySet().stream()
                .filter(e -> e.getValue().contains(fitting.on()))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(last);
        List<Action.Leg> legs = new ArrayList<>(ground.allOpen(false));
        legs.add(new Action.Leg(fitting.id(), CONNECT_GAUGE, Map.of()));
        number(
                "flowingPressure",
                fitting.id(),
                Tool.GAUGE,
                legs,
                gauge(),
                zone,
                (state, wrong) -> pressure(ground.running(zone, state, wrong), fitting.id()));
    }

    /** Whether a master valve holds, with a zone opened by hand behind it. */
    private void masters() {
        String zone = ground.pipes().zones().get(0);
        for (Fitting master : ground.fittings(FittingKind.MASTER_VALVE)) {
            List<Action.Leg> legs = new ArrayList<>(ground.allOpen(false));
            legs.add(new Action.Leg(master.id(), Ground.TURN, Map.of(Handled.valve(master.id()), Handled.SHUT)));
            legs.add(new Action.Leg(zone, RUN_BY_HAND, Map.of()));
            add(
                    "masterHolds",
                    master.id(),
                    zone,
                    Tool.ISOLATE,
                    action("masterHolds", master.id(), Action.Kind.TEST, legs, Set.of()),
                    new Measure.Answers(List.of("holds", "letsThrough")),
                    zone,
                    (state, wrong) -> Expected.Odds.sure(passes(master, zone, state, wrong) ? 1 : 0, 2));
        }
    }

    private boolean passes(Fitting master, String zone, SiteState state, Case wrong) {
        Hands now = ground.hands(state);
        List<String> opened = new ArrayList<>(now.opened());
        opened.remove(master.id());
        opened.add(zone);
        boolean[] none = new boolean[ground.pipes().zones().size()];
        WaterFlows flows = ground.pipes()
                .flows(none, ground.pipes().masterOpenAtRest(), Hands.of(opened, now.shut()), wrong.faults());
        int z = ground.pipes().zones().indexOf(zone);
        return flows.zones()[z]
                > RUNS * ground.byHand(zone, SOUND_STATE, Case.SOUND).zones()[z];
    }

    /**
     * Catch cans over a zone: what the driest quarter of its heads gives, over the mean, each in shares of what it should
     * give. Lower quarter over mean is the trade's distribution uniformity; by heads, not by cells, so that wind and
     * spacing do not come in.
     */
    private void catchCans(String zone) {
        List<Head> heads = ground.scenario().plumbing().heads();
        List<Integer> own = IntStream.range(0, heads.size())
                .filter(i -> heads.get(i).zone().equals(zone))
                .boxed()
                .toList();
        if (own.isEmpty()) {
            return;
        }
        List<Action.Leg> legs = new ArrayList<>(ground.allOpen(false));
        legs.add(new Action.Leg(zone, CANS, Map.of()));
        Measure measure = new Measure.Number(Quantity.SHARE, CAUGHT, 0);
        number(
                "catchCans",
                zone,
                Tool.RUN_ZONE,
                legs,
                measure,
                zone,
                (state, wrong) -> new Expected.Number(evenness(own, ground.running(zone, state, wrong), zone)));
    }

    private double evenness(List<Integer> own, WaterFlows now, String zone) {
        WaterFlows usual = ground.running(zone, SOUND_STATE, Case.SOUND);
        double[] shares = own.stream()
                .mapToDouble(i -> now.heads()[i] / usual.heads()[i])
                .sorted()
                .toArray();
        int quarter = Math.max(1, (int) Math.round(shares.length / 4.0));
        double low = Arrays.stream(shares, 0, quarter).average().orElseThrow();
        double mean = Arrays.stream(shares).average().orElseThrow();
        return mean > 0 ? low / mean : 0;
    }

    /** Beyond the fitting, where its test port is. */
    private Expected pressure(WaterFlows flows, String fitting) {
        Fitting at = ground.scenario().plumbing().fittings().stream()
                .filter(f -> f.id().equals(fitting))
                .findFirst()
                .orElseThrow();
        return pascals(flows.pressureAt(at.on(), at.along() + PORT));
    }

    private static final double PORT = 0.05;

    private Expected headPressure(WaterFlows flows, String head) {
        List<Head> heads = ground.scenario().plumbing().heads();
        for (int i = 0; i < heads.size(); i++) {
            if (heads.get(i).id().equals(head)) {
                return pascals(flows.headPressures()[i]);
            }
        }
        throw new IllegalArgumentException("no head " + head);
    }

    /** What is cut off from all water has no pressure. */
    private static Expected pascals(double pressure) {
        return new Expected.Number(Double.isNaN(pressure) ? 0 : Math.max(0, pressure));
    }

    private void putBack() {
        String first = ground.meter();
        Action safe = new Action(
                "makeSafe",
                Action.Kind.MAKE_SAFE,
                List.of(new Action.Leg(first, Ground.TURN, Map.of(Handled.valve(first), Handled.SHUT))),
                Map.of(),
                null,
                null,
                Set.of());
        add("makeSafe", "", first, Tool.ISOLATE, safe, null, null, null);
        List<Action.Leg> legs = new ArrayList<>(ground.allOpen(false));
        for (Fitting master : ground.fittings(FittingKind.MASTER_VALVE)) {
            legs.add(new Action.Leg(master.id(), Ground.TURN, Map.of(Handled.valve(master.id()), "")));
        }
        legs.add(new Action.Leg(CallSite.CONTROLLER, 1, Map.of(Handled.BYPASS, "")));
        add(
                "putBack",
                "",
                first,
                Tool.PUT_BACK,
                action("putBack", "", Action.Kind.OPERATE, legs, Set.of()),
                null,
                null,
                null);
    }

    private Expected restFlow(SiteState state, Case wrong) {
        return new Expected.Number(ground.atRest(state, wrong).supply());
    }

    private List<Action.Leg> legs(boolean mainAlive, String place, double minutes) {
        List<Action.Leg> legs = new ArrayList<>(ground.allOpen(mainAlive));
        legs.add(new Action.Leg(place, minutes, Map.of()));
        return legs;
    }

    private static Measure flow(Instrument instrument) {
        return new Measure.Number(Quantity.FLOW, instrument, 0);
    }

    private static Measure gauge() {
        return new Measure.Number(Quantity.PRESSURE, GAUGE, SUPPLY_DRIFT);
    }

    private void number(
            String kind,
            String target,
            Tool tool,
            List<Action.Leg> legs,
            Measure measure,
            String runs,
            BiFunction<SiteState, Case, Expected> model) {
        String place = legs.get(legs.size() - 1).place();
        add(kind, target, place, tool, action(kind, target, Action.Kind.TEST, legs, Set.of()), measure, runs, model);
    }

    private static Action action(
            String kind, String target, Action.Kind what, List<Action.Leg> legs, Set<Action.Risk> risks) {
        String id = target.isEmpty() ? kind : kind + ":" + target;
        Action.Latent latent = what.judged() ? FieldTest.once(id) : null;
        return new Action(id, what, legs, Map.of(), latent, null, risks);
    }

    private void add(
            String kind,
            String target,
            String place,
            Tool tool,
            Action action,
            Measure measure,
            String runs,
            BiFunction<SiteState, Case, Expected> model) {
        FieldTest test = new FieldTest(kind, target, ground.places().get(place), tool, action, measure, runs);
        tests.put(test, model);
    }
}
