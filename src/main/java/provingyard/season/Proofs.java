package provingyard.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * What was proven so far, and under which settings. A proof holds while the sensor's place and settings and what the
 * controller does with it are still those it was made under. Immutable.
 */
public record Proofs(List<Kept> all) {

    /** Nothing was proven. */
    public static final Proofs NONE = new Proofs(List.of());

    public Proofs {
        all = List.copyOf(all);
    }

    /** A proof with what it was made under. */
    public record Kept(Proof proof, Placement placement, Interlock interlock, FlowWatch watch) {

        private static Kept of(Proof proof, SetUp setUp) {
            Placement placement = setUp.sensor(proof.sensor()).orElse(null);
            boolean watched = proof.sensor().equals(setUp.flowWatch().sensor());
            return new Kept(proof, placement, interlock(setUp, proof.sensor()), watched ? setUp.flowWatch() : null);
        }

        private static Interlock interlock(SetUp setUp, String sensor) {
            return setUp.interlocks().stream()
                    .filter(i -> i.sensor().equals(sensor))
                    .findFirst()
                    .orElse(null);
        }

        private boolean holds(SetUp now) {
            Kept then = of(proof, now);
            return placement != null
                    && placement.equals(then.placement)
                    && Objects.equals(interlock, then.interlock)
                    && Objects.equals(watch, then.watch);
        }
    }

    /** The same with a proof made under a set-up; it takes the place of an earlier one. */
    public Proofs with(Proof proof, SetUp setUp) {
        List<Kept> next = new ArrayList<>(all);
        next.removeIf(
                k -> k.proof().sensor().equals(proof.sensor()) && k.proof().test() == proof.test());
        next.add(Kept.of(proof, setUp));
        return new Proofs(next);
    }

    /** The proof of a sensor by a test, if it was made and still holds. */
    public Optional<Proof> of(String sensor, Proof.Test test, SetUp now) {
        return all.stream()
                .filter(k -> k.proof().sensor().equals(sensor) && k.proof().test() == test && k.holds(now))
                .map(Kept::proof)
                .findFirst();
    }

    /** Ids of the sensors with a test that was not made, or no longer holds, in the order of placing. */
    public List<String> unproven(SetUp now) {
        return now.sensors().stream()
                .filter(p -> Proof.Test.of(p.kind()).stream()
                        .anyMatch(t -> of(p.id(), t, now).isEmpty()))
                .map(Placement::id)
                .toList();
    }
}
