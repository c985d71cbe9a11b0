package provingyard.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.TestYards;
import provingyard.numeric.RandomStreams;
import provingyard.reference.ReferenceRow;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.sensor.SensorFaults.Fault;
import provingyard.sensor.SensorFaults.Kind;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** What each kind shows, against the truth that a test sets. */
@Tag("unit")
class SensorsTest {

    private static final Scenario SCENARIO = TestYards.lawn(20, 20).scenario();
    private static final Point OPEN = new Point(5, 5);
    private static final double GPM = 3.785411784e-3 / 60;
    private static final double INCH = 0.0254;

    private final FakeSurroundings yard = new FakeSurroundings();

    private static Sensors one(Placement... placements) {
        return seeded(1, placements);
    }

    private static Sensors seeded(long seed, Placement... placements) {
        SetUp setUp = SetUp.CLOCK_ALONE;
        for (Placement placement : placements) {
            setUp = setUp.with(placement);
        }
        return Sensors.of(SCENARIO, setUp, new RandomStreams(seed));
    }

    private static Placement.Rain rain(double trip, double vent) {
        return new Placement.Rain("rain-1", OPEN, Mount.POST, 2, trip, vent);
    }

    private static Placement.Wind wind(double averaging, double hold) {
        return new Placement.Wind("wind-1", OPEN, Mount.POST, 3, 4, 3, averaging, hold);
    }

    private static Placement.Freeze freeze() {
        return new Placement.Freeze("freeze-1", OPEN, Mount.POST, 1, 3, 5);
    }

    private static Placement.Flow flow(double inches) {
        FlowBody body = FlowBody.of(inches * INCH);
        return new Placement.Flow("flow-1", "main", 3, body.size(), body.pulses(), body.offset());
    }

    private static Placement.Soil soil(String set) {
        return new Placement.Soil("soil-1", OPEN, 0.1, set, 0.18, 0.26);
    }

    private static SensorFaults fault(Kind kind, String on, double amount) {
        return new SensorFaults(List.of(new Fault(kind, on, amount)));
    }

    private Readings.Reading minutes(Sensors sensors, long from, int count) {
        return minutes(sensors, from, count, SensorFaults.NONE);
    }

    private Readings.Reading minutes(Sensors sensors, long from, int count, SensorFaults faults) {
        Readings readings = sensors.readings();
        for (long t = from; t < from + count; t++) {
            readings = sensors.minute(t, yard, faults);
        }
        return readings.all().get(0);
    }

    // Rain

    @Test
    void realRainSensorsTripBelowTheirSetPointEachAtItsOwnDepth() {
        List<Double> depths = new ArrayList<>();
        for (int seed = 0; seed < 400; seed++) {
            Sensors sensors = seeded(seed, rain(0.01, 0.5));
            yard.rain = 0.0001;
            int minute = 0;
            while (!sensors.minute(minute, yard, SensorFaults.NONE).all().get(0).tripped()) {
                minute++;
            }
            depths.add((minute + 1) * 0.0001);
        }
        depths.sort(null);
        assertEquals(0.0055, depths.get(200), 0.0006, "median");
        assertTrue(depths.get(20) < 0.0045, "one in twenty trips early");
        assertTrue(depths.get(380) > 0.0110, "one in twenty trips late");
        assertTrue(depths.get(0) >= 0.002 && depths.get(399) <= 0.0131, "within 0.2 to 1.3");
    }

    @Test
    void sixMillimetresDryOutInADayOrTwo() {
        double days = RainSensor.daysToDry(0.5, 0.005);
        assertTrue(days >= 1.2 && days <= 1.8, () -> "days " + days);
        Sensors sensors = one(rain(0.006, 0.5));
        yard.rain = 0.02;
        assertTrue(minutes(sensors, 0, 1).tripped());
        yard.rain = 0;
        yard.drying = 0.005 / 1440;
        int minute = 1;
        while (minutes(sensors, minute, 1).shown() > 0) {
            minute++;
        }
        assertEquals(days, minute / 1440.0, 0.01);
    }

