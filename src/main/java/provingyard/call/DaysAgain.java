package provingyard.call;

import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.control.Commands;
import provingyard.control.ControlEvent;
import provingyard.control.Controller;
import provingyard.control.ControllerRecords;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.SensorKind;
import provingyard.season.ControlTroubles;
import provingyard.season.Exposure;
import provingyard.season.SensorTroubles;
import provingyard.sensor.Readings;
import provingyard.sensor.SensorFaults;
import provingyard.sensor.Sensors;
import provingyard.world.hydraulics.Hands;
import provingyard.world.hydraulics.WaterFlows;

/** Lives the days of an {@link Exposure} once in a case; {@link LastDays} says how. Mutable, for one life. */
final class DaysAgain {

    private final Ground ground;
    private final Exposure exposure;
    private final Case wrong;
    private final long onset;
    private final boolean metered;
    private final Exposure.Again around;
    private final Sensors sensors;
    private final Controller controller;
    private final BitSet open = new BitSet();
    private final Map<SensorKind, BitSet> held = new EnumMap<>(SensorKind.class);
    private Readings readings;
    private Case acting = Case.SOUND;
    private SensorFaults troubles = SensorFaults.NONE;
    private boolean standsStill;
    private boolean alarm;
    private Commands commands;
    private WaterFlows flows;

    /** Before the first minute; faults without a time of their own begin at a tick. */
    DaysAgain(Ground ground, Exposure exposure, Case wrong, long onset) {
        this.ground = ground;
        this.exposure = exposure;
        this.wrong = wrong;
        this.onset = onset;
        metered = !ground.installed().of(SensorKind.FLOW).isEmpty();
        around = exposure.again(ground.pipes());
        Exposure.Devices begin = exposure.begin();
        sensors = begin.sensors();
        controller = begin.controller();
        readings = begin.readings();
    }

    /** Lives all minutes. */
    Memory live() {
        List<Long> changes =
                wrong.faults().stream().map(this::begins).distinct().toList();
        for (long tick = exposure.from(); tick < exposure.until(); tick++) {
            if (changes.contains(tick)) {
                begin(tick);
            }
            minute(tick);
        }
        List<ControllerRecords.Run> kept = controller.records().runs().stream()
                .filter(r -> r.start() >= exposure.from())
                .toList();
        return new Memory(kept, alarm, open, held);
    }

    /** A fault's time; an author's that does not lie in these days acts in all of them. */
    private long begins(int fault) {
        FaultPlan.When when = ground.fault(fault).when();
        long tick = when == null ? onset : LastDays.tick(when);
        return tick > exposure.from() && tick < exposure.until() ? tick : exposure.from();
    }

    private void begin(long tick) {
        acting = new Case(wrong.faults().stream().filter(f -> begins(f) <= tick).toList());
        List<FaultPlan> plans = acting.faults().stream().map(ground::fault).toList();
        troubles = SensorTroubles.of(plans);
        standsStill = ground.wires().in(acting).transformer().dead();
        controller.faults(ControlTroubles.of(plans));
        flows = null;
    }

    private void minute(long tick) {
        int minute = (int) (tick - exposure.from());
        for (Readings.Reading reading : readings.all()) {
            if (reading.tripped()) {
                held.computeIfAbsent(reading.kind(), k -> new BitSet()).set(minute);
            }
        }
        obey(standsStill ? null : controller.decide(tick, readings));
        open.set(minute, runsNow());
        around.go(tick, flows);
        readings = sensors.minute(tick, around, troubles);
    }

    private void obey(Commands next) {
        if (next != null) {
            next.events().forEach(this::hear);
        }
        boolean same = next == null ? commands == null : commands != null && next.sameValves(commands);
        commands = next;
        if (metered && (!same || flows == null)) {
            flows = flow();
        }
    }

    private void hear(ControlEvent event) {
        switch (event.kind()) {
            case FLOW_HIGH, FLOW_LOW, FLOW_UNSCHEDULED -> alarm = true;
            default -> {
                // Runs are in the records, trips in the readings.
            }
        }
    }

    private boolean runsNow() {
        return commands != null && commands.openZone() >= 0;
    }

    private WaterFlows flow() {
        Set<String> drawn = runsNow() ? ground.wires().drawn(acting, commands.openId(), false) : Set.of();
        boolean allowed = commands == null || commands.masterOpen();
        return ground.through(drawn, allowed, Hands.OFF, acting);
    }
}
