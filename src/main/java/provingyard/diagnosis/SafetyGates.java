package provingyard.diagnosis;

import java.util.EnumSet;
import java.util.Set;

/**
 * What must hold before something dangerous is done. An unsafe act caps the case and is named first in its debrief
 * ({@link CaseScore}); reference and policies never do one.
 */
public final class SafetyGates {

    /** Condition and value: buried lines were asked for and their marks are shown. */
    public static final String MARKS = "marks";

    /** Value of {@link #MARKS}. */
    public static final String SHOWN = "shown";

    /** Condition and value: pressure was shut off and relieved. */
    public static final String PRESSURE = "pressure";

    /** Value of {@link #PRESSURE}. */
    public static final String RELIEVED = "relieved";

    /** Condition: what walking on pavement is like. */
    public static final String WALK = "walk";

    /** Value of {@link #WALK}: at or below freezing; nothing runs on it, barrier or not. */
    public static final String FREEZING = "freezing";

    /** Value of {@link #WALK}: dry and open to people. */
    public static final String OPEN = "open";

    private SafetyGates() {}

    /**
     * What is unsafe about an action that begins in a state; empty where it may be done. The danger lies in the last
     * leg: what the legs before it set (marks asked for, pressure relieved) counts.
     */
    public static Set<Hazard> breaches(Action action, SiteState before) {
        SiteState state = action.beforeLastLeg(before);
        Set<Hazard> breaches = EnumSet.noneOf(Hazard.class);
        for (Action.Risk risk : action.risks()) {
            switch (risk) {
                case DIGS -> add(breaches, Hazard.BURIED_LINES, !is(state, MARKS, SHOWN));
                case TOUCHES_MAINS -> breaches.add(Hazard.MAINS);
                case OPENS_BACKFLOW -> breaches.add(Hazard.BACKFLOW);
                case OPENS_PRESSURE -> add(breaches, Hazard.PRESSURE, !is(state, PRESSURE, RELIEVED));
                case WETS_WALK -> add(breaches, Hazard.SLIP, is(state, WALK, FREEZING) || is(state, WALK, OPEN));
            }
        }
        return breaches;
    }

    private static boolean is(SiteState state, String condition, String value) {
        return state.condition(condition).equals(value);
    }

    private static void add(Set<Hazard> breaches, Hazard hazard, boolean unsafe) {
        if (unsafe) {
            breaches.add(hazard);
        }
    }
}
