package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Plumbing.Pipe;
import provingyard.scenario.SensorKind;
import provingyard.season.Site;
import provingyard.season.Siting.OnPipe;
import provingyard.setup.FlowWatch;
import provingyard.setup.FlowWatch.Action;
import provingyard.setup.Placement;

/** What can be chosen about a flow sensor and how its flow is watched. */
record FlowOptions(Site site) implements Options {

    /** High limits as shares of the expected flow. */
    static final double[] HIGH = {1.06, 1.12, 1.3};

    private static final double[] LOW = {0, 0.7, 0.85};
    private static final double[] SETTLINGS = {60, 120, 300};
    private static final double[] AFTER = {120, 600, 1800};
    private static final double LEAST_HIGH = 1.03;
    private static final double MOST_HIGH = 2;

    /** m3/s; a tenth of a litre a minute, and what a small zone draws. */
    private static final double STEP = 1e-4 / 60;

    private static final double MOST_UNSCHEDULED = 20e-3 / 60;

    /** Bodies beside the pipe's own size, as shares of it. */
    private static final double[] BODIES = {0.75, 1};

    @Override
    public SensorKind kind() {
        return SensorKind.FLOW;
    }

    @Override
    public List<Fitting> places() {
        List<Fitting> all = new ArrayList<>();
        for (OnPipe spot : Mains.spots(site)) {
            for (double share : BODIES) {
                Placement.Flow sensor =
                        site.siting().flowSensor(Fitting.id(kind(), 1), spot, share * size(spot.pipe()));
                Fitting fitting = new Fitting(sensor, null, usual(sensor));
                if (!all.contains(fitting)) {
                    all.add(fitting);
                }
            }
        }
        return all;
    }

    private double size(String pipe) {
        return site.scenario().plumbing().pipes().stream()
                .filter(p -> p.id().equals(pipe))
                .mapToDouble(Pipe::size)
                .findFirst()
                .orElseThrow();
    }

    private FlowWatch usual(Placement.Flow sensor) {
        double unscheduled = Math.ceil(site.siting().cannotSeeBelow(sensor.size()) / STEP) * STEP;
        return new FlowWatch(
                sensor.id(),
                List.of(),
                true,
                HIGH[1],
                LOW[1],
                SETTLINGS[1],
                60,
                Action.SHUT_ZONE,
                unscheduled,
                AFTER[1],
                Action.SHUT_MASTER);
    }

    @Override
    public List<Fitting> settings(Fitting fitting) {
        List<Fitting> all = new ArrayList<>();
        for (double high : HIGH) {
            all.add(fitting.with(new Watch(fitting.watch()).high(high)));
        }
        return all;
    }

    @Override
    public List<Fitting> switches(Fitting fitting) {
        Watch watch = new Watch(fitting.watch());
        List<FlowWatch> all = new ArrayList<>();
        for (Action action : Action.values()) {
            all.add(watch.onZone(action));
        }
        all.add(watch.onUnscheduled(Action.ALARM));
        all.add(watch.onUnscheduled(Action.SHUT_MASTER));
        for (double low : LOW) {
            all.add(watch.low(low));
        }
        for (double settling : SETTLINGS) {
            all.add(watch.settling(settling));
        }
        for (double after : AFTER) {
            all.add(watch.unscheduledAfter(after));
        }
        return all.stream().map(fitting::with).toList();
    }

    @Override
    public List<Dial<Fitting>> dials(Fitting fitting) {
        Watch watch = new Watch(fitting.watch());
        double blind = site.siting().cannotSeeBelow(((Placement.Flow) fitting.placement()).size());
        return List.of(
                new Dial<>(LEAST_HIGH, MOST_HIGH, 0.01, fitting.watch().high(), v -> fitting.with(watch.high(v))),
                new Dial<>(
                        blind,
                        Math.max(MOST_UNSCHEDULED, 2 * blind),
                        STEP,
                        fitting.watch().unscheduled(),
                        v -> fitting.with(watch.unscheduled(v))));
    }

    /** A flow watch with one thing changed. */
    private record Watch(FlowWatch w) {

        FlowWatch high(double high) {
            return of(high, w.low(), w.settling(), w.onZone(), w.unscheduled(), w.unscheduledAfter());
        }

        FlowWatch low(double low) {
            return of(w.high(), low, w.settling(), w.onZone(), w.unscheduled(), w.unscheduledAfter());
        }

        FlowWatch settling(double settling) {
            return of(w.high(), w.low(), settling, w.onZone(), w.unscheduled(), w.unscheduledAfter());
        }

        FlowWatch onZone(Action action) {
            return of(w.high(), w.low(), w.settling(), action, w.unscheduled(), w.unscheduledAfter());
        }

        FlowWatch unscheduled(double flow) {
            return of(w.high(), w.low(), w.settling(), w.onZone(), flow, w.unscheduledAfter());
        }

        FlowWatch unscheduledAfter(double after) {
            return of(w.high(), w.low(), w.settling(), w.onZone(), w.unscheduled(), after);
        }

        FlowWatch onUnscheduled(Action action) {
            return new FlowWatch(
                    w.sensor(),
                    w.expected(),
                    w.record(),
                    w.high(),
                    w.low(),
                    w.settling(),
                    w.averaging(),
                    w.onZone(),
                    w.unscheduled(),
                    w.unscheduledAfter(),
                    action);
        }

        private FlowWatch of(
                double high, double low, double settling, Action onZone, double unscheduled, double after) {
            return new FlowWatch(
                    w.sensor(),
                    w.expected(),
                    w.record(),
                    high,
                    low,
                    settling,
                    w.averaging(),
                    onZone,
                    unscheduled,
                    after,
                    w.onUnscheduled());
        }
    }
}
