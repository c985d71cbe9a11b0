package provingyard.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import provingyard.scenario.SensorKind;
import provingyard.sensor.Readings;
import provingyard.setup.SetUp;

/**
 * What one flow or soil sensor showed over the season, for the ribbon's lanes.
 *
 * @param sensor placement id
 * @param kind flow or soil
 * @param values mean of each {@link #STEP} minutes lived, in the reading's SI unit; NaN while it was not placed
 */
public record Shown(String sensor, SensorKind kind, double[] values) {

    /** Minutes that a value stands for. */
    public static final int STEP = 10;

    /** Collects readings minute by minute; an unfinished value is not in it. Mutable. */
    static final class Log {

        private final int most;
        private final List<Lane> lanes;
        private Lane[] bySensor = new Lane[0];
        private int minutes;

        /** A log of a season of so many minutes. */
        Log(long ticks) {
            most = (int) (ticks / STEP);
            lanes = new ArrayList<>();
        }

        private Log(Log other) {
            most = other.most;
            lanes = new ArrayList<>();
            bySensor = new Lane[other.bySensor.length];
            for (Lane lane : other.lanes) {
                Lane copy = new Lane(lane);
                lanes.add(copy);
                for (int i = 0; i < bySensor.length; i++) {
                    bySensor[i] = other.bySensor[i] == lane ? copy : bySensor[i];
                }
            }
            minutes = other.minutes;
        }

        Log copy() {
            return new Log(this);
        }

        /** From now on the sensors are those of another set-up. */
        void watch(SetUp setUp) {
            bySensor = new Lane[setUp.sensors().size()];
            for (int i = 0; i < bySensor.length; i++) {
                SensorKind kind = setUp.sensors().get(i).kind();
                if (kind == SensorKind.FLOW || kind == SensorKind.SOIL) {
                    bySensor[i] = lane(setUp.sensors().get(i).id(), kind);
                }
            }
        }

        private Lane lane(String id, SensorKind kind) {
            for (Lane lane : lanes) {
                if (lane.id.equals(id) && lane.kind == kind) {
                    return lane;
                }
            }
            Lane lane = new Lane(id, kind, most);
            lanes.add(lane);
            return lane;
        }

        /** Takes a minute's readings, in the order of the set-up's sensors. */
        void minute(Readings readings) {
            for (int i = 0; i < bySensor.length; i++) {
                if (bySensor[i] != null) {
                    bySensor[i].add(readings.all().get(i).shown());
                }
            }
            minutes++;
            if (minutes % STEP == 0) {
                for (Lane lane : lanes) {
                    lane.close(minutes / STEP - 1);
                }
            }
        }

        List<Shown> shown() {
            List<Shown> all = new ArrayList<>();
            for (Lane lane : lanes) {
                double[] values = new double[minutes / STEP];
                for (int i = 0; i < values.length; i++) {
                    values[i] = lane.values[i];
                }
                all.add(new Shown(lane.id, lane.kind, values));
            }
            return List.copyOf(all);
        }
    }

    private static final class Lane {

        private final String id;
        private final SensorKind kind;
        private final float[] values;
        private double sum;
        private int seen;

        Lane(String id, SensorKind kind, int most) {
            this.id = id;
            this.kind = kind;
            values = new float[most];
            Arrays.fill(values, Float.NaN);
        }

        Lane(Lane other) {
            id = other.id;
            kind = other.kind;
            values = other.values.clone();
            sum = other.sum;
            seen = other.seen;
        }

        void add(double shown) {
            sum += shown;
            seen++;
        }

        void close(int at) {
            values[at] = seen == 0 ? Float.NaN : (float) (sum / seen);
            sum = 0;
            seen = 0;
        }
    }
}
