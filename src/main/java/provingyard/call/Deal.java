package provingyard.call;

import java.util.List;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.ServiceCall;

/**
 * What a seat has to find: one of the author's deals.
 *
 * @param number place in the call's list of deals, from 0
 * @param wrong its faults
 */
public record Deal(int number, Case wrong) {

    /** A deal by its number. */
    public static Deal of(CallSite site, int number) {
        List<Integer> faults = site.scenario().call().deals().get(number);
        return new Deal(number, new Case(faults.stream().map(site::authored).toList()));
    }

    /** The deal that a seat with this seed gets. */
    public static Deal drawn(CallSite site, long seed) {
        ServiceCall call = site.scenario().call();
        double chance = RandomStreams.uniform(new RandomStreams(seed).key("call.deal"), 0);
        return of(site, (int) (chance * call.deals().size()));
    }

    /** What has to be repaired; {@code none} where nothing is wrong. The first fault's where there are two. */
    public String answer(CallSite site) {
        return wrong.faults().isEmpty()
                ? Suspects.NONE
                : site.repairClass(wrong.faults().get(0));
    }
}
