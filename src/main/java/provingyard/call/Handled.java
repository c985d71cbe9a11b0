package provingyard.call;

import java.util.ArrayList;
import java.util.List;
import provingyard.diagnosis.SiteState;
import provingyard.scenario.Plumbing;
import provingyard.world.hydraulics.Hands;

/** Conditions of a {@link SiteState} that a technician's hands make, with their values; unnamed means as found. */
final class Handled {

    static final String SHUT = "shut";
    static final String OPEN = "open";

    /** The controller's sensor bypass; {@link #ON} while it bypasses. */
    static final String BYPASS = "bypass";

    static final String ON = "on";

    private static final String VALVE = "valve.";

    private Handled() {}

    /** Name of the condition of a fitting: {@link #SHUT} or {@link #OPEN} by hand. */
    static String valve(String fitting) {
        return VALVE + fitting;
    }

    /** Whether the controller bypasses its sensors in a state. */
    static boolean bypassed(SiteState state) {
        return state.condition(BYPASS).equals(ON);
    }

    /** The valves that hands hold in a state. */
    static Hands hands(Plumbing plumbing, SiteState state) {
        List<String> opened = new ArrayList<>();
        List<String> shut = new ArrayList<>();
        for (Plumbing.Fitting fitting : plumbing.fittings()) {
            String value = state.condition(valve(fitting.id()));
            if (value.equals(OPEN)) {
                opened.add(fitting.id());
            } else if (value.equals(SHUT)) {
                shut.add(fitting.id());
            }
        }
        return Hands.of(opened, shut);
    }
}
