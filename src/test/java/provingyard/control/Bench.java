package provingyard.control;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.TestYards;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.Schedule;
import provingyard.scenario.SensorKind;
import provingyard.sensor.FlowBody;
import provingyard.sensor.Readings;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** A controller on the bench: zones a to d, readings set by hand, minutes lived from Monday 2014-06-02, 00:00. */
final class Bench {

    static final LocalDate MONDAY = LocalDate.of(2014, 6, 2);
    static final List<DayOfWeek> DAILY = List.of(DayOfWeek.values());
    static final double GPM = 3.785411784e-3 / 60;
    static final List<String> ZONES = List.of("a", "b", "c", "d");

    private static final Point AT = new Point(5, 5);

    Controller controller;
    long tick;
    final List<ControlEvent> events = new ArrayList<>();
    final Map<String, Integer> minutes = new LinkedHashMap<>();
    final StringBuilder order = new StringBuilder();
    Commands last;
    private final SetUp setUp;
    private final Map<String, Readings.Reading> shown = new LinkedHashMap<>();

    Bench(Scenario scenario, SetUp setUp) {
        this.setUp = setUp;
        controller = Controller.of(scenario, setUp);
        setUp.sensors().forEach(p -> set(p.id(), p.kind(), 0, false, false, false));
    }

    // What is watered

    static Schedule.ZoneRun run(String zone, double minutes) {
        return run(zone, minutes, 0, 0);
    }

    static Schedule.ZoneRun run(String zone, double minutes, double cycle, double soak) {
        return new Schedule.ZoneRun(zone, minutes * 60, cycle * 60, soak * 60);
    }

    static Schedule schedule(List<LocalTime> starts, Schedule.ZoneRun... runs) {
        return new Schedule(List.of(runs), DAILY, 0, starts, 1, new Schedule.Allowed(List.of(), List.of()));
    }

    /** Starts at 05:00 every day, no ordinance. */
    static Schedule atFive(Schedule.ZoneRun... runs) {
        return schedule(List.of(LocalTime.of(5, 0)), runs);
    }

    static Schedule allowing(Schedule s, List<DayOfWeek> days, Schedule.Window... windows) {
        return new Schedule(
                s.zones(), s.days(), s.every(), s.starts(), s.seasonal(), new Schedule.Allowed(days, List.of(windows)));
    }

    static Schedule.Window window(int from, int to) {
        return new Schedule.Window(LocalTime.of(from, 0), LocalTime.of(to, 0));
    }

    /** Four zone valves, and a master valve at rest as said (null: none). */
    static Scenario scenario(Schedule schedule, Plumbing.Normally master) {
        List<Plumbing.Fitting> fittings = new ArrayList<>();
        if (master != null) {
            fittings.add(fitting("master", Plumbing.FittingKind.MASTER_VALVE, master));
        }
        ZONES.forEach(z -> fittings.add(fitting(z, Plumbing.FittingKind.ZONE_VALVE, null)));
        Plumbing.Supply supply = new Plumbing.Supply(Plumbing.SupplyKind.FIXED, "poc", 4e5, List.of());
        Plumbing plumbing = new Plumbing(
                Plumbing.Friction.HAZEN_WILLIAMS,
                supply,
                List.of(new Plumbing.Junction("poc", new Point(0, 0), 0)),
                List.of(),
                fittings,
                List.of(),
                List.of());
        return TestYards.lawn(20, 20)
                .season(MONDAY, 30)
                .plumbing(plumbing)
                .schedule(schedule)
                .scenario();
    }

    private static Plumbing.Fitting fitting(String id, Plumbing.FittingKind kind, Plumbing.Normally normally) {
        return new Plumbing.Fitting(id, kind, null, "main", 1, 0.025, 1, 0, 0, normally);
    }

    // What is placed

    static Placement rain() {
        return new Placement.Rain("rain-1", AT, Mount.POST, 2, 0.006, 0.5);
    }

    static Placement wind() {
        return new Placement.Wind("wind-1", AT, Mount.POST, 2, 4, 3, 300, 0);
    }

    static Placement soil() {
        return new Placement.Soil("soil-1", AT, 0.1, TestYards.SOIL, 0.18, 0.26);
    }

    static Placement.Flow flow(double inches) {
        FlowBody body = FlowBody.of(inches * 0.0254);
        return new Placement.Flow("flow-1", "main", 2, body.size(), body.pulses(), body.offset());
    }

    static SetUp with(Placement placement, Interlock.Action action, String... zones) {
        return SetUp.CLOCK_ALONE.with(placement).with(new Interlock(placement.id(), action, List.of(zones)));
    }

    static FlowWatch watch(double high, FlowWatch.Action onZone, FlowWatch.Action idle, FlowWatch.Expected... flows) {
        return new FlowWatch("flow-1", List.of(flows), true, high, 0, 60, 120, onZone, 2e-3 / 60, 600, idle);
    }

    // What happens

    void set(String id, SensorKind kind, double value, boolean tripped, boolean dry, boolean cut) {
        shown.put(id, new Readings.Reading(id, kind, value, tripped, dry, cut, 0));
    }

    void trip(String id, boolean tripped) {
        set(id, setUp.sensor(id).orElseThrow().kind(), 0, tripped, false, false);
    }

    void soilIs(boolean wet, boolean dry) {
        set("soil-1", SensorKind.SOIL, 0.2, wet, dry, false);
    }

    void flowIs(double flow) {
        set("flow-1", SensorKind.FLOW, flow, false, false, false);
    }

    Readings readings() {
        return new Readings(List.copyOf(shown.values()));
    }

    Commands minute() {
        last = controller.decide(tick, readings());
        events.addAll(last.events());
        String id = last.openId();
        if (id != null) {
            minutes.merge(id, 1, Integer::sum);
            if (order.length() == 0 || !order.substring(order.length() - 1).equals(id)) {
                order.append(id);
            }
        } else if (order.length() > 0 && order.charAt(order.length() - 1) != '-') {
            order.append('-');
        }
        tick++;
        return last;
    }

    Bench live(int count) {
        for (int i = 0; i < count; i++) {
            minute();
        }
        return this;
    }

    /** Lives up to a time of a day, 0 for the first Monday. */
    Bench until(int day, int hour, int minute) {
        return live((int) (day * 1440L + hour * 60L + minute - tick));
    }

    int ran(String zone) {
        return minutes.getOrDefault(zone, 0);
    }

    long count(ControlEvent.Kind kind) {
        return events.stream().filter(e -> e.kind() == kind).count();
    }

    ControlEvent first(ControlEvent.Kind kind) {
        return events.stream().filter(e -> e.kind() == kind).findFirst().orElseThrow();
    }
}
