package provingyard.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.TestYards;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.sensor.SensorFaults.Fault;
import provingyard.sensor.SensorFaults.Kind;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** The laws of the sensors by their numbers: edges of trips, transfer curves, and what a changed setting keeps. */
@Tag("unit")
class SensorLawsTest {

    private static final Scenario SCENARIO = TestYards.lawn(20, 20).scenario();
    private static final Point HERE = new Point(5, 5);
    private static final Point THERE = new Point(6, 5);

    private final FakeSurroundings yard = new FakeSurroundings();

    private static final Placement.Rain RAIN = new Placement.Rain("rain-1", HERE, Mount.POST, 2, 0.006, 0.5);
    private static final Placement.Wind WIND = new Placement.Wind("wind-1", HERE, Mount.POST, 3, 4, 3, 600, 600);
    private static final Placement.Freeze FREEZE = new Placement.Freeze("freeze-1", HERE, Mount.POST, 1, 3, 5);
    private static final Placement.Flow FLOW = flow("main", 3, FlowBody.of(0.0254));
    private static final Placement.Soil SOIL = new Placement.Soil("soil-1", HERE, 0.1, TestYards.SOIL, 0.18, 0.26);

    private static Placement.Flow flow(String on, double along, FlowBody body) {
        return new Placement.Flow("flow-1", on, along, body.size(), body.pulses(), body.offset());
    }

    private static SetUp with(Placement... placements) {
        SetUp setUp = SetUp.CLOCK_ALONE;
        for (Placement placement : placements) {
            setUp = setUp.with(placement);
        }
        return setUp;
    }

    private static Sensors of(Placement... placements) {
        return Sensors.of(SCENARIO, with(placements), new RandomStreams(7));
    }

    @Test
    void rainTripsAtItsDepthAndHoldsUntilADrierOne() {
        assertTrue(RainSensor.trips(0.004, 0.004, false), "at the depth itself");
        assertFalse(RainSensor.trips(0.0039, 0.004, false));
        double rearm = 0.004 * 0.8;
        assertFalse(RainSensor.trips(rearm, 0.004, true), "at the re-arm depth itself");
        assertTrue(RainSensor.trips(rearm + 1e-9, 0.004, true));
        assertEquals((1.5 - 0.8 * 0.55) * 0.00635 / (1.25 * 0.005), RainSensor.daysTripped(0.5, 0.005), 1e-12);
    }

    @Test
    void aFullElementDriesAsLongAtEverySetPoint() {
        for (double trip : new double[] {0.003175, 0.00635, 0.0127}) {
            Placement.Rain sensor = new Placement.Rain("rain-1", HERE, Mount.POST, 2, trip, 0.5);
            double day = RainSensor.hold(1.5 * trip, 0, 0.003, sensor);
            assertEquals(1.5 - 1.25 * 0.003 / 0.00635, day / trip, 1e-12);
        }
    }

    @Test
    void aStuckElementShowsAFullOne() {
        Sensors sensors = of(RAIN);
        sensors.minute(0, yard, new SensorFaults(List.of(new Fault(Kind.RAIN_STUCK_WET, "rain", 0))));
        assertEquals(1.5 * 0.006, sensors.readings().all().get(0).shown(), 1e-15);
    }

    @Test
    void windTripsFromItsSpeedAndHoldsDownToItsRearm() {
        assertTrue(WindSensor.trips(4, false, 0, WIND), "at the trip speed itself");
        assertFalse(WindSensor.trips(3.999, false, 0, WIND));
        assertTrue(WindSensor.trips(3.001, true, 6000, WIND));
        assertFalse(WindSensor.trips(3, true, 600, WIND), "at the re-arm speed, its hold just over");
        assertTrue(WindSensor.trips(1, true, 599, WIND));
    }

    @Test
    void theHoldCountsFromTheTrip() {
        Sensors sensors = of(new Placement.Wind("wind-1", HERE, Mount.POST, 3, 4, 3, 60, 600));
        yard.wind = 1;
        for (int t = 0; t < 100; t++) {
            sensors.minute(t, yard, SensorFaults.NONE);
        }
        yard.wind = 9;
        assertTrue(sensors.minute(100, yard, SensorFaults.NONE).all().get(0).tripped());
        yard.wind = 0;
        for (int t = 101; t < 110; t++) {
            assertTrue(sensors.minute(t, yard, SensorFaults.NONE).all().get(0).tripped(), "minute " + t);
        }
        assertFalse(sensors.minute(110, yard, SensorFaults.NONE).all().get(0).tripped(), "ten minutes after the trip");
    }

