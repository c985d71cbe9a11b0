package provingyard.season;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import provingyard.control.Commands;
import provingyard.control.ControlEvent;
import provingyard.control.Controller;
import provingyard.control.ControllerRecords;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Kit;
import provingyard.scenario.Scenario;
import provingyard.sensor.Readings;
import provingyard.sensor.SensorFaults;
import provingyard.sensor.Sensors;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.world.ground.Ground;
import provingyard.world.ground.MinuteForcing;
import provingyard.world.ground.Watering;
import provingyard.world.hydraulics.Hands;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.weather.StoredHeat;
import provingyard.world.weather.Weather;
import provingyard.world.weather.WeatherSeries;

/**
 * One run of a site under a set-up, minute by minute: a pure function of the scenario, the seed, the faults that were
 * dealt, and what people did, each with its tick: set-ups, re-arming, hands on valves and zones run by hand, repairs.
 * Mutable; {@link #copy()} makes a keyframe that goes its own way. Not safe for several threads at once.
 */
public final class Season {

    /** Version of the simulator's results; marks found by another version do not count. */
    public static final String ENGINE = "7";

    private static final int MINUTES_A_DAY = 1440;
    private static final int SECONDS = 60;

    /** A set-up and the tick from which it holds. */
    public record Change(long tick, SetUp setUp) {}

    /** A fault of the scenario, by its index among the first 63, that begins at a tick. */
    public record Dealt(int fault, long tick) {}

    /**
     * What people hold from a tick on.
     *
     * @param hands valves held open or shut
     * @param zone the zone that they run at the controller, or null
     */
    public record Handled(long tick, Hands hands, String zone) {}

    /** A fault of the scenario, by its index, that is repaired at a tick. */
    public record Repair(long tick, int fault) {}

    /** From a sunset to the next sunrise, in ticks. */
    public record Night(long from, long to) {}

    private final Site site;
    private final RandomStreams streams;
    private final Course course;
    private final FaultTimeline faults;
    private final WeatherSeries weather;
    private final long end;
    private final Ground start;
    private final double storeAtStart;
    private final Ground ground;
    private final Course.Twin twin;
    private final StoredHeat.Whole heat;
    private final SeasonSurroundings surroundings;
    private final Tally tally;
    private final LeakLog leakLog;
    private final IceLog iceLog;
    private final Series.Recorder recorder;
    private final RunTrace.Recorder traces;
    private final List<Long> rearms;
    private final Shown.Log shown;
    private final List<SeasonEvent> events;
    private final List<Change> changes;
    private final List<Handled> handled;
    private final List<Repair> repairs;
    private Sensors sensors;
    private Controller controller;
    private Readings readings;
    private Commands commands;
    private Hands hands = Hands.OFF;
    private String byHand;
    private Standing standing;
    private long acting;
    private WaterFlows flows;
    private boolean sprays;
    /** Where each minute's water lands, in place of the last one's: made when first needed, and never a copy's. */
    private Watering spray;

    private SensorFaults troubles = SensorFaults.NONE;
    private SetUp setUp;
    private double spent;
    private boolean raining;
    private long unsolved;
    private boolean solved = true;
    private long tick;