    @Test
    void theVentSetsHowFastItDries() {
        assertEquals(0.5, RainSensor.drying(0), 1e-12);
        assertEquals(1.25, RainSensor.drying(0.5), 1e-12);
        assertEquals(3, RainSensor.drying(1), 1e-12);
        assertTrue(RainSensor.daysTripped(0.5, 0.005) < RainSensor.daysToDry(0.5, 0.005));
    }

    @Test
    void itRearmsOnlyWhenDrierThanItTripped() {
        Sensors sensors = one(rain(0.006, 0.5));
        yard.rain = 0.0001;
        double trippedAt = 0;
        for (int t = 0; t < 200 && trippedAt == 0; t++) {
            Readings.Reading reading = minutes(sensors, t, 1);
            trippedAt = reading.tripped() ? reading.shown() : 0;
        }
        yard.rain = 0;
        yard.drying = 0.00001;
        Readings.Reading reading = minutes(sensors, 200, 1);
        while (reading.tripped()) {
            reading = minutes(sensors, 300, 1);
        }
        assertEquals(RainSensor.REARM * trippedAt, reading.shown(), 0.0001);
    }

    @Test
    void sprayTripsItAndAnEaveKeepsItDry() {
        Placement.Rain open = rain(0.006, 0.5);
        Placement.Rain under = new Placement.Rain("rain-2", new Point(1, 1), Mount.WALL, 2, 0.006, 0.5);
        yard.eave = under.at();
        yard.spray = 0.001;
        Sensors sensors = one(open, under);
        Readings readings = Readings.NONE;
        for (int t = 0; t < 20; t++) {
            readings = sensors.minute(t, yard, SensorFaults.NONE);
        }
        assertTrue(readings.of("rain-1").orElseThrow().tripped());
        assertFalse(readings.of("rain-2").orElseThrow().tripped());
        assertEquals(0, readings.of("rain-2").orElseThrow().shown());
    }

    @Test
    void rainFaults() {
        Sensors dry = one(rain(0.006, 0.5));
        assertTrue(minutes(dry, 0, 1, fault(Kind.RAIN_STUCK_WET, "rain", 0)).tripped());
        Sensors wet = one(rain(0.006, 0.5));
        yard.rain = 0.02;
        assertFalse(minutes(wet, 0, 1, fault(Kind.RAIN_STUCK_DRY, "rain-1", 0)).tripped());
        assertEquals(0.009, wet.truth("rain-1").orElseThrow(), 1e-12, "the element is wet all the same");
        assertTrue(minutes(wet, 1, 1).tripped());
        yard.rain = 0;
        yard.drying = 0.01;
        assertTrue(minutes(wet, 2, 5, fault(Kind.RAIN_NO_RADIO, "rain-1", 0)).tripped(), "last state heard");
        assertFalse(minutes(wet, 7, 1).tripped());
    }

    @Test
    void aCutWireReadsAsTripped() {
        Readings.Reading reading = minutes(one(rain(0.006, 0.5)), 0, 1, fault(Kind.WIRE_CUT, "rain-1", 0));
        assertFalse(reading.tripped());
        assertTrue(reading.open());
        Readings.Reading other = minutes(one(rain(0.006, 0.5)), 0, 1, fault(Kind.WIRE_CUT, "freeze", 0));
        assertFalse(other.open());
    }

    // Wind

    @Test
    void windIsTheMeanOfItsWindow() {
        Sensors sensors = one(wind(600, 0));
        yard.wind = 2;
        minutes(sensors, 0, 20);
        yard.wind = 6;
        double after = minutes(sensors, 20, 5).shown();
        assertEquals(4, after, 0.25, "half the window is gusty");
        assertEquals(6, minutes(sensors, 25, 10).shown(), 0.25);
    }

