package provingyard.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.Deterministic;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Scenario;

/**
 * When the scenario's faults happen in one season.
 *
 * @param begins in the order of time
 */
record FaultTimeline(List<Begin> begins) {

    private static final int MINUTES_A_DAY = 1440;

    /** A fault (index into the scenario's list) begins at a tick. */
    record Begin(long tick, int fault) {}

    /** The site's own season: faults happen when the author says; those without a time do not happen. */
    static FaultTimeline ofOwnSeason(Scenario scenario, int days) {
        List<Begin> begins = new ArrayList<>();
        for (int i = 0; i < scenario.faults().size(); i++) {
            FaultPlan.When when = scenario.faults().get(i).when();
            if (when != null && when.day() <= days) {
                long tick = (long) (when.day() - 1) * MINUTES_A_DAY + when.at().toSecondOfDay() / 60;
                begins.add(new Begin(tick, i));
            }
        }
        return sorted(begins);
    }

    /**
     * Another season of the same place: each fault happens with the probability that its rate means (a Poisson process
     * seen once: 1 - exp(-rate * days / days of the plan)), at a uniform time.
     */
    static FaultTimeline drawn(Scenario scenario, int days, RandomStreams streams) {
        List<Begin> begins = new ArrayList<>();
        for (int i = 0; i < scenario.faults().size(); i++) {
            FaultPlan fault = scenario.faults().get(i);
            UniformRandomProvider random = streams.sequence(stream(scenario, i));
            double mean = fault.rate() * days / scenario.season().days();
            boolean happens = random.nextDouble() < 1 - Deterministic.exp(-mean);
            long tick = random.nextLong((long) days * MINUTES_A_DAY);
            if (happens) {
                begins.add(new Begin(tick, i));
            }
        }
        return sorted(begins);
    }

    /** A fault's stream is named after what it is and where, so that the order of a list changes nobody's chance. */
    private static String stream(Scenario scenario, int fault) {
        FaultPlan plan = scenario.faults().get(fault);
        long before = scenario.faults().subList(0, fault).stream()
                .filter(f -> f.kind() == plan.kind() && f.on().equals(plan.on()))
                .count();
        return "fault." + plan.kind() + "." + plan.on() + "." + before;
    }

    private static FaultTimeline sorted(List<Begin> begins) {
        begins.sort(Comparator.comparingLong(Begin::tick).thenComparingInt(Begin::fault));
        return new FaultTimeline(List.copyOf(begins));
    }
}