    private Season(Site site, RandomStreams streams, Course course, FaultTimeline faults, int days, SetUp first) {
        this.site = site;
        this.streams = streams;
        this.course = course;
        this.faults = faults;
        weather = course.weather();
        this.end = (long) days * MINUTES_A_DAY;
        Scenario scenario = site.scenario();
        start = course.start();
        ground = start.copy();
        twin = new Course.Twin(course);
        storeAtStart = ground.totals().store();
        heat = course.heat().whole();
        surroundings = new SeasonSurroundings(site, ground);
        tally = new Tally();
        leakLog = new LeakLog(scenario, faults);
        iceLog = new IceLog(scenario.yard().surfaces());
        recorder = new Series.Recorder(days * 24);
        traces = new RunTrace.Recorder();
        rearms = new ArrayList<>();
        shown = new Shown.Log(end);
        shown.watch(first);
        events = new ArrayList<>();
        changes = new ArrayList<>(List.of(new Change(0, first)));
        handled = new ArrayList<>();
        repairs = new ArrayList<>();
        setUp = first;
        spent = price(first, scenario.kit());
        sensors = Sensors.of(scenario, first, streams);
        controller = Controller.of(scenario, first);
        readings = sensors.readings();
        commands = new Commands(controller.zones(), -1, site.waterworks().masterOpenAtRest(), List.of());
        standing = Standing.of(site, commands, hands, acting);
        flows = standing.flows(site, acting);
        sprays = Spraying.runs(flows);
    }

    private Season(Season other) {
        site = other.site;
        streams = other.streams;
        course = other.course;
        faults = other.faults;
        weather = other.weather;
        end = other.end;
        start = other.start;
        storeAtStart = other.storeAtStart;
        ground = other.ground.copy();
        twin = other.twin.copy();
        heat = other.heat;
        surroundings = new SeasonSurroundings(site, ground);
        tally = other.tally.copy();
        leakLog = other.leakLog.copy();
        iceLog = other.iceLog.copy();
        recorder = other.recorder.copy();
        traces = other.traces.copy();
        rearms = new ArrayList<>(other.rearms);
        shown = other.shown.copy();
        events = new ArrayList<>(other.events);
        changes = new ArrayList<>(other.changes);
        handled = new ArrayList<>(other.handled);
        repairs = new ArrayList<>(other.repairs);
        sensors = other.sensors.copy();
        controller = other.controller.copy();
        readings = other.readings;
        commands = other.commands;
        hands = other.hands;
        byHand = other.byHand;
        standing = other.standing;
        acting = other.acting;
        flows = other.flows;
        sprays = other.sprays;
        troubles = other.troubles;
        setUp = other.setUp;
        spent = other.spent;
        raining = other.raining;
        unsolved = other.unsolved;
        solved = other.solved;
        tick = other.tick;
    }

    /** The site's own season with another seed and number of days; events and faults are as the author wrote them. */
    public static Season begin(Site site, long seed, int days, SetUp first) {
        RandomStreams streams = new RandomStreams(seed);
        FaultTimeline faults = FaultTimeline.ofOwnSeason(site.scenario(), days);
        return new Season(site, streams, site.course(days, streams), faults, days, first);
    }

    /** The site's own season as the author wrote it. */
    public static Season begin(Site site, SetUp first) {
        return begin(
                site, site.scenario().season().seed(), site.scenario().season().days(), first);
    }

    /**
     * The site's own season with faults that begin at chosen ticks instead of those that the author wrote. Nobody repairs
     * them but {@link #repair}, and nobody re-arms the controller but {@link #rearm}.
     *
     * @throws IllegalArgumentException for a fault that the scenario does not list among its first 63
     */
    public static Season begin(Site site, SetUp first, List<Dealt> dealt) {
        RandomStreams streams = new RandomStreams(site.scenario().season().seed());
        int days = site.scenario().season().days();
        FaultTimeline faults = FaultTimeline.dealt(site.scenario(), dealt);
        return new Season(site, streams, site.course(days, streams), faults, days, first);
    }

    /** Another season of the same place: draw {@code draw} of its climate, its events and its faults by their rates. */
    public static Season drawn(Site site, int draw, SetUp first) {
        int days = site.scenario().season().days();
        RandomStreams own = new RandomStreams(site.scenario().season().seed());
        RandomStreams streams = new RandomStreams(own.key("draw." + draw));
        FaultTimeline faults = FaultTimeline.drawn(site.scenario(), days, streams);
        return new Season(site, streams, site.drawnCourse(days, streams), faults, days, first);
    }

