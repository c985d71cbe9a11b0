package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.scenario.Point;
import provingyard.scenario.Schedule;
import provingyard.scenario.Schedule.ZoneRun;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.score.Loss;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** The clay slope teaches the soil moisture sensor together with cycle and soak, by the simulator's own outcome. */
class ClaySlopeLessonTest {

    /** Other seasons of the same place that the mean is taken over, for what the lesson stands on, and for the rest. */
    private static final int DRAWS = 8;

    private static final int FEW_DRAWS = 3;
    private static final Point HOLLOW = new Point(4.5, 4.7);
    private static final Point CROWN = new Point(7.5, 10.7);

    private static Site site;
    private static SetUp textbook;
    private static SetUp careless;
    private static Placement.Soil soil;
    private static double best;
    private static double bestOnAverage;
    private static double bestOfFew;

    @BeforeAll
    static void open() {
        site = Site.of(Sites.open("burdock-steps").orThrow());
        textbook = References.textbook(site.scenario()).orElseThrow();
        careless = References.careless(site.scenario()).orElseThrow();
        soil = (Placement.Soil) textbook.of(SensorKind.SOIL).get(0);
        best = loss(textbook);
        bestOnAverage = onAverage(textbook, DRAWS);
        bestOfFew = onAverage(textbook, FEW_DRAWS);
    }

    private static Season lived(SetUp setUp) {
        return LivedSeasons.of(site, setUp);
    }

    private static double loss(SetUp setUp) {
        return LivedSeasons.loss(site, setUp).total();
    }

    /** Mean loss over other seasons of the same place. */
    private static double onAverage(SetUp setUp, int draws) {
        double sum = 0;
        for (int draw = 0; draw < draws; draw++) {
            Season season = Season.drawn(site, draw, setUp);
            season.liveToEnd();
            sum += Loss.of(season).total();
        }
        return sum / draws;
    }

    /** Loses at least so many USD more than textbook, in the site's own season. */
    private static void losesBy(double least, SetUp other, String what) {
        double own = loss(other) - best;
        assertTrue(own >= least, what + " loses only " + own + " more in the own season");
    }

    /** Loses at least so many USD more than textbook, in the own season and on average. */
    private static void losesOnAverageBy(double least, SetUp other, String what) {
        losesBy(least, other, what);
        double mean = onAverage(other, DRAWS) - bestOnAverage;
        assertTrue(mean >= least, what + " loses only " + mean + " more on average");
    }

    private static SetUp with(Point at, double depth, double dry, double wet) {
        return textbook.with(new Placement.Soil(soil.id(), at, depth, soil.soil(), dry, wet));
    }

    private static Schedule schedule(List<ZoneRun> zones, double seasonal) {
        Schedule s = textbook.schedule();
        return new Schedule(zones, s.days(), s.every(), s.starts(), seasonal, s.allowed());
    }

    private static SetUp allAtOnce() {
        List<ZoneRun> runs = textbook.schedule().zones().stream()
                .map(z -> new ZoneRun(z.zone(), z.runs(), 0, 0))
                .toList();
        return textbook.withSchedule(schedule(runs, textbook.schedule().seasonal()));
    }

    @Test
    void theClockAloneAndTheCarelessLoseClearly() {
        double fiveGaps = 5 * site.scenario().costs().leastGap();
        losesOnAverageBy(2 * fiveGaps, SetUp.CLOCK_ALONE, "the clock alone");
        losesOnAverageBy(2 * fiveGaps, careless, "careless");
    }

    @Test
    void sensorAndScheduleMatterEachAndMostOfAll() {
        losesOnAverageBy(80, textbook.without(soil.id()), "without the sensor");
        losesOnAverageBy(150, textbook.withSchedule(null), "on the owners' schedule");
        SetUp dryFelts = textbook.without("rain-1");
        assertTrue(Math.abs(loss(dryFelts) - best) < 20, "beside them a rain sensor hardly matters");
        assertTrue(Math.abs(onAverage(dryFelts, DRAWS) - bestOnAverage) < 20, "nor on average");
    }

