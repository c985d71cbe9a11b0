package provingyard.call;

import java.time.LocalTime;
import java.util.List;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Scenario;
import provingyard.scenario.ServiceCall;
import provingyard.scenario.Sites;
import provingyard.scenario.Text;

/** Shipped tune sites as service calls, with their textbook set-up installed. */
final class CallSites {

    private CallSites() {}

    /** A shipped site to which a technician comes on a day of its season at eight, no fault of its author's on it. */
    static CallSite of(String id, int day) {
        return of(id, day, List.of());
    }

    /** The same with faults that an author wrote. */
    static CallSite of(String id, int day, List<FaultPlan> authored) {
        Scenario site = Sites.open(id).orThrow();
        Text nothing = new Text("Something is wrong.", "Algo anda mal.");
        FaultPlan.When arrives = new FaultPlan.When(day, LocalTime.of(8, 0));
        ServiceCall call =
                new ServiceCall(nothing, List.of(), List.of(), arrives, List.of(List.of()), List.of(), false);
        return CallSite.of(site.called(call, authored));
    }

    /** The first suspected fault of a kind, at a place where one is given. */
    static Case suspect(CallSite site, Kind kind, String on) {
        for (int i = 0; i < site.faults().size(); i++) {
            FaultPlan fault = site.faults().get(i);
            if (fault.kind() == kind && (on == null || fault.on().equals(on))) {
                return Case.of(i);
            }
        }
        throw new IllegalArgumentException("nobody suspects " + kind + " on " + on);
    }

    static Case suspect(CallSite site, Kind kind) {
        return suspect(site, kind, null);
    }

    /** A number without noise. */
    static double number(CallSite site, String test, Case wrong) {
        return ((Expected.Number) expected(site, test, wrong)).value();
    }

    /** The likeliest answer's key. */
    static String answer(CallSite site, String test, Case wrong) {
        List<Double> odds = ((Expected.Odds) expected(site, test, wrong)).probabilities();
        int best = 0;
        for (int i = 1; i < odds.size(); i++) {
            best = odds.get(i) > odds.get(best) ? i : best;
        }
        FieldTest asked = site.test(test).orElseThrow();
        return ((FieldTest.Measure.Answers) asked.measure()).keys().get(best);
    }

    private static Expected expected(CallSite site, String test, Case wrong) {
        return site.expected(site.test(test).orElseThrow(), site.start(), wrong);
    }
}
