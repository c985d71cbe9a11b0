package provingyard.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.picture.RibbonData;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Schedule;
import provingyard.scenario.SensorKind;
import provingyard.season.Plan;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;
import provingyard.season.Shown;
import provingyard.setup.FlowWatch;
import provingyard.setup.Placement;

/** Tells a lived season to the ribbon: hourly weather, runs, what sensors showed, holds and signs. */
final class RibbonStory {

    private static final int HOUR = 60;
    private static final int DAY = 1440;
    private static final double MM = 1000;

    private final YardModel model;
    private final Words words;
    private final List<RibbonData.Span> nights = new ArrayList<>();
    private final Map<String, SensorKind> kinds = new LinkedHashMap<>();
    private List<Plan.Run> plan;
    private Schedule planned;

    RibbonStory(YardModel model, Words words) {
        this.model = model;
        this.words = words;
        for (Season.Night night : model.nights()) {
            nights.add(new RibbonData.Span(night.from(), night.to()));
        }
    }

    /** A zone's name, or its id where it has none. */
    String zoneName(String id) {
        return model.scenario().plumbing().fittings().stream()
                .filter(f -> f.id().equals(id) && f.label() != null)
                .findFirst()
                .map(f -> words.say(f.label()))
                .orElse(id);
    }

    /** Minutes of the season. */
    long whole() {
        return (long) model.scenario().season().days() * DAY;
    }

    RibbonData tell(SeasonPlayer.Frame frame) {
        for (Placement placement : model.setUp().sensors()) {
            kinds.put(placement.id(), placement.kind());
        }
        return new RibbonData(
                model.scenario().season().from().atStartOfDay(),
                HOUR,
                frame.series().air(),
                scaled(frame.series().rain()),
                frame.series().wind(),
                frame.series().sun(),
                lanes(frame),
                holders(),
                holds(frame),
                signs(frame),
                nights,
                frame.lived(),
                flow(frame),
                soil(frame));
    }

