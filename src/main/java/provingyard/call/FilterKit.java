package provingyard.call;

import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.call.FieldTest.Measure;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;

/**
 * Filters opened and looked into, with the water shut before them and the pressure relieved. Minutes are common practice, no
 * source.
 */
final class FilterKit implements TestKit {

    static final String INSPECT = "inspectFilter";

    private static final double OPEN = 6;

    private final Ground ground;
    private final List<FieldTest> tests;

    FilterKit(Ground ground) {
        this.ground = ground;
        tests = ground.fittings(FittingKind.FILTER).stream().map(this::inspect).toList();
    }

    private FieldTest inspect(Fitting filter) {
        String id = INSPECT + ":" + filter.id();
        List<Action.Leg> legs = List.of(ground.relieved(filter.id()), new Action.Leg(filter.id(), OPEN, Map.of()));
        Set<Action.Risk> risks = Set.of(Action.Risk.OPENS_PRESSURE);
        Action action = new Action(id, Action.Kind.TEST, legs, Map.of(), FieldTest.once(id), null, risks);
        Measure measure = new Measure.Answers(List.of("clean", "clogged"), true);
        var at = ground.places().get(filter.id());
        return new FieldTest(INSPECT, filter.id(), at, Tool.LOOK, action, measure, null);
    }

    @Override
    public List<FieldTest> tests() {
        return tests;
    }

    /** A filter's state is the fault itself: it is looked at, not inferred. */
    @Override
    public Expected expected(FieldTest test, SiteState state, Case wrong) {
        boolean clogged = wrong.faults().stream()
                .map(ground::fault)
                .anyMatch(f -> f.kind() == FaultPlan.Kind.FILTER_CLOGGED && f.on().equals(test.target()));
        return Expected.Odds.sure(clogged ? 1 : 0, 2);
    }
}