    /** The same season in the same minute, which then goes its own way. */
    public Season copy() {
        return new Season(this);
    }

    /** Minutes lived. */
    public long tick() {
        return tick;
    }

    /** The minute at which the season is over. */
    public long end() {
        return end;
    }

    /** Whether it was lived to its end. */
    public boolean over() {
        return tick >= end;
    }

    /** The site. */
    public Site site() {
        return site;
    }

    /** The ground as it is; not to be changed. */
    Ground ground() {
        return ground;
    }

    /** The seed of all its chance. */
    public long seed() {
        return streams.seed();
    }

    /** What chance is drawn from. */
    RandomStreams streams() {
        return streams;
    }

    /** Bit i is set while the scenario's i-th fault acts. */
    long faultsActive() {
        return leakLog.active();
    }

    /** The yard as it stands at this minute, to test sensors in; the season does not notice. */
    BenchSurroundings bench() {
        long now = Math.min(tick, end - 1);
        SeasonSurroundings yard = new SeasonSurroundings(site, ground);
        yard.minute(weather.at(now), heat.after(now), flows, null);
        return new BenchSurroundings(site, yard, flows);
    }

    /** The set-up in force. */
    public SetUp setUp() {
        return setUp;
    }

    /** All set-ups with the ticks from which they held, in order. */
    public List<Change> changes() {
        return Collections.unmodifiableList(changes);
    }

    /** All that happened so far, in order. */
    public List<SeasonEvent> events() {
        return List.copyOf(events);
    }

    /** Events from an index on; valid until the next minute is lived. */
    List<SeasonEvent> eventsFrom(int index) {
        return Collections.unmodifiableList(events.subList(index, events.size()));
    }

    /** How many events there were so far. */
    public int eventCount() {
        return events.size();
    }

    /** The hours lived. */
    public Series series() {
        return recorder.series(course.hours());
    }

    /** What flow and soil sensors showed over the minutes lived. */
    public List<Shown> shown() {
        return shown.shown();
    }

    /** Nights from sunset to sunrise that touch the season, in ticks. */
    public List<Night> nights() {
        List<Night> nights = new ArrayList<>();
        int days = (int) (end / MINUTES_A_DAY);
        nights.add(new Night(0, weather.sunrise(0)));
        for (int day = 0; day < days; day++) {
            long until = day + 1 < days ? weather.sunrise(day + 1) : end;
            nights.add(new Night(weather.sunset(day), until));
        }
        return nights;
    }

    /** Changes the set-up from this minute on. */
    public void change(SetUp next) {
        if (next.equals(setUp)) {
            return;
        }
        if (tick == 0) {
            changes.clear();
            spent = price(next, site.scenario().kit());
        } else {
            spent += newlyBought(next);
            events.add(new SeasonEvent(tick, SeasonEvent.Kind.SET_UP_CHANGED, "set-up", Map.of()));
        }
        changes.add(new Change(tick, next));
        sensors = sensors.changed(next);
        controller = controller.changed(next);
        readings = sensors.readings();
        shown.watch(next);
        setUp = next;
    }

    /** Re-arms what the flow watch locked out or shut. */
    public void rearm() {
        rearms.add(tick);
        controller.rearm();
    }

    /** Minutes at which the controller was re-armed by hand, rising. */
    public List<Long> rearms() {
        return List.copyOf(rearms);
    }

    /** Whether it was re-armed by hand in a minute. */
    boolean rearmedAt(long minute) {
        return rearms.contains(minute);
    }

    /** Holds valves open or shut from this minute on, instead of those held before; {@link Hands#OFF} lets go of all. */
    public void hands(Hands next) {
        handle(next, byHand);
    }

    /**
     * Runs a zone by hand at the controller from this minute on, whatever schedule and sensors say, until told otherwise.
     *
     * @param zone id of a zone valve, or null to end it
     */
    public void runByHand(String zone) {
        handle(hands, zone);
    }

