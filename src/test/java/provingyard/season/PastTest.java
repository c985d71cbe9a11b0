package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.sensor.SoilSensor;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

class PastTest {

    private static final int DAY = 1440;
    private static Point lawn;
    private static Site site;

    @BeforeAll
    static void site() {
        site = Site.of(Sites.open("tansy-row").orThrow());
        for (int c = 0; c < site.yard().cells() && lawn == null; c++) {
            Point at = new Point(site.yard().x(c), site.yard().y(c));
            boolean open = site.yard().rainShare(at.x(), at.y(), 2) > 0.99;
            lawn = open && site.yard().planted(c) && site.sprayed(at) ? at : null;
        }
    }

    private static Placement.Soil soil(double wet) {
        return new Placement.Soil("soil-1", lawn, 0.1, site.siting().soil(lawn), 0.1, wet);
    }

    private static Placement.Rain rain(double height, double trip) {
        return new Placement.Rain("rain-1", lawn, Mount.POST, height, trip, 0.5);
    }

    /** Watering is skipped from the second day on, so a past that forgot the change would be wetter. */
    @Test
    void theGroundIsAsItWasLivedThroughEveryChange() {
        SetUp held = SetUp.CLOCK_ALONE
                .with(new Placement.Freeze("freeze-1", lawn, Mount.POST, 1.8, 60, 70))
                .with(new Interlock("freeze-1", Interlock.Action.SKIP, List.of()));
        Season season = Season.begin(site, SetUp.CLOCK_ALONE);
        double[] wettest = new double[5];
        while (season.tick() < 5 * DAY) {
            if (season.tick() == 2 * DAY) {
                season.change(held);
            }
            int day = (int) (season.tick() / DAY);
            season.advance();
            double water =
                    season.surroundings().soil(lawn, 0.1, SoilSensor.SUPPORT).water();
            wettest[day] = Math.max(wettest[day], water);
        }
        Past.Would would = site.siting().past(season, soil(0.2)).would(soil(0.2));
        assertEquals(5, would.days());
        for (int day = 0; day < 5; day++) {
            assertEquals(wettest[day], would.extreme()[day], 0, "day " + day);
        }
        Season watered = Season.begin(site, SetUp.CLOCK_ALONE);
        while (watered.tick() < 5 * DAY) {
            watered.advance();
        }
        double without = site.siting().past(watered, soil(0.2)).would(soil(0.2)).extreme()[4];
        assertTrue(wettest[4] < without, "the change matters: " + wettest[4] + ", " + without);
    }

    @Test
    void nothingOfADayNotLivedIsInIt() {
        Season season = Season.begin(site, SetUp.CLOCK_ALONE);
        assertEquals(0, site.siting().past(season, soil(0.2)).days());
        while (season.tick() < 2 * DAY + 700) {
            season.advance();
        }
        assertEquals(2, site.siting().past(season, soil(0.2)).days());
        assertEquals(2, site.siting().past(season, rain(3.5, 0.006)).days());
    }

    @Test
    void aPlotShowsTheLastThirtyDaysAtMost() {
        Season season = Season.begin(site, SetUp.CLOCK_ALONE);
        while (season.tick() < 33 * DAY) {
            season.advance();
        }
        Past past = site.siting().past(season, rain(3.5, 0.006));
        Past.Would would = past.would(rain(3.5, 0.006));
        assertEquals(33, past.days());
        assertEquals(30, would.days());
        assertEquals(site.scenario().season().from().plusDays(3), would.first());
        int low = past.would(rain(3.5, 0.003)).daysTripped();
        int high = past.would(rain(3.5, 0.025)).daysTripped();
        assertTrue(low > high, low + " days at 3 mm, " + high + " at 25 mm");
    }

    /** Out of reach of spray the weather alone is looked at; within it the season is lived again, spray included. */
    @Test
    void sprayIsCaughtLowAndNotHigh() {
        Season season = Season.begin(site, SetUp.CLOCK_ALONE);
        while (season.tick() < 6 * DAY) {
            season.advance();
        }
        double[] low = site.siting()
                .past(season, rain(0.5, 0.006))
                .would(rain(0.5, 0.006))
                .extreme();
        double[] high = site.siting()
                .past(season, rain(3.5, 0.006))
                .would(rain(3.5, 0.006))
                .extreme();
        double lowSum = 0;
        double highSum = 0;
        for (int day = 0; day < 6; day++) {
            lowSum += low[day];
            highSum += high[day];
        }
        assertTrue(lowSum > highSum, lowSum + " m held low, " + highSum + " high");
    }

    @Test
    void whatSeesTheSamePastIsAlike() {
        assertTrue(Past.alike(soil(0.2), soil(0.3)), "another setting");
        assertFalse(Past.alike(rain(2, 0.006), rain(3, 0.006)), "another height");
        assertFalse(Past.alike(rain(0, 0.006), soil(0.2)), "another kind");
    }

    @Test
    void aFlowSensorHasNoSuchView() {
        SetUp flow =
                References.textbook(Sites.open("quillback-clinic").orThrow()).orElseThrow();
        Placement placement = flow.of(SensorKind.FLOW).get(0);
        Season season = Season.begin(site, SetUp.CLOCK_ALONE);
        assertThrows(IllegalArgumentException.class, () -> site.siting().past(season, placement));
    }
}
