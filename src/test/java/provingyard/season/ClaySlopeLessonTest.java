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
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** The clay slope teaches the soil moisture sensor together with cycle and soak, by the simulator's own outcome. */
class ClaySlopeLessonTest {

    private static final int DRAWS = 8;
    private static final Point HOLLOW = new Point(4.5, 4.7);
    private static final Point CROWN = new Point(7.5, 10.7);

    private static Site site;
    private static SetUp textbook;
    private static SetUp careless;
    private static Placement.Soil soil;
    private static double best;
    private static double bestOnAverage;

    @BeforeAll
    static void open() {
        site = Site.of(Sites.open("burdock-steps").orThrow());
        textbook = References.textbook(site.scenario()).orElseThrow();
        careless = References.careless(site.scenario()).orElseThrow();
        soil = (Placement.Soil) textbook.of(SensorKind.SOIL).get(0);
        best = loss(textbook);
        bestOnAverage = onAverage(textbook);
    }

    private static Season lived(SetUp setUp) {
        return LivedSeasons.of(site, setUp);
    }

    private static double loss(SetUp setUp) {
        return LivedSeasons.loss(site, setUp).total();
    }

    /** Mean loss over other seasons of the same place. */
    private static double onAverage(SetUp setUp) {
        double sum = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            Season season = Season.drawn(site, draw, setUp);
            season.liveToEnd();
            sum += Loss.of(season).total();
        }
        return sum / DRAWS;
    }

    /** Loses at least so many USD more than textbook, in the site's own season and on average. */
    private static void losesBy(double least, SetUp other, String what) {
        double own = loss(other) - best;
        double mean = onAverage(other) - bestOnAverage;
        assertTrue(own >= least, what + " loses only " + own + " more in the own season");
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
        losesBy(2 * fiveGaps, SetUp.CLOCK_ALONE, "the clock alone");
        losesBy(fiveGaps, careless, "careless");
    }

    @Test
    void sensorAndScheduleMatterEachAndMostOfAll() {
        losesBy(75, textbook.without(soil.id()), "without the sensor");
        losesBy(150, textbook.withSchedule(null), "on the owners' schedule");
        SetUp rain = textbook.with(new Placement.Rain("rain-1", new Point(33, 10), Mount.POST, 2.1, 0.005, 0.5))
                .with(new Interlock("rain-1", Interlock.Action.SKIP, List.of()));
        assertTrue(Math.abs(loss(rain) - best) < 20, "beside them a rain sensor hardly matters");
        assertTrue(Math.abs(onAverage(rain) - bestOnAverage) < 20, "nor on average");
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

    @Test
    void theWetHollowBlocksTooMuchAndTheDryCrownTooLittle() {
        losesBy(25, with(HOLLOW, soil.depth(), soil.dry(), soil.wet()), "in the wet hollow");
        losesBy(15, with(CROWN, soil.depth(), soil.dry(), soil.wet()), "on the dry crown");
        double textbooks = lived(textbook).ledger().irrigation().supplied();
        assertTrue(lived(with(HOLLOW, soil.depth(), soil.dry(), soil.wet()))
                        .ledger()
                        .irrigation()
                        .supplied()
                < 0.9 * textbooks);
        assertTrue(lived(with(CROWN, soil.depth(), soil.dry(), soil.wet()))
                        .ledger()
                        .irrigation()
                        .supplied()
                > 1.2 * textbooks);
    }

    /** A probe near the surface is wetted by each pass; one below the roots learns of it too late. */
    @ParameterizedTest
    @CsvSource({"0.03, 60", "0.05, 60", "0.3, 5"})
    void theWrongDepthCosts(double depth, double least) {
        losesBy(least, with(soil.at(), depth, soil.dry(), soil.wet()), "at " + depth + " m");
    }

    @ParameterizedTest
    @CsvSource({"0.22, 0.26, 200", "0.24, 0.28, 50", "0.42, 0.44, 75"})
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
