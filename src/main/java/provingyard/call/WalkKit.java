package provingyard.call;

import java.util.ArrayList;
import java.util.Arrays;
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
import provingyard.scenario.Plumbing.DripLine;
import provingyard.scenario.Plumbing.Head;
import provingyard.scenario.Point;
import provingyard.world.hydraulics.WaterFlows;

/**
 * Tests with eyes, ears, probe and spade. What is to be seen and heard follows from the flow that the pipes' model gives a
 * leak, and from the distance; how often people notice it is common practice without a source, as are the minutes. Whether
 * a leak shows at the surface is drawn once for a place: looking again tells nothing new.
 */
final class WalkKit implements TestKit {

    private static final double LITRE_A_MINUTE = 1e-3 / 60;

    /** L/min at which half of all leaks pond, and at which half of the others are damp at the surface. */
    private static final double PONDS = 15;

    private static final double DAMP = 5;

    /** Share of the time under pressure of a main that lives with runs only. */
    private static final double ALIVE_WITH_RUNS = 0.1;

    /** How often dry ground is taken for damp. */
    private static final double FALSE_DAMP = 0.03;

    /** L/min below which a leak cannot be heard, and metres of loud and faint. */
    private static final double HEARD = 0.3;

    private static final double LOUD_METRES = 2.5;
    private static final double FAINT_METRES = 5;

    /** L/min that keeps a zone's lowest head wet. */
    private static final double WEEPS = 0.1;

    /** How often eyes see a geyser. */
    private static final double STRIKING = 0.99;

    /** How often eyes see what else a running zone shows. */
    private static final double NOTICED = 0.94;

    /** How often a head that was dried and watched is wet where it weeps, and where it does not. */
    private static final double WATCHED = 0.98;

    private static final double WET_OTHERWISE = 0.01;

    /** How often they see something where all is well. */
    private static final double IMAGINED = 0.02;

    private static final double LOOK = 3;
    private static final double WATCH = 10;
    private static final double LISTEN = 4;
    private static final double PROBE = 4;
    private static final double DIG = 35;
    private static final double WALK_ZONE = 6;

    private static final List<String> ZONE_ANSWERS =
            List.of("allWell", "geyser", "drySpot", "boggy", "weak", "nothingRuns", "anotherRuns");

    private static final SiteState AS_FOUND = SiteState.at(CallSite.CONTROLLER, Map.of());

    private final Ground ground;
    private final Map<FieldTest, BiFunction<SiteState, Case, Expected>> tests = new LinkedHashMap<>();

