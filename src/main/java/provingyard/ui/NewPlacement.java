package provingyard.ui;

import java.util.List;
import java.util.Locale;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.season.Siting;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** A sensor as it comes out of its box: usual settings (common practice, no source), put where the hand let go. */
final class NewPlacement {

    private static final double RAIN_HEIGHT = 2.1;
    private static final double WIND_HEIGHT = 3;
    private static final double FREEZE_HEIGHT = 1.8;
    private static final double SOIL_DEPTH = 0.1;

    private final Scenario scenario;
    private final Siting siting;

    NewPlacement(Scenario scenario, Siting siting) {
        this.scenario = scenario;
        this.siting = siting;
    }

    /** Height in m at which a kind is usually mounted; 0 for those in the ground. */
    static double height(SensorKind kind) {
        return switch (kind) {
            case RAIN -> RAIN_HEIGHT;
            case WIND -> WIND_HEIGHT;
            case FREEZE -> FREEZE_HEIGHT;
            default -> 0;
        };
    }

    /** The set-up with one more sensor of a kind at a place, and what the controller usually does with it. */
    SetUp placed(SetUp setUp, SensorKind kind, Point at) {
        String id = freeId(setUp, kind);
        Placement placement =
                switch (kind) {
                    case RAIN -> new Placement.Rain(id, at, mountAt(at, Mount.POST), RAIN_HEIGHT, 0.00635, 0.5);
                    case WIND -> new Placement.Wind(id, at, mountAt(at, Mount.POST), WIND_HEIGHT, 4.5, 3.6, 600, 600);
                    case FREEZE -> new Placement.Freeze(id, at, mountAt(at, Mount.POST), FREEZE_HEIGHT, 0.0, 1.5);
                    case FLOW -> flow(id, at);
                    case SOIL -> soil(id, at);
                };
        SetUp next = setUp.with(placement);
        if (kind == SensorKind.FLOW) {
            return next.with(FlowWatches.watching(setUp.flowWatch(), id));
        }
        Interlock.Action action =
                switch (kind) {
                    case RAIN, FREEZE -> Interlock.Action.SKIP;
                    case WIND -> Interlock.Action.PAUSE;
                    default -> Interlock.Action.BLOCK;
                };
        return next.with(new Interlock(id, action, List.of()));
    }

    /** The same sensor at another place. */
    Placement moved(Placement placement, Point to) {
        if (placement instanceof Placement.Rain r) {
            return new Placement.Rain(r.id(), to, mountAt(to, r.mount()), r.height(), r.trip(), r.vent());
        }
        if (placement instanceof Placement.Wind w) {
            return new Placement.Wind(
                    w.id(), to, mountAt(to, w.mount()), w.height(), w.trip(), w.rearm(), w.averaging(), w.hold());
        }
        if (placement instanceof Placement.Freeze f) {
            return new Placement.Freeze(f.id(), to, mountAt(to, f.mount()), f.height(), f.below(), f.rearm());
        }
        if (placement instanceof Placement.Soil s) {
            return new Placement.Soil(s.id(), to, s.depth(), s.soil(), s.dry(), s.wet());
        }
        Placement.Flow f = (Placement.Flow) placement;
        Siting.OnPipe on = siting.nearestPipe(to);
        return new Placement.Flow(f.id(), on.pipe(), on.along(), f.size(), f.pulses(), f.offset());
    }

    private Placement.Flow flow(String id, Point at) {
        Siting.OnPipe on = siting.nearestPipe(at);
        double size = scenario.plumbing().pipes().stream()
                .filter(p -> p.id().equals(on.pipe()))
                .mapToDouble(Plumbing.Pipe::size)
                .findFirst()
                .orElseThrow();
        return siting.flowSensor(id, on, size);
    }

    private Placement.Soil soil(String id, Point at) {
        double wet = siting.volumeShare(at, 0.8);
        double dry = siting.volumeShare(at, 0.5);
        return new Placement.Soil(id, at, SOIL_DEPTH, siting.soil(at), dry, wet);
    }

    private Mount mountAt(Point at, Mount wanted) {
        return siting.mount(at, wanted);
    }

    private static String freeId(SetUp setUp, SensorKind kind) {
        String name = kind.name().toLowerCase(Locale.ROOT);
        int number = 1;
        while (setUp.sensor(name + "-" + number).isPresent()) {
            number++;
        }
        return name + "-" + number;
    }
}
