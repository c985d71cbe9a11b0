package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import provingyard.learner.Learner;
import provingyard.learner.SiteProgress;
import provingyard.scenario.Scenario;
import provingyard.scenario.Work;

/**
 * The route as a learner has it before them: every stop with how far they came, and which is next.
 *
 * @param stops all stops in their order
 */
record RouteModel(List<Stop> stops) {

    private static final int DAY = 1440;

    /** How far a learner came on a stop. */
    enum State {
        /** Never lived. */
        NEW,
        /** A season or a call is under way. */
        UNDER_WAY,
        /** A season was lived to its end. */
        LIVED
    }

    /** Which stops are shown. */
    enum Filter implements Predicate<Stop> {
        ALL,
        TUNE,
        CALLS;

        @Override
        public boolean test(Stop stop) {
            return this == ALL || (this == CALLS) == (stop.site().work() == Work.SERVICE_CALL);
        }
    }

    /**
     * A stop.
     *
     * @param number its place on the route, from 1
     * @param best best score, or null
     * @param day day that is being lived, from 1; 0 where no season is kept
     * @param days days of a season
     */
    record Stop(int number, Scenario site, State state, Integer best, int day, int days) {

        /** Whether a season is kept that can be gone on with, or looked at. */
        boolean kept() {
            return day > 0;
        }
    }

    RouteModel {
        stops = List.copyOf(stops);
    }

    static RouteModel of(List<Scenario> sites, Learner learner) {
        List<Stop> stops = new ArrayList<>();
        for (Scenario site : sites) {
            stops.add(stop(stops.size() + 1, site, learner.at(site.id())));
        }
        return new RouteModel(stops);
    }

    private static Stop stop(int number, Scenario site, SiteProgress progress) {
        int days = site.season().days();
        long tick = progress.season() == null ? -1 : progress.season().tick();
        boolean over = tick >= (long) days * DAY;
        int day = tick < 0 ? 0 : (int) Math.min(days, tick / DAY + 1);
        boolean call = progress.call() != null && progress.call().isBegun();
        State state =
                call || tick >= 0 && !over ? State.UNDER_WAY : progress.seasons() > 0 || over ? State.LIVED : State.NEW;
        return new Stop(number, site, state, progress.best(), day, days);
    }

    /** The stop that is next: what is under way (the last one first), then what was never lived, then the weakest. */
    Optional<Stop> next(Learner learner) {
        return stops.stream()
                .filter(s -> s.state() == State.UNDER_WAY && s.site().id().equals(learner.lastSite()))
                .findFirst()
                .or(() -> first(State.UNDER_WAY))
                .or(() -> first(State.NEW))
                .or(() -> stops.stream().min(java.util.Comparator.comparingInt(s -> s.best() == null ? -1 : s.best())));
    }

    private Optional<Stop> first(State state) {
        return stops.stream().filter(s -> s.state() == state).findFirst();
    }

    /** How many stops have been lived to the end once. */
    long done() {
        return stops.stream()
                .filter(s -> s.state() == State.LIVED || s.best() != null)
                .count();
    }

    /** How many stops a filter shows. */
    long count(Filter filter) {
        return stops.stream().filter(filter).count();
    }

    /** The stop of a site. */
    Optional<Stop> at(String site) {
        return stops.stream().filter(s -> s.site().id().equals(site)).findFirst();
    }
}