    /** Holds valves and runs a zone; unknown ids are an {@link IllegalArgumentException}. */
    void handle(Hands next, String zone) {
        if (next.equals(hands) && Objects.equals(zone, byHand)) {
            return;
        }
        Stream.concat(next.opened().stream(), next.shut().stream()).forEach(this::known);
        controller.runByHand(zone);
        handled.removeIf(h -> h.tick() == tick);
        handled.add(new Handled(tick, next, zone));
        hands = next;
        byHand = zone;
    }

    private void known(String fitting) {
        boolean there = site.scenario().plumbing().fittings().stream().anyMatch(f -> f.id().equals(fitting));
        if (!there) {
            throw new IllegalArgumentException(
                    fitting + " is no fitting of " + site.scenario().id());
        }
    }

    /** Valves that people hold. */
    public Hands held() {
        return hands;
    }

    /** Id of the zone that is run by hand, or null. */
    public String runsByHand() {
        return byHand;
    }

    /** What people held, with the ticks from which they did, rising. */
    public List<Handled> handled() {
        return List.copyOf(handled);
    }

    /** What people began to hold in a minute. */
    Optional<Handled> handledAt(long minute) {
        return handled.stream().filter(h -> h.tick() == minute).findFirst();
    }

    /** Ends a fault that has begun, by its index, from this minute on. */
    public void repair(int fault) {
        repairs.add(new Repair(tick, fault));
        leakLog.repair(fault, tick);
    }

    /** Repairs by {@link #repair}, in order. */
    public List<Repair> repairs() {
        return List.copyOf(repairs);
    }

    /** Faults that were repaired in a minute. */
    List<Integer> repairsAt(long minute) {
        return repairs.stream()
                .filter(r -> r.tick() == minute)
                .map(Repair::fault)
                .toList();
    }

    /** The same season before its first minute, with the set-up that held then. */
    Season fromTheBeginning() {
        return beside(changes.get(0).setUp());
    }

    /** The same weather, events and faults before the first minute, under another set-up; safe for several threads. */
    public Season beside(SetUp first) {
        int days = (int) (end / MINUTES_A_DAY);
        return new Season(site, streams, course, faults, days, first);
    }

    /** The weather of a minute. */
    Weather weather(long minute) {
        return weather.at(minute);
    }

    /** The heat of walls after each minute. */
    StoredHeat.Whole heat() {
        return heat;
    }

    /** What the world is like around the sensors in the last minute lived. */
    SeasonSurroundings surroundings() {
        return surroundings;
    }

    /** Copies of sensors and controller as they are, to be lived on elsewhere. */
    Exposure.Devices devices() {
        return new Exposure.Devices(sensors.copy(), controller.copy(), readings);
    }

    /** What the sensors show since the last minute lived. */
    Readings readings() {
        return readings;
    }

    /** What flows since the last minute lived. */
    WaterFlows flows() {
        return flows;
    }

    /** m3/s that faults lose since the last minute lived: openings in pipes, and what valves let through unasked. */
    public double lost() {
        return Arrays.stream(flows.faults()).sum();
    }

    /** m3/s that come in at the point of connection since the last minute lived. */
    public double supply() {
        return flows.supply();
    }

    /** How valves stood in the last minute lived. */
    Standing standing() {
        return standing;
    }

    /** What the controller wanted in the last minute lived. */
    Commands commands() {
        return commands;
    }

    /** Faults that acted on sensors in the last minute lived. */
    SensorFaults troubles() {
        return troubles;
    }

    /** Whether some sensor breaks at some time of the season. */
    boolean sensorsBreak() {
        return faults.begins().stream()
                .anyMatch(b -> SensorTroubles.isOne(site.scenario().faults().get(b.fault())));
    }

    /** What drifted and flew beside the plants so far. */
    Tally tally() {
        return tally;
    }

    /** The leaks so far. */
    LeakLog leakLog() {
        return leakLog;
    }

