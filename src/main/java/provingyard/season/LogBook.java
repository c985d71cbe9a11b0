package provingyard.season;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.control.ControlEvent;
import provingyard.control.Controller;
import provingyard.control.ControllerRecords;
import provingyard.scenario.SensorKind;

/**
 * What a technician reads at the controller: runs, totals by zone and by night, trips and alarms. Only what the controller
 * can know: flows are those of the watched flow sensor, NaN where none is watched; nothing of the true yard is in it.
 *
 * @param watched whether flow is watched now
 * @param runs each time a zone was open, in the order of their ends
 * @param zones totals by zone, in the document's order
 * @param nights totals from noon to noon, in order; the last one may be unfinished
 * @param notes trips, alarms and what the controller did about them, in order
 */
public record LogBook(boolean watched, List<Run> runs, List<Zone> zones, List<Night> nights, List<Note> notes) {

    private static final int MINUTE = 60;
    private static final int DAY = 1440;
    private static final int NOON = 720;

    private static final Set<SeasonEvent.Kind> NOTED = EnumSet.of(
            SeasonEvent.Kind.SENSOR_TRIPPED,
            SeasonEvent.Kind.SENSOR_REARMED,
            SeasonEvent.Kind.START_SKIPPED,
            SeasonEvent.Kind.RUN_PAUSED,
            SeasonEvent.Kind.RUN_RESUMED,
            SeasonEvent.Kind.RUN_SHUT,
            SeasonEvent.Kind.FLOW_HIGH,
            SeasonEvent.Kind.FLOW_LOW,
            SeasonEvent.Kind.FLOW_UNSCHEDULED,
            SeasonEvent.Kind.ZONE_LOCKED_OUT,
            SeasonEvent.Kind.MASTER_SHUT,
            SeasonEvent.Kind.EXPECTED_RECORDED);

    /** How a run ended. */
    public enum End {
        /** The run is complete. */
        DONE,
        /** A part is complete, the rest follows after its soak. */
        SOAK,
        /** Held by a sensor; its rest runs later. */
        PAUSED,
        /** Ended by a sensor. */
        SENSOR,
        /** The ordinance's window ended. */
        WINDOW,
        /** Flow was too high or too low. */
        FLOW,
        /** An alarm shut all water. */
        MASTER,
        /** The schedule was changed. */
        SET_UP
    }

    /**
     * A zone was open.
     *
     * @param tick first minute open
     * @param minutes how long
     * @param meanFlow m3/s seen
     * @param volume m3 seen
     * @param by id of the sensor that ended or held it, or empty
     */
    public record Run(
            String zone,
            long tick,
            LocalDateTime began,
            int minutes,
            double meanFlow,
            double volume,
            End ended,
            String by) {}

    /**
     * A zone over the season.
     *
     * @param meanFlow m3/s seen while it was open
     * @param expected m3/s typed or recorded, NaN when neither
     */
    public record Zone(String zone, int runs, int minutes, double volume, double meanFlow, double expected) {}

    /**
     * From noon to noon.
     *
     * @param evening date of the noon at which it begins
     * @param minutes in which a zone was open
     * @param volume m3 seen while a zone was open
     * @param idleVolume m3 seen while all were shut
     * @param largest largest mean flow of ten minutes in m3/s
     */
    public record Night(LocalDate evening, int minutes, double volume, double idleVolume, double largest) {}

    /**
     * A trip, an alarm, or what the controller did.
     *
     * @param sensor kind of the sensor that it happened to, or null
     */
    public record Note(
            LocalDateTime at,
            long tick,
            SeasonEvent.Kind kind,
            String subject,
            SensorKind sensor,
            String cause,
            Map<String, Double> values) {}

    public LogBook {
        runs = List.copyOf(runs);
        zones = List.copyOf(zones);
        nights = List.copyOf(nights);
        notes = List.copyOf(notes);
    }

    static LogBook of(Season season, Controller controller) {
        String sensor = season.setUp().flowWatch().sensor();
        boolean watched = sensor != null
                && season.setUp()
                        .sensor(sensor)
                        .filter(p -> p.kind() == SensorKind.FLOW)
                        .isPresent();
        ControllerRecords records = controller.records();
        List<Run> runs = runs(season, records);
        return new LogBook(
                watched,
                runs,
                zones(runs, controller),
                nights(season, records, watched ? sensor : null),
                notes(season));
    }

