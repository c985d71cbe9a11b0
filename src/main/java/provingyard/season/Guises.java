package provingyard.season;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.season.Chronicle.Guise;
import provingyard.sensor.FreezeSensor;
import provingyard.sensor.RainSensor;
import provingyard.sensor.Readings;
import provingyard.sensor.SensorFaults;
import provingyard.sensor.Sensors;
import provingyard.sensor.Surroundings;
import provingyard.sensor.WindSensor;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.world.weather.Weather;

/**
 * Sensors that might have stood in the stead of a season's own, read beside it minute by minute: what tells a bad place
 * from a bad setting or a broken sensor. They are the same units, with the same quirks and noise, since those follow from
 * the placement's id. Mutable; the season does not notice.
 */
final class Guises {

    /** Height in m at which a freeze sensor is usually mounted (common practice, no source). */
    private static final double FREEZE_HEIGHT = 1.8;

    private static final double MIDDLE_VENT = 0.5;
    private static final double OPEN_VENT = 0.9;
    private static final double EAGER_WIND = 3;
    private static final double LAX_WIND = 6.5;
    private static final double BELOW_TRIP = 1;
    private static final double AVERAGING = 300;
    private static final double HOLD = 600;
    private static final double EAGER_FREEZE = 4.5;
    private static final double LAX_FREEZE = 0;
    private static final double EAGER_WET = 0.5;
    private static final double LAX_WET = 0.9;
    private static final double DRY_OF_WET = 0.8;
    private static final Point ANYWHERE = new Point(0, 0);

    /** Sensors of one guise in one surrounding. */
    private final class Row {

        private final UnaryOperator<Placement> as;
        private final Surroundings around;
        private final Map<String, BitSet> tripped = new LinkedHashMap<>();
        private Sensors sensors;

        Row(UnaryOperator<Placement> as, Surroundings around) {
            this.as = as;
            this.around = around;
        }

        void change(SetUp next) {
            List<Placement> placements = new ArrayList<>();
            for (Placement own : next.sensors()) {
                Placement other = as.apply(own);
                if (other != null) {
                    placements.add(other);
                    tripped.computeIfAbsent(other.id(), id -> new BitSet());
                }
            }
            SetUp guised = new SetUp(placements, List.of(), next.flowWatch(), next.schedule());
            sensors = sensors == null ? Sensors.of(site.scenario(), guised, season.streams()) : sensors.changed(guised);
        }

        void minute(long t) {
            for (Readings.Reading reading :
                    sensors.minute(t, around, SensorFaults.NONE).all()) {
                if (reading.tripped()) {
                    tripped.get(reading.id()).set((int) t);
                }
            }
        }
    }

    private final Season season;
    private final Site site;
    private final OpenSky sky = new OpenSky();
    private final Point walk;
    private final Map<Guise, List<Row>> rows = new EnumMap<>(Guise.class);
    private final List<Row> usual;

    /**
     * Beside a season before its first minute.
     *
     * @param walk the middle of the coldest watered walk, or null where there is none
     */
    Guises(Season season, Point walk) {
        this.season = season;
        this.site = season.site();
        this.walk = walk;
        Surroundings yard = season.surroundings();
        // Where no sensor breaks, a sound one is the one that was placed.
        rows.put(
                Guise.SOUND,
                !season.sensorsBreak()
                        ? List.of()
                        : List.of(new Row(p -> p instanceof Placement.Flow ? null : p, yard)));
        rows.put(Guise.WELL_PLACED, List.of(new Row(Guises::inTheOpen, sky), new Row(this::overTheWalk, yard)));
        rows.put(
                Guise.EAGER,
                List.of(new Row(
                        p -> set(
                                p,
                                RainSensor.USUAL_SET_POINTS.get(0),
                                MIDDLE_VENT,
                                EAGER_WIND,
                                EAGER_FREEZE,
                                EAGER_WET),
                        yard)));
        rows.put(
                Guise.LAX,
                List.of(new Row(
                        p -> set(p, RainSensor.USUAL_SET_POINTS.get(2), OPEN_VENT, LAX_WIND, LAX_FREEZE, LAX_WET),
                        yard)));
        rows.values().forEach(all -> all.forEach(row -> row.change(season.setUp())));
        usual = usual(yard);
    }

