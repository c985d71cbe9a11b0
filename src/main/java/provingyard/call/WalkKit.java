package provingyard.call;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import provingyard.call.FieldTest.Measure;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.SafetyGates;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Point;
import provingyard.world.hydraulics.WaterFlows;

/**
 * Tests along the main with eyes, ears, probe and spade. What is to be seen and heard follows from the flow that the pipes'
 * model gives a leak, and from the distance; how often people notice it is common practice without a source, as are the
 * minutes. Whether a leak shows at the surface is drawn once for a place: looking again tells nothing new.
 */
final class WalkKit implements TestKit {

    static final double LITRE_A_MINUTE = 1e-3 / 60;

    /** L/min at which half of all leaks pond, and at which half of the others are damp at the surface. */
    private static final double PONDS = 15;

    static final double DAMP = 5;

    /** Share of the time under pressure of a main that lives with runs only. */
    private static final double ALIVE_WITH_RUNS = 0.1;

    /** How often what is dry is taken for damp. */
    static final double FALSE_DAMP = 0.03;

    /** L/min below which a leak cannot be heard, and metres of loud and faint. */
    private static final double HEARD = 0.3;

    private static final double LOUD_METRES = 2.5;
    private static final double FAINT_METRES = 5;

    static final double LOOK = 3;
    private static final double LISTEN = 4;
    private static final double PROBE = 4;
    private static final double DIG = 35;

    private final Ground ground;
    private final Map<FieldTest, BiFunction<SiteState, Case, Expected>> tests = new LinkedHashMap<>();

    WalkKit(Ground ground) {
        this.ground = ground;
        ground.pipes().mainline().forEach(this::look);
        List<Cell> cells = cells();
        cells.forEach(this::listen);
        request();
        cells.forEach(this::probe);
        cells.forEach(this::dig);
    }

    /** A stretch of main that can be listened to, probed and dug up. */
    private record Cell(String name, String pipe, double from, double to, Point middle) {

        boolean holds(FaultPlan fault) {
            return isMain(fault) && fault.on().equals(pipe) && fault.along() >= from && fault.along() < to;
        }
    }

    private List<Cell> cells() {
        List<Cell> cells = new ArrayList<>();
        for (String pipe : ground.pipes().mainline()) {
            List<Double> middles = ground.suspects().cells(pipe);
            double half = ground.pipes().path(pipe).length() / middles.size() / 2;
            for (double along : middles) {
                cells.add(new Cell(
                        ground.suspects().cellClass(pipe, along),
                        pipe,
                        along - half,
                        along + half,
                        ground.pipes().path(pipe).pointAt(along)));
            }
        }
        return cells;
    }

    @Override
    public List<FieldTest> tests() {
        return List.copyOf(tests.keySet());
    }

    @Override
    public Expected expected(FieldTest test, SiteState state, Case wrong) {
        return tests.get(test).apply(state, wrong);
    }

    private void look(String pipe) {
        double middle = ground.pipes().path(pipe).length() / 2;
        String place = ground.suspects().cellClass(pipe, middle);
        Cell whole = new Cell(
                place,
                pipe,
                0,
                Double.POSITIVE_INFINITY,
                ground.pipes().path(pipe).pointAt(middle));
        Action action = once("look:" + pipe, Action.Kind.TEST, legs(place, LOOK), "surface." + pipe, null, Set.of());
        add(
                "look",
                pipe,
                whole.middle(),
                Tool.LOOK,
                action,
                List.of("dry", "damp", "ponding"),
                (state, wrong) -> surface(wetting(wrong, whole)));
    }

    /** Something done at one place, whose answer nature has drawn once. */
    static Action once(
            String id, Action.Kind what, List<Action.Leg> legs, String spot, String dug, Set<Action.Risk> risks) {
        return new Action(id, what, legs, Map.of(), new Action.Latent(spot, List.of()), dug, risks);
    }

    static List<Action.Leg> legs(String place, double minutes) {
        return List.of(new Action.Leg(place, minutes, Map.of()));
    }

    /** L/min that has wetted the ground along a part of a main, as the owner lets it run. */
    private double wetting(Case wrong, Cell part) {
        WaterFlows alive = ground.byMaster(wrong);
        double duty = ground.pipes().masterOpenAtRest() ? 1 : ALIVE_WITH_RUNS;
        return wrong.faults().stream()
                .filter(i -> part.holds(ground.fault(i)))
                .mapToDouble(i -> duty * alive.lost(i) / LITRE_A_MINUTE)
                .sum();
    }

