package provingyard.season;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import provingyard.control.Commands;
import provingyard.control.ControlEvent;
import provingyard.control.Controller;
import provingyard.scenario.Scenario;
import provingyard.scenario.Schedule;
import provingyard.season.Proof.Finding;
import provingyard.season.Proof.Minute;
import provingyard.season.Proof.Reaction;
import provingyard.season.Proof.Test;
import provingyard.season.Proof.Valve;
import provingyard.season.Proof.Verdict;
import provingyard.sensor.Readings;
import provingyard.sensor.SensorFaults;
import provingyard.sensor.Sensors;
import provingyard.sensor.SoilSensor;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.world.hydraulics.WaterFlows;

/**
 * Tests a placed sensor as a technician does before the owner trusts it: the real sensor and the real controller for some
 * minutes, with what the hand does in place of the weather, while a zone runs. The sensor begins dry and at rest. The
 * season that is asked is not touched: nothing is lived, and all that was changed for the test is back behind it.
 *
 * <p>A pure function of the season's site, seed, minute, faults and set-up. Tolerances are common practice, no source.
 */
public final class Proving {

    /** m poured in a minute. */
    private static final double POUR = 0.5e-3;

    /** m that warm air dries in a minute. */
    private static final double WARM_AIR = 0.25e-3;

    /** Volume share over the wet point up to which water is poured at the probe. */
    private static final double WELL_WET = 0.08;

    private static final int LONGEST = 400;
    private static final int AT_REST = 3;
    private static final int AFTER_TRIP = 6;
    private static final int SECOND_START = 3;
    private static final int SETTLE = 2;
    private static final int METERED = 5;
    private static final double MINUTE = 60;
    private static final double RUN = 36_000;

    /** Share and m/s by which cups may differ from an anemometer. */
    private static final double WIND_SHARE = 0.1;

    private static final double WIND_OFF = 0.3;
    /** K by which a freeze sensor may differ from a thermometer. */
    private static final double FREEZE_OFF = 1;
    /** Share by which a flow sensor may differ from a meter. */
    private static final double FLOW_OFF = 0.05;
    /** Volume share by which a soil sensor may differ from a core. */
    private static final double SOIL_OFF = 0.03;

    private final Season season;
    private final Site site;
    private final SetUp setUp;
    private final Placement placement;
    private final Test test;
    private final String zone;
    private final long active;
    private final BenchSurroundings hand;
    private final Sensors sensors;
    private final LocalDateTime start;
    private final List<Minute> minutes = new ArrayList<>();
    private final List<WaterFlows> flows = new ArrayList<>();
    private final List<ControlEvent> events = new ArrayList<>();
    private Controller controller;
    private Readings readings;
    private int trippedAt = -1;
    private int rearmedAt = -1;

    private Proving(Season season, SetUp setUp, Placement placement, Test test) {
        this.season = season;
        this.setUp = setUp;
        this.placement = placement;
        this.test = test;
        site = season.site();
        active = season.faultsActive();
        hand = season.bench();
        sensors = Sensors.of(site.scenario(), setUp, season.streams());
        readings = sensors.readings();
        zone = zone();
        start = allowedStart(site.scenario());
        controller = controller(FlowWatch.OFF);
    }

    /**
     * Tests a sensor at the season's minute.
     *
     * @param setUp the set-up to be proven, which may not have been lived yet
     * @param sensor id of one of its sensors
     * @throws IllegalArgumentException when it is not placed, or the test is for another kind
     */
    public static Proof run(Season season, SetUp setUp, String sensor, Test test) {
        Placement placement =
                setUp.sensor(sensor).orElseThrow(() -> new IllegalArgumentException("no sensor " + sensor));
        if (placement.kind() != test.kind()) {
            throw new IllegalArgumentException(test + " is not for " + sensor);
        }
        Proving proving = new Proving(season, setUp, placement, test);
        return new Proof(test, sensor, proving.zone, proving.minutes, proving.verdict());
    }

    private Verdict verdict() {
        return switch (test) {
            case POUR -> pour((Placement.Rain) placement);
            case SPIN -> spin((Placement.Wind) placement);
            case COOL -> cool((Placement.Freeze) placement);
            case METER -> meter();
            case LIMIT -> limit();
            case CORE -> core((Placement.Soil) placement);
        };
    }

    // What the hand does

