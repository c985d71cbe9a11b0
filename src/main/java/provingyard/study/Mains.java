package provingyard.study;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Plumbing.Pipe;
import provingyard.season.Site;
import provingyard.season.Siting.OnPipe;
import provingyard.setup.PipeLength;

/** Where on the mainline a flow sensor can sit: the straightest spot of each pipe that no zone valve shuts off. */
final class Mains {

    /** Spots looked at along a pipe. */
    private static final int ALONG = 9;

    private Mains() {}

    /** One spot a pipe, to the decimetre, in the document's order. */
    static List<OnPipe> spots(Site site) {
        List<OnPipe> spots = new ArrayList<>();
        for (Pipe pipe : pipes(site.scenario().plumbing())) {
            spots.add(straightest(site, pipe.id()));
        }
        return spots;
    }

    /** Pipes that water reaches from the supply without passing a zone valve. */
    static List<Pipe> pipes(Plumbing plumbing) {
        Set<String> valved = new HashSet<>();
        for (Plumbing.Fitting fitting : plumbing.fittings()) {
            if (fitting.kind() == FittingKind.ZONE_VALVE) {
                valved.add(fitting.on());
            }
        }
        Set<String> reached = new HashSet<>(Set.of(plumbing.supply().junction()));
        Deque<String> ahead = new ArrayDeque<>(reached);
        while (!ahead.isEmpty()) {
            String at = ahead.poll();
            for (Pipe pipe : plumbing.pipes()) {
                if (valved.contains(pipe.id())) {
                    continue;
                }
                String other = pipe.from().equals(at) ? pipe.to() : pipe.to().equals(at) ? pipe.from() : at;
                if (reached.add(other)) {
                    ahead.add(other);
                }
            }
        }
        return plumbing.pipes().stream()
                .filter(p -> !valved.contains(p.id()) && reached.contains(p.from()) && reached.contains(p.to()))
                .toList();
    }

    private static OnPipe straightest(Site site, String pipe) {
        double length = PipeLength.of(site.scenario().plumbing(), pipe);
        OnPipe best = null;
        double most = -1;
        for (int i = 1; i <= ALONG; i++) {
            OnPipe spot = new OnPipe(pipe, Math.floor(10 * length * i / (ALONG + 1)) / 10);
            double[] straight = site.siting().straight(spot);
            // Twice as much before as behind is asked for.
            double worth = Math.min(straight[0], 2 * straight[1]);
            if (worth > most) {
                most = worth;
                best = spot;
            }
        }
        return best;
    }
}
