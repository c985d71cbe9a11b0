package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.score.Loss;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** The sports field teaches the wind sensor: where it reads the field's wind, when it trips, and what holding costs. */
class WindLessonTest {

    private static final double FOOT = 0.3048;
    private static final double MINUTE = 60;

    private static Site site;
    private static SetUp textbook;
    private static Placement.Wind wind;
    private static Season best;

    @BeforeAll
    static void open() {
        site = Site.of(Sites.open("teasel-field").orThrow());
        textbook = References.textbook(site.scenario()).orElseThrow();
        wind = (Placement.Wind) textbook.of(SensorKind.WIND).get(0);
        best = LivedSeasons.of(site, textbook);
    }

    private static double loss(SetUp setUp) {
        return LivedSeasons.loss(site, setUp).total();
    }

    /** A set-up loses at least so many USD more than textbook in the site's own season. */
    private static void costs(double least, SetUp other, String what) {
        double good = Loss.of(best).total();
        double bad = loss(other);
        assertTrue(bad - good >= least, what + " loses " + bad + ", textbook " + good);
    }

    private static SetUp standing(double eastFeet, double northFeet, Mount mount, double heightFeet) {
        return textbook.with(new Placement.Wind(
                wind.id(),
                new Point(eastFeet * FOOT, northFeet * FOOT),
                mount,
                heightFeet * FOOT,
                wind.trip(),
                wind.rearm(),
                wind.averaging(),
                wind.hold()));
    }

    private static SetUp set(double trip, double rearm, double holdMinutes) {
        return textbook.with(new Placement.Wind(
                wind.id(),
                wind.at(),
                wind.mount(),
                wind.height(),
                trip,
                rearm,
                wind.averaging(),
                holdMinutes * MINUTE));
    }

    @Test
    void textbookLosesLeast() {
        LessonMargins.clear(site, 80);
    }

    @Test
    void windMattersMost() {
        double withoutWind = loss(textbook.without(wind.id()));
        double withoutRain =
                loss(textbook.without(textbook.of(SensorKind.RAIN).get(0).id()));
        double good = Loss.of(best).total();
        assertTrue(
                withoutWind - good > 2 * (withoutRain - good), withoutWind + " " + withoutRain + ", textbook " + good);
        assertTrue(withoutRain - good > 10, "the rain sensor is worth its money too");
    }

    @Test
    void theLeeReadsTooLittleWind() {
        costs(60, standing(146, 113.5, Mount.POST, 6), "behind the windbreak");
        costs(100, standing(212.6, 60, Mount.WALL, 8), "on the school's wall");
        costs(100, standing(236, 80, Mount.POST, 10), "behind the school");
    }

    @Test
    void lowIsTooCalmAndTheRoofsEdgeTooWindy() {
        costs(25, standing(wind.at().x() / FOOT, wind.at().y() / FOOT, Mount.POST, 2), "two feet over the grass");
        costs(40, standing(212.5, 60, Mount.ROOF_EDGE, 15), "at the roof's edge");
    }

    @Test
    void aTripTooHighLetsDriftAndTooLowLeavesDryTurf() {
        costs(40, set(6.5, 5, 15), "trips at 6.5 m/s");
        costs(200, set(3, 2.25, 15), "trips at 3 m/s");
        Season late = LivedSeasons.of(site, set(3, 2.25, 15));
        assertTrue(
                late.ledger().irrigation().drift() < best.ledger().irrigation().drift());
        assertTrue(late.ledger().plants().dryAreaDays()
                > 3 * best.ledger().plants().dryAreaDays());
    }

    @Test
    void holdingTooLongLeavesDryTurf() {
        costs(200, set(wind.trip(), wind.rearm(), 6 * 60), "holds for six hours");
        costs(1000, set(wind.trip(), 1, 15), "re-arms in a calm only");
        costs(
                500,
                textbook.with(new Interlock(wind.id(), Interlock.Action.SKIP, List.of())),
                "skips the start rather than pausing the run");
    }

    /** Wind and soil together cost more than the school has: the soil sensor is the worse buy of the two. */
    @Test
    void aSoilSensorInItsPlaceIsTheWorseBuy() {
        double price = site.scenario().kit().wind().price()
                + site.scenario().kit().soil().price();
        assertTrue(price > site.scenario().kit().budget());
        Placement soil =
                new Placement.Soil("soil-1", new Point(70 * FOOT, 50 * FOOT), 4 * FOOT / 12, "sandy-loam", 0.17, 0.20);
        SetUp other =
                textbook.without(wind.id()).with(soil).with(new Interlock("soil-1", Interlock.Action.BLOCK, List.of()));
        costs(100, other, "a soil sensor instead of wind");
    }

    /** The goal of the brief: a third less drift than the clock alone, and a field that is no drier. */
    @Test
    void theGoalCanBeReached() {
        Season clock = LivedSeasons.of(site, SetUp.CLOCK_ALONE);
        assertTrue(
                best.ledger().irrigation().drift() < clock.ledger().irrigation().drift() * 2 / 3);
        assertTrue(
                best.ledger().plants().dryAreaDays() <= clock.ledger().plants().dryAreaDays());
        assertEquals(0, best.ledger().plants().deadArea());
    }
}
