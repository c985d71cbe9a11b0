package provingyard.call;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import provingyard.diagnosis.Hypotheses;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Sites;

/** Faults drawn from the prior on the shipped yards with a service call; {@code -Dcalls.sites=a,b} chooses some. */
final class DrawnCases {

    private static final String CHOSEN = System.getProperty("calls.sites", "");

    private DrawnCases() {}

    static Stream<String> yards() {
        return Sites.list().stream()
                .filter(Sites.Site::shipped)
                .map(Sites.Site::id)
                .filter(id -> CHOSEN.isEmpty() || List.of(CHOSEN.split(",")).contains(id))
                .filter(id -> Sites.open(id).orThrow().call() != null);
    }

    static CallSite site(String id) {
        return CallSite.of(Sites.open(id).orThrow());
    }

    static List<Deal> drawn(CallSite site, int cases) {
        return IntStream.range(0, cases).mapToObj(i -> one(site, i)).toList();
    }

    /** A fault drawn from the prior, as a deal of its own. */
    private static Deal one(CallSite site, int number) {
        double chance = RandomStreams.uniform(new RandomStreams(20261126).key("case"), number);
        Hypotheses all = site.hypotheses();
        double sum = 0;
        for (int h = 0; h < all.size(); h++) {
            sum += all.prior(h);
            if (chance < sum) {
                return new Deal(number, h == 0 ? Case.SOUND : Case.of(h - 1));
            }
        }
        return new Deal(number, Case.SOUND);
    }

    /** Two standard errors of a share seen in so many cases, by which the sample itself may be off. */
    static double chance(double share, int cases) {
        return 2 * Math.sqrt(Math.max(share * (1 - share), 1.0 / cases) / cases);
    }
}
