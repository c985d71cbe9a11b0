package provingyard.control;

import java.util.Arrays;
import java.util.List;
import provingyard.sensor.FlowSensor;
import provingyard.sensor.Readings;
import provingyard.setup.FlowWatch;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * Judges the flow that the watched sensor shows, minute by minute: against a zone's expected flow once the zone has
 * settled, by a running mean; and against the limit for unscheduled flow while all valves are shut. Mutable.
 */
final class FlowJudge {

    private static final double MINUTE = 60;

    /** What a minute shows. */
    enum Verdict {
        FINE,
        HIGH,
        LOW,
        UNSCHEDULED
    }

    private final FlowWatch watch;
    private final int sensor;
    private final Placement.Flow placement;
    private final double unscheduledLimit;
    private final double[] expected;
    private final boolean[] typed;
    private final double[] window;
    private int filled;
    private int next;
    private double judgedSum;
    private int judged;
    private boolean alarmed;
    private int idleMinutes;
    private boolean idleAlarmed;

    FlowJudge(SetUp setUp, List<String> zones) {
        watch = setUp.flowWatch();
        int index = -1;
        for (int i = 0; i < setUp.sensors().size(); i++) {
            boolean flow = setUp.sensors().get(i) instanceof Placement.Flow;
            if (flow && setUp.sensors().get(i).id().equals(watch.sensor())) {
                index = i;
            }
        }
        sensor = index;
        placement = index < 0 ? null : (Placement.Flow) setUp.sensors().get(index);
        double blind = placement == null ? 0 : FlowSensor.cannotSeeBelow(placement);
        unscheduledLimit = Math.max(watch.unscheduled(), blind);
        expected = new double[zones.size()];
        typed = new boolean[zones.size()];
        Arrays.fill(expected, Double.NaN);
        for (FlowWatch.Expected e : watch.expected()) {
            int zone = zones.indexOf(e.zone());
            if (zone >= 0) {
                expected[zone] = e.flow();
                typed[zone] = true;
            }
        }
        window = new double[(int) Math.max(1, Math.ceil(watch.averaging() / MINUTE - 1e-9))];
    }

    private FlowJudge(FlowJudge other) {
        watch = other.watch;
        sensor = other.sensor;
        placement = other.placement;
        unscheduledLimit = other.unscheduledLimit;
        expected = other.expected.clone();
        typed = other.typed;
        window = other.window.clone();
        filled = other.filled;
        next = other.next;
        judgedSum = other.judgedSum;
        judged = other.judged;
        alarmed = other.alarmed;
        idleMinutes = other.idleMinutes;
        idleAlarmed = other.idleAlarmed;
    }

    FlowJudge copy() {
        return new FlowJudge(this);
    }

    /** Takes over recorded flows of an earlier judge that watched the same sensor with the same numbers. */
    void inherit(FlowJudge earlier) {
        if (placement != null && placement.equals(earlier.placement)) {
            for (int z = 0; z < expected.length; z++) {
                if (!typed[z] && !earlier.typed[z] && watch.record()) {
                    expected[z] = earlier.expected[z];
                }
            }
        }
    }

    boolean watches() {
        return sensor >= 0;
    }

    String sensorId() {
        return watch.sensor();
    }

    /** Expected flow of a zone in m3/s, NaN when neither typed nor recorded. */
    double expected(int zone) {
        return expected[zone];
    }

    /** Running mean of what was judged, m3/s. */
    double mean() {
        double sum = 0;
        for (int i = 0; i < filled; i++) {
            sum += window[i];
        }
        return filled == 0 ? 0 : sum / filled;
    }

    /** Limit for unscheduled flow in m3/s: at least what the sensor can see. */
    double unscheduledLimit() {
        return unscheduledLimit;
    }

    /** The flow shown, m3/s; NaN when none is watched. */
    double seen(Readings last) {
        Readings.Reading reading = watches() ? last.at(sensor, placement.id()) : null;
        return reading == null ? Double.NaN : reading.shown();
    }

    /** A zone was just opened. */
    void opened() {
        filled = 0;
        next = 0;
        judged = 0;
        judgedSum = 0;
        alarmed = false;
    }

    /** Judges a minute in which a zone was open for so many minutes, this one included. */
    Verdict running(double flow, int zone, int minutesOpen) {
        idleMinutes = 0;
        idleAlarmed = false;
        if (Double.isNaN(flow) || minutesOpen * MINUTE <= watch.settling()) {
            return Verdict.FINE;
        }
        window[next] = flow;
        next = (next + 1) % window.length;
        filled = Math.min(filled + 1, window.length);
        judged++;
        judgedSum += flow;
        if (alarmed || filled < window.length || Double.isNaN(expected[zone])) {
            return Verdict.FINE;
        }
        Verdict verdict = compare(mean(), expected[zone]);
        alarmed = verdict != Verdict.FINE;
        return verdict;
    }

    private Verdict compare(double mean, double wanted) {
        if (mean > wanted * watch.high()) {
            return Verdict.HIGH;
        }
        return watch.low() > 0 && mean < wanted * watch.low() ? Verdict.LOW : Verdict.FINE;
    }

    /** Judges a minute in which all valves were shut; alarms once until the flow has fallen again. */
    Verdict idle(double flow) {
        if (Double.isNaN(flow) || flow < unscheduledLimit()) {
            idleMinutes = 0;
            idleAlarmed = false;
            return Verdict.FINE;
        }
        idleMinutes++;
        if (!idleAlarmed && idleMinutes * MINUTE >= watch.unscheduledAfter()) {
            idleAlarmed = true;
            return Verdict.UNSCHEDULED;
        }
        return Verdict.FINE;
    }

    /** A zone's part ran to its end: its mean is recorded if it is wanted, proven and seen. Whether it was. */
    boolean record(int zone) {
        boolean wanted = watches() && watch.record() && Double.isNaN(expected[zone]);
        if (wanted && judged >= window.length && judgedSum > 0) {
            expected[zone] = judgedSum / judged;
            return true;
        }
        return false;
    }

    FlowWatch watch() {
        return watch;
    }
}