    WalkKit(Ground ground) {
        this.ground = ground;
        ground.pipes().zones().forEach(this::walkZone);
        ground.pipes().zones().forEach(this::lookAtHeads);
        ground.pipes().zones().forEach(this::watchHeads);
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

    private void walkZone(String zone) {
        List<Action.Leg> legs = new ArrayList<>(ground.allOpen(false));
        legs.add(new Action.Leg(CallSite.CONTROLLER, 1, Map.of()));
        legs.add(new Action.Leg(zone, WALK_ZONE, Map.of()));
        Action action = once("walkZone:" + zone, Action.Kind.TEST, legs, "zone." + zone, null, Set.of());
        add(
                "walkZone",
                zone,
                ground.places().get(zone),
                Tool.RUN_ZONE,
                action,
                ZONE_ANSWERS,
                zone,
                (state, wrong) -> odds(seen(zone, state, wrong)));
    }

    /** A valve that weeps wets the lowest head of its zone while all rests (trade's reasoning, no source). */
    private void lookAtHeads(String zone) {
        restingHeads("lookAtHeads", zone, LOOK, "heads.", NOTICED, FALSE_DAMP);
    }

    /**
     * Drying the lowest head and watching it for a while tells a weep from dew and rests of the last run, which a look cannot
     * (trade's reasoning, no source).
     */
    private void watchHeads(String zone) {
        restingHeads("watchHeads", zone, WATCH, "heads.dried.", WATCHED, WET_OTHERWISE);
    }

    /**
     * Whether a zone's heads are wet at rest.
     *
     * @param weeps how often they are where the valve weeps
     * @param otherwise how often where it does not
     */
    private void restingHeads(String kind, String zone, double minutes, String spot, double weeps, double otherwise) {
        Action action = once(kind + ":" + zone, Action.Kind.TEST, legs(zone, minutes), spot + zone, null, Set.of());
        Point at = ground.places().get(zone);
        add(kind, zone, at, Tool.LOOK, action, List.of("headsDry", "headsWet"), null, (state, wrong) -> {
            double wet = resting(zone, wrong) > WEEPS * LITRE_A_MINUTE ? weeps : otherwise;
            return new Expected.Odds(List.of(1 - wet, wet));
        });
    }

    /** m3/s that a zone's heads and drip lines let out while nothing runs and the main lives. */
    private double resting(String zone, Case wrong) {
        WaterFlows now = ground.byMaster(wrong);
        double sum = 0;
        List<Head> heads = ground.scenario().plumbing().heads();
        for (int i = 0; i < heads.size(); i++) {
            sum += heads.get(i).zone().equals(zone) ? now.heads()[i] : 0;
        }
        List<DripLine> drips = ground.scenario().plumbing().drips();
        for (int i = 0; i < drips.size(); i++) {
            sum += drips.get(i).zone().equals(zone) ? now.drips()[i] : 0;
        }
        return sum;
    }

    /** What does not run is seen by all, a geyser by nearly all; what is small is overlooked now and then, and seldom imagined. */
    private static Expected odds(int answer) {
        Double[] odds = new Double[ZONE_ANSWERS.size()];
        Arrays.fill(odds, 0.0);
        switch (ZONE_ANSWERS.get(answer)) {
            case "allWell" -> {
                odds[ZONE_ANSWERS.indexOf("drySpot")] = IMAGINED;
                odds[ZONE_ANSWERS.indexOf("weak")] = IMAGINED;
                odds[answer] = 1 - 2 * IMAGINED;
            }
            case "nothingRuns", "anotherRuns" -> odds[answer] = 1.0;
            case "geyser" -> {
                odds[ZONE_ANSWERS.indexOf("allWell")] = 1 - STRIKING;
                odds[answer] = STRIKING;
            }
            default -> {
                odds[ZONE_ANSWERS.indexOf("allWell")] = 1 - NOTICED;
                odds[answer] = NOTICED;
            }
        }
        return new Expected.Odds(List.of(odds));
    }

    /** What a running zone shows, the most striking first. */
    private int seen(String zone, SiteState state, Case wrong) {
        WaterFlows now = ground.running(zone, state, wrong);
        WaterFlows usual = ground.running(zone, AS_FOUND, Case.SOUND);
        int z = ground.pipes().zones().indexOf(zone);
        for (int other = 0; other < now.zones().length; other++) {
            if (other != z && now.zones()[other] > 0.1 * typical(other)) {
                return ZONE_ANSWERS.indexOf("anotherRuns");
            }
        }
        if (now.zones()[z] < 0.1 * usual.zones()[z]) {
            return ZONE_ANSWERS.indexOf("nothingRuns");
        }
        return heads(zone, now, usual, wrong);
    }

    private double typical(int zone) {
        String id = ground.pipes().zones().get(zone);
        return ground.running(id, AS_FOUND, Case.SOUND).zones()[zone];
    }

    private int heads(String zone, WaterFlows now, WaterFlows usual, Case wrong) {
        List<Head> heads = ground.scenario().plumbing().heads();
        double pressure = 0;
        double usualPressure = 0;
        for (int i = 0; i < heads.size(); i++) {
            if (!heads.get(i).zone().equals(zone)) {
                continue;
            }
            double opening = now.heads()[i] / Math.sqrt(Math.max(1, now.headPressures()[i]));
            double usualOpening = usual.heads()[i] / Math.sqrt(Math.max(1, usual.headPressures()[i]));
            if (opening > 1.4 * usualOpening) {
                return ZONE_ANSWERS.indexOf("geyser");
            }
            if (opening < 0.7 * usualOpening) {
                return ZONE_ANSWERS.indexOf("drySpot");
            }
            pressure += now.headPressures()[i];
            usualPressure += usual.headPressures()[i];
        }
        if (lateral(zone, now, wrong) > DAMP) {
            return ZONE_ANSWERS.indexOf("boggy");
        }
        return ZONE_ANSWERS.indexOf(pressure < 0.8 * usualPressure ? "weak" : "allWell");
    }

    /** L/min that breaks of a zone's laterals lose. */
    private double lateral(String zone, WaterFlows now, Case wrong) {
        return wrong.faults().stream()
                .filter(i -> ground.fault(i).kind() == FaultPlan.Kind.LATERAL_BREAK)
                .filter(i -> ground.pipes()
                        .laterals()
                        .get(zone)
                        .contains(ground.fault(i).on()))
                .mapToDouble(i -> now.lost(i) / LITRE_A_MINUTE)
                .sum();
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
                null,
                (state, wrong) -> surface(wetting(wrong, whole)));
    }

    /** Something done at one place, whose answer nature has drawn once. */
    private static Action once(
            String id, Action.Kind what, List<Action.Leg> legs, String spot, String dug, Set<Action.Risk> risks) {
        return new Action(id, what, legs, Map.of(), new Action.Latent(spot, List.of()), dug, risks);
    }

    private static List<Action.Leg> legs(String place, double minutes) {
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
        add(kind, cell.name(), cell.middle(), tool, action, answers, null, model);
    }

    private void add(
            String kind,
            String target,
            Point at,
            Tool tool,
            Action action,
            List<String> answers,
            String runs,
            BiFunction<SiteState, Case, Expected> model) {
        tests.put(
                new FieldTest(kind, target, at, tool, action, new Measure.Answers(answers, tool == Tool.DIG), runs),
                model);
    }
}
