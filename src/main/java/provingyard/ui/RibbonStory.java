package provingyard.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.picture.RibbonData;
import provingyard.scenario.Plumbing;
import provingyard.scenario.SensorKind;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;
import provingyard.setup.Placement;

/** Tells a lived season to the ribbon: hourly weather, runs, holds and signs. */
final class RibbonStory {

    private static final int HOUR = 60;
    private static final double MM = 1000;

    private final YardModel model;
    private final Words words;
    private final List<RibbonData.Span> nights = new ArrayList<>();
    private final Map<String, SensorKind> kinds = new LinkedHashMap<>();

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
                lanes(frame),
                holds(frame),
                signs(frame),
                nights,
                frame.lived(),
                null,
                null);
    }

    private static double[] scaled(double[] rain) {
        double[] mm = new double[rain.length];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = MM * rain[i];
        }
        return mm;
    }

    private List<RibbonData.Lane> lanes(SeasonPlayer.Frame frame) {
        List<RibbonData.Lane> lanes = new ArrayList<>();
        for (Plumbing.Fitting fitting : model.scenario().plumbing().fittings()) {
            if (fitting.kind() == Plumbing.FittingKind.ZONE_VALVE) {
                lanes.add(new RibbonData.Lane(zoneName(fitting.id()), runs(frame, fitting.id())));
            }
        }
        return lanes;
    }

    private static List<RibbonData.Run> runs(SeasonPlayer.Frame frame, String zone) {
        List<RibbonData.Run> runs = new ArrayList<>();
        long since = -1;
        for (SeasonEvent event : frame.events()) {
            if (!event.subject().equals(zone)) {
                continue;
            }
            switch (event.kind()) {
                case ZONE_ON -> since = event.tick();
                case ZONE_OFF -> {
                    if (since >= 0) {
                        runs.add(new RibbonData.Run(since, event.tick(), RibbonData.RunState.RAN));
                    }
                    since = -1;
                }
                case START_SKIPPED ->
                    runs.add(new RibbonData.Run(event.tick(), event.tick() + HOUR / 2, RibbonData.RunState.SKIPPED));
                default -> {
                    // Nothing that a lane shows.
                }
            }
        }
        if (since >= 0) {
            runs.add(new RibbonData.Run(since, Math.max(since + 1, frame.lived()), RibbonData.RunState.RUNNING));
        }
        return runs;
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
        if (kinds.containsKey(sensor)) {
            holds.add(new RibbonData.Hold(kinds.get(sensor), sensor, from, to));
        }
    }

    private List<RibbonData.Sign> signs(SeasonPlayer.Frame frame) {
        List<RibbonData.Sign> signs = new ArrayList<>();
        for (SeasonEvent event : frame.events()) {
            switch (event.kind()) {
                case WALK_ICED -> signs.add(sign(event, RibbonData.SignKind.ICE, "sign.iced"));
                case FLOW_HIGH, FLOW_LOW -> signs.add(sign(event, RibbonData.SignKind.ALARM, "sign.flow"));
                case FLOW_UNSCHEDULED -> signs.add(sign(event, RibbonData.SignKind.ALARM, "sign.unscheduled"));
                case MASTER_SHUT -> signs.add(sign(event, RibbonData.SignKind.ALARM, "sign.master"));
                default -> {
                    // Nothing that is a sign.
                }
            }
        }
        return signs;
    }

    private RibbonData.Sign sign(SeasonEvent event, RibbonData.SignKind kind, String key) {
        return new RibbonData.Sign(event.tick(), kind, words.say(key));
    }
}