    private static boolean isMain(FaultPlan fault) {
        return fault.kind() == FaultPlan.Kind.MAINLINE_BREAK || fault.kind() == FaultPlan.Kind.MAINLINE_LEAK;
    }

    private static Expected surface(double flow) {
        double ponds = flow / (flow + PONDS);
        double damp = (1 - ponds) * Math.max(FALSE_DAMP, flow / (flow + DAMP));
        return new Expected.Odds(List.of(1 - ponds - damp, damp, ponds));
    }

    private void listen(Cell cell) {
        List<Action.Leg> legs = new ArrayList<>(ground.allOpen(true));
        legs.addAll(legs(cell.name(), LISTEN));
        String id = "listen:" + cell.name();
        Action action = once(id, Action.Kind.TEST, legs, "sound." + cell.name(), null, Set.of());
        at(
                cell,
                "listen",
                Tool.LISTEN,
                action,
                List.of("silent", "faint", "loud"),
                (state, wrong) -> heard(cell.middle(), state, wrong));
    }

    private Expected heard(Point at, SiteState state, Case wrong) {
        WaterFlows now = ground.atRest(state, wrong);
        double nearest = wrong.faults().stream()
                .filter(i -> isMain(ground.fault(i)) && now.lost(i) > HEARD * LITRE_A_MINUTE)
                .mapToDouble(i -> at.distance(place(ground.fault(i))))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        if (nearest <= LOUD_METRES) {
            return new Expected.Odds(List.of(0.07, 0.18, 0.75));
        }
        return nearest <= FAINT_METRES
                ? new Expected.Odds(List.of(0.28, 0.62, 0.10))
                : new Expected.Odds(List.of(0.94, 0.05, 0.01));
    }

    private Point place(FaultPlan fault) {
        return ground.pipes().path(fault.on()).pointAt(fault.along());
    }

    /** Lines are asked for and marked: minutes of the call alone; the days until then run the water on, not the clock. */
    private void request() {
        Action action = new Action(
                FieldTest.LOCATE,
                Action.Kind.REQUEST,
                List.of(new Action.Leg(CallSite.CONTROLLER, 3, Map.of(SafetyGates.MARKS, SafetyGates.SHOWN))),
                Map.of(),
                null,
                null,
                Set.of());
        Point at = ground.places().get(CallSite.CONTROLLER);
        tests.put(new FieldTest(FieldTest.LOCATE, "", at, Tool.REQUEST, action, null, null), null);
    }

    private void probe(Cell cell) {
        String id = "probe:" + cell.name();
        List<Action.Leg> legs = legs(cell.name(), PROBE);
        Action action = once(id, Action.Kind.TEST, legs, "probe." + cell.name(), null, Set.of(Action.Risk.DIGS));
        at(
                cell,
                "probe",
                Tool.PROBE,
                action,
                List.of("dry", "wet", "soup"),
                (state, wrong) -> inGround(wetting(wrong, cell)));
    }

    /** Below the surface a leak is met far more often than it shows above. */
    private static Expected inGround(double flow) {
        double soup = flow / (flow + PONDS / 5);
        double wet = (1 - soup) * Math.max(2 * FALSE_DAMP, flow / (flow + DAMP / 10));
        return new Expected.Odds(List.of(1 - soup - wet, wet, soup));
    }

    private void dig(Cell cell) {
        String id = "dig:" + cell.name();
        List<Action.Leg> legs = legs(cell.name(), DIG);
        Action action = once(id, Action.Kind.DIG, legs, "dug." + cell.name(), cell.name(), Set.of(Action.Risk.DIGS));
        at(cell, "dig", Tool.DIG, action, List.of("sound", "leaks"), (state, wrong) -> {
            boolean here = wrong.faults().stream().map(ground::fault).anyMatch(cell::holds);
            return Expected.Odds.sure(here ? 1 : 0, 2);
        });
    }

    private void at(
            Cell cell,
            String kind,
            Tool tool,
            Action action,
            List<String> answers,
            BiFunction<SiteState, Case, Expected> model) {
        add(kind, cell.name(), cell.middle(), tool, action, answers, model);
    }

    private void add(
            String kind,
            String target,
            Point at,
            Tool tool,
            Action action,
            List<String> answers,
            BiFunction<SiteState, Case, Expected> model) {
        Measure measure = new Measure.Answers(answers, tool == Tool.DIG);
        tests.put(new FieldTest(kind, target, at, tool, action, measure, null), model);
    }
}
