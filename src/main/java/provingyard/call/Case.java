package provingyard.call;

import java.util.List;

/**
 * What is wrong, once for all: none, one or several of a call's possible faults.
 *
 * @param faults indices into {@link CallSite#faults()}, rising
 */
public record Case(List<Integer> faults) {

    /** Nothing is wrong. */
    public static final Case SOUND = new Case(List.of());

    public Case {
        faults = faults.stream().distinct().sorted().toList();
    }

    /** One fault. */
    public static Case of(int fault) {
        return new Case(List.of(fault));
    }
}