    @Test
    void cupsFollowWithTheirDistanceConstant() {
        // 4 m/s over 60 s is a way of 240 m: 80 distance constants of 3 m.
        Sensors sensors = of(new Placement.Wind("wind-1", HERE, Mount.POST, 3, 40, 30, 60, 600));
        double sum = 0;
        double square = 0;
        for (int t = 0; t < 4000; t++) {
            yard.wind = t % 2 == 0 ? 4 : 0.6;
            double shown =
                    sensors.minute(t, yard, SensorFaults.NONE).all().get(0).shown();
            double still = t % 2 == 0 ? 4 - 3.4 / 81 : 0.6 + 3.4 / 13;
            sum += t > 1 ? shown - still : 0;
            square += t > 1 ? (shown - still) * (shown - still) : 0;
        }
        assertEquals(0, sum / 4000, 0.02);
        double high = 0.05 + 0.02 * 3.96;
        double low = 0.05 + 0.02 * 0.86;
        assertEquals(Math.sqrt((high * high + low * low) / 2), Math.sqrt(square / 4000), 0.012);
    }

    @Test
    void freezeTripsUnderItsPointAndRearmsAtItsOther() {
        assertFalse(FreezeSensor.trips(3, false, FREEZE), "at the trip point itself");
        assertTrue(FreezeSensor.trips(2.999, false, FREEZE));
        assertTrue(FreezeSensor.trips(4.999, true, FREEZE));
        assertFalse(FreezeSensor.trips(5, true, FREEZE), "at the re-arm point itself");
    }

    @Test
    void theBodyOfAFreezeSensorWarmsInTheSunLessInWind() {
        for (double wind : new double[] {0, 3}) {
            Sensors shade = of(FREEZE);
            Sensors sun = of(FREEZE);
            yard.wind = wind;
            for (int t = 0; t < 600; t++) {
                yard.sun = 0;
                shade.minute(t, yard, SensorFaults.NONE);
                yard.sun = 500;
                sun.minute(t, yard, SensorFaults.NONE);
            }
            double warmer = sun.readings().all().get(0).shown()
                    - shade.readings().all().get(0).shown();
            assertEquals(0.006 * 500 / (1 + wind), warmer, 1e-9, "wind " + wind);
        }
    }

    @Test
    void itsTimeConstantIsAQuarterOfAnHourInStillAir() {
        yard.wind = 0;
        yard.air = 10;
        Sensors sensors = of(FREEZE);
        sensors.minute(0, yard, SensorFaults.NONE);
        double offset = FreezeSensor.offset(new RandomStreams(7).key("sensor.freeze-1.unit"));
        yard.air = 0;
        double expected = 10;
        double error = 0;
        for (int t = 1; t <= 400; t++) {
            double shown =
                    sensors.minute(t, yard, SensorFaults.NONE).all().get(0).shown();
            expected -= expected * (60.0 / 900) / (1 + 60.0 / 900);
            error += shown - expected - offset;
        }
        assertEquals(0, error / 400, 0.02, "noise alone");
    }

    @Test
    void flowGivesPulsesByItsBody() {
        FlowBody body = FlowBody.of(0.0254);
        Sensors sensors = of(FLOW);
        yard.flow = 0.001;
        double pulses = 0;
        for (int t = 0; t < 2000; t++) {
            pulses += sensors.minute(t, yard, SensorFaults.NONE).all().get(0).pulses();
        }
        assertEquals(body.pulses() * 1000 * (0.001 + body.offset()) * 60, pulses / 2000, 1);
    }

    @Test
    void flowIsSeenFromTheLowestVelocityItself() {
        yard.flow = FlowBody.of(0.0254).cannotSeeBelow();
        assertTrue(of(FLOW).minute(0, yard, SensorFaults.NONE).all().get(0).pulses() > 0);
        yard.flow *= 0.999;
        assertEquals(0, of(FLOW).minute(0, yard, SensorFaults.NONE).all().get(0).pulses());
    }

