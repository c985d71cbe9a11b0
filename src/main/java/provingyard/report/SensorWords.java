package provingyard.report;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import provingyard.quantity.Show;
import provingyard.scenario.Point;
import provingyard.scenario.Schedule;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** Where sensors stand, how they are set and what the controller does with them, in words and in people's units. */
final class SensorWords {

    private final PageWords words;

    SensorWords(PageWords words) {
        this.words = words;
    }

    /** Where a sensor stands. */
    String place(Placement placement) {
        if (placement instanceof Placement.Rain r) {
            return at(mounted(r.mount(), r.height()), r.at());
        }
        if (placement instanceof Placement.Wind w) {
            return at(mounted(w.mount(), w.height()), w.at());
        }
        if (placement instanceof Placement.Freeze f) {
            return at(mounted(f.mount(), f.height()), f.at());
        }
        if (placement instanceof Placement.Soil s) {
            return at(words.window("place.soil", words.text(Show.SHORT_LENGTH, s.depth())), s.at());
        }
        Placement.Flow f = (Placement.Flow) placement;
        return words.say("setUp.along", words.window("place.flow", f.on()), words.text(Show.LENGTH, f.along()));
    }

    private String mounted(Mount mount, double height) {
        String on = words.window("mount." + mount.name());
        return words.window("place.mounted", on, words.text(Show.LENGTH, height));
    }

    private String at(String how, Point at) {
        return words.say("setUp.at", how, words.text(Show.LENGTH, at.x()), words.text(Show.LENGTH, at.y()));
    }

    /** How a sensor is set and what the controller does with it. */
    List<String> settings(Placement placement, SetUp setUp) {
        List<String> said = new ArrayList<>();
        if (placement instanceof Placement.Rain r) {
            add(said, "setting.rainTrip", Show.DEPTH, r.trip());
            add(said, "setting.vent", Show.FRACTION, r.vent());
        } else if (placement instanceof Placement.Wind w) {
            add(said, "setting.windTrip", Show.SPEED, w.trip());
            add(said, "setting.windRearm", Show.SPEED, w.rearm());
            add(said, "setting.averaging", Show.DURATION, w.averaging());
            add(said, "setting.hold", Show.DURATION, w.hold());
        } else if (placement instanceof Placement.Freeze f) {
            add(said, "setting.freezeBelow", Show.TEMPERATURE, f.below());
            add(said, "setting.freezeRearm", Show.TEMPERATURE, f.rearm());
        } else if (placement instanceof Placement.Soil s) {
            add(said, "setting.soilWet", Show.FRACTION, s.wet());
            add(said, "setting.soilDry", Show.FRACTION, s.dry());
        } else if (placement instanceof Placement.Flow f) {
            add(said, "setting.flowSize", Show.DEPTH, f.size());
            add(said, "setting.pulses", Show.PULSES, f.pulses());
            watch(said, f.id(), setUp.flowWatch());
            return said;
        }
        interlock(said, placement, setUp);
        return said;
    }

    private void interlock(List<String> said, Placement placement, SetUp setUp) {
        Interlock.Action action = action(placement, setUp);
        String what = words.window("action." + action.name());
        List<String> zones = setUp.interlocks().stream()
                .filter(i -> i.sensor().equals(placement.id()))
                .flatMap(i -> i.zones().stream())
                .map(words::thing)
                .toList();
        String where = zones.isEmpty() ? what : words.say("setUp.zones", what, String.join(", ", zones));
        said.add(words.say(
                "setUp.setting",
                words.window("inspector.when." + placement.kind().name()),
                where));
    }

    /** What the controller does when a sensor trips. */
    static Interlock.Action action(Placement placement, SetUp setUp) {
        return setUp.interlocks().stream()
                .filter(i -> i.sensor().equals(placement.id()))
                .map(Interlock::action)
                .findFirst()
                .orElse(Interlock.Action.NONE);
    }

    private void watch(List<String> said, String id, FlowWatch watch) {
        if (!id.equals(watch.sensor())) {
            said.add(words.say("setUp.setting", words.window("inspector.onZone"), words.window("action.NONE")));
            return;
        }
        add(said, "setting.flowHigh", Show.FRACTION, watch.high());
        add(said, "setting.flowLow", Show.FRACTION, watch.low());
        add(said, "setting.settling", Show.DURATION, watch.settling());
        add(said, "setting.averaging", Show.DURATION, watch.averaging());
        add(said, "setting.unscheduled", Show.FLOW, watch.unscheduled());
        said.add(words.say(
                "setUp.setting",
                words.window("inspector.onZone"),
                words.window("watch." + watch.onZone().name())));
        said.add(words.say(
                "setUp.setting",
                words.window("inspector.onUnscheduled"),
                words.window("watch." + watch.onUnscheduled().name())));
    }

    private void add(List<String> said, String key, Show show, double value) {
        said.add(words.say("setUp.setting", words.window(key), words.text(show, value)));
    }

    /** When a schedule waters. */
    List<String> schedule(Schedule schedule) {
        List<String> said = new ArrayList<>();
        said.add(words.say("setUp.setting", words.say("setUp.schedule.days"), days(schedule)));
        List<String> starts =
                schedule.starts().stream().map(LocalTime::toString).toList();
        said.add(words.say("setUp.setting", words.say("setUp.schedule.starts"), String.join(", ", starts)));
        said.add(words.say(
                "setUp.setting", words.say("setUp.schedule.seasonal"), words.text(Show.FRACTION, schedule.seasonal())));
        for (Schedule.ZoneRun run : schedule.zones()) {
            String name = words.say("setUp.schedule.run", words.thing(run.zone()));
            said.add(words.say("setUp.setting", name, words.text(Show.DURATION, run.runs())));
        }
        return said;
    }

    private String days(Schedule schedule) {
        if (schedule.days().isEmpty()) {
            return schedule.every() == 1
                    ? words.say("setUp.schedule.daily")
                    : words.say("setUp.schedule.every", Integer.toString(schedule.every()));
        }
        List<String> names =
                schedule.days().stream().map(d -> words.weekday(d.getValue())).toList();
        return String.join(", ", names);
    }
}