    @Test
    void windTripsAndRearmsLowerAfterItsHold() {
        Sensors sensors = one(wind(60, 1800));
        yard.wind = 8;
        assertTrue(minutes(sensors, 0, 3).tripped());
        yard.wind = 1;
        assertTrue(minutes(sensors, 3, 20).tripped(), "held");
        assertFalse(minutes(sensors, 23, 20).tripped());
        yard.wind = 3.5;
        assertFalse(minutes(sensors, 43, 5).tripped());
        yard.wind = 8;
        minutes(sensors, 48, 40);
        yard.wind = 3.6;
        assertTrue(minutes(sensors, 88, 30).tripped(), "above its re-arm speed");
    }

    @Test
    void cupsStandStillInALightAirAndWhenSeized() {
        Sensors sensors = one(wind(60, 0));
        yard.wind = 0.3;
        assertEquals(0, minutes(sensors, 0, 10).shown(), 0.01);
        yard.wind = 9;
        assertEquals(
                0,
                minutes(one(wind(60, 0)), 0, 10, fault(Kind.WIND_SEIZED, "wind", 0))
                        .shown());
        assertEquals(9, minutes(one(wind(60, 0)), 0, 10).shown(), 0.9);
    }

    // Freeze

    @Test
    void freezeLagsBehindTheAirLessInWind() {
        double still = shownAfterStep(0);
        double windy = shownAfterStep(9);
        assertTrue(still > windy + 2, () -> "still " + still + ", windy " + windy);
        assertEquals(10 * 0.3679, still, 0.9, "one time constant of 15 min in still air");
        assertEquals(900, FreezeSensor.timeConstant(0), 1e-9);
        assertEquals(225, FreezeSensor.timeConstant(9), 1e-9);
    }

    private double shownAfterStep(double wind) {
        Sensors sensors = one(freeze());
        yard.wind = wind;
        yard.air = 10;
        minutes(sensors, 0, 5);
        yard.air = 0;
        return minutes(sensors, 5, 15).shown();
    }

    @Test
    void unitsOfFreezeSensorsDifferByHalfAKelvinAtMost() {
        yard.air = 4;
        double low = 99;
        double high = -99;
        for (int seed = 0; seed < 200; seed++) {
            double shown = minutes(seeded(seed, freeze()), 0, 1).shown();
            low = Math.min(low, shown);
            high = Math.max(high, shown);
        }
        assertTrue(low > 2.9 && low < 3.7, "lowest " + low);
        assertTrue(high > 4.3 && high < 5.1, "highest " + high);
    }

    @Test
    void sunWarmsItMoreOnAWall() {
        Placement.Freeze wall = new Placement.Freeze("freeze-1", OPEN, Mount.WALL, 1, 3, 5);
        yard.wind = 0;
        yard.air = 2;
        double shade = minutes(one(freeze()), 0, 1).shown();
        yard.sun = 500;
        double post = minutes(one(freeze()), 0, 1).shown();
        double onWall = minutes(one(wall), 0, 1).shown();
        assertEquals(3.0, post - shade, 1e-9);
        assertEquals(3.9, onWall - shade, 1e-9);
    }

    @Test
    void freezeTripsBelowAndRearmsAbove() {
        Sensors sensors = one(freeze());
        yard.air = 2;
        assertTrue(minutes(sensors, 0, 30).tripped());
        yard.air = 4;
        assertTrue(minutes(sensors, 30, 120).tripped(), "below its re-arm");
        yard.air = 6.5;
        assertFalse(minutes(sensors, 150, 200).tripped());
        yard.air = 2;
        assertFalse(minutes(one(freeze()), 0, 1, fault(Kind.FREEZE_READS_WARM, "freeze", 2))
                .tripped());
    }

    // Flow

    @Test
    void flowIsBlindBelowItsLowestVelocity() {
        double blind = FlowSensor.cannotSeeBelow(flow(1));
        assertTrue(blind * 60_000 > 4 && blind * 60_000 < 4.6, "a 1 in body: over 4 L/min");
        yard.flow = blind * 0.99;
        assertEquals(0, minutes(one(flow(1)), 0, 10).pulses());
        yard.flow = blind * 1.01;
        assertTrue(minutes(one(flow(1)), 0, 10).pulses() > 0);
        assertEquals(0, minutes(one(flow(2)), 0, 10).pulses(), "an oversize body misses it");
    }

