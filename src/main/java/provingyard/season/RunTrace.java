package provingyard.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the watched flow sensor showed while a zone ran last.
 *
 * @param zone id of the zone
 * @param start first minute open
 * @param flow m3/s shown at the end of each minute open; readers must not change it
 */
public record RunTrace(String zone, long start, double[] flow) {

    private static final double MINUTE = 60;

    /** Mean in m3/s of the minutes after a settling time in s; NaN where the run was no longer. */
    public double mean(double settling) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < flow.length; i++) {
            if ((i + 1) * MINUTE > settling) {
                sum += flow[i];
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** Keeps each zone's last run. Mutable. */
    static final class Recorder {

        private static final int FIRST_LENGTH = 32;

        private final Map<String, RunTrace> ended = new LinkedHashMap<>();
        private String zone;
        private long start;
        private double[] flow = new double[FIRST_LENGTH];
        private int length;

        Recorder copy() {
            Recorder other = new Recorder();
            other.ended.putAll(ended);
            other.zone = zone;
            other.start = start;
            other.flow = flow.clone();
            other.length = length;
            return other;
        }

        /** Takes a minute: the zone that is open or null, and what the sensor shows, NaN where none is watched. */
        void minute(long tick, String open, double shown) {
            if (zone != null && !zone.equals(open)) {
                ended.put(zone, new RunTrace(zone, start, Arrays.copyOf(flow, length)));
                zone = null;
            }
            if (open == null || Double.isNaN(shown)) {
                return;
            }
            if (zone == null) {
                zone = open;
                start = tick;
                length = 0;
            }
            flow = length == flow.length ? Arrays.copyOf(flow, 2 * length) : flow;
            flow[length++] = shown;
        }

        List<RunTrace> last() {
            return new ArrayList<>(ended.values());
        }
    }
}
