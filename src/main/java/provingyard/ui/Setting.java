package provingyard.ui;

import java.util.List;
import provingyard.quantity.Show;
import provingyard.season.Siting;
import provingyard.setup.FlowWatch;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * One setting of a sensor or of the flow watch, in inner units.
 *
 * @param key of its name
 * @param least smallest value that may be set
 * @param most greatest
 * @param usual what technicians usually set; null where there is no such range
 * @param basic whether it is shown on the first sites too
 * @param get reads it from a set-up, given the sensor's id
 * @param put the set-up with another value
 */
record Setting(String key, Show show, double least, double most, Usual usual, boolean basic, Get get, Put put) {

    /** A usual range. */
    record Usual(double from, double to) {}

    /** Reads a setting. */
    interface Get {
        double of(SetUp setUp, String sensor);
    }

    /** Changes a setting. */
    interface Put {
        SetUp into(SetUp setUp, String sensor, double value);
    }

    /** Usual ranges: common practice, no source. */
    private static final Usual RAIN_TRIP = new Usual(0.003175, 0.0127);

    private static final Usual VENT = new Usual(0.25, 0.75);
    private static final Usual RAIN_HEIGHT = new Usual(2, 4);
    private static final Usual WIND_TRIP = new Usual(3.5, 5.5);
    private static final Usual WIND_REARM = new Usual(2.5, 4.5);
    private static final Usual WIND_AVERAGING = new Usual(300, 900);
    private static final Usual WIND_HOLD = new Usual(300, 1800);
    private static final Usual WIND_HEIGHT = new Usual(2, 6);
    private static final Usual FREEZE_BELOW = new Usual(1.5, 4);
    private static final Usual FREEZE_REARM = new Usual(2.5, 6);
    private static final Usual FREEZE_HEIGHT = new Usual(0.3, 2);
    private static final Usual SOIL_DEPTH = new Usual(0.08, 0.15);
    private static final Usual FLOW_HIGH = new Usual(1.1, 1.4);
    private static final Usual FLOW_LOW = new Usual(0.6, 0.9);
    private static final Usual SETTLING = new Usual(60, 180);
    private static final Usual FLOW_AVERAGING = new Usual(60, 180);
    private static final Usual UNSCHEDULED = new Usual(1e-3 / 60, 10e-3 / 60);

    /** Usual wet and dry points as shares of the available water (common practice, no source). */
    private static final Usual WET_SHARE = new Usual(0.7, 0.95);

    private static final Usual DRY_SHARE = new Usual(0.4, 0.6);

    /** The settings of a placement, in the order of the inspector. */
    static List<Setting> of(Placement placement, Siting siting) {
        return switch (placement.kind()) {
            case RAIN -> rain();
            case WIND -> wind();
            case FREEZE -> freeze();
            case FLOW -> flow(siting);
            case SOIL -> soil((Placement.Soil) placement, siting);
        };
    }

    /** The settings of the flow watch. */
    static List<Setting> ofFlowWatch() {
        return List.of(
                watch("setting.flowHigh", Show.FRACTION, 1.03, 2, FLOW_HIGH, FlowWatch::high, FlowWatches::high),
                watch("setting.flowLow", Show.FRACTION, 0, 0.95, FLOW_LOW, FlowWatch::low, FlowWatches::low),
                watch("setting.settling", Show.DURATION, 0, 600, SETTLING, FlowWatch::settling, FlowWatches::settling),
                watch(
                        "setting.averaging",
                        Show.DURATION,
                        60,
                        600,
                        FLOW_AVERAGING,
                        FlowWatch::averaging,
                        FlowWatches::averaging),
                watch(
                        "setting.unscheduled",
                        Show.FLOW,
                        0.5e-3 / 60,
                        1e-3,
                        UNSCHEDULED,
                        FlowWatch::unscheduled,
                        FlowWatches::unscheduled));
    }

    private interface OfWatch {
        double of(FlowWatch watch);
    }

    private interface IntoWatch {
        FlowWatches into(FlowWatches watches, double value);
    }

