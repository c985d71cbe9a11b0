package provingyard.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.control.Bench.GPM;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.control.ControlEvent.Kind;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Scenario;
import provingyard.sensor.FakeSurroundings;
import provingyard.sensor.Readings;
import provingyard.sensor.SensorFaults;
import provingyard.sensor.Sensors;
import provingyard.setup.FlowWatch.Action;
import provingyard.setup.Interlock;
import provingyard.setup.SetUp;

/** Sensors with their noise and the controller together: what a technician would see on a site. */
class SensorsAndControllerTest {

    private static final Scenario SITE = Bench.scenario(Bench.atFive(Bench.run("a", 30)), null);

    private final FakeSurroundings yard = new FakeSurroundings();
    private final List<ControlEvent> events = new ArrayList<>();
    private int watered;

    /** Lives days in which zone a passes 18.3 gpm, and 20 gpm from a day on. */
    private void live(SetUp setUp, int days, int leakFrom) {
        Sensors sensors = Sensors.of(SITE, setUp, new RandomStreams(7));
        Controller controller = Controller.of(SITE, setUp);
        Readings readings = sensors.readings();
        for (long t = 0; t < days * 1440L; t++) {
            Commands commands = controller.decide(t, readings);
            events.addAll(commands.events());
            boolean open = commands.openZone() >= 0;
            watered += open ? 1 : 0;
            yard.flow = open ? (t >= leakFrom * 1440L ? 20 : 18.3) * GPM : 0;
            yard.spray = open ? 0.0006 : 0;
            readings = sensors.minute(t, yard, SensorFaults.NONE);
        }
    }

    private long count(Kind kind) {
        return events.stream().filter(e -> e.kind() == kind).count();
    }

    private static SetUp watching(double inches, double high) {
        return SetUp.CLOCK_ALONE.with(Bench.flow(inches)).with(Bench.watch(high, Action.ALARM, Action.ALARM));
    }

    @Test
    void aTightLimitOnARecordedFlowAlarmsOnTheLeakAndOnlyThen() {
        live(watching(1, 1.05), 28, 21);
        assertEquals(1, count(Kind.EXPECTED_RECORDED));
        assertEquals(7, count(Kind.FLOW_HIGH), "each day of the leak, never before");
        assertTrue(events.stream().filter(e -> e.kind() == Kind.FLOW_HIGH).allMatch(e -> e.tick() > 21 * 1440));
    }

    @Test
    void aWideLimitMissesTheSameLeak() {
        live(watching(1, 1.3), 28, 21);
        assertEquals(0, count(Kind.FLOW_HIGH));
    }

    @Test
    void aRainSensorInTheSprayHoldsBackTheWatering() {
        SetUp setUp =
                SetUp.CLOCK_ALONE.with(Bench.rain()).with(new Interlock("rain-1", Interlock.Action.SKIP, List.of()));
        yard.drying = 0.002 / 1440;
        live(setUp, 10, 99);
        assertTrue(count(Kind.START_SKIPPED) >= 3, "on dry days");
        assertTrue(watered < 300, "of 300 min");
    }
}
