package provingyard.ui;

import java.util.List;
import provingyard.scenario.Scenario;
import provingyard.scenario.ServiceCall;
import provingyard.scenario.Sites;

/** Shipped service calls of which one deal is left. */
final class CallSamples {

    /** The call whose deal 1 is a hole in the main beyond isolation valve C. */
    static final String MAIN = "sumac-bend";

    private CallSamples() {}

    static Scenario dealt(String id, int deal) {
        Scenario site = Sites.open(id).orThrow();
        ServiceCall call = site.call();
        List<List<Integer>> one = List.of(call.deals().get(deal));
        ServiceCall dealt = new ServiceCall(
                call.complaint(), call.seen(), call.shown(), call.arrives(), one, call.tests(), call.house());
        return new Scenario(
                site.format(),
                site.id(),
                site.title(),
                site.subtitle(),
                site.work(),
                site.level(),
                site.lesson(),
                site.place(),
                site.season(),
                site.weather(),
                site.catalogue(),
                site.yard(),
                site.plumbing(),
                site.schedule(),
                site.kit(),
                site.faults(),
                site.locks(),
                site.costs(),
                site.setUps(),
                dealt,
                site.remarks());
    }
}