    @Test
    void swirlMakesItNoisier() {
        Surroundings.StraightPipe none = new Surroundings.StraightPipe(0, 0, 0.03);
        assertEquals(0.2, FlowSensor.sitingError(none), 1e-15);
        assertEquals(0.12, FlowSensor.sitingError(new Surroundings.StraightPipe(0, 1, 0.03)), 1e-15);
        assertEquals(0.04, FlowSensor.sitingError(new Surroundings.StraightPipe(0.3, 0.075, 0.03)), 1e-15);
        assertEquals(0, FlowSensor.sitingError(new Surroundings.StraightPipe(0, 0, 0)), 0);
        assertTrue(spread(none) > 3 * spread(new Surroundings.StraightPipe(10, 10, 0.03)));
    }

    private double spread(Surroundings.StraightPipe pipe) {
        yard.pipe = pipe;
        yard.flow = 0.002;
        Sensors sensors = of(FLOW);
        double sum = 0;
        double squares = 0;
        for (int t = 0; t < 1000; t++) {
            double shown =
                    sensors.minute(t, yard, SensorFaults.NONE).all().get(0).shown();
            sum += shown;
            squares += shown * shown;
        }
        return Math.sqrt(squares / 1000 - sum * sum / 1e6);
    }

    @Test
    void permittivityIsToppsCurveTurnedRound() {
        for (double water = 0.02; water <= 0.5; water += 0.02) {
            assertEquals(water, SoilSensor.topp(SoilSensor.permittivity(water)), 1e-9, "at " + water);
        }
        assertEquals(1, SoilSensor.permittivity(-1), 0, "never less than air");
    }

    @Test
    void fineSoilsHideWaterAndCoarseOnesDoNot() {
        assertEquals(0.2 * (0.272 - 0.12), SoilSensor.shift(0.272), 1e-15);
        assertTrue(SoilSensor.shift(0.03) < 0);
    }

    @Test
    void aVoidMixesAirInByTheRefractiveIndex() {
        Sensors sound = of(SOIL);
        Sensors hollow = of(SOIL);
        SensorFaults tenth = new SensorFaults(List.of(new Fault(Kind.SOIL_VOID, "soil", 0.1)));
        double shift = SoilSensor.shift(SCENARIO.catalogue().soils().stream()
                .filter(s -> s.id().equals(TestYards.SOIL))
                .findFirst()
                .orElseThrow()
                .wiltingPoint());
        double seen = SoilSensor.permittivity(0.3 - shift);
        double index = 0.9 * Math.sqrt(seen) + 0.1;
        yard.water = 0.3;
        double difference = 0;
        for (int t = 0; t < 4000; t += 10) {
            difference += sound.minute(t, yard, SensorFaults.NONE).all().get(0).shown();
            difference -= hollow.minute(t, yard, tenth).all().get(0).shown();
        }
        assertEquals(0.3 - shift - SoilSensor.topp(index * index), difference / 400, 0.002);
    }

    @Test
    void soilIsReadEveryTenMinutes() {
        Sensors sensors = of(SOIL);
        double first = sensors.minute(3, yard, SensorFaults.NONE).all().get(0).shown();
        assertTrue(first > 0, "at once when it is new");
        yard.water = 0.4;
        assertEquals(
                first, sensors.minute(9, yard, SensorFaults.NONE).all().get(0).shown());
        assertTrue(sensors.minute(10, yard, SensorFaults.NONE).all().get(0).shown() > first + 0.1);
        assertEquals(0.4, sensors.truth("soil-1").orElseThrow());
    }

    @Test
    void everySensorTellsTheTruthOfItsPlace() {
        yard.air = 11;
        yard.wind = 2.5;
        yard.rain = 0.001;
        yard.flow = 0.002;
        Sensors sensors = of(RAIN, WIND, FREEZE, FLOW, SOIL);
        sensors.minute(0, yard, SensorFaults.NONE);
        assertEquals(0.001, sensors.truth("rain-1").orElseThrow());
        assertEquals(2.5, sensors.truth("wind-1").orElseThrow());
        assertEquals(11, sensors.truth("freeze-1").orElseThrow());
        assertEquals(0.002, sensors.truth("flow-1").orElseThrow());
        assertTrue(sensors.truth("other").isEmpty());
    }

