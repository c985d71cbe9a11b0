package provingyard.control;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The controller's memory: each time a zone was open, and totals by night. Flow is what the watched flow sensor showed,
 * NaN where none is watched.
 *
 * @param runs in the order of their ends
 * @param nights in order; the last one may be unfinished
 */
public record ControllerRecords(List<Run> runs, List<Night> nights) {

    /** Why a zone was shut. */
    public enum End {
        /** The run is complete. */
        DONE,
        /** A part is complete, the rest follows after its soak. */
        SOAK,
        /** Held by a sensor. */
        PAUSED,
        /** Ended by a sensor. */
        SENSOR,
        /** The ordinance's window ended. */
        WINDOW,
        /** Flow was too high or too low. */
        FLOW,
        /** The master valve was shut. */
        MASTER,
        /** The schedule was changed. */
        SET_UP
    }

    /**
     * A zone was open.
     *
     * @param start first minute open
     * @param end first minute shut again
     * @param meanFlow m3/s seen
     * @param volume m3 seen
     */
    public record Run(String zone, long start, long end, double meanFlow, double volume, End why) {}

    /**
     * Totals from noon to noon.
     *
     * @param evening date of the noon at which it begins
     * @param minutes in which a zone was open
     * @param volume m3 seen while a zone was open
     * @param idleVolume m3 seen while all were shut
     */
    public record Night(LocalDate evening, int minutes, double volume, double idleVolume) {}

    /** Collects records. Mutable. */
    static final class Writer {

        private static final int NOON = 12 * 60;
        private static final int DAY = 24 * 60;

        private final LocalDate first;
        private final List<Run> runs;
        private final List<Night> nights;
        private LocalDate evening;
        private int minutes;
        private double volume;
        private double idleVolume;

        /** A memory of a season that begins at midnight of a date. */
        Writer(LocalDate first) {
            this.first = first;
            runs = new ArrayList<>();
            nights = new ArrayList<>();
        }

        private Writer(Writer other) {
            first = other.first;
            runs = new ArrayList<>(other.runs);
            nights = new ArrayList<>(other.nights);
            evening = other.evening;
            minutes = other.minutes;
            volume = other.volume;
            idleVolume = other.idleVolume;
        }

        Writer copy() {
            return new Writer(this);
        }

        void run(Run run) {
            runs.add(run);
        }

        /** Adds the minute before this one: whether a zone was open, and m3 seen (0 where flow is not watched). */
        void minute(long tick, boolean open, double seen) {
            if (evening == null) {
                evening = eveningOf(tick);
                return;
            }
            minutes += open ? 1 : 0;
            volume += open ? seen : 0;
            idleVolume += open ? 0 : seen;
            if (tick % DAY == NOON) {
                nights.add(night());
                evening = eveningOf(tick);
                minutes = 0;
                volume = 0;
                idleVolume = 0;
            }
        }

        private LocalDate eveningOf(long tick) {
            return first.plusDays(Math.floorDiv(tick - NOON, DAY));
        }

        private Night night() {
            return new Night(evening, minutes, volume, idleVolume);
        }

        ControllerRecords records() {
            List<Night> all = new ArrayList<>(nights);
            if (evening != null) {
                all.add(night());
            }
            return new ControllerRecords(List.copyOf(runs), List.copyOf(all));
        }
    }
}
