package provingyard.call;

import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Instrument;
import provingyard.scenario.Point;

/**
 * One thing that can be done on a site: the action that diagnosis judges, and what the person sees of it.
 *
 * @param kind name of its kind as in files ({@code readMeter}); tests of a kind differ in their target. Also the key of
 *     its texts: {@code test.<kind>.name}, {@code .does}
 * @param target id of the fitting, pipe, head, sensor or terminal that it is about; {@code ""} where the site has one only
 * @param where where the hand is at the end, on the plan in m
 * @param action what diagnosis knows of it; its id is {@code kind} or {@code kind:target}, with {@code @metres} for a place
 *     on a pipe
 * @param measure what is read, null where nothing is
 * @param runs id of the zone whose valve the controller or the hand opens while it is measured; null for none
 */
public record FieldTest(
        String kind, String target, Point where, Tool tool, Action action, Measure measure, String runs) {

    /** What is read. */
    public sealed interface Measure {

        /** A number in SI units, shown in the user's. */
        record Number(Quantity quantity, Instrument instrument, double supplySigma) implements Measure {}

        /**
         * One of some answers, each with the key of its text: {@code answer.<key>}.
         *
         * @param sight whether the fault itself is seen, not a sign of it
         */
        record Answers(List<String> keys, boolean sight) implements Measure {

            public Answers {
                keys = List.copyOf(keys);
            }

            /** Answers of signs. */
            Answers(List<String> keys) {
                this(keys, false);
            }
        }
    }

    /** What a number is. */
    public enum Quantity {
        FLOW,
        PRESSURE,
        PRESSURE_RATE,
        OHMS,
        VOLTS,
        AMPERES,
        METRES,
        KELVIN,
        SHARE
    }

    /**
     * What lies in how an instrument and a site are, and not in the moment: the same reading in the same state of the site
     * gives the same number again, so that asking twice tells nothing new.
     */
    static Action.Latent once(String id) {
        return new Action.Latent(id, List.of(Handled.BYPASS));
    }

    /** A test that is neither dangerous nor tied to a condition. */
    static FieldTest plain(
            String kind, String target, Point where, Tool tool, List<Action.Leg> legs, Measure measure, String runs) {
        String id = target.isEmpty() ? kind : kind + ":" + target;
        Action action = new Action(id, Action.Kind.TEST, legs, Map.of(), once(id), null, Set.of());
        return new FieldTest(kind, target, where, tool, action, measure, runs);
    }

    /** Kind of the test that opens a zone's valve by hand at its box. */
    static final String OPEN_BY_HAND = "openByHand";

    /** Kinds during which somebody stands where the zone's heads are seen. */
    private static final Set<String> AT_THE_HEADS = Set.of("walkZone", "catchCans");

    /** Kind of the request that has buried lines marked. */
    static final String LOCATE = "locate";

    /** Minutes until the marks are there: two working days, usual in the United States; local rules decide. */
    private static final double MARKS_MINUTES = 2 * 24 * 60;

    /** Minutes until what was asked for is there: outside the time on the site, not outside the water. */
    public double waits() {
        return kind.equals(LOCATE) ? MARKS_MINUTES : 0;
    }

    /** Whether the heads of its zone are seen meanwhile. */
    public boolean looksAtHeads() {
        return AT_THE_HEADS.contains(kind);
    }

    /** Its name for the diagnosis. */
    public String id() {
        return action.id();
    }
}
