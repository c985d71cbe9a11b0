package provingyard.control;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.control.ControlEvent.Kind;
import provingyard.control.ControllerRecords.End;
import provingyard.scenario.Scenario;
import provingyard.scenario.Schedule;
import provingyard.sensor.FlowSensor;
import provingyard.sensor.Readings;
import provingyard.setup.FlowWatch;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * A generic controller. Each minute it decides on the last readings which zone is open, one at a time, and whether the
 * master valve is. Mutable; {@link #copy} for snapshots.
 *
 * <p>Zones are all zone valves in the document's order; those without a place in the schedule never run. The ordinance
 * (allowed days and windows) is the site's, whatever the set-up's schedule says. A run that a sensor holds waits for 12
 * hours or until its zone's next start, whichever comes first: a rule of our own, so that no water piles up.
 */
public final class Controller {

    private static final double MINUTE = 60;
    private static final long LONGEST_HOLD = 720;
    private static final long BETWEEN_SOIL_STARTS = 1440;

    private final Scenario scenario;
    private final SetUp setUp;
    private final List<String> zones;
    private final Interlocks interlocks;
    private final ValveBox valves;
    private final RunQueue queue;
    private final FlowJudge judge;
    private final ControllerRecords.Writer records;
    private final boolean[] lockedOut;
    private final Notes notes;
    private final Map<String, Long> soilStarts;
    private ControlFaults wrong = ControlFaults.NONE;
    private Program program;
    private boolean masterShut;
    private boolean cleared;
    private int open = -1;
    /** Zone that people want to run, and the one that they ran in the last minute; -1 for none. */
    private int byHand = -1;

    private int ranByHand = -1;
    private long byHandSince;
    private RunQueue.Job running;
    private long openSince;
    private double openFlow;

    private Controller(Scenario scenario, SetUp setUp, Controller from, RunQueue queue, FlowJudge judge) {
        this.scenario = scenario;
        this.setUp = setUp;
        this.queue = queue;
        this.judge = judge;
        valves = ValveBox.of(scenario);
        zones = valves.zones();
        interlocks = new Interlocks(setUp, zones);
        records = from == null ? new ControllerRecords.Writer(scenario.season().from()) : from.records.copy();
        lockedOut = from == null ? new boolean[zones.size()] : from.lockedOut.clone();
        notes = from == null ? new Notes() : from.notes.copy();
        soilStarts = from == null ? new LinkedHashMap<>() : new LinkedHashMap<>(from.soilStarts);
        if (from != null) {
            masterShut = from.masterShut;
            cleared = from.cleared;
            open = from.open;
            running = from.queue.inCopy(from.running, queue);
            openSince = from.openSince;
            openFlow = from.openFlow;
            wrong = from.wrong;
            byHand = from.byHand;
            ranByHand = from.ranByHand;
            byHandSince = from.byHandSince;
        }
        program = program();
    }

    private Program program() {
        DayOfWeek first = scenario.season().from().getDayOfWeek();
        return new Program(schedule(scenario, setUp), zones, first, wrong);
    }

    /** A controller at rest. */
    public static Controller of(Scenario scenario, SetUp setUp) {
        return new Controller(
                scenario,
                setUp,
                null,
                new RunQueue(),
                new FlowJudge(setUp, ValveBox.of(scenario).zones()));
    }

    private static Schedule schedule(Scenario scenario, SetUp setUp) {
        Schedule own = setUp.schedule() != null ? setUp.schedule() : scenario.schedule();
        Schedule.Allowed ordinance = scenario.schedule().allowed();
        return new Schedule(own.zones(), own.days(), own.every(), own.starts(), own.seasonal(), ordinance);
    }

    /** The same in the same state. */
    public Controller copy() {
        return new Controller(scenario, setUp, this, queue.copy(), judge.copy());
    }

    /**
     * The controller under another set-up from now on. What runs goes on unless the schedule is another, then it ends.
     * Recorded flows stay while the watched sensor is the same; another flow watch re-arms what was locked out.
     */
    public Controller changed(SetUp next) {
        boolean sameSchedule = schedule(scenario, next).equals(schedule(scenario, setUp));
        FlowJudge nextJudge = judge.copy();
        if (!next.flowWatch().equals(setUp.flowWatch()) || !next.sensors().equals(setUp.sensors())) {
            nextJudge = new FlowJudge(next, zones);
            nextJudge.inherit(judge);
        }
        RunQueue kept = sameSchedule ? queue.copy() : new RunQueue();
        Controller changed = new Controller(scenario, next, this, kept, nextJudge);
        changed.cleared |= !sameSchedule && open >= 0;
        if (!next.flowWatch().equals(setUp.flowWatch())) {
            changed.rearm();
        }
        return changed;
    }

    /** Ids of all zone valves, in the document's order: the index of a zone everywhere here. */
    public List<String> zones() {
        return zones;
    }

    /** Whether a zone is locked out. */
    public boolean lockedOut(int zone) {
        return lockedOut[zone];
    }

    /** Whether an alarm shut the master valve (or, where there is none, all zones). */
    public boolean masterShut() {
        return masterShut;
    }

    /** Expected flow of a zone in m3/s, typed or recorded; NaN when neither. */
    public double expected(int zone) {
        return judge.expected(zone);
    }

    /** What the controller remembers. */
    public ControllerRecords records() {
        return records.records();
    }

    /** Flow in m3/s that a flow sensor cannot see. */
    public static double cannotSeeBelow(Placement.Flow placement) {
        return FlowSensor.cannotSeeBelow(placement);
    }

    /** Limit for unscheduled flow in m3/s as it works: at least what the watched sensor can see. */
    public double unscheduledLimit() {
        return judge.unscheduledLimit();
    }

    /** What is wrong in its program from now on; runs that have begun go on as they were. */
    public void faults(ControlFaults now) {
        if (!now.equals(wrong)) {
            wrong = now;
            program = program();
        }
    }

    /**
     * Runs a zone by hand from the next minute on, whatever the schedule and the sensors say; its own runs wait meanwhile.
     * The master valve opens as in a run; the flow watch judges and the records note no such run.
     *
     * @param zone a zone's id, or null to end it; unknown ids are an {@link IllegalArgumentException}
     */
    public void runByHand(String zone) {
        int index = zone == null ? -1 : zones.indexOf(zone);
        if (zone != null && index < 0) {
            throw new IllegalArgumentException(zone + " is no zone");
        }
        byHand = index;
    }

    /** Re-arms all zones and the master valve. */
    public void rearm() {
        Arrays.fill(lockedOut, false);
        masterShut = false;
    }

    /** Re-arms one zone; unknown ids do nothing. */
    public void rearm(String zone) {
        int index = zones.indexOf(zone);
        if (index >= 0) {
            lockedOut[index] = false;
        }
    }

    /** Re-arms the master valve. */
    public void rearmMaster() {
        masterShut = false;
    }

    /**
     * Decides on one minute.
     *
     * @param tick minute of the season, whose first day is the scenario's
     * @param last readings of the minute before
     */
    public Commands decide(long tick, Readings last) {
        return decide(tick, tick, last);
    }

    /**
     * Decides on one minute while its clock was set to another one, as technicians do to see a start.
     *
     * @param tick minute of the season
     * @param clock minute of the season that its clock shows
     * @param last readings of the minute before
     */
    public Commands decide(long tick, long clock, Readings last) {
        notes.begin(tick, last);
        double flow = judge.seen(last);
        records.minute(tick, open >= 0 || ranByHand >= 0, Double.isNaN(flow) ? 0 : flow * MINUTE);
        if (ranByHand < 0) {
            judgeFlow(tick, flow);
        }
        endCleared(tick);
        endMinute(tick);
        if (!queue.isEmpty()) {
            obey(tick, program.allowedAt(clock), last);
        }
        startByClock(tick, clock, last);
        startBySoil(tick, clock, last);
        pause(tick, last);
        takeOver(tick);
        openNext(tick, last);
        int on = byHand >= 0 ? byHand : open;
        return new Commands(zones, on, valves.masterOpen(masterShut, on >= 0), notes.events());
    }

    private void note(long tick, Kind kind, String subject, String cause, Map<String, Double> values) {
        notes.add(new ControlEvent(tick, kind, subject, cause, values));
    }

    private void note(long tick, Kind kind, int zone, String cause) {
        note(tick, kind, zones.get(zone), cause, Map.of());
    }

    // Flow

    private void judgeFlow(long tick, double flow) {
        if (open < 0) {
            if (judge.idle(flow) == FlowJudge.Verdict.UNSCHEDULED) {
                Map<String, Double> values = values("flow", flow, "limit", judge.unscheduledLimit());
                note(tick, Kind.FLOW_UNSCHEDULED, judge.sensorId(), "", values);
                if (judge.watch().onUnscheduled() == FlowWatch.Action.SHUT_MASTER) {
                    shutMaster(tick);
                }
            }
            return;
        }
        openFlow += Double.isNaN(flow) ? 0 : flow;
        FlowJudge.Verdict verdict = judge.running(flow, open, (int) (tick - openSince));
        if (verdict == FlowJudge.Verdict.HIGH || verdict == FlowJudge.Verdict.LOW) {
            Kind kind = verdict == FlowJudge.Verdict.HIGH ? Kind.FLOW_HIGH : Kind.FLOW_LOW;
            note(tick, kind, zones.get(open), "", values("flow", judge.mean(), "expected", judge.expected(open)));
            act(tick, judge.watch().onZone());
        }
    }

    private void act(long tick, FlowWatch.Action action) {
        if (action == FlowWatch.Action.SHUT_MASTER) {
            shutMaster(tick);
        } else if (action == FlowWatch.Action.SHUT_ZONE) {
            int zone = open;
            lockedOut[zone] = true;
            note(tick, Kind.ZONE_LOCKED_OUT, zone, ControlEvent.FLOW);
            for (RunQueue.Job job : queue.jobs()) {
                if (job.zone == zone) {
                    drop(tick, job, End.FLOW, ControlEvent.FLOW);
                }
            }
        }
    }

    private void shutMaster(long tick) {
        masterShut = true;
        if (valves.hasMaster()) {
            note(tick, Kind.MASTER_SHUT, ControlEvent.MASTER, ControlEvent.FLOW, Map.of());
        } else {
            for (int z = 0; z < zones.size(); z++) {
                note(tick, Kind.ZONE_LOCKED_OUT, z, ControlEvent.MASTER);
            }
        }
        for (RunQueue.Job job : queue.jobs()) {
            drop(tick, job, End.MASTER, ControlEvent.MASTER);
        }
    }

    private static Map<String, Double> values(String a, double first, String b, double second) {
        Map<String, Double> values = new LinkedHashMap<>();
        values.put(a, first);
        values.put(b, second);
        return Collections.unmodifiableMap(values);
    }

    // Ends

    /** Takes a job out of the queue for good, and shuts its zone if it is the one that is open. */
    private void drop(long tick, RunQueue.Job job, End why, String cause) {
        queue.remove(job);
        note(tick, Kind.RUN_SHUT, job.zone, cause);
        if (job == running) {
            shut(tick, why);
        }
    }

    private void shut(long tick, End why) {
        long minutes = tick - openSince;
        boolean seen = judge.watches();
        double mean = seen && minutes > 0 ? openFlow / minutes : Double.NaN;
        double volume = seen ? openFlow * MINUTE : Double.NaN;
        records.run(new ControllerRecords.Run(zones.get(open), openSince, tick, mean, volume, why));
        note(tick, Kind.ZONE_OFF, zones.get(open), "", Map.of("minutes", (double) minutes));
        open = -1;
        running = null;
    }

    /** A zone that was open when the schedule changed. */
    private void endCleared(long tick) {
        if (cleared && open >= 0) {
            note(tick, Kind.RUN_SHUT, open, ControlEvent.SET_UP);
            shut(tick, End.SET_UP);
        }
        cleared = false;
    }

    /** Counts the minute that the open zone has run, and shuts it when its part or its whole run is done. */
    private void endMinute(long tick) {
        if (running == null) {
            return;
        }
        running.left--;
        running.leftInPart--;
        if (running.leftInPart > 0) {
            return;
        }
        if (judge.record(open)) {
            note(tick, Kind.EXPECTED_RECORDED, zones.get(open), "", Map.of("flow", judge.expected(open)));
        }
        if (running.left > 0) {
            queue.rest(running, tick);
            shut(tick, End.SOAK);
        } else {
            queue.remove(running);
            shut(tick, End.DONE);
        }
    }

    /** Ends what the ordinance, a sensor or too long a hold ends now. */
    private void obey(long tick, boolean allowed, Readings last) {
        for (RunQueue.Job job : queue.jobs()) {
            String sensor = interlocks.shuts(job.zone, last);
            if (!allowed) {
                drop(tick, job, End.WINDOW, ControlEvent.WINDOW);
            } else if (sensor != null) {
                drop(tick, job, End.SENSOR, sensor);
            } else if (job.paused && tick - job.asked >= LONGEST_HOLD) {
                drop(tick, job, End.PAUSED, ControlEvent.HELD);
            }
        }
    }

    // Starts

    private void startByClock(long tick, long clock, Readings last) {
        if (!program.startsAt(clock)) {
            return;
        }
        boolean allowed = program.allowedAt(clock);
        List<RunQueue.Job> pass = new ArrayList<>();
        for (Program.Entry entry : program.entries()) {
            String cause = allowed ? barred(entry.zone()) : ControlEvent.WINDOW;
            if (cause == null) {
                cause = interlocks.dropsClockStart(entry.zone(), last);
            }
            take(tick, entry, cause, pass, last);
        }
        queue.add(pass);
    }

    private String barred(int zone) {
        if (masterShut) {
            return ControlEvent.MASTER;
        }
        return lockedOut[zone] ? ControlEvent.LOCK_OUT : null;
    }

    private void take(long tick, Program.Entry entry, String cause, List<RunQueue.Job> pass, Readings last) {
        if (cause != null) {
            note(tick, Kind.START_SKIPPED, entry.zone(), cause);
            return;
        }
        if (interlocks.pauses(entry.zone(), last) != null) {
            dropHeld(tick, entry.zone());
        }
        pass.add(new RunQueue.Job(entry, tick));
    }

    /** A held rest gives way to the zone's next start. */
    private void dropHeld(long tick, int zone) {
        for (RunQueue.Job job : queue.jobs()) {
            if (job.zone == zone) {
                drop(tick, job, End.PAUSED, ControlEvent.HELD);
            }
        }
    }

    private void startBySoil(long tick, long clock, Readings last) {
        for (Interlocks.Link link : interlocks.starters()) {
            if (link.dry(last) && isDue(link, tick) && program.allowedAt(clock)) {
                List<RunQueue.Job> pass = soilPass(tick, link, last);
                if (!pass.isEmpty()) {
                    queue.add(pass);
                    soilStarts.put(link.id(), tick);
                }
            }
        }
    }

    private boolean isDue(Interlocks.Link link, long tick) {
        Long before = soilStarts.get(link.id());
        return before == null || tick - before >= BETWEEN_SOIL_STARTS;
    }

    private List<RunQueue.Job> soilPass(long tick, Interlocks.Link link, Readings last) {
        List<RunQueue.Job> pass = new ArrayList<>();
        for (Program.Entry entry : program.entries()) {
            boolean mayRun = barred(entry.zone()) == null && interlocks.dropsAnyStart(entry.zone(), last) == null;
            if (link.zones()[entry.zone()] && mayRun) {
                pass.add(new RunQueue.Job(entry, tick));
            }
        }
        return pass;
    }

    // Holding and opening

    private void pause(long tick, Readings last) {
        String sensor = running == null ? null : interlocks.pauses(open, last);
        if (sensor != null) {
            running.paused = true;
            note(tick, Kind.RUN_PAUSED, open, sensor);
            shut(tick, End.PAUSED);
        }
    }

    /** Begins and ends runs by hand; what runs by the schedule waits. */
    private void takeOver(long tick) {
        if (ranByHand >= 0 && ranByHand != byHand) {
            Map<String, Double> minutes = Map.of("minutes", (double) (tick - byHandSince));
            note(tick, Kind.ZONE_OFF, zones.get(ranByHand), ControlEvent.BY_HAND, minutes);
        }
        if (byHand >= 0 && running != null) {
            running.paused = true;
            note(tick, Kind.RUN_PAUSED, open, ControlEvent.BY_HAND);
            shut(tick, End.PAUSED);
        }
        if (byHand >= 0 && ranByHand != byHand) {
            byHandSince = tick;
            note(tick, Kind.ZONE_ON, byHand, ControlEvent.BY_HAND);
        }
        ranByHand = byHand;
    }

    private void openNext(long tick, Readings last) {
        if (byHand >= 0 || running != null || queue.isEmpty()) {
            return;
        }
        RunQueue.Job job = queue.next(tick, j -> holds(tick, j, last));
        if (job == null) {
            return;
        }
        if (job.paused) {
            job.paused = false;
            note(tick, Kind.RUN_RESUMED, job.zone, "");
        }
        running = job;
        open = job.zone;
        openSince = tick;
        openFlow = 0;
        judge.opened();
        note(tick, Kind.ZONE_ON, zones.get(open), "", Map.of());
    }

    private boolean holds(long tick, RunQueue.Job job, Readings last) {
        String sensor = interlocks.pauses(job.zone, last);
        if (sensor != null && !job.paused) {
            job.paused = true;
            note(tick, Kind.RUN_PAUSED, job.zone, sensor);
        }
        return sensor != null;
    }
}