    private Verdict pour(Placement.Rain p) {
        double[] poured = {0};
        ToDoubleFunction<WaterFlows> cup = f -> poured[0];
        double most = 2 * p.trip();
        live(AT_REST, cup);
        while (poured[0] < most && (trippedAt < 0 || minutes.size() < trippedAt + AFTER_TRIP)) {
            hand.poured = POUR;
            poured[0] += POUR;
            live(1, cup);
        }
        hand.poured = 0;
        hand.dried = WARM_AIR;
        liveUntilRearmed(cup);
        return told(Double.NaN, Double.NaN, p.trip(), trips(p.trip()));
    }

    private Set<Finding> trips(double setPoint) {
        Set<Finding> findings = tripFindings();
        if (trippedAt >= 0 && minutes.get(trippedAt).reference() > 1.5 * setPoint) {
            findings.add(Finding.READS_OFF);
        }
        return findings;
    }

    private Verdict spin(Placement.Wind p) {
        ToDoubleFunction<WaterFlows> anemometer = f -> hand.wind;
        int level = (int) Math.max(AFTER_TRIP, p.averaging() / MINUTE + SECOND_START + 1);
        hand.wind = 0;
        live(AT_REST + 2, anemometer);
        for (double share : new double[] {0.5, 0.9, 1.3}) {
            hand.wind = share * p.trip();
            live(level, anemometer);
        }
        int end = minutes.size();
        double reference = mean(end - SECOND_START, end, Minute::reference);
        double reading = mean(end - SECOND_START, end, Minute::reading);
        hand.wind = 0;
        liveUntilRearmed(anemometer);
        Set<Finding> findings = tripFindings();
        if (Math.abs(reading - reference) > WIND_OFF + WIND_SHARE * reference) {
            findings.add(Finding.READS_OFF);
        }
        return told(reference, reading, p.trip(), findings);
    }

    private Verdict cool(Placement.Freeze p) {
        ToDoubleFunction<WaterFlows> thermometer = f -> hand.air;
        hand.wind = 1;
        hand.air = p.rearm() + 4;
        live(AT_REST, thermometer);
        while (hand.air > p.below() - 3) {
            hand.air -= 0.25;
            live(1, thermometer);
        }
        live(30, thermometer);
        int end = minutes.size();
        double reference = mean(end - METERED, end, Minute::reference);
        double reading = mean(end - METERED, end, Minute::reading);
        while (rearmedAt < 0 && minutes.size() < LONGEST) {
            hand.air = Math.min(hand.air + 0.5, p.rearm() + 4);
            live(1, thermometer);
        }
        Set<Finding> findings = tripFindings();
        if (Math.abs(reading - reference) > FREEZE_OFF) {
            findings.add(Finding.READS_OFF);
        }
        return told(reference, reading, p.below(), findings);
    }

    private Verdict core(Placement.Soil p) {
        double natural = hand.soil(p.at(), p.depth(), SoilSensor.SUPPORT).water();
        double wet = Math.max(natural, p.wet()) + WELL_WET;
        hand.soil = natural;
        ToDoubleFunction<WaterFlows> core = f -> hand.soil;
        live(31, core);
        double reference = mean(0, minutes.size(), Minute::reference);
        double reading = mean(0, minutes.size(), Minute::reading);
        while (hand.soil < wet && (trippedAt < 0 || minutes.size() < trippedAt + AFTER_TRIP)) {
            hand.soil = Math.min(wet, hand.soil + 0.004);
            live(1, core);
        }
        live(20, core);
        hand.soil = natural;
        live(21, core);
        Set<Finding> findings = tripFindings();
        findings.remove(Finding.STAYS_TRIPPED);
        if (reference >= p.wet() - SOIL_OFF) {
            // Soil that is wet as it lies is no fault of the sensor's.
            findings.remove(Finding.TRIPPED_AT_REST);
        }
        if (Math.abs(reading - reference) > SOIL_OFF) {
            findings.add(Finding.READS_OFF);
        }
        return told(reference, reading, p.wet(), findings);
    }

    private Verdict meter() {
        live(SETTLE + METERED + 1, this::past);
        double sensor = 0;
        double meter = 0;
        for (int m = SETTLE; m < SETTLE + METERED; m++) {
            sensor += minutes.get(m).reading() * MINUTE;
            meter += flows.get(m).supply() * MINUTE;
        }
        Set<Finding> findings = EnumSet.noneOf(Finding.class);
        if (Math.abs(past(flows.get(SETTLE))) <= 1e-9) {
            findings.add(Finding.NO_WATER);
        } else if (Math.abs(sensor - meter) > FLOW_OFF * meter) {
            findings.add(Finding.READS_OFF);
        }
        return new Verdict(meter, sensor, Double.NaN, Double.NaN, -1, -1, Reaction.RAN_ON, findings);
    }

