package provingyard.call;

import java.util.List;
import provingyard.diagnosis.Move;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.Policy;
import provingyard.diagnosis.Trust;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;

/** The clinic with a leaking main as a service call, gone about well, luckily and unsafely. */
public final class LivedCalls {

    public static final long SEED = 7;

    /** A leak of 40 mm2 in the fourth main. */
    private static final FaultPlan LEAK = new FaultPlan(Kind.MAINLINE_LEAK, "main-4", 12, 40e-6, 0.6, 0, null, 0);

    private static CallSite clinic;

    private LivedCalls() {}

    /** The clinic, on which the leak may be. Made ready once, since its solves are kept. */
    public static synchronized CallSite clinic() {
        if (clinic == null) {
            clinic = CallSites.of("quillback-clinic", 20, List.of(LEAK));
        }
        return clinic;
    }

    public static Call begun() {
        return Call.begin(clinic(), new Deal(0, Case.of(clinic().authored(0))), SEED);
    }

    /** The best test each time, with the water shut after the first, and what the evidence then says. */
    public static Call good() {
        Call call = begun();
        Policy best = new Prudent(clinic(), Policies.best(clinic(), Trust.USUAL));
        Move move = best.next(call.run().inquiry());
        while (move instanceof Move.Do act) {
            call.act(act.action().id());
            if (call.notes().size() == 1) {
                call.act("makeSafe");
            }
            move = best.next(call.run().inquiry());
        }
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
}
