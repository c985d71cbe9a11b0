package provingyard.call;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.Policy;
import provingyard.diagnosis.Solver;
import provingyard.diagnosis.Trust;

/** Ways of going about a service call on a site, by name: the reference, and those that a score must put below it. */
public final class Ways {

    /** Kinds of tests in the order of a usual checklist (common practice, no source). */
    private static final List<String> CHECKLIST = List.of(
            "readMeter",
            "staticPressure",
            "readRecords",
            "runZone",
            "walkZone",
            "openByHand",
            "ohmsToCommon",
            "isolate",
            "look",
            "listen");

    private final Map<String, Supplier<Policy>> ways = new LinkedHashMap<>();

    private Ways(CallSite site, long seed) {
        ways.put("best", () -> Policies.best(site, Trust.USUAL));
        ways.put("reference", () -> new Solver(site, Trust.USUAL));
        ways.put("half-split", () -> Policies.halfSplit(site, Trust.USUAL));
        ways.put("most-bits", () -> Policies.mostBits(site, Trust.USUAL));
        ways.put("half-random", () -> Policies.halfRandom(site, Trust.USUAL, seed));
        ways.put("early", () -> Policies.early(site, Trust.USUAL));
        ways.put("fixed-list", () -> Policies.fixedList(ids(site, CHECKLIST), site));
        ways.put("as-shown", () -> Policies.asShown(site));
        ways.put("random", () -> Policies.random(site, Trust.USUAL, seed));
        ways.put("dig-everywhere", () -> Policies.digEverywhere(ids(site, List.of("look")), site));
    }

    /** The ways at a site; the seed is for those that throw dice. */
    public static Ways at(CallSite site, long seed) {
        return new Ways(site, seed);
    }

    /** All names, the best first. */
    public Set<String> names() {
        return ways.keySet();
    }

    /** A way by its name. */
    public Optional<Policy> named(String name) {
        return Optional.ofNullable(ways.get(name)).map(Supplier::get);
    }

    private static List<String> ids(CallSite site, List<String> kinds) {
        return kinds.stream()
                .flatMap(kind -> ofKind(site, kind))
                .map(FieldTest::id)
                .toList();
    }

    private static Stream<FieldTest> ofKind(CallSite site, String kind) {
        return site.tests().stream().filter(t -> t.kind().equals(kind));
    }
}