    @Test
    void cyclesAndSoaksCutRunoff() {
        Ledger soaked = lived(textbook).ledger();
        Ledger atOnce = lived(allAtOnce()).ledger();
        double share = soaked.irrigation().runoff() / soaked.irrigation().supplied();
        double shareAtOnce = atOnce.irrigation().runoff() / atOnce.irrigation().supplied();
        assertTrue(shareAtOnce > 1.7 * share, shareAtOnce + " runs off at once, " + share + " in cycles");
        losesBy(100, allAtOnce(), "the same minutes at once");
    }

    private static void isWorse(SetUp other, double least, double leastOnAverage, String what) {
        losesBy(least, other, what);
        double mean = onAverage(other, FEW_DRAWS) - bestOfFew;
        assertTrue(mean >= leastOnAverage, what + " loses only " + mean + " more on average");
    }

    private static double supplied(SetUp setUp) {
        return lived(setUp).ledger().irrigation().supplied();
    }

    @Test
    void theWetHollowBlocksTooMuchAndTheDryCrownTooLittle() {
        SetUp hollow = with(HOLLOW, soil.depth(), soil.dry(), soil.wet());
        SetUp crown = with(CROWN, soil.depth(), soil.dry(), soil.wet());
        isWorse(hollow, 40, 5, "in the wet hollow");
        isWorse(crown, 20, 15, "on the dry crown");
        assertTrue(supplied(hollow) < 0.9 * supplied(textbook));
        assertTrue(supplied(crown) > 1.2 * supplied(textbook));
    }

    /** A probe near the surface is wetted by each pass; one below the roots learns of it too late. */
    @ParameterizedTest
    @CsvSource({"0.03, 20", "0.05, 20", "0.3, 5"})
    void theWrongDepthCosts(double depth, double least) {
        losesBy(least, with(soil.at(), depth, soil.dry(), soil.wet()), "at " + depth + " m");
    }

    @ParameterizedTest
    @CsvSource({"0.22, 0.26, 200", "0.24, 0.28, 60", "0.42, 0.44, 75"})
    void theWrongPointsCost(double dry, double wet, double least) {
        losesBy(least, with(soil.at(), soil.depth(), dry, wet), "wet at " + wet);
    }

    /** Blocking, allowing and starting all work here with points for clay; set aside, the sensor is of no use. */
    @Test
    void eachOfTheActionsWorks() {
        for (Interlock.Action action : List.of(Interlock.Action.ALLOW, Interlock.Action.START)) {
            double acts = loss(textbook.with(new Interlock(soil.id(), action, List.of())));
            assertTrue(acts < best + 15, action + " loses " + acts + ", textbook " + best);
        }
        losesBy(75, textbook.with(new Interlock(soil.id(), Interlock.Action.NONE, List.of())), "read by nobody");
    }

    /** What an open schedule lets a trainee do to dodge the work. */
    @Test
    void schedulesThatDodgeTheWorkLose() {
        SetUp none = SetUp.CLOCK_ALONE.withSchedule(schedule(List.of(), 1));
        assertEquals(0, lived(none).ledger().irrigation().supplied(), 1e-12);
        losesBy(100, none, "no run at all");
        losesBy(100, textbook.withSchedule(schedule(textbook.schedule().zones(), 0)), "a seasonal share of nothing");
        SetUp flood = SetUp.CLOCK_ALONE.withSchedule(
                schedule(site.scenario().schedule().zones(), 2.5));
        losesBy(100, flood, "everything at its wettest");
    }

    private static boolean reaches(SetUp setUp) {
        return reached(setUp, l -> l.irrigation().supplied(), 0.5)
                && reached(setUp, l -> l.irrigation().runoff(), 0.2)
                && lived(setUp).ledger().plants().deadArea() == 0;
    }

    private static boolean reached(SetUp setUp, ToDoubleFunction<Ledger> amount, double share) {
        return amount.applyAsDouble(lived(setUp).ledger())
                <= share * amount.applyAsDouble(lived(SetUp.CLOCK_ALONE).ledger());
    }

    @Test
    void theGoalIsReachedByTextbookAlone() {
        assertTrue(reaches(textbook));
        assertFalse(reaches(careless));
        assertFalse(reaches(textbook.withSchedule(null)), "not without cycles and soaks");
        assertFalse(reaches(textbook.without(soil.id()).with(FlowWatch.OFF)), "nor without the sensor");
    }
}