    private static double[] scaled(double[] rain) {
        double[] mm = new double[rain.length];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = MM * rain[i];
        }
        return mm;
    }

    // Zones

    private List<RibbonData.Lane> lanes(SeasonPlayer.Frame frame) {
        Map<String, List<RibbonData.Run>> runs = new LinkedHashMap<>();
        for (Plumbing.Fitting fitting : model.scenario().plumbing().fittings()) {
            if (fitting.kind() == Plumbing.FittingKind.ZONE_VALVE) {
                runs.put(fitting.id(), new ArrayList<>());
            }
        }
        ran(frame, runs);
        for (Plan.Run run : plan()) {
            if (run.from() >= frame.lived() && runs.containsKey(run.zone())) {
                runs.get(run.zone()).add(new RibbonData.Run(run.from(), run.to(), RibbonData.RunState.PLANNED));
            }
        }
        List<RibbonData.Lane> lanes = new ArrayList<>();
        runs.forEach((zone, all) -> lanes.add(new RibbonData.Lane(zoneName(zone), all)));
        return lanes;
    }

    private static Map<String, Long> open(SeasonPlayer.Frame frame) {
        Map<String, Long> since = new LinkedHashMap<>();
        for (SeasonEvent event : frame.events()) {
            if (event.kind() == SeasonEvent.Kind.ZONE_ON) {
                since.put(event.subject(), event.tick());
            } else if (event.kind() == SeasonEvent.Kind.ZONE_OFF) {
                since.remove(event.subject());
            }
        }
        return since;
    }

    private void ran(SeasonPlayer.Frame frame, Map<String, List<RibbonData.Run>> runs) {
        Map<String, Long> since = new LinkedHashMap<>();
        for (SeasonEvent event : frame.events()) {
            List<RibbonData.Run> lane = runs.get(event.subject());
            switch (event.kind()) {
                case ZONE_ON -> since.put(event.subject(), event.tick());
                case ZONE_OFF -> {
                    Long from = since.remove(event.subject());
                    if (from != null && lane != null) {
                        lane.add(new RibbonData.Run(from, event.tick(), RibbonData.RunState.RAN));
                    }
                }
                case START_SKIPPED -> {
                    if (lane != null) {
                        lane.add(skipped(event));
                    }
                }
                default -> {
                    // Nothing that a lane shows.
                }
            }
        }
        open(frame).forEach((zone, from) -> {
            if (runs.containsKey(zone)) {
                long to = Math.max(from + 1, frame.lived());
                runs.get(zone).add(new RibbonData.Run(from, to, RibbonData.RunState.RUNNING));
            }
        });
    }

    /** A dropped start, drawn where the schedule alone would have run it. */
    private RibbonData.Run skipped(SeasonEvent event) {
        for (Plan.Run run : plan()) {
            boolean its =
                    run.zone().equals(event.subject()) && run.from() >= event.tick() && run.from() < event.tick() + DAY;
            if (its) {
                return new RibbonData.Run(run.from(), run.to(), RibbonData.RunState.SKIPPED);
            }
        }
        return new RibbonData.Run(event.tick(), event.tick() + HOUR / 2, RibbonData.RunState.SKIPPED);
    }

    private List<Plan.Run> plan() {
        Schedule now = model.setUp().schedule();
        if (plan == null || now != planned) {
            planned = now;
            plan = Plan.of(model.scenario(), now, whole());
        }
        return plan;
    }

    // Sensors

    /** Sensors whose holds are marks; a soil sensor's wet time shows in its lane. */
    private int holders() {
        return (int)
                model.setUp().sensors().stream().filter(p -> marked(p.kind())).count();
    }

    private static boolean marked(SensorKind kind) {
        return kind != SensorKind.FLOW && kind != SensorKind.SOIL;
    }

    private List<RibbonData.Hold> holds(SeasonPlayer.Frame frame) {
        List<RibbonData.Hold> holds = new ArrayList<>();
        Map<String, Long> since = new LinkedHashMap<>();
        for (SeasonEvent event : frame.events()) {
            if (event.kind() == SeasonEvent.Kind.SENSOR_TRIPPED) {
                since.put(event.subject(), event.tick());
            } else if (event.kind() == SeasonEvent.Kind.SENSOR_REARMED && since.containsKey(event.subject())) {
                hold(holds, event.subject(), since.remove(event.subject()), event.tick());
            }
        }
        since.forEach((sensor, from) -> hold(holds, sensor, from, Math.max(from + 1, frame.lived())));
        return holds;
    }

    private void hold(List<RibbonData.Hold> holds, String sensor, long from, long to) {
        SensorKind kind = kinds.get(sensor);
        if (kind != null && marked(kind)) {
            holds.add(new RibbonData.Hold(kind, sensor, from, to, words.say("hold." + kind.name())));
        }
    }

    private RibbonData.Flow flow(SeasonPlayer.Frame frame) {
        Shown shown = shown(frame, SensorKind.FLOW, model.setUp().flowWatch().sensor());
        return shown == null ? null : new RibbonData.Flow(Shown.STEP, shown.values(), bands(frame));
    }

    /** Of several sensors of a kind, the one that is wanted or selected; null where none is placed. */
    private Shown shown(SeasonPlayer.Frame frame, SensorKind kind, String wanted) {
        String selected = model.selectedProperty().get();
        Shown best = null;
        for (Shown one : frame.shown()) {
            boolean placed =
                    one.kind() == kind && model.setUp().sensor(one.sensor()).isPresent();
            boolean better =
                    best == null || one.sensor().equals(wanted) || one.sensor().equals(selected);
            best = placed && better ? one : best;
        }
        return best;
    }

    /** Limits of the zones that ran, as far as their expected flow was known then. */
    private List<RibbonData.Band> bands(SeasonPlayer.Frame frame) {
        FlowWatch watch = model.setUp().flowWatch();
        Map<String, Double> expected = new LinkedHashMap<>();
        watch.expected().forEach(e -> expected.put(e.zone(), e.flow()));
        Map<String, Long> since = new LinkedHashMap<>();
        List<RibbonData.Band> bands = new ArrayList<>();
        for (SeasonEvent event : frame.events()) {
            if (event.kind() == SeasonEvent.Kind.ZONE_ON) {
                since.put(event.subject(), event.tick());
            } else if (event.kind() == SeasonEvent.Kind.EXPECTED_RECORDED) {
                expected.putIfAbsent(event.subject(), event.values().get("flow"));
            } else if (event.kind() == SeasonEvent.Kind.ZONE_OFF) {
                band(bands, watch, expected.get(event.subject()), since.remove(event.subject()), event.tick());
            }
        }
        open(frame).forEach((zone, from) -> band(bands, watch, expected.get(zone), from, frame.lived()));
        return bands;
    }

    private static void band(List<RibbonData.Band> bands, FlowWatch watch, Double flow, Long from, long to) {
        if (flow != null && from != null && to > from) {
            bands.add(new RibbonData.Band(from, to, flow, flow * watch.low(), flow * watch.high()));
        }
    }

    private RibbonData.Soil soil(SeasonPlayer.Frame frame) {
        Shown shown = shown(frame, SensorKind.SOIL, null);
        if (shown == null) {
            return null;
        }
        Placement.Soil placed =
                (Placement.Soil) model.setUp().sensor(shown.sensor()).orElseThrow();
        return new RibbonData.Soil(Shown.STEP, shown.values(), placed.dry(), placed.wet());
    }

    // Signs

    private List<RibbonData.Sign> signs(SeasonPlayer.Frame frame) {
        List<RibbonData.Sign> signs = new ArrayList<>();
        Set<Long> iced = new LinkedHashSet<>();
        for (SeasonEvent event : frame.events()) {
            switch (event.kind()) {
                case WALK_ICED -> {
                    // One sign a morning, however many walks.
                    if (iced.add(event.tick() / DAY)) {
                        signs.add(sign(event, RibbonData.SignKind.ICE, "sign.iced"));
                    }
                }
                case FLOW_HIGH -> signs.add(sign(event, RibbonData.SignKind.ALARM, "sign.high"));
                case FLOW_LOW -> signs.add(sign(event, RibbonData.SignKind.ALARM, "sign.low"));
                case FLOW_UNSCHEDULED -> signs.add(sign(event, RibbonData.SignKind.ALARM, "sign.unscheduled"));
                default -> {
                    // Nothing that is a sign.
                }
            }
        }
        return signs;
    }

    private RibbonData.Sign sign(SeasonEvent event, RibbonData.SignKind kind, String key) {
        return new RibbonData.Sign(event.tick(), kind, words.say(key, zoneName(event.subject())));
    }
}