    /** The iced walks so far. */
    IceLog iceLog() {
        return iceLog;
    }

    /** Where irrigation's water went so far. */
    Ledger.Irrigation irrigation() {
        return tally.irrigation(ground, twin.sumsAfter(tick));
    }

    /** What the watched flow sensor showed in each zone's last ended run. */
    public List<RunTrace> lastRuns() {
        return traces.last();
    }

    /** Lives all that is left. */
    public void liveToEnd() {
        while (!over()) {
            advance();
        }
    }

    /** Lives one minute. */
    public void advance() {
        Weather now = weather.at(tick);
        events.addAll(leakLog.begin(tick));
        if (leakLog.rearmIsDue(tick)) {
            controller.rearm();
        }
        breakAndMend();
        decide();
        noteSolution();
        MinuteForcing forcing = Course.forcing(now);
        Watering landed = water(forcing, now.windFrom());
        ground.step(forcing, landed);
        surroundings.minute(now, heat.after(tick), flows, landed);
        readings = sensors.minute(tick, surroundings, troubles);
        shown.minute(readings);
        traces.minute(tick, commands.openId(), flowShown());
        note(now);
        tick++;
    }

    private void noteSolution() {
        boolean now = flows.problem() == null;
        if (!now) {
            unsolved++;
        }
        if (solved && !now) {
            events.add(new SeasonEvent(tick, SeasonEvent.Kind.PIPES_NOT_SOLVED, "pipes", Map.of()));
        }
        solved = now;
    }

    /** Lets faults that began or ended act on sensors and the controller. */
    private void breakAndMend() {
        if (leakLog.active() != acting) {
            troubles = SensorTroubles.of(site.scenario(), leakLog.active());
            controller.faults(ControlTroubles.of(site.scenario(), leakLog.active()));
        }
    }

    private void decide() {
        Commands next = controller.decide(tick, readings);
        for (ControlEvent raised : next.events()) {
            SeasonEvent event = told(raised);
            events.add(event);
            boolean alarm =
                    switch (event.kind()) {
                        case FLOW_HIGH, FLOW_UNSCHEDULED -> true;
                        default -> false;
                    };
            if (alarm) {
                events.addAll(leakLog.alarm(tick, event.subject(), standing.isMoreThan(commands, site), flows::lost));
            }
        }
        leakLog.look(tick, flows::lost);
        obey(next);
    }

    /** Opens and shuts valves; flows are looked up when valves, hands or faults are others than before. */
    private void obey(Commands next) {
        boolean sameFaults = leakLog.active() == acting;
        acting = leakLog.active();
        if (!sameFaults || !next.sameValves(commands) || !hands.equals(standing.hands())) {
            standing = Standing.of(site, next, hands, acting);
            flows = standing.flows(site, acting);
            sprays = Spraying.runs(flows);
        }
        commands = next;
    }

    private static SeasonEvent told(ControlEvent e) {
        return new SeasonEvent(e.tick(), SeasonEvent.Kind.valueOf(e.kind().name()), e.subject(), e.cause(), e.values());
    }

    /** Lets this minute's water fly and land; null when nothing runs. */
    private Watering water(MinuteForcing forcing, double windFrom) {
        if (sprays && spray == null) {
            spray = site.spraying().dry();
        }
        Spraying.Landing landing =
                sprays ? site.spraying().land(flows, forcing, windFrom, spray) : Spraying.Landing.NONE;
        tally.minute(
                flows.supply() * SECONDS, landing.lost(), landing.beyond(), landing.paved(), flows.leaked() * SECONDS);
        return landing.watering();
    }

    private void note(Weather now) {
        boolean rains = now.rain() > 0;
        if (rains != raining) {
            raining = rains;
            SeasonEvent.Kind kind = rains ? SeasonEvent.Kind.RAIN_BEGAN : SeasonEvent.Kind.RAIN_ENDED;
            events.add(new SeasonEvent(tick, kind, "rain", Map.of()));
        }
        if ((tick + 1) % IceLog.BEAT == 0) {
            lookForIce();
        }
        recorder.minute(flows.supply(), ground::meanWetness);
    }

