package provingyard.call;

import static provingyard.call.WalkKit.DAMP;
import static provingyard.call.WalkKit.FALSE_DAMP;
import static provingyard.call.WalkKit.LITRE_A_MINUTE;
import static provingyard.call.WalkKit.LOOK;
import static provingyard.call.WalkKit.legs;
import static provingyard.call.WalkKit.once;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import provingyard.call.FieldTest.Measure;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing.DripLine;
import provingyard.scenario.Plumbing.Head;
import provingyard.world.hydraulics.WaterFlows;

/**
 * Tests with eyes in a zone: walking it while it runs, and its heads at rest. What is to be seen follows from what the pipes'
 * model gives each head; how often people notice it is common practice without a source, as are the minutes. What was
 * overlooked once is overlooked again: looking again tells nothing new.
 */
final class ZoneKit implements TestKit {

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

    private static final double WATCH = 10;
    private static final double WALK_ZONE = 6;

    private static final List<String> ZONE_ANSWERS =
            List.of("allWell", "geyser", "drySpot", "boggy", "weak", "nothingRuns", "anotherRuns");

    private static final SiteState AS_FOUND = SiteState.at(CallSite.CONTROLLER, Map.of());

    private final Ground ground;
    private final Map<FieldTest, BiFunction<SiteState, Case, Expected>> tests = new LinkedHashMap<>();

    ZoneKit(Ground ground) {
        this.ground = ground;
        ground.pipes().zones().forEach(this::walkZone);
        ground.pipes().zones().forEach(this::lookAtHeads);
        ground.pipes().zones().forEach(this::watchHeads);
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
                zone,
                "walkZone",
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
        add(zone, kind, Tool.LOOK, action, List.of("headsDry", "headsWet"), null, (state, wrong) -> {
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

    private void add(
            String zone,
            String kind,
            Tool tool,
            Action action,
            List<String> answers,
            String runs,
            BiFunction<SiteState, Case, Expected> model) {
        FieldTest test = new FieldTest(
                kind, zone, ground.places().get(zone), tool, action, new Measure.Answers(answers, false), runs);
        tests.put(test, model);
    }
}