    private Verdict limit() {
        FlowWatch watch = setUp.flowWatch();
        if (!placement.id().equals(watch.sensor())) {
            Set<Finding> none = EnumSet.of(Finding.NOT_WATCHED);
            return new Verdict(Double.NaN, Double.NaN, Double.NaN, Double.NaN, -1, -1, Reaction.RAN_ON, none);
        }
        double half = runningFlow() / 2;
        controller = controller(tooLow(watch, half));
        int wait = (int) ((watch.settling() + watch.averaging()) / MINUTE) + AFTER_TRIP;
        live(Math.min(LONGEST, wait + SECOND_START), this::past);
        int alarm = -1;
        for (ControlEvent event : events) {
            alarm = event.kind() == ControlEvent.Kind.FLOW_HIGH && alarm < 0 ? (int) (event.tick() - tick()) : alarm;
        }
        Set<Finding> findings = EnumSet.noneOf(Finding.class);
        if (alarm < 0) {
            findings.add(Finding.NEVER_TRIPPED);
        } else if (reaction() == Reaction.ALARM_ONLY) {
            findings.add(Finding.NOT_OBEYED);
        }
        double at = alarm > 0 ? minutes.get(alarm - 1).reading() : Double.NaN;
        return new Verdict(Double.NaN, at, at, half * watch.high(), alarm, -1, reaction(), findings);
    }

    /** What the sensor shows while the zone runs; asked of a run of its own. */
    private double runningFlow() {
        live(SETTLE + METERED, this::past);
        double flow = mean(SETTLE, minutes.size(), Minute::reading);
        minutes.clear();
        flows.clear();
        events.clear();
        return flow;
    }

    private FlowWatch tooLow(FlowWatch w, double flow) {
        List<FlowWatch.Expected> expected = List.of(new FlowWatch.Expected(zone, flow));
        return new FlowWatch(
                w.sensor(),
                expected,
                false,
                w.high(),
                0,
                w.settling(),
                w.averaging(),
                w.onZone(),
                w.unscheduled(),
                w.unscheduledAfter(),
                w.onUnscheduled());
    }

    /** Flow past the sensor; 0 for sensors that are not in a pipe. */
    private double past(WaterFlows now) {
        return placement instanceof Placement.Flow f ? Math.abs(now.at(f.on(), f.along())) : 0;
    }

    // The minutes

    private long tick() {
        return season.tick();
    }

    private void liveUntilRearmed(ToDoubleFunction<WaterFlows> reference) {
        while (rearmedAt < 0 && trippedAt >= 0 && minutes.size() < LONGEST) {
            live(1, reference);
        }
        live(SECOND_START, reference);
    }

    private void live(int count, ToDoubleFunction<WaterFlows> reference) {
        for (int i = 0; i < count; i++) {
            minute(minutes.size(), reference);
        }
    }

    /** Minute of the season that the controller's clock is set to, so that the tried program starts. */
    private long startTick() {
        return ChronoUnit.MINUTES.between(site.scenario().season().from().atStartOfDay(), start);
    }

    private void minute(int m, ToDoubleFunction<WaterFlows> reference) {
        boolean again = trippedAt >= 0 && m == trippedAt + SECOND_START && dropsStarts();
        long clock = m == 0 || again ? startTick() : startTick() + 1;
        Commands commands = controller.decide(tick() + m, clock, readings);
        events.addAll(commands.events());
        WaterFlows now = Standing.of(site, commands, season.held(), active).flows(site, active);
        hand.flows = now;
        SensorFaults troubles = SensorTroubles.of(site.scenario(), active);
        readings = sensors.minute(tick() + m, hand, troubles);
        Readings.Reading reading = readings.of(placement.id()).orElseThrow();
        Valve valve = zone.equals(commands.openId()) ? Valve.OPEN : Valve.SHUT;
        flows.add(now);
        minutes.add(new Minute(reference.applyAsDouble(now), reading.shown(), reading.open(), valve));
        if (reading.open() && trippedAt < 0) {
            trippedAt = m;
        } else if (!reading.open() && trippedAt >= 0 && rearmedAt < 0) {
            rearmedAt = m;
        }
    }

    private double mean(int from, int to, ToDoubleFunction<Minute> value) {
        return minutes.subList(from, to).stream().mapToDouble(value).average().orElse(Double.NaN);
    }

    // What it comes to