    /** The first of each kind that would be carried in, usually set. */
    private List<Row> usual(Surroundings yard) {
        Placement rain = new Placement.Rain(
                "rain-1", ANYWHERE, Mount.POST, Needs.POST, RainSensor.USUAL_SET_POINTS.get(1), MIDDLE_VENT);
        Placement wind = new Placement.Wind(
                "wind-1",
                ANYWHERE,
                Mount.POST,
                Needs.POST,
                WindSensor.USUAL_TRIP,
                WindSensor.USUAL_REARM,
                AVERAGING,
                HOLD);
        Placement freeze = new Placement.Freeze(
                "freeze-1", ANYWHERE, Mount.POST, FREEZE_HEIGHT, FreezeSensor.USUAL_BELOW, FreezeSensor.USUAL_REARM);
        Row open = new Row(p -> p, sky);
        open.change(SetUp.CLOCK_ALONE.with(rain).with(wind));
        Row low = new Row(this::overTheWalk, yard);
        low.change(SetUp.CLOCK_ALONE.with(freeze));
        return List.of(open, low);
    }

    private static Placement inTheOpen(Placement p) {
        return p instanceof Placement.Rain || p instanceof Placement.Wind ? p : null;
    }

    private Placement overTheWalk(Placement p) {
        return p instanceof Placement.Freeze f && walk != null
                ? new Placement.Freeze(f.id(), walk, Mount.POST, FREEZE_HEIGHT, f.below(), f.rearm())
                : null;
    }

    private Placement set(Placement p, double rain, double vent, double wind, double freeze, double wet) {
        if (p instanceof Placement.Rain r) {
            return new Placement.Rain(r.id(), r.at(), r.mount(), r.height(), rain, vent);
        }
        if (p instanceof Placement.Wind w) {
            return new Placement.Wind(w.id(), w.at(), w.mount(), w.height(), wind, wind - BELOW_TRIP, AVERAGING, HOLD);
        }
        if (p instanceof Placement.Freeze f) {
            return new Placement.Freeze(f.id(), f.at(), f.mount(), f.height(), freeze, freeze + BELOW_TRIP);
        }
        if (p instanceof Placement.Soil s) {
            double at = site.siting().volumeShare(s.at(), wet);
            double dry = Math.min(s.dry(), DRY_OF_WET * at);
            return new Placement.Soil(s.id(), s.at(), s.depth(), s.soil(), dry, at);
        }
        return null;
    }

    /** The season's set-up has changed. */
    void change() {
        rows.values().forEach(all -> all.forEach(row -> row.change(season.setUp())));
    }

    /** Reads the minute that the season has just lived. */
    void minute(long t, Weather now) {
        sky.minute(now);
        for (List<Row> all : rows.values()) {
            for (Row row : all) {
                row.minute(t);
            }
        }
        for (Row row : usual) {
            row.minute(t);
        }
    }

    /** Whether the usual wind sensor in the open was tripped at the end of a minute. */
    boolean windy(long t) {
        return t >= 0 && usual.get(0).tripped.get("wind-1").get((int) t);
    }

    /** Trips of a placement by guise, without those as it was. */
    Map<Guise, Trips> trips(String id) {
        Map<Guise, Trips> trips = new EnumMap<>(Guise.class);
        rows.forEach((guise, all) -> {
            for (Row row : all) {
                BitSet minutes = row.tripped.get(id);
                if (minutes != null) {
                    trips.put(guise, Trips.of(minutes));
                }
            }
        });
        return trips;
    }

    /** Trips of the usual sensors; freeze is missing where no walk is watered. */
    Map<SensorKind, Trips> usual() {
        Map<SensorKind, Trips> trips = new EnumMap<>(SensorKind.class);
        for (SensorKind kind : List.of(SensorKind.RAIN, SensorKind.WIND, SensorKind.FREEZE)) {
            String id = kind.name().toLowerCase(Locale.ROOT) + "-1";
            for (Row row : usual) {
                if (row.tripped.containsKey(id)) {
                    trips.put(kind, Trips.of(row.tripped.get(id)));
                }
            }
        }
        return trips;
    }
}
