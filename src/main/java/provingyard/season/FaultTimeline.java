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
 * @param dealt chosen from outside: then nobody comes to repair them unasked
 */
record FaultTimeline(List<Begin> begins, boolean dealt) {

    /** Faults are kept as bits of a {@code long}. */
    private static final int MOST_FAULTS = Long.SIZE - 1;

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
        return sorted(begins, false);
    }

    /**
     * Faults that begin at chosen ticks, whatever the author says.
     *
     * @throws IllegalArgumentException for a fault that the scenario does not list among its first 63
     */
    static FaultTimeline dealt(Scenario scenario, List<Season.Dealt> dealt) {
        List<Begin> begins = new ArrayList<>();
        for (Season.Dealt one : dealt) {
            boolean known = one.fault() >= 0
                    && one.fault() < Math.min(MOST_FAULTS, scenario.faults().size());
            if (!known || one.tick() < 0) {
                throw new IllegalArgumentException(one + " cannot begin on " + scenario.id());
            }
            begins.add(new Begin(one.tick(), one.fault()));
        }
        return sorted(begins, true);
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
        return sorted(begins, false);
    }

    /** A fault's stream is named after what it is and where, so that the order of a list changes nobody's chance. */
    private static String stream(Scenario scenario, int fault) {
        FaultPlan plan = scenario.faults().get(fault);
        long before = scenario.faults().subList(0, fault).stream()
                .filter(f -> f.kind() == plan.kind() && f.on().equals(plan.on()))
                .count();
        return "fault." + plan.kind() + "." + plan.on() + "." + before;
    }

    private static FaultTimeline sorted(List<Begin> begins, boolean dealt) {
        begins.sort(Comparator.comparingLong(Begin::tick).thenComparingInt(Begin::fault));
        return new FaultTimeline(List.copyOf(begins), dealt);
    }
}