    @Test
    void flowCountsPulsesWithoutLosingAny() {
        Sensors sensors = one(flow(1));
        yard.flow = 20 * GPM;
        long pulses = 0;
        for (int t = 0; t < 600; t++) {
            pulses += sensors.minute(t, yard, SensorFaults.NONE).all().get(0).pulses();
        }
        FlowBody body = FlowBody.of(INCH);
        double expected = body.pulses() * 1000 * (yard.flow + body.offset()) * 36_000;
        assertEquals(1, pulses / expected, 0.001);
        assertEquals(20 * GPM, minutes(sensors, 600, 1).shown(), 20 * GPM * 0.02);
    }

    @Test
    void aNineTenthsLeakShowsThroughAOneInchBody() {
        Sensors sensors = one(flow(1));
        yard.flow = 18.3 * GPM;
        double before = mean(sensors, 0, 10);
        yard.flow = 20 * GPM;
        double after = mean(sensors, 10, 10);
        assertTrue(after > 1.05 * before, "found by a limit of 105 %");
        assertTrue(after < 1.3 * before, "missed by a limit of 130 %");
    }

    private double mean(Sensors sensors, long from, int count) {
        double sum = 0;
        for (long t = from; t < from + count; t++) {
            sum += sensors.minute(t, yard, SensorFaults.NONE).all().get(0).shown();
        }
        return sum / count;
    }

    @Test
    void tooLittleStraightPipeBiasesIt() {
        yard.flow = 20 * GPM;
        double d = yard.pipe.inner();
        assertEquals(0, FlowSensor.sitingError(new Surroundings.StraightPipe(10 * d, 5 * d, d)), 1e-12);
        assertEquals(0.2, FlowSensor.sitingError(new Surroundings.StraightPipe(0, 0, d)), 1e-12);
        yard.pipe = new Surroundings.StraightPipe(0, 0, d);
        int high = 0;
        for (int seed = 0; seed < 40; seed++) {
            double share = mean(seeded(seed, flow(1)), 0, 60) / yard.flow;
            assertEquals(0.2, Math.abs(share - 1), 0.02);
            high += share > 1 ? 1 : 0;
        }
        assertTrue(high > 8 && high < 32, "reads high at some places, low at others");
    }

    @Test
    void wrongNumbersTypedShowAWrongFlowAndAJammedWheelNone() {
        Placement.Flow right = flow(1);
        Placement.Flow wrong = new Placement.Flow("flow-1", "main", 3, right.size(), right.pulses() * 2, 0);
        yard.flow = 20 * GPM;
        double shown = minutes(one(wrong), 0, 5).shown();
        assertEquals((20 * GPM + right.offset()) / 2, shown, 20 * GPM * 0.02);
        assertEquals(
                0, minutes(one(right), 0, 5, fault(Kind.FLOW_JAMMED, "flow", 0)).shown());
        yard.flow = -20 * GPM;
        assertEquals(20 * GPM, minutes(one(right), 0, 5).shown(), 20 * GPM * 0.03, "the wheel knows no direction");
    }

    @Test
    void aWrongPulseFactorShowsSoManyTimesTheTruth() {
        Placement.Flow flow = flow(1);
        yard.flow = 20 * GPM;
        double right = minutes(one(flow), 0, 5).shown();
        double wrong = minutes(one(flow), 0, 5, fault(Kind.FLOW_FACTOR_WRONG, "flow", 1.4))
                .shown();
        assertEquals(20 * GPM, right, 20 * GPM * 0.03);
        assertEquals(1.4 * right, wrong, 1e-12);
    }

    // Soil