    /** A new setting keeps what a sensor has seen; another place, mount, height, depth or size makes it a new one. */
    @Test
    void onlyTheVerySamePlaceKeepsWhatWasSeen() {
        keeps(RAIN, new Placement.Rain("rain-1", HERE, Mount.POST, 2, 0.012, 0), true);
        keeps(RAIN, new Placement.Rain("rain-1", THERE, Mount.POST, 2, 0.006, 0.5), false);
        keeps(RAIN, new Placement.Rain("rain-1", HERE, Mount.FENCE, 2, 0.006, 0.5), false);
        keeps(RAIN, new Placement.Rain("rain-1", HERE, Mount.POST, 2.1, 0.006, 0.5), false);
        keeps(WIND, new Placement.Wind("wind-1", HERE, Mount.POST, 3, 5, 2, 600, 60), true);
        keeps(WIND, new Placement.Wind("wind-1", HERE, Mount.POST, 3, 5, 2, 60, 60), true);
        keeps(WIND, new Placement.Wind("wind-1", THERE, Mount.POST, 3, 4, 3, 600, 600), false);
        keeps(WIND, new Placement.Wind("wind-1", HERE, Mount.ROOF_EDGE, 3, 4, 3, 600, 600), false);
        keeps(WIND, new Placement.Wind("wind-1", HERE, Mount.POST, 4, 4, 3, 600, 600), false);
        keeps(FREEZE, new Placement.Freeze("freeze-1", HERE, Mount.POST, 1, 0, 1), true);
        keeps(FREEZE, new Placement.Freeze("freeze-1", THERE, Mount.POST, 1, 3, 5), false);
        keeps(FREEZE, new Placement.Freeze("freeze-1", HERE, Mount.WALL, 1, 3, 5), false);
        keeps(FREEZE, new Placement.Freeze("freeze-1", HERE, Mount.POST, 2, 3, 5), false);
        keeps(FLOW, new Placement.Flow("flow-1", "main", 3, FLOW.size(), 9, 0), true);
        keeps(FLOW, flow("service", 3, FlowBody.of(0.0254)), false);
        keeps(FLOW, flow("main", 4, FlowBody.of(0.0254)), false);
        keeps(FLOW, flow("main", 3, FlowBody.of(0.0508)), false);
        keeps(SOIL, new Placement.Soil("soil-1", HERE, 0.1, TestYards.SOIL, 0.1, 0.3), true);
        keeps(SOIL, new Placement.Soil("soil-1", THERE, 0.1, TestYards.SOIL, 0.18, 0.26), false);
        keeps(SOIL, new Placement.Soil("soil-1", HERE, 0.2, TestYards.SOIL, 0.18, 0.26), false);
    }

    private void keeps(Placement before, Placement after, boolean kept) {
        yard.rain = 0.001;
        yard.flow = 0.001;
        Sensors sensors = of(before);
        sensors.minute(0, yard, SensorFaults.NONE);
        double truth = sensors.truth(before.id()).orElseThrow();
        assertTrue(truth > 0);
        Sensors changed = sensors.changed(with(after));
        assertEquals(kept ? truth : 0, changed.truth(before.id()).orElseThrow(), () -> before + " to " + after);
    }

    @Test
    void readingsAreFoundByIndexOrById() {
        Readings.Reading rain = new Readings.Reading("r", SensorKind.RAIN, 1, false, false, false, 0);
        Readings.Reading soil = new Readings.Reading("s", SensorKind.SOIL, 1, false, true, false, 0);
        Readings readings = new Readings(List.of(rain, soil));
        assertEquals(rain, readings.at(0, "r"));
        assertEquals(soil, readings.at(0, "s"), "where it is not expected");
        assertEquals(soil, readings.at(-1, "s"));
        assertEquals(rain, readings.at(2, "r"));
        assertNull(readings.at(0, "t"));
        assertTrue(soil.seenDry());
        assertFalse(new Readings.Reading("s", SensorKind.SOIL, 1, false, true, true, 0).seenDry());
        assertFalse(rain.seenDry());
    }

    @Test
    void bodiesAreChosenByTheNearestSize() {
        assertEquals(8, FlowBody.all().size());
        assertEquals(0.75 * 0.0254, FlowBody.of(0.001).size());
        assertEquals(4 * 0.0254, FlowBody.of(1).size());
        assertEquals(0.75 * 0.0254, FlowBody.of(0.875 * 0.0254).size(), "the smaller of two as near");
    }

    @Test
    void soilWouldHaveBeenWetFromItsPoint() {
        WouldHave would = WouldHave.soil(SOIL, new double[] {0.259, 0.26, 0.3});
        assertFalse(would.tripped()[0]);
        assertTrue(would.tripped()[1] && would.tripped()[2]);
    }
}
