package provingyard.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import provingyard.scenario.Kit;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.season.Site;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * The set-ups next to a set-up: one kind of sensor left out, placed elsewhere or set otherwise. Places are a coarse grid
 * over the yard and the places of the reference set-ups; settings are the usual ones (common practice, no source).
 */
final class Candidates {

    private static final double[] RAIN_TRIPS = {0.003175, 0.00635, 0.0127};
    private static final double[] RAIN_VENTS = {0.2, 0.5, 0.9};
    private static final double[] WIND_TRIPS = {3, 4, 5, 6.5};
    private static final double[] FREEZE_BELOW = {0, 2, 10 / 3.0, 4.5};
    private static final double[] FLOW_HIGH = {1.05, 1.08, 1.12, 1.2, 1.3};
    private static final double[] SOIL_SHARES = {0.5, 0.7, 0.9};
    private static final int ACROSS = 5;
    private static final int UP = 4;

    private final Site site;
    private final Scenario scenario;
    private final List<SetUp> references;

    Candidates(Site site, List<SetUp> references) {
        this.site = site;
        this.scenario = site.scenario();
        this.references = references;
    }

    /** The kinds that a trainee may choose on this site. */
    List<SensorKind> kinds() {
        List<SensorKind> kinds = new ArrayList<>();
        for (SensorKind kind : SensorKind.values()) {
            if (scenario.kit().item(kind) != null && !scenario.locks().sensors().contains(kind)) {
                kinds.add(kind);
            }
        }
        return kinds;
    }

    /** The set-up without a kind, with the kind as a reference set-up has it, and with it at other places. */
    List<SetUp> places(SetUp from, SensorKind kind) {
        Set<SetUp> next = new LinkedHashSet<>();
        next.add(without(from, kind));
        for (SetUp reference : references) {
            next.add(adopt(from, reference, kind));
        }
        List<Placement> now = from.of(kind);
        if (now.size() == 1 && kind != SensorKind.FLOW) {
            for (Point spot : grid()) {
                Placement moved = moved(now.get(0), spot);
                if (moved != null) {
                    next.add(from.with(moved));
                }
            }
        }
        return affordable(next);
    }

    /** The set-up with the kind's settings changed, one grid of usual settings. */
    List<SetUp> settings(SetUp from, SensorKind kind) {
        Set<SetUp> next = new LinkedHashSet<>();
        next.add(from);
        for (Placement placement : from.of(kind)) {
            switch (kind) {
                case RAIN -> {
                    Placement.Rain r = (Placement.Rain) placement;
                    for (double trip : RAIN_TRIPS) {
                        for (double vent : RAIN_VENTS) {
                            next.add(from.with(new Placement.Rain(r.id(), r.at(), r.mount(), r.height(), trip, vent)));
                        }
                    }
                }
                case WIND -> {
                    Placement.Wind w = (Placement.Wind) placement;
                    for (double trip : WIND_TRIPS) {
                        next.add(from.with(new Placement.Wind(
                                w.id(), w.at(), w.mount(), w.height(), trip, 0.8 * trip, w.averaging(), w.hold())));
                    }
                }
                case FREEZE -> {
                    Placement.Freeze f = (Placement.Freeze) placement;
                    for (double below : FREEZE_BELOW) {
                        next.add(from.with(
                                new Placement.Freeze(f.id(), f.at(), f.mount(), f.height(), below, below + 1.5)));
                    }
                }
                case FLOW -> {
                    for (double high : FLOW_HIGH) {
                        next.add(from.with(high(from.flowWatch(), high)));
                    }
                }
                case SOIL -> {
                    Placement.Soil s = (Placement.Soil) placement;
                    for (double share : SOIL_SHARES) {
                        double wet = site.siting().volumeShare(s.at(), share);
                        double dry = site.siting().volumeShare(s.at(), 0.6 * share);
                        next.add(from.with(new Placement.Soil(s.id(), s.at(), s.depth(), s.soil(), dry, wet)));
                    }
                }
            }
        }
        return affordable(next);
    }

    private static SetUp without(SetUp from, SensorKind kind) {
        SetUp next = from;
        for (Placement placement : from.of(kind)) {
            next = next.without(placement.id());
        }
        return kind == SensorKind.FLOW ? next.with(FlowWatch.OFF) : next;
    }

    private static SetUp adopt(SetUp from, SetUp reference, SensorKind kind) {
        SetUp next = without(from, kind);
        for (Placement placement : reference.of(kind)) {
            next = next.with(placement);
            for (Interlock interlock : reference.interlocks()) {
                if (interlock.sensor().equals(placement.id())) {
                    next = next.with(interlock);
                }
            }
        }
        return kind == SensorKind.FLOW ? next.with(reference.flowWatch()) : next;
    }

    private List<Point> grid() {
        List<Point> spots = new ArrayList<>();
        Point size = scenario.yard().size();
        for (int j = 0; j < UP; j++) {
            for (int i = 0; i < ACROSS; i++) {
                Point spot = new Point((i + 0.5) * size.x() / ACROSS, (j + 0.5) * size.y() / UP);
                if (!site.siting().insideBuilding(spot)) {
                    spots.add(spot);
                }
            }
        }
        return spots;
    }

    private Placement moved(Placement placement, Point to) {
        if (placement instanceof Placement.Rain r) {
            return new Placement.Rain(r.id(), to, Mount.POST, 2.1, r.trip(), r.vent());
        }
        if (placement instanceof Placement.Wind w) {
            return new Placement.Wind(
                    w.id(), to, Mount.POST, Math.max(3, w.height()), w.trip(), w.rearm(), w.averaging(), w.hold());
        }
        if (placement instanceof Placement.Freeze f) {
            return new Placement.Freeze(f.id(), to, Mount.POST, 1.2, f.below(), f.rearm());
        }
        if (placement instanceof Placement.Soil s && site.siting().planted(to)) {
            return new Placement.Soil(s.id(), to, s.depth(), site.siting().soil(to), s.dry(), s.wet());
        }
        return null;
    }

    private static FlowWatch high(FlowWatch w, double high) {
        return new FlowWatch(
                w.sensor(),
                w.expected(),
                w.record(),
                high,
                w.low(),
                w.settling(),
                w.averaging(),
                w.onZone(),
                w.unscheduled(),
                w.unscheduledAfter(),
                w.onUnscheduled());
    }

    private List<SetUp> affordable(Set<SetUp> all) {
        return all.stream()
                .filter(s -> price(s, scenario.kit()) <= scenario.kit().budget())
                .toList();
    }

    /** USD that the sensors of a set-up cost. */
    static double price(SetUp setUp, Kit kit) {
        double sum = 0;
        for (Placement placement : setUp.sensors()) {
            Kit.Item item = kit.item(placement.kind());
            sum += item == null ? 0 : item.price();
        }
        return sum;
    }
}
