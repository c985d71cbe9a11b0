package provingyard.call;

import java.time.LocalTime;
import java.util.List;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.Trust;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Scenario;
import provingyard.scenario.ServiceCall;
import provingyard.scenario.Sites;
import provingyard.scenario.Text;
import provingyard.scenario.Work;

/** The clinic with a leaking main as a service call, gone about well, luckily and unsafely. */
public final class LivedCalls {

    public static final long SEED = 7;

    /** A leak of 40 mm2 in the fourth main. */
    private static final FaultPlan LEAK = new FaultPlan(Kind.MAINLINE_LEAK, "main-4", 12, 40e-6, 0.6, 0, null, 0);

    private static CallSite clinic;

    private LivedCalls() {}

    /** The clinic; its one deal is the leak. Made ready once, since its solves are kept. */
    public static synchronized CallSite clinic() {
        if (clinic == null) {
            clinic = CallSite.of(called(Sites.open("quillback-clinic").orThrow(), List.of(LEAK)));
        }
        return clinic;
    }

    public static Call begun() {
        return Call.begin(clinic(), Deal.of(clinic(), 0), SEED);
    }

    /** The reference's tests with the water shut after the first, and its finding. */
    public static Call good() {
        Call call = begun();
        ServiceRun run = Judge.play(clinic(), call.deal(), Policies.best(clinic(), Trust.USUAL), SEED);
        call.act(run.steps().get(0).action());
        call.act("makeSafe");
        run.steps().stream().skip(1).forEach(s -> call.act(s.action()));
        call.state(new Call.Finding(call.belief().leading(), 0.9));
        return call;
    }

    /** Looks at a place that is dry, reads the meter twice, and states the right cell on a hunch. */
    public static Call lucky() {
        Call call = begun();
        call.act("look:main-2");
        call.act("readMeter");
        call.act("look:main-2");
        call.state(new Call.Finding(call.deal().answer(clinic()), 0.99));
        return call;
    }

    /** Digs at the truth and beside it before lines are marked. */
    public static Call unsafe() {
        Call call = begun();
        call.act("readMeter");
        call.act("dig:main:main-2/1");
        call.act("dig:" + call.deal().answer(clinic()));
        call.state(new Call.Finding(call.deal().answer(clinic()), 0.9));
        return call;
    }

    /** States something at once. */
    public static Call untested() {
        Call call = begun();
        call.state(new Call.Finding(Suspects.NONE, 0.5));
        return call;
    }

    private static Scenario called(Scenario s, List<FaultPlan> faults) {
        Text complaint = new Text("The bill has doubled.", "La factura se duplicó.");
        FaultPlan.When arrives = new FaultPlan.When(20, LocalTime.of(8, 0));
        ServiceCall call = new ServiceCall(complaint, List.of(), arrives, List.of(List.of(0)), List.of());
        return new Scenario(
                s.format(),
                s.id(),
                s.title(),
                s.subtitle(),
                Work.SERVICE_CALL,
                s.level(),
                s.lesson(),
                s.place(),
                s.season(),
                s.weather(),
                s.catalogue(),
                s.yard(),
                s.plumbing(),
                s.schedule(),
                s.kit(),
                faults,
                s.locks(),
                s.costs(),
                s.setUps(),
                call,
                s.remarks());
    }
}
