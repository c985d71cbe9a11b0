package provingyard.call;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.CategoryPrediction;
import provingyard.diagnosis.Hypotheses;
import provingyard.diagnosis.NumericPrediction;
import provingyard.diagnosis.Prediction;
import provingyard.diagnosis.Premises;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.ServiceCall;
import provingyard.scenario.Text;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.world.electric.Wiring;

/**
 * A service call's site made ready: what may be wrong, what can be done, what each test would read in each case. Safe for
 * several threads; predictions are computed once and kept.
 */
public final class CallSite implements Premises {

    /** Where a technician stands at the start. */
    static final String CONTROLLER = "controller";

    /** Metres walked in a minute with tools in hand (common practice, no source). */
    private static final double WALK_METRES = 40;

    private static final double LITRES_A_MINUTE = 60e3;

    private record Asked(String test, String configuration) {}

    private final Scenario scenario;
    private final Hypotheses hypotheses;
    private final List<FaultPlan> faults;
    private final Map<String, Point> places;
    private final Map<String, FieldTest> tests = new LinkedHashMap<>();
    private final Map<String, TestKit> kits = new LinkedHashMap<>();
    private final Map<Asked, Prediction> known;
    private final List<String> classes;
    private final int suspected;
    private final Ground ground;
    private final Arrivals arrivals;
    private final Hypotheses unheard;

    private CallSite(Scenario scenario) {
        this.scenario = scenario;
        known = new ConcurrentHashMap<>();
        SetUp installed = References.textbook(scenario).orElse(SetUp.CLOCK_ALONE);
        Wiring wiring = Wiring.usual(scenario);
        Suspects suspects = Suspects.of(scenario, installed, wiring, Rates.SHIPPED);
        suspected = suspects.faults().size();
        faults = new ArrayList<>(suspects.faults());
        faults.addAll(scenario.faults());
        classes = faults.stream().map(suspects::repairClass).toList();
        Scenario all = scenario.with(scenario.catalogue(), scenario.yard(), faults);
        ground = new Ground(all, installed, suspects, wiring);
        places = ground.places();
        arrivals = new Arrivals(ground);
        for (TestKit kit : ground.kits()) {
            for (FieldTest test : kit.tests()) {
                if (isAllowed(test)) {
                    tests.put(test.id(), test);
                    kits.put(test.id(), kit);
                }
            }
        }
        unheard = suspects.hypotheses();
        hypotheses = heard();
    }

    private CallSite(CallSite same, Scenario scenario, Hypotheses unheard) {
        this.scenario = scenario;
        suspected = same.suspected;
        faults = same.faults;
        classes = same.classes;
        ground = same.ground;
        places = same.places;
        tests.putAll(same.tests);
        kits.putAll(same.kits);
        arrivals = same.arrivals;
        known = same.known;
        this.unheard = unheard;
        hypotheses = heard();
    }

    private Hypotheses heard() {
        return Complaint.heard(unheard, scenario.call().seen(), this::test, t -> predict(t.action(), start()));
    }

    /** The same site for somebody who thinks other faults common; what tests would read is shared. */
    CallSite weighing(Rates rates) {
        Scenario all = ground.scenario();
        Suspects other = Suspects.of(scenario, ground.installed(), Wiring.usual(all), rates);
        return new CallSite(this, scenario, other.hypotheses());
    }

    /**
     * The same site where somebody saw something else. What tests would read does not depend on that, so all that is known
     * of it is shared: hearing costs next to nothing.
     *
     * @param complaint what the owner says
     * @param seen the same as observations; none for nothing seen
     */
    public CallSite hearing(Text complaint, List<ServiceCall.Seen> seen) {
        ServiceCall now = scenario.call();
        ServiceCall other =
                new ServiceCall(complaint, seen, List.of(), now.arrives(), now.deals(), now.tests(), now.house());
        return new CallSite(this, scenario.called(other, scenario.faults()), unheard);
    }

