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
import provingyard.setup.Cost;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** The courtyard house teaches placing: eave, tree, spray and vent each lie to a sensor, in their own way. */
class EaveAndSprayLessonTest {

    private static final double FOOT = 0.3048;

    private static Site site;
    private static SetUp textbook;
    private static Placement.Rain rain;
    private static Placement.Freeze freeze;
    private static Season best;

    @BeforeAll
    static void open() {
        site = Site.of(Sites.open("sorrel-court").orThrow());
        textbook = References.textbook(site.scenario()).orElseThrow();
        rain = (Placement.Rain) textbook.of(SensorKind.RAIN).get(0);
        freeze = (Placement.Freeze) textbook.of(SensorKind.FREEZE).get(0);
        best = LivedSeasons.of(site, textbook);
    }

    private static Season lived(SetUp setUp) {
        return LivedSeasons.of(site, setUp);
    }

    private static double lost(Season season) {
        return Loss.of(season).total();
    }

    /** The season of a set-up that loses at least so many USD more than textbook in the site's own season. */
    private static Season costs(double least, SetUp other, String what) {
        Season season = lived(other);
        assertTrue(lost(season) - lost(best) >= least, what + " loses " + lost(season) + ", textbook " + lost(best));
        return season;
    }

    private static SetUp rainAt(double eastFeet, double northFeet, Mount mount, double heightFeet) {
        Point at = new Point(eastFeet * FOOT, northFeet * FOOT);
        return textbook.with(new Placement.Rain(rain.id(), at, mount, heightFeet * FOOT, rain.trip(), rain.vent()));
    }

    private static double applied(Season season) {
        return season.ledger().irrigation().supplied();
    }

    private static double dry(Season season) {
        return season.ledger().plants().dryAreaDays();
    }

    @Test
    void textbookLosesLeast() {
        LessonMargins.clear(site, 50);
    }

    @Test
    void rainMattersMost() {
        SetUp noRain = textbook.without(rain.id());
        SetUp noFreeze = textbook.without(freeze.id());
        costs(20, noFreeze, "no freeze sensor");
        assertTrue(lost(lived(noRain)) > lost(lived(noFreeze)));
        double mean = LessonMargins.mean(site, textbook);
        assertTrue(LessonMargins.mean(site, noRain) - mean > 2 * (LessonMargins.mean(site, noFreeze) - mean));
    }

    /** Under an eave it never rains: what is applied is what would be without a rain sensor. */
    @Test
    void underTheEaveNoRainIsSeen() {
        double none = applied(lived(textbook.without(rain.id())));
        assertEquals(none, applied(costs(20, rainAt(54, 50.7, Mount.WALL, 8), "in the court")), 1e-9);
        assertEquals(none, applied(costs(20, rainAt(90.3, 40, Mount.WALL, 8), "by the drive")), 1e-9);
    }

    @Test
    void inTheTreeItStaysWetTooLong() {
        Season season = costs(200, rainAt(59.5, 39.5, Mount.BRANCH, 7), "on the plum's branch");
        assertTrue(applied(season) < applied(best) / 2);
        assertTrue(dry(season) > 5 * dry(best));
    }

    /** The sprinklers wet the sensor, which holds the next watering: the lawns go dry between rains. */
    @Test
    void inTheSprayItHoldsTheWateringItself() {
        for (SetUp wet : List.of(rainAt(48, 36, Mount.POST, 4), rainAt(80, 16, Mount.POST, 3))) {
            Season season = costs(60, wet, "in the spray");
            assertTrue(applied(season) < applied(best));
            assertTrue(dry(season) > 3 * dry(best));
        }
    }

    @Test
    void byTheVentTheFreezeSensorReadsWarm() {
        Point vent = new Point(38.3 * FOOT, 41 * FOOT);
        Placement warm = new Placement.Freeze(freeze.id(), vent, Mount.WALL, 8 * FOOT, freeze.below(), freeze.rearm());
        Season season = costs(20, textbook.with(warm), "by the vent");
        assertEquals(0, best.ledger().ice().mornings());
        assertTrue(season.ledger().ice().mornings() > 0);
    }

    /** One soil sensor instead of both is within the money, and the worse buy. */
    @Test
    void oneSoilSensorIsTheWorseBuy() {
        Placement soil =
                new Placement.Soil("soil-1", new Point(80 * FOOT, 15 * FOOT), 4 * FOOT / 12, "sandy-loam", 0.17, 0.20);
        SetUp alone = SetUp.CLOCK_ALONE.with(soil).with(new Interlock("soil-1", Interlock.Action.BLOCK, List.of()));
        assertTrue(Cost.of(alone, site.scenario().kit()).withinBudget());
        costs(10, alone, "a soil sensor alone");
    }

    /** The goal of the brief: a third less water than the clock alone, and no walk iced by the sprinklers. */
    @Test
    void theGoalCanBeReached() {
        Season clock = lived(SetUp.CLOCK_ALONE);
        assertTrue(clock.ledger().ice().mornings() > 0);
        assertEquals(0, best.ledger().ice().areaHours());
        assertTrue(applied(best) < applied(clock) * 2 / 3);
    }
}
