package provingyard.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import provingyard.field.FieldTable.Source;
import provingyard.field.FieldTable.Use;
import provingyard.scenario.Catalogue;
import provingyard.season.Site;

/**
 * The whole against the field: seasons set up like published trials land in their ranges and orders.
 *
 * <p>Used to calibrate the rain sensor (dry-out, capacity, trip of a unit): the plots of mostly dry weather (CV-2) and the
 * trip depths of units in the field (CV-12). Used to test: the plots of wet weather, the order of set points, soil control
 * in wet and dry weather (CV-3), the order of frequencies (CV-11), homes (CV-5, CV-7) and the flip for thrifty homes
 * (CV-9). Where a row's outcome is 'not met', the test asserts the published order only, and says so.
 *
 * <p>Soil thresholds are shares of the available water: low 50 %, medium 65 %, high 80 %.
 */
@Tag("field")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FieldTrialsTest {

    private static final double THREE = 0.003175;
    private static final double SIX = 0.00635;
    private static final double THIRTEEN = 0.0127;
    private static final double HALF_OPEN = 0.5;

    /** 40 mm a week: clock of the plots, near the water a lawn needs there in early summer without rain. */
    private static final int PLOT = 56;

    /** 34 mm a week all year: Haley, Dukes and Miller 2007, typical homes of central Florida, 149 mm a month, from memory. */
    private static final int HOME = 48;

    /** 9 mm a week: 445 mm a year, under the 450 mm of CV-9. */
    private static final int THRIFTY = 12;

    /** A run-time card for the four seasons, about crop times reference evapotranspiration: 13, 28, 31 and 20 mm a week. */
    private static final int[][] CARD = {{0, 18}, {59, 40}, {151, 44}, {243, 28}, {334, 18}};

    private static final int[] FREQUENCIES = {1, 2, 7};
    private static final double[] THRESHOLDS = {0.5, 0.65, 0.8};
    private static final String CLOCK = "clock";

    private final FieldTable table = new FieldTable();
    private Trial dry;
    private Trial wet;
    private Trial homes;
    private double[][] trips;

    @BeforeAll
    void live() {
        dry = plots(FieldPlot.under("dry", LocalDate.of(2007, 5, 1), 123));
        Site wetPlot = FieldPlot.under("wet", LocalDate.of(2005, 3, 25), 160);
        wet = plots(wetPlot);
        trips = TripDepths.observed(FieldPlot.under("normal", LocalDate.of(2005, 3, 25), 160), THREE, SIX, THIRTEEN);
        homes = homes(FieldPlot.under("normal", LocalDate.of(2007, 1, 1), 365));
    }

    @AfterAll
    void write() {
        table.write();
        assertEquals(FieldTable.kept(), table.text(), "copy target/field-results.md to shared/ and say why it changed");
    }

    private static Trial plots(Site site) {
        Catalogue catalogue = site.scenario().catalogue();
        List<Treatment> treatments = new ArrayList<>(List.of(Treatment.clock(2, PLOT)));
        for (int days : FREQUENCIES) {
            Treatment clock = Treatment.clock(days, PLOT);
            treatments.add(clock.rainSensor(THREE, HALF_OPEN).named("rain 3 x" + days));
            treatments.add(clock.rainSensor(SIX, HALF_OPEN).named("rain 6 x" + days));
            for (double share : THRESHOLDS) {
                treatments.add(clock.soilBlocks(catalogue, share).named(soil(share, days)));
            }
        }
        treatments.add(Treatment.clock(2, PLOT).rainSensor(THIRTEEN, HALF_OPEN).named("rain 13 x2"));
        return Trial.of(site, treatments);
    }

    private static Trial homes(Site site) {
        Catalogue catalogue = site.scenario().catalogue();
        Treatment careless = Treatment.clock(2, HOME);
        Treatment card = Treatment.card(2, CARD);
        Treatment thrifty = Treatment.clock(2, THRIFTY);
        return Trial.of(
                site,
                List.of(
                        careless,
                        careless.rainSensor(SIX, HALF_OPEN).named("rain"),
                        careless.soilBlocks(catalogue, 0.65).named("soil"),
                        card,
                        card.rainSensor(SIX, HALF_OPEN).named("card and rain"),
                        card.soilBlocks(catalogue, 0.65).named("card and soil"),
                        thrifty.named("thrifty"),
                        thrifty.rainSensor(SIX, HALF_OPEN).named("thrifty and rain"),
                        thrifty.soilBlocks(catalogue, 0.65).named("thrifty and soil"),
                        Treatment.clock(7, 42).soilAllows(catalogue, 0.5, 1).named("on demand")));
    }

    private static String soil(double share, int days) {
        return String.format(Locale.ROOT, "soil %.0f x%d", 100 * share, days);
    }

    private static List<String> soils(int... frequencies) {
        List<String> names = new ArrayList<>();
        for (int days : frequencies) {
            for (double share : THRESHOLDS) {
                names.add(soil(share, days));
            }
        }
        return names;
    }

    private boolean row(
            String key, Source source, String setUp, Spread ours, double from, double to, Use use, String ifNot) {
        boolean met = ours.within(from, to);
        String accepted = String.format(Locale.ROOT, "%.0f to %.0f %%", from, to);
        table.add(key, source, setUp, accepted, ours.text(" %"), use, met ? "met" : "**not met**: " + ifNot);
        return met;
    }

    private boolean order(String key, Source source, String setUp, String ours, Use use, boolean holds) {
        table.add(key, source, setUp, "the order", ours, use, holds ? "met" : "**not met**");
        return holds;
    }

    private static String numbers(Spread... spreads) {
        return String.join(", ", Stream.of(spreads).map(s -> s.text(" %")).toList());
    }

    @Test
    void rainSensorsInMostlyDryWeather() {
        Source source = new Source(
                "CV-2",
                "McCready, Dukes and Miller 2009, Agric. Water Manage. 96 (abstract)",
                "7 to 30 % against 2 days a week without sensor");
        boolean all = true;
        for (String depth : List.of("3", "6")) {
            for (int days : FREQUENCIES) {
                String name = "rain " + depth + " x" + days;
                String setUp = String.format(
                        Locale.ROOT,
                        "May to August with %.0f mm of rain, %s mm, %d d/wk",
                        dry.rain().mean(),
                        depth,
                        days);
                all &= row("1 " + name, source, setUp, dry.saving(name, CLOCK), 5, 32, Use.CALIBRATE, "");
            }
        }
        assertTrue(all, "every rain sensor within the band");
    }

    /** Asserts the range at 3 and 6 mm and the order; at 13 mm the outcome stands in the table. */
    @Test
    void unitsTripFarFromTheirSetPoint() {
        String text = "five-year evaluation of expanding-disk rain sensors, University of Florida (abstract)";
        boolean three = trip(0, new Source("CV-12", text, "1.9 mm at the 3 mm setting"), 1.5, 2.5);
        boolean six = trip(1, new Source("CV-12", text, "1.6, 3.8, 4.3, 5.8 mm at the 6 mm setting"), 1.6, 5.8);
        trip(2, new Source("CV-12", text, "6.6 mm at the 13 mm setting"), 5.3, 7.9);
        assertTrue(three && six, "mean trip depth at 3 and 6 mm");
        assertTrue(
                Spread.of(trips[0]).mean() < Spread.of(trips[1]).mean()
                        && Spread.of(trips[1]).mean() < Spread.of(trips[2]).mean(),
                "a higher set point trips at more rain");
    }

    private boolean trip(int setPoint, Source source, double from, double to) {
        Spread depth = Spread.of(trips[setPoint]);
        boolean met = depth.within(from, to);
        String likely = "**not met**: an element of 13 mm dries by twice as much between the showers of a long wet"
                + " spell, and all its rain is counted here; how the study told one rain from the next is not known";
        table.add(
                "2 " + setPoint,
                source,
                "a unit per seed, 160 days: rain since 12 h without any, when it opens",
                String.format(Locale.ROOT, "%.1f to %.1f mm", from, to),
                depth.text(" mm"),
                Use.CALIBRATE,
                met ? "met" : likely);
        return met;
    }

    @Test
    void rainSensorInWetWeather() {
        Source source = new Source(
                "wet plots",
                "Cárdenas-Lailhacar, Dukes and Miller 2008, J. Irrig. Drain. Eng. 134 (range from memory)",
                "about 34 % at 6 mm against 2 days a week without sensor");
        String setUp = String.format(
                Locale.ROOT,
                "25 March to August with %.0f mm of rain, 6 mm, 2 d/wk",
                wet.rain().mean());
        Spread saving = wet.saving("rain 6 x2", CLOCK);
        assertTrue(row("3 a", source, setUp, saving, 24, 44, Use.TEST, ""), "6 mm in wet weather");
        Source order = new Source("CV-2", "training design, 'how to use'", "wet weather saves more than dry");
        Spread inDry = dry.saving("rain 6 x2", CLOCK);
        assertTrue(order(
                "3 b",
                order,
                "6 mm, 2 d/wk: wet, dry",
                numbers(saving, inDry),
                Use.TEST,
                saving.mean() > inDry.mean()));
    }

    @Test
    void aLowerSetPointHoldsBackMore() {
        Source source = new Source(
                "set points",
                "Cárdenas-Lailhacar and Dukes 2008, J. Irrig. Drain. Eng. 134, expanding disks (from memory)",
                "3 mm saves more than 13 mm (44 and 30 % from memory)");
        Spread three = wet.saving("rain 3 x2", CLOCK);
        Spread six = wet.saving("rain 6 x2", CLOCK);
        Spread thirteen = wet.saving("rain 13 x2", CLOCK);
        assertTrue(order(
                "3 c",
                source,
                "wet plots, 2 d/wk: 3, 6 and 13 mm",
                numbers(three, six, thirteen),
                Use.CALIBRATE,
                three.mean() > six.mean() && six.mean() > thirteen.mean()));
    }

    @Test
    void soilControlInWetWeather() {
        Source source = new Source(
                "CV-3",
                "Cárdenas-Lailhacar and Dukes, review of soil moisture control in Florida (abstract)",
                "42 to 72 % on average in rainy periods");
        Spread all = wet.meanSaving(soils(FREQUENCIES), CLOCK);
        boolean met = row("4 a", source, "wet plots: mean of 3 thresholds and 1, 2, 7 d/wk", all, 40, 75, Use.TEST, "");
        assertTrue(met, "soil control in wet weather");
    }

    @Test
    void soilControlInDryWeather() {
        Source source = new Source(
                "CV-3", "the same review (abstract)", "-1 to 64 % on average in dry periods; less than in rainy ones");
        Spread all = dry.meanSaving(soils(FREQUENCIES), CLOCK);
        Spread inWet = wet.meanSaving(soils(FREQUENCIES), CLOCK);
        assertTrue(row("4 b", source, "dry plots: the same mean", all, -1, 64, Use.TEST, ""), "dry weather");
        assertTrue(inWet.mean() > all.mean(), "rainy periods save more");
    }

    @Test
    void aLowerThresholdSavesMoreAndStressesMore() {
        Source source = new Source(
                "CV-3", "training design, 'how to use'", "a lower soil threshold saves more and stresses more");
        Spread low = wet.saving(soil(0.5, 2), CLOCK);
        Spread high = wet.saving(soil(0.8, 2), CLOCK);
        boolean holds = low.mean() > high.mean()
                && wet.dryDays(soil(0.5, 2)).mean() > wet.dryDays(soil(0.8, 2)).mean();
        String ours = String.format(
                Locale.ROOT,
                "%s; stress %.1f and %.1f days",
                numbers(low, high),
                wet.dryDays(soil(0.5, 2)).mean(),
                wet.dryDays(soil(0.8, 2)).mean());
        assertTrue(order("4 c", source, "wet plots, 2 d/wk: low, high", ours, Use.TEST, holds));
    }

    @Test
    void dailyStartsWithSoilControlApplyLess() {
        Source source = new Source(
                "CV-11",
                "Cárdenas-Lailhacar and Dukes, the same review (abstract)",
                "with a soil sensor, 7 d/wk applied less than 1 or 2 d/wk");
        Spread one = wet.meanSaving(soils(1), CLOCK);
        Spread two = wet.meanSaving(soils(2), CLOCK);
        Spread seven = wet.meanSaving(soils(7), CLOCK);
        boolean holds = seven.mean() > one.mean() && seven.mean() > two.mean();
        assertTrue(order(
                "5",
                source,
                "wet plots, mean of 3 thresholds: 1, 2, 7 d/wk",
                numbers(one, two, seven),
                Use.TEST,
                holds));
    }

    /** Asserts the order alone; the ranges stand in the table with their outcome. */
    @Test
    void homesWithSoilSensorCardAndRainSensor() {
        String text = "Haley and Dukes, Pinellas County homes (abstract)";
        Spread soil = homes.saving("soil", CLOCK);
        Spread both = homes.saving("card and rain", CLOCK);
        Spread rain = homes.saving("rain", CLOCK);
        String year = String.format(
                Locale.ROOT,
                "a year with %.0f mm of rain, one summer programme all year",
                homes.rain().mean());
        row(
                "6 a",
                new Source("CV-5", text, "soil sensor 65 %"),
                year + ", 2 d/wk; soil sensor at 65 %",
                soil,
                50,
                70,
                Use.TEST,
                "likely because our home waters twice a week on sand that holds 15 mm, which is dry again by the next start");
        row(
                "6 b",
                new Source("CV-5", text, "rain sensor and run-time card 45 %, weaker in year 2"),
                "the same; rain sensor 6 mm and a card for the four seasons",
                both,
                30,
                50,
                Use.TEST,
                "likely because our card is followed to the minute all year");
        boolean smallest = rain.mean() < both.mean() && rain.mean() < soil.mean();
        assertTrue(order(
                "6 c",
                new Source("CV-5", text, "rain sensor alone saves least"),
                "the same; rain sensor 6 mm alone",
                rain.text(" %"),
                Use.TEST,
                smallest));
        row(
                "6 d",
                new Source("CV-5", text + ", from memory", "rain sensor alone about 14 %"),
                "the same",
                rain,
                9,
                19,
                Use.TEST,
                "likely because our sensor stands in the open and never fails; those of homes are found badly placed or dead");
    }

    /** Asserts no range: which homes make up the mean is an own choice; the outcome stands in the table. */
    @Test
    void theMeanHome() {
        Spread mean = Spread.ofMeans(List.of(
                homes.savings("rain", CLOCK),
                homes.savings("soil", CLOCK),
                homes.savings("card and rain", "card"),
                homes.savings("card and soil", "card"),
                homes.savings("thrifty and rain", "thrifty"),
                homes.savings("thrifty and soil", "thrifty")));
        row(
                "7",
                new Source(
                        "CV-7",
                        "Dukes 2020, two decades of smart irrigation research (abstract)",
                        "28 to 32 %, mean 30"),
                "careless, seasonal and thrifty homes, each with rain or soil sensor, against their own clock",
                mean,
                25,
                35,
                Use.TEST,
                "our sensors are sited well and never fail");
        assertTrue(mean.mean() > 0 && mean.least() > 0, "homes with sensors save");
    }

    @Test
    void whatIsAlreadyThriftyHasNothingToSave() {
        Source source = new Source(
                "CV-9",
                "Davis and Dukes, review of ET-based control (abstract); here soil control that waters on demand",
                "homes above 450 mm a year save, others use more");
        Spread lavish = homes.saving("on demand", CLOCK);
        Spread thrifty = homes.saving("on demand", "thrifty");
        String setUp = String.format(
                Locale.ROOT,
                "on demand against clocks of %.0f and %.0f mm a year",
                homes.applied(CLOCK).mean(),
                homes.applied("thrifty").mean());
        assertTrue(
                order("8", source, setUp, numbers(lavish, thrifty), Use.TEST, lavish.mean() > 0 && thrifty.mean() < 0));
    }
}