    private static Setting watch(
            String key, Show show, double least, double most, Usual usual, OfWatch get, IntoWatch put) {
        return new Setting(
                key,
                show,
                least,
                most,
                usual,
                true,
                (u, id) -> get.of(u.flowWatch()),
                (u, id, v) -> u.with(
                        put.into(FlowWatches.of(u.flowWatch()).sensor(id), v).watch()));
    }

    private static List<Setting> rain() {
        return List.of(
                new Setting(
                        "setting.rainTrip",
                        Show.DEPTH,
                        0.003,
                        0.025,
                        RAIN_TRIP,
                        true,
                        (u, id) -> rain(u, id).trip(),
                        (u, id, v) -> u.with(rain(
                                rain(u, id), v, rain(u, id).vent(), rain(u, id).height()))),
                new Setting(
                        "setting.vent",
                        Show.FRACTION,
                        0,
                        1,
                        VENT,
                        true,
                        (u, id) -> rain(u, id).vent(),
                        (u, id, v) -> u.with(rain(
                                rain(u, id), rain(u, id).trip(), v, rain(u, id).height()))),
                new Setting(
                        "setting.height",
                        Show.LENGTH,
                        0.3,
                        8,
                        RAIN_HEIGHT,
                        false,
                        (u, id) -> rain(u, id).height(),
                        (u, id, v) -> u.with(rain(
                                rain(u, id), rain(u, id).trip(), rain(u, id).vent(), v))));
    }

    private static Placement.Rain rain(SetUp u, String id) {
        return (Placement.Rain) u.sensor(id).orElseThrow();
    }

    private static Placement.Rain rain(Placement.Rain r, double trip, double vent, double height) {
        return new Placement.Rain(r.id(), r.at(), r.mount(), height, trip, vent);
    }

    private static List<Setting> wind() {
        return List.of(
                new Setting(
                        "setting.windTrip",
                        Show.SPEED,
                        2,
                        12,
                        WIND_TRIP,
                        true,
                        (u, id) -> wind(u, id).trip(),
                        (u, id, v) -> u.with(
                                speeds(wind(u, id), v, Math.min(v, wind(u, id).rearm())))),
                new Setting(
                        "setting.windRearm",
                        Show.SPEED,
                        1,
                        12,
                        WIND_REARM,
                        true,
                        (u, id) -> wind(u, id).rearm(),
                        (u, id, v) -> u.with(speeds(
                                wind(u, id),
                                wind(u, id).trip(),
                                Math.min(v, wind(u, id).trip())))),
                new Setting(
                        "setting.averaging",
                        Show.DURATION,
                        60,
                        3600,
                        WIND_AVERAGING,
                        false,
                        (u, id) -> wind(u, id).averaging(),
                        (u, id, v) -> u.with(times(
                                wind(u, id),
                                wind(u, id).height(),
                                v,
                                wind(u, id).hold()))),
                new Setting(
                        "setting.hold",
                        Show.DURATION,
                        0,
                        7200,
                        WIND_HOLD,
                        false,
                        (u, id) -> wind(u, id).hold(),
                        (u, id, v) -> u.with(times(
                                wind(u, id), wind(u, id).height(), wind(u, id).averaging(), v))),
                new Setting(
                        "setting.height",
                        Show.LENGTH,
                        0.5,
                        10,
                        WIND_HEIGHT,
                        false,
                        (u, id) -> wind(u, id).height(),
                        (u, id, v) -> u.with(times(
                                wind(u, id),
                                v,
                                wind(u, id).averaging(),
                                wind(u, id).hold()))));
    }

    private static Placement.Wind wind(SetUp u, String id) {
        return (Placement.Wind) u.sensor(id).orElseThrow();
    }

    private static Placement.Wind speeds(Placement.Wind w, double trip, double rearm) {
        return new Placement.Wind(w.id(), w.at(), w.mount(), w.height(), trip, rearm, w.averaging(), w.hold());
    }

    private static Placement.Wind times(Placement.Wind w, double height, double averaging, double hold) {
        return new Placement.Wind(w.id(), w.at(), w.mount(), height, w.trip(), w.rearm(), averaging, hold);
    }

