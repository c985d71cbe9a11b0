package provingyard.report;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.scenario.FaultPlan;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;

/**
 * One loss of water and what became of it, as the season's events tell.
 *
 * @param kind what broke
 * @param on id of what it broke on
 * @param began tick
 * @param after s until the flow watch found it; not a number where it did not
 */
record LeakStory(FaultPlan.Kind kind, String on, long began, double after) {

    boolean found() {
        return Double.isFinite(after);
    }

    /** The losses of water of a season in the order in which they began. */
    static List<LeakStory> of(Season season) {
        Map<String, Deque<FaultPlan.Kind>> kinds = kinds(season);
        List<LeakStory> leaks = new ArrayList<>();
        for (SeasonEvent event : season.events()) {
            if (event.kind() == SeasonEvent.Kind.FAULT_HAPPENED && kinds.containsKey(event.subject())) {
                Deque<FaultPlan.Kind> next = kinds.get(event.subject());
                FaultPlan.Kind kind = next.size() > 1 ? next.poll() : next.peek();
                leaks.add(new LeakStory(kind, event.subject(), event.tick(), Double.NaN));
            } else if (event.kind() == SeasonEvent.Kind.FAULT_FOUND) {
                found(leaks, event);
            }
        }
        return leaks;
    }

    private static void found(List<LeakStory> leaks, SeasonEvent event) {
        double after = event.values().getOrDefault("after", Double.NaN);
        for (int i = 0; i < leaks.size(); i++) {
            LeakStory leak = leaks.get(i);
            boolean same = leak.on().equals(event.subject())
                    && Math.round((event.tick() - leak.began()) * 60.0) == Math.round(after);
            if (same && !leak.found()) {
                leaks.set(i, new LeakStory(leak.kind(), leak.on(), leak.began(), after));
            }
        }
    }

    /** The kinds of loss on each thing, in the document's order. */
    private static Map<String, Deque<FaultPlan.Kind>> kinds(Season season) {
        Map<String, Deque<FaultPlan.Kind>> kinds = new LinkedHashMap<>();
        for (FaultPlan plan : season.site().scenario().faults()) {
            if (losesWater(plan.kind())) {
                kinds.computeIfAbsent(plan.on(), on -> new ArrayDeque<>()).add(plan.kind());
            }
        }
        return kinds;
    }

    private static boolean losesWater(FaultPlan.Kind kind) {
        return switch (kind) {
            case MAINLINE_BREAK, MAINLINE_LEAK, LATERAL_BREAK, VALVE_STUCK_OPEN, VALVE_WEEPS, HEAD_BROKEN -> true;
            default -> false;
        };
    }
}