    /** Minutes in which a zone was open. */
    public int minutes() {
        return zones.stream().mapToInt(Zone::minutes).sum();
    }

    /** m3 seen while a zone was open; NaN when flow was never watched. */
    public double volume() {
        return runs.stream()
                .mapToDouble(Run::volume)
                .filter(Double::isFinite)
                .reduce(Double::sum)
                .orElse(Double.NaN);
    }

    /** m3 seen while all valves were shut; NaN when flow is not watched. */
    public double idleVolume() {
        return watched ? nights.stream().mapToDouble(Night::idleVolume).sum() : Double.NaN;
    }

    private static List<Run> runs(Season season, ControllerRecords records) {
        Map<String, String> causes = new LinkedHashMap<>();
        for (SeasonEvent event : season.events()) {
            boolean held = event.kind() == SeasonEvent.Kind.RUN_SHUT || event.kind() == SeasonEvent.Kind.RUN_PAUSED;
            if (held && !event.cause().equals(ControlEvent.BY_HAND)) {
                causes.put(event.subject() + event.tick(), event.cause());
            }
        }
        List<Run> runs = new ArrayList<>();
        for (ControllerRecords.Run run : records.runs()) {
            End end = End.valueOf(run.why().name());
            boolean bySensor = end == End.SENSOR || end == End.PAUSED;
            runs.add(new Run(
                    run.zone(),
                    run.start(),
                    season.clock(run.start()),
                    (int) (run.end() - run.start()),
                    run.meanFlow(),
                    run.volume(),
                    end,
                    bySensor ? causes.getOrDefault(run.zone() + run.end(), "") : ""));
        }
        return runs;
    }

    private static List<Zone> zones(List<Run> runs, Controller controller) {
        List<Zone> zones = new ArrayList<>();
        for (int z = 0; z < controller.zones().size(); z++) {
            String id = controller.zones().get(z);
            int count = 0;
            int minutes = 0;
            int seenMinutes = 0;
            double volume = 0;
            for (Run run : runs) {
                if (run.zone().equals(id)) {
                    boolean seen = Double.isFinite(run.volume());
                    count++;
                    minutes += run.minutes();
                    seenMinutes += seen ? run.minutes() : 0;
                    volume += seen ? run.volume() : 0;
                }
            }
            boolean known = seenMinutes > 0;
            double mean = known ? volume / (seenMinutes * (double) MINUTE) : Double.NaN;
            zones.add(new Zone(id, count, minutes, known ? volume : Double.NaN, mean, controller.expected(z)));
        }
        return zones;
    }

    private static List<Night> nights(Season season, ControllerRecords records, String sensor) {
        double[] shown = season.shown().stream()
                .filter(s -> s.sensor().equals(sensor))
                .findFirst()
                .map(Shown::values)
                .orElse(new double[0]);
        List<Night> nights = new ArrayList<>();
        for (ControllerRecords.Night night : records.nights()) {
            long noon =
                    night.evening().toEpochDay() - season.clock(0).toLocalDate().toEpochDay();
            double largest = largest(shown, noon * DAY + NOON);
            double volume = sensor == null ? Double.NaN : night.volume();
            double idle = sensor == null ? Double.NaN : night.idleVolume();
            nights.add(new Night(night.evening(), night.minutes(), volume, idle, largest));
        }
        return nights;
    }

    private static double largest(double[] shown, long from) {
        double most = Double.NaN;
        for (long t = Math.max(0, from); t < from + DAY && t / Shown.STEP < shown.length; t += Shown.STEP) {
            double value = shown[(int) (t / Shown.STEP)];
            most = Double.isNaN(most) || value > most ? value : most;
        }
        return most;
    }

    private static List<Note> notes(Season season) {
        Map<String, SensorKind> kinds = new LinkedHashMap<>();
        for (Season.Change change : season.changes()) {
            change.setUp().sensors().forEach(p -> kinds.put(p.id(), p.kind()));
        }
        List<Note> notes = new ArrayList<>();
        for (SeasonEvent event : season.events()) {
            if (NOTED.contains(event.kind())) {
                notes.add(new Note(
                        season.clock(event.tick()),
                        event.tick(),
                        event.kind(),
                        event.subject(),
                        kinds.get(event.subject()),
                        event.cause(),
                        event.values()));
            }
        }
        return notes;
    }
}