    private static List<Setting> freeze() {
        return List.of(
                new Setting(
                        "setting.freezeBelow",
                        Show.TEMPERATURE,
                        -2,
                        6,
                        FREEZE_BELOW,
                        true,
                        (u, id) -> freeze(u, id).below(),
                        (u, id, v) -> u.with(freeze(
                                freeze(u, id),
                                freeze(u, id).height(),
                                v,
                                Math.max(v, freeze(u, id).rearm())))),
                new Setting(
                        "setting.freezeRearm",
                        Show.TEMPERATURE,
                        -2,
                        10,
                        FREEZE_REARM,
                        true,
                        (u, id) -> freeze(u, id).rearm(),
                        (u, id, v) -> u.with(freeze(
                                freeze(u, id),
                                freeze(u, id).height(),
                                freeze(u, id).below(),
                                Math.max(v, freeze(u, id).below())))),
                new Setting(
                        "setting.height",
                        Show.LENGTH,
                        0.1,
                        8,
                        FREEZE_HEIGHT,
                        false,
                        (u, id) -> freeze(u, id).height(),
                        (u, id, v) -> u.with(freeze(
                                freeze(u, id),
                                v,
                                freeze(u, id).below(),
                                freeze(u, id).rearm()))));
    }

    private static Placement.Freeze freeze(SetUp u, String id) {
        return (Placement.Freeze) u.sensor(id).orElseThrow();
    }

    private static Placement.Freeze freeze(Placement.Freeze f, double height, double below, double rearm) {
        return new Placement.Freeze(f.id(), f.at(), f.mount(), height, below, rearm);
    }

    private static List<Setting> flow(Siting siting) {
        return List.of(
                new Setting(
                        "setting.flowSize",
                        Show.DEPTH,
                        0.019,
                        0.1016,
                        null,
                        true,
                        (u, id) -> flow(u, id).size(),
                        (u, id, v) -> u.with(siting.flowSensor(
                                id,
                                new Siting.OnPipe(flow(u, id).on(), flow(u, id).along()),
                                v))),
                new Setting(
                        "setting.pulses",
                        Show.PULSES,
                        0.5,
                        80,
                        null,
                        true,
                        (u, id) -> flow(u, id).pulses(),
                        (u, id, v) -> {
                            Placement.Flow f = flow(u, id);
                            return u.with(new Placement.Flow(id, f.on(), f.along(), f.size(), v, f.offset()));
                        }));
    }

    private static Placement.Flow flow(SetUp u, String id) {
        return (Placement.Flow) u.sensor(id).orElseThrow();
    }

    private static List<Setting> soil(Placement.Soil at, Siting siting) {
        return List.of(
                new Setting(
                        "setting.soilWet",
                        Show.FRACTION,
                        0.05,
                        0.5,
                        shares(siting, at, WET_SHARE),
                        true,
                        (u, id) -> soil(u, id).wet(),
                        (u, id, v) -> u.with(soil(
                                soil(u, id),
                                soil(u, id).depth(),
                                Math.min(v, soil(u, id).dry()),
                                v))),
                new Setting(
                        "setting.soilDry",
                        Show.FRACTION,
                        0.02,
                        0.5,
                        shares(siting, at, DRY_SHARE),
                        true,
                        (u, id) -> soil(u, id).dry(),
                        (u, id, v) -> u.with(soil(
                                soil(u, id),
                                soil(u, id).depth(),
                                Math.min(v, soil(u, id).wet()),
                                soil(u, id).wet()))),
                new Setting(
                        "setting.soilDepth",
                        Show.SHORT_LENGTH,
                        0.03,
                        0.4,
                        SOIL_DEPTH,
                        true,
                        (u, id) -> soil(u, id).depth(),
                        (u, id, v) -> u.with(soil(
                                soil(u, id), v, soil(u, id).dry(), soil(u, id).wet()))));
    }

    private static Usual shares(Siting siting, Placement.Soil at, Usual shares) {
        return new Usual(siting.volumeShare(at.at(), shares.from()), siting.volumeShare(at.at(), shares.to()));
    }

    private static Placement.Soil soil(SetUp u, String id) {
        return (Placement.Soil) u.sensor(id).orElseThrow();
    }

    private static Placement.Soil soil(Placement.Soil s, double depth, double dry, double wet) {
        return new Placement.Soil(s.id(), s.at(), depth, s.soil(), dry, wet);
    }
}