    /** Looks at the walks where there is ice, or was at the last beat. */
    private void lookForIce() {
        if (ground.frozen() || iceLog.anyIced()) {
            events.addAll(iceLog.beat(tick, icedAreas()));
        }
    }

    /** Expected flow of each zone in m3/s, typed or recorded, NaN where neither; in the document's order. */
    public double[] expectedFlows() {
        double[] flows = new double[commands.zones().size()];
        for (int z = 0; z < flows.length; z++) {
            flows[z] = controller.expected(z);
        }
        return flows;
    }

    private double flowShown() {
        String watched = setUp.flowWatch().sensor();
        return watched == null
                ? Double.NaN
                : readings.of(watched).map(Readings.Reading::shown).orElse(Double.NaN);
    }

    /** Iced m2 of each surface at this minute's end; the twin is asked only where ice is thick enough to count. */
    private double[] icedAreas() {
        double[] areas = new double[site.scenario().yard().surfaces().size()];
        if (ground.frozen()) {
            for (int s : site.yard().walks()) {
                areas[s] = ground.iced(s) ? ground.icedArea(s, twin.frostAfter(tick + 1)) : 0;
            }
        }
        return areas;
    }

    /** Standard time of the place at a tick. */
    public LocalDateTime clock(long at) {
        return site.scenario().season().from().atStartOfDay().plusMinutes(at);
    }

    /** Where the water went so far. */
    public Ledger ledger() {
        return new Ledger(
                tally.water(ground, storeAtStart),
                irrigation(),
                iceLog.ice(),
                new Ledger.Plants(
                        ground.dryAreaDays(),
                        ground.deadArea(),
                        ground.refillVolume(start, site.spraying().watered())));
    }

    /** What the season came to so far, as scoring sees it. */
    public Outcome outcome() {
        int days = (int) (tick / MINUTES_A_DAY);
        double life = site.scenario().costs().sensorLife();
        return new Outcome(days, ledger(), leakLog.leaks(), spent, days * 86400.0 / life);
    }

    /** Fingerprint of ledger, leaks and events. */
    public String ledgerHash() {
        return LedgerHash.of(outcome(), events);
    }

    /** Minutes in which the pipes' flows could not be worked out; with any, the season's numbers cannot be trusted. */
    public long unsolvedMinutes() {
        return unsolved;
    }

    /** What a technician reads at the controller: runs and nights so far. */
    public ControllerRecords records() {
        return controller.records();
    }

    /** The same with trips and alarms, as plain values for the screen. */
    public LogBook logBook() {
        return LogBook.of(this, controller);
    }

    /** The yard at this minute, as plain values. */
    public Snapshot snapshot() {
        long shown = Math.max(0, tick - 1);
        Weather now = weather.at(shown);
        return new SnapshotMaker(site, now, ground, twin.after(tick).frost(), flows, leakLog)
                .make(
                        tick,
                        clock(tick),
                        setUp,
                        readings,
                        controller,
                        standing.zones(site),
                        standing.masterOpen(site),
                        ledger(),
                        spent);
    }

    private double newlyBought(SetUp next) {
        double sum = 0;
        for (Placement placement : next.sensors()) {
            if (setUp.sensor(placement.id()).isEmpty()) {
                Kit.Item item = site.scenario().kit().item(placement.kind());
                sum += item == null ? 0 : item.price();
            }
        }
        return sum;
    }

    private static double price(SetUp setUp, Kit kit) {
        double sum = 0;
        for (Placement placement : setUp.sensors()) {
            Kit.Item item = kit.item(placement.kind());
            sum += item == null ? 0 : item.price();
        }
        return sum;
    }
}