    @Test
    void toppsCurve() {
        ReferenceRow.all().stream()
                .filter(row -> row.id().matches("topp-\\d+"))
                .forEach(row -> assertEquals(
                        row.expected().asDouble(), SoilSensor.topp(row.in("Ka")), row.tolerance(), row.toString()));
        for (double water = 0.02; water < 0.55; water += 0.01) {
            assertEquals(water, SoilSensor.topp(SoilSensor.permittivity(water)), 1e-9);
        }
    }

    @Test
    void theRightSoilSetReadsRightAndTheWrongOneShifted() {
        Catalogue.Soil clay = new Catalogue.Soil("clay", null, 0.48, 0.36, 0.22, 1e-7, 0.3, 200_000);
        Catalogue.Soil loam = TestYards.catalogue().soils().get(0);
        Catalogue both = new Catalogue(List.of(loam, clay), List.of(), List.of(), List.of(), List.of());
        yard.water = 0.3;
        yard.soil = "clay";
        assertEquals(0.3, meanShown(both, "clay"), 0.002);
        assertEquals(0.28, meanShown(both, TestYards.SOIL), 0.002, "reads dry by 0.2 (0.22 - 0.12)");
    }

    private double meanShown(Catalogue catalogue, String set) {
        SoilSensor sensor = new SoilSensor(soil(set), catalogue, new RandomStreams(1));
        double sum = 0;
        for (long t = 0; t < 200; t++) {
            sensor.minute(10 * t, yard, SensorFaults.NONE);
            sum += sensor.reading().shown();
        }
        return sum / 200;
    }

    @Test
    void aVoidReadsDry() {
        yard.water = 0.27;
        assertTrue(minutes(one(soil(TestYards.SOIL)), 0, 1).tripped());
        Readings.Reading reading = minutes(one(soil(TestYards.SOIL)), 0, 1, fault(Kind.SOIL_VOID, "soil", 0));
        assertTrue(reading.shown() < 0.2, () -> "shown " + reading.shown());
        assertFalse(reading.tripped());
    }

    @Test
    void soilIsWetAtItsWetPointAndDryFromItsDryPointUntilWet() {
        Sensors sensors = one(soil(TestYards.SOIL));
        yard.water = 0.22;
        Readings.Reading between = minutes(sensors, 0, 10);
        assertFalse(between.tripped() || between.dry());
        yard.water = 0.16;
        assertTrue(minutes(sensors, 10, 10).dry());
        yard.water = 0.22;
        assertTrue(minutes(sensors, 20, 10).dry(), "until it was wet");
        yard.water = 0.28;
        Readings.Reading wet = minutes(sensors, 30, 10);
        assertTrue(wet.tripped() && !wet.dry());
        yard.water = 0.22;
        Readings.Reading after = minutes(sensors, 40, 10);
        assertFalse(after.tripped() || after.dry());
    }

    // All

    private Placement[] allFive() {
        return new Placement[] {rain(0.006, 0.5), wind(300, 600), freeze(), flow(1), soil(TestYards.SOIL)};
    }

    private void live(long t) {
        yard.air = 4 + 5 * ((t * 37 % 100) / 100.0);
        yard.wind = 6 * ((t * 53 % 100) / 100.0);
        yard.rain = t % 700 < 40 ? 0.0003 : 0;
        yard.drying = 5e-6;
        yard.flow = t % 300 < 120 ? 18 * GPM : 0;
        yard.water = 0.15 + 0.15 * ((t % 2000) / 2000.0);
    }

    @Test
    void addingASensorChangesNoOther() {
        Placement extra = new Placement.Freeze("freeze-2", new Point(9, 9), Mount.WALL, 2, 2, 4);
        Sensors few = one(allFive());
        List<Placement> more = new ArrayList<>(Arrays.asList(allFive()));
        more.add(0, extra);
        Sensors many = one(more.toArray(Placement[]::new));
        boolean differs = false;
        for (long t = 0; t < 1500; t++) {
            live(t);
            List<Readings.Reading> a = few.minute(t, yard, SensorFaults.NONE).all();
            List<Readings.Reading> b = many.minute(t, yard, SensorFaults.NONE).all();
            assertEquals(a, b.subList(1, 6));
            differs |= a.get(2).shown() != b.get(0).shown();
        }
        assertTrue(differs, "the two freeze sensors are not one");
    }