    private Set<Finding> tripFindings() {
        Set<Finding> findings = EnumSet.noneOf(Finding.class);
        if (trippedAt < 0) {
            findings.add(Finding.NEVER_TRIPPED);
            return findings;
        }
        if (trippedAt == 0) {
            findings.add(Finding.TRIPPED_AT_REST);
        }
        if (rearmedAt < 0) {
            findings.add(Finding.STAYS_TRIPPED);
        }
        if (reaction() == Reaction.RAN_ON) {
            findings.add(Finding.NOT_OBEYED);
        }
        return findings;
    }

    private Verdict told(double reference, double reading, double setPoint, Set<Finding> findings) {
        double at = trippedAt < 0 ? Double.NaN : minutes.get(trippedAt).reference();
        return new Verdict(reference, reading, at, setPoint, trippedAt, rearmedAt, reaction(), findings);
    }

    private Reaction reaction() {
        Reaction reaction = Reaction.RAN_ON;
        for (ControlEvent event : events) {
            boolean by = event.cause().equals(placement.id());
            Reaction told =
                    switch (event.kind()) {
                        case MASTER_SHUT -> Reaction.ALL_SHUT;
                        case ZONE_LOCKED_OUT ->
                            event.cause().equals(ControlEvent.MASTER) ? Reaction.ALL_SHUT : Reaction.SHUT;
                        case RUN_SHUT -> by ? Reaction.SHUT : null;
                        case RUN_PAUSED -> by ? Reaction.HELD : null;
                        case START_SKIPPED -> by ? Reaction.START_DROPPED : null;
                        case FLOW_HIGH -> Reaction.ALARM_ONLY;
                        default -> null;
                    };
            boolean first = reaction == Reaction.RAN_ON || reaction == Reaction.ALARM_ONLY;
            reaction = told != null && first ? told : reaction;
        }
        return reaction;
    }

    // The run meanwhile

    private Interlock interlock() {
        return setUp.interlocks().stream()
                .filter(i -> i.sensor().equals(placement.id()))
                .findFirst()
                .orElse(null);
    }

    /** Whether it acts on starts alone, so that a second start has to show it. */
    private boolean dropsStarts() {
        Interlock interlock = interlock();
        return interlock != null
                && switch (interlock.action()) {
                    case SKIP, BLOCK, ALLOW, START -> true;
                    case NONE, PAUSE, SHUT -> false;
                };
    }

    /** The zone that runs: for a flow sensor the one that passes most water by it, else the first that it acts on. */
    private String zone() {
        List<String> zones = site.waterworks().zones();
        if (placement instanceof Placement.Flow) {
            int best = 0;
            double most = -1;
            for (int z = 0; z < zones.size(); z++) {
                boolean[] open = new boolean[zones.size()];
                open[z] = true;
                double flow = past(site.waterworks().flows(open, true, active));
                best = flow > most ? z : best;
                most = Math.max(most, flow);
            }
            return zones.get(best);
        }
        Interlock interlock = interlock();
        return schedule().zones().stream()
                .map(Schedule.ZoneRun::zone)
                .filter(z -> interlock == null || interlock.actsOn(z))
                .findFirst()
                .orElse(zones.get(0));
    }

    private Schedule schedule() {
        return setUp.schedule() != null ? setUp.schedule() : site.scenario().schedule();
    }

    /**
     * The controller at rest, with one run of the zone that is started by hand and lasts as long as the test; the other
     * sensors are bypassed, so that only this one is seen at work.
     */
    private Controller controller(FlowWatch watch) {
        Schedule.ZoneRun run = new Schedule.ZoneRun(zone, RUN, 0, 0);
        Schedule byHand = new Schedule(
                List.of(run),
                List.of(),
                1,
                List.of(start.toLocalTime()),
                1,
                site.scenario().schedule().allowed());
        List<Interlock> own = setUp.interlocks().stream()
                .filter(i -> i.sensor().equals(placement.id()))
                .toList();
        return Controller.of(site.scenario(), new SetUp(setUp.sensors(), own, watch, byHand));
    }

    /** A minute at which the ordinance lets water run. */
    private static LocalDateTime allowedStart(Scenario scenario) {
        Schedule.Allowed allowed = scenario.schedule().allowed();
        LocalTime time = allowed.windows().isEmpty()
                ? LocalTime.of(6, 0)
                : allowed.windows().get(0).from();
        LocalDateTime at = scenario.season().from().atTime(time);
        List<DayOfWeek> days = allowed.days();
        while (!days.isEmpty() && !days.contains(at.getDayOfWeek())) {
            at = at.plusDays(1);
        }
        return at;
    }
}