    /** Makes a service call's site ready. */
    public static CallSite of(Scenario scenario) {
        if (scenario.call() == null) {
            throw new IllegalArgumentException(scenario.id() + " is no service call");
        }
        return new CallSite(scenario);
    }

    private boolean isAllowed(FieldTest test) {
        List<String> allowed = scenario.call().tests();
        return allowed.isEmpty() || !test.action().kind().judged() || allowed.contains(test.kind());
    }

    /** The document. */
    public Scenario scenario() {
        return scenario;
    }

    /** All faults that this site knows: the suspected ones, then the author's. */
    public List<FaultPlan> faults() {
        return faults;
    }

    /** Number of a fault of the scenario among {@link #faults()}. */
    public int authored(int fault) {
        return suspected + fault;
    }

    /** What all tests stand on. */
    Ground ground() {
        return ground;
    }

    /** The living yard as it is found. */
    Arrivals arrivals() {
        return arrivals;
    }

    /** What would be repaired to mend a fault. */
    public String repairClass(int fault) {
        return classes.get(fault);
    }

    /** A test by its id. */
    public Optional<FieldTest> test(String id) {
        return Optional.ofNullable(tests.get(id));
    }

    /** All tests in the order in which they are shown. */
    public List<FieldTest> tests() {
        return List.copyOf(tests.values());
    }

    /** What a test would give without noise in a case, its legs done from a state. */
    public Expected expected(FieldTest test, SiteState before, Case wrong) {
        return kits.get(test.id()).expected(test, test.action().after(before), wrong);
    }

    /** L/min that faults lose while nothing runs. */
    double lostAtRest(SiteState state, Case wrong) {
        return ground.atRest(state, wrong).supply() * LITRES_A_MINUTE;
    }

    @Override
    public Hypotheses hypotheses() {
        return hypotheses;
    }

    @Override
    public SiteState start() {
        return SiteState.at(CONTROLLER, Map.of());
    }

    @Override
    public List<Action> actions() {
        return tests.values().stream().map(FieldTest::action).toList();
    }

    @Override
    public double walk(String from, String to) {
        Point a = places.get(from);
        Point b = places.get(to);
        return a == null || b == null ? 0 : a.distance(b) / WALK_METRES;
    }

    /** Where a place of an action is, on the plan in m. */
    public Point place(String id) {
        return places.get(id);
    }

    @Override
    public Prediction predict(Action action, SiteState state) {
        SiteState after = action.after(state);
        return known.computeIfAbsent(
                new Asked(action.id(), after.configuration()),
                a -> compute(tests.get(action.id()), after, unheard.size()));
    }

    private Prediction compute(FieldTest test, SiteState after, int count) {
        TestKit kit = kits.get(test.id());
        List<Expected> all = new ArrayList<>();
        for (int h = 0; h < count; h++) {
            all.add(kit.expected(test, after, h == 0 ? Case.SOUND : Case.of(h - 1)));
        }
        if (test.measure() instanceof FieldTest.Measure.Number number) {
            double[] means =
                    all.stream().mapToDouble(e -> ((Expected.Number) e).value()).toArray();
            double[] spreads = new double[means.length];
            for (int h = 1; h < means.length; h++) {
                spreads[h] = Rates.SHIPPED.spread(faults.get(h - 1).kind(), number.quantity())
                        * Math.abs(means[h] - means[0]);
            }
            return new NumericPrediction(means, spreads, number.instrument(), number.supplySigma());
        }
        double[][] rows = all.stream()
                .map(e -> ((Expected.Odds) e)
                        .probabilities().stream()
                                .mapToDouble(Double::doubleValue)
                                .toArray())
                .toArray(double[][]::new);
        return ((FieldTest.Measure.Answers) test.measure()).sight()
                ? CategoryPrediction.ofSight(rows)
                : new CategoryPrediction(rows);
    }
}
