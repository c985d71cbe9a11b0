package provingyard.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import provingyard.diagnosis.Action;

/**
 * What is done after a finding: the repair of what was stated, and the check after it. Minutes are common practice, no
 * source.
 */
final class Mending {

    private static final double DUG = 45;
    private static final double ABOVE_GROUND = 20;
    private static final double TOLD = 5;

    private Mending() {}

    /**
     * The repair of a class: buried pipe is dug up with the water shut and the pressure relieved. Water that runs in the house
     * is a plumber's work: the owner is told.
     */
    static FieldTest repair(CallSite site, String repairClass) {
        if (repairClass.equals(Suspects.HOUSE)) {
            List<Action.Leg> told = List.of(new Action.Leg(site.ground().meter(), TOLD, Map.of()));
            return repair(site, repairClass, told, Set.of(), Tool.REQUEST);
        }
        boolean buried = repairClass.startsWith(Suspects.MAIN) || repairClass.startsWith("lateral:");
        String place = place(site, repairClass);
        List<Action.Leg> legs = new ArrayList<>();
        legs.add(site.ground().relieved(target(repairClass)));
        legs.add(new Action.Leg(place, buried ? DUG : ABOVE_GROUND, Map.of()));
        Set<Action.Risk> risks = buried ? Set.of(Action.Risk.DIGS) : Set.of();
        return repair(site, repairClass, legs, risks, Tool.DIG);
    }

    private static FieldTest repair(
            CallSite site, String repairClass, List<Action.Leg> legs, Set<Action.Risk> risks, Tool tool) {
        Action action =
                new Action("repair:" + repairClass, Action.Kind.REPAIR, legs, Map.of(), null, repairClass, risks);
        String last = legs.get(legs.size() - 1).place();
        return new FieldTest("repair", repairClass, site.place(last), tool, action, null, null);
    }

    /** The check after the repair of a class: a test that would show the fault, done again. */
    static FieldTest check(CallSite site, String repairClass) {
        FieldTest shows = shows(site, repairClass);
        Action action = new Action("verify", Action.Kind.VERIFY, shows.action().legs(), Map.of(), null, null, Set.of());
        return new FieldTest(
                "verify", shows.target(), shows.where(), shows.tool(), action, shows.measure(), shows.runs());
    }

    /** A zone's faults show when it runs, leaks at the meter; the first test of all where neither is allowed. */
    static FieldTest shows(CallSite site, String repairClass) {
        Optional<FieldTest> zone = site.test("runZone:" + target(repairClass));
        return Stream.of(zone, site.test("readMeter"), site.test("watchMeter"))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseGet(() -> site.tests().stream()
                        .filter(t -> t.measure() != null)
                        .findFirst()
                        .orElseThrow());
    }

    private static String target(String repairClass) {
        return repairClass.substring(repairClass.indexOf(':') + 1);
    }

    private static String place(CallSite site, String repairClass) {
        if (site.place(repairClass) != null) {
            return repairClass;
        }
        return site.place(target(repairClass)) != null ? target(repairClass) : CallSite.CONTROLLER;
    }
}