    @Test
    void theSameSeedGivesTheSameAndAnotherDoesNot() {
        List<Readings> first = run(one(allFive()));
        assertEquals(first, run(one(allFive())));
        assertNotEquals(first, run(seeded(2, allFive())));
    }

    private List<Readings> run(Sensors sensors) {
        List<Readings> all = new ArrayList<>();
        for (long t = 0; t < 2000; t++) {
            live(t);
            all.add(sensors.minute(t, yard, SensorFaults.NONE));
        }
        return all;
    }

    @Test
    void aCopyContinuesAsTheOriginal() {
        for (int at : new int[] {0, 1, 333, 777}) {
            Sensors sensors = one(allFive());
            for (long t = 0; t < at; t++) {
                live(t);
                sensors.minute(t, yard, SensorFaults.NONE);
            }
            Sensors copy = sensors.copy();
            assertEquals(continued(sensors, at), continued(copy, at));
        }
    }

    private List<Readings> continued(Sensors sensors, int from) {
        List<Readings> all = new ArrayList<>();
        for (long t = from; t < from + 900; t++) {
            live(t);
            all.add(sensors.minute(t, yard, SensorFaults.NONE));
        }
        return all;
    }

    @Test
    void aChangedSetUpKeepsWhatStaysInPlace() {
        SetUp before = SetUp.CLOCK_ALONE.with(rain(0.006, 0.5)).with(wind(300, 0));
        Sensors sensors = Sensors.of(SCENARIO, before, new RandomStreams(1));
        yard.rain = 0.008;
        Readings last = sensors.minute(0, yard, SensorFaults.NONE);
        yard.rain = 0;
        SetUp lower = before.with(rain(0.012, 0.9)).with(freeze());
        Sensors kept = sensors.changed(lower);
        assertEquals(last.all(), kept.readings().all().subList(0, 2));
        assertEquals(0.008, kept.truth("rain-1").orElseThrow(), 1e-12, "the water held stays");
        Placement.Rain moved = new Placement.Rain("rain-1", new Point(8, 8), Mount.POST, 2, 0.006, 0.5);
        Sensors fresh = sensors.changed(before.with(moved).without("wind-1"));
        assertEquals(0, fresh.truth("rain-1").orElseThrow());
        assertEquals(1, fresh.readings().size());
    }

    @Test
    void whatASettingWouldHaveDone() {
        double[] caught = new double[30 * 24];
        double[] drying = new double[30 * 24];
        Arrays.fill(drying, 0.005 / 24);
        caught[5 * 24 + 12] = 0.008;
        caught[20 * 24 + 12] = 0.003;
        WouldHave six = WouldHave.rain(rain(0.006, 0.5), caught, drying);
        assertEquals(30, six.days());
        assertEquals(2, six.daysTripped(), "the first rain only, for that day and the next");
        assertTrue(six.tripped()[5 * 24 + 12]);
        assertFalse(six.tripped()[20 * 24 + 12]);
        WouldHave three = WouldHave.rain(rain(0.003, 0.5), caught, drying);
        assertTrue(three.tripped()[20 * 24 + 12], "a lower set point trips on the small rain too");
        double[] cold = new double[48];
        Arrays.fill(cold, 8);
        cold[30] = 1;
        assertEquals(1, WouldHave.freeze(freeze(), cold).daysTripped());
        double[] speed = new double[48];
        speed[3] = 5;
        assertEquals(1, WouldHave.wind(wind(600, 3600), speed).daysTripped());
        double[] water = new double[48];
        water[40] = 0.27;
        assertEquals(1, WouldHave.soil(soil(TestYards.SOIL), water).daysTripped());
    }
}
