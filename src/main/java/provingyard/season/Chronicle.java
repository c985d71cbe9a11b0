package provingyard.season;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.SensorKind;
import provingyard.setup.SetUp;

/**
 * What a debrief needs to know of a season beyond what the season noted itself: noted while the same minutes are lived
 * again, which changes no result. Plain values, volumes in m3, ticks in minutes of the season.
 *
 * @param tick minutes lived
 * @param outcome what the season came to
 * @param hours where irrigation's water had gone after each whole hour, beginning with hour 0
 * @param days dryness after each whole day, beginning with day 0, and last after the last minute
 * @param runs each time a zone was open, in order
 * @param stops what sensors and the flow watch held back, in order
 * @param iced iced walks, by night
 * @param leaks losses of water, in the order of their begin
 * @param falseAlarms flow alarms while nothing leaked
 * @param rain what fell
 * @param sensors what each placed sensor showed, and what it would have shown elsewhere or otherwise
 * @param usual trips of usual sensors at good places, whether such are placed or not, by kind (rain, wind, freeze)
 */
public record Chronicle(
        long tick,
        Outcome outcome,
        List<Ledger.Irrigation> hours,
        List<Dryness> days,
        List<Run> runs,
        List<Stop> stops,
        List<IcedWalk> iced,
        List<Leak> leaks,
        List<FalseAlarm> falseAlarms,
        Fallen rain,
        List<Sensed> sensors,
        Map<SensorKind, Trips> usual) {

    /** Minutes from one value of a night's temperatures to the next. */
    public static final int TEMPERATURE_STEP = 10;

    static final int HOUR = 60;
    static final int DAY = 1440;

    /** Something that has not happened. */
    public static final long NEVER = -1;

    /**
     * How a sensor might have been. All but {@link #AS_IT_WAS} are sound. They read the season as it was lived: what they
     * would have changed in it themselves, such as how wet the soil is, is not followed.
     */
    public enum Guise {
        /** As placed, with its faults. */
        AS_IT_WAS,
        /** As placed and set, without any fault. */
        SOUND,
        /** Set as it was, where nothing hides what it should see: open sky, or 1.8 m over the coldest watered walk. */
        WELL_PLACED,
        /** At its place with the usual setting that holds back most. */
        EAGER,
        /** At its place with the usual setting that holds back least. */
        LAX
    }

    /**
     * Dryness so far.
     *
     * @param areaDays m2 d of stress beyond what the lesson allows
     * @param dead m2 of plants that died
     */
    public record Dryness(double areaDays, double dead) {}

    /**
     * A zone was open.
     *
     * @param from first minute
     * @param until the minute after its last
     * @param supplied through its valve
     * @param astray carried off by air or landed beside the plants
     * @param byWind how much more of it went astray than would have in still air, in the minutes in which a usual wind sensor
     *     in the open was tripped
     * @param wind mean wind at 2 m in the open in those minutes, m/s; NaN without any
     * @param wetness water in the root zone at its begin as a share of what plants can draw, 1 at field capacity: mean over
     *     the zone's planted cells, weighted by its water
     */
    public record Run(
            String zone,
            long from,
            long until,
            double supplied,
            double astray,
            double byWind,
            double wind,
            double wetness) {

        /** Minutes open. */
        public long minutes() {
            return until - from;
        }
    }

    /**
     * A start was dropped, or a run was held or ended.
     *
     * @param by placement id, or {@code lock-out}, {@code master} or {@code flow} where the flow watch did it
     * @param kind kind of the sensor
     * @param wetness of the zone, as {@link Run#wetness}
     */
    public record Stop(long tick, SeasonEvent.Kind what, String zone, String by, SensorKind kind, double wetness) {}

    /**
     * A walk that carried ice of irrigation water in one night.
     *
     * @param night counted from noon to noon, 0 ends at the first noon
     * @param from first minute iced
     * @param until the minute after its last
     * @param areaHours m2 h
     * @param inTraffic m2 h of it in foot traffic
     * @param largest m2
     * @param start tick of the first of the temperatures, one each {@link #TEMPERATURE_STEP} minutes
     * @param air °C at 0.1 m over the walk's middle; readers must not change it
     * @param paving °C of its surface there; readers must not change it
     */
    public record IcedWalk(
            int night,
            String walk,
            long from,
            long until,
            double areaHours,
            double inTraffic,
            double largest,
            long start,
            float[] air,
            float[] paving) {

        /** The lowest of the air's temperatures, °C. */
        public double coldestAir() {
            double least = Double.POSITIVE_INFINITY;
            for (float t : air) {
                least = Math.min(least, t);
            }
            return least;
        }
    }

    /**
     * A loss of water through a break, a leak or a valve.
     *
     * @param on id of what broke
     * @param began its first minute
     * @param firstLost first minute in which water was lost, or {@link #NEVER}
     * @param found when an alarm found it, or {@link #NEVER}
     * @param ended when it was repaired or shut by hand, or {@link #NEVER}
     * @param volume lost
     * @param afterFound the part lost after an alarm found it
     * @param flow most lost in a minute, m3/s
     * @param idle whether it lost water while all zones were shut
     * @param share share of what a zone takes that it is while the zone runs, 0 while idle
     * @param passes share of it that passes the watched flow sensor, NaN where none is placed
     * @param broken whether the flow sensor's wheel was jammed, or its factor wrong so that it showed too little, when water
     *     was first lost
     */
    public record Leak(
            int fault,
            FaultPlan.Kind kind,
            String on,
            long began,
            long firstLost,
            long found,
            long ended,
            double volume,
            double afterFound,
            double flow,
            boolean idle,
            double share,
            double passes,
            boolean broken) {}

    /**
     * A flow alarm while nothing leaked.
     *
     * @param subject the zone that was open, or the sensor where none was
     * @param shown m3/s
     * @param expected m3/s expected, or the limit for unscheduled flow
     * @param truth m3/s that passed the sensor
     * @param straight whether there was straight pipe enough around it
     * @param broken whether its wheel was jammed or its factor wrong
     */
    public record FalseAlarm(
            long tick, String subject, double shown, double expected, double truth, boolean straight, boolean broken) {}

    /**
     * Depths in m from the season's begin to each whole hour, beginning with hour 0; readers must not change them.
     *
     * @param open at true open sky
     * @param caught rain that reached each rain sensor, by placement id
     * @param sprayed irrigation water that each rain sensor caught
     */
    public record Fallen(double[] open, Map<String, double[]> caught, Map<String, double[]> sprayed) {

        private static final int DRY_HOURS = 24;

        public Fallen {
            caught = Map.copyOf(caught);
            sprayed = Map.copyOf(sprayed);
        }

        /**
         * Tick of the hour in which the last rain before a tick began, after 24 h without any; the tick itself where none
         * fell so far.
         */
        public long since(long tick) {
            int begin = hour(tick);
            while (begin > 0 && open[begin] <= open[begin - 1]) {
                begin--;
            }
            if (begin == 0) {
                return tick;
            }
            for (int h = begin; h > 0 && begin - h <= DRY_HOURS; h--) {
                begin = open[h] > open[h - 1] ? h - 1 : begin;
            }
            return (long) begin * HOUR;
        }

        /** Depth in m between two ticks, to the hour, in one of the courses of depth. */
        public double between(double[] depths, long from, long until) {
            return depths == null ? Double.NaN : depths[hour(until)] - depths[hour(from)];
        }

        private int hour(long tick) {
            return (int) Math.min(open.length - 1, Math.max(0, (tick + HOUR - 1) / HOUR));
        }
    }

    /**
     * A placed sensor of the season.
     *
     * @param id placement id
     * @param trips by guise; a guise is missing where it means nothing for the kind (flow has none)
     * @param shown what it showed at the end of each minute, in SI units, NaN while it was not placed; readers must not
     *     change it
     * @param broken minutes in which a fault acted on it
     */
    public record Sensed(String id, SensorKind kind, Map<Guise, Trips> trips, float[] shown, Trips broken) {

        public Sensed {
            trips = Map.copyOf(trips);
        }

        /** What the controller saw when it decided on a minute. */
        public double seenAt(long tick) {
            return tick < 1 || tick > shown.length ? Double.NaN : shown[(int) (tick - 1)];
        }
    }

    public Chronicle {
        hours = List.copyOf(hours);
        days = List.copyOf(days);
        runs = List.copyOf(runs);
        stops = List.copyOf(stops);
        iced = List.copyOf(iced);
        leaks = List.copyOf(leaks);
        falseAlarms = List.copyOf(falseAlarms);
        sensors = List.copyOf(sensors);
        usual = Map.copyOf(usual);
    }

    /** Notes what was lived of a season by living it again; the season is not changed. */
    public static Chronicle of(Season lived) {
        return Chronicler.write(lived, lived.fromTheBeginning(), true);
    }

    /** The same of the clock alone over the same minutes of the same weather and faults. */
    public static Chronicle ofClockAlone(Season lived) {
        return Chronicler.write(lived, lived.beside(SetUp.CLOCK_ALONE), false);
    }

    /** The night, from noon to noon, that a tick falls in; 0 ends at the first noon. */
    public static int night(long tick) {
        return (int) ((tick + DAY / 2) / DAY);
    }

    /** The tick at which a night begins: its noon, or the season's begin. */
    public static long beginOf(int night) {
        return Math.max(0, (long) night * DAY - DAY / 2);
    }

    /** Where irrigation's water had gone at a tick, to the hour; at the end of what was lived, to the minute. */
    public Ledger.Irrigation at(long when) {
        int hour = (int) (when / HOUR);
        return when >= tick || hour >= hours.size() ? outcome.ledger().irrigation() : hours.get(hour);
    }

    /** The sensor with an id, as sensed; null where none was placed. */
    public Sensed sensor(String id) {
        return sensors.stream().filter(s -> s.id().equals(id)).findFirst().orElse(null);
    }

    /** m2 h of iced walk in foot traffic by walk, over the season. */
    public Map<String, Double> icedByWalk() {
        Map<String, Double> sums = new TreeMap<>();
        iced.forEach(i -> sums.merge(i.walk(), i.inTraffic(), Double::sum));
        return sums;
    }
}
