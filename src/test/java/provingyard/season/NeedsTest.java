package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;

/** What the plan shows of each kind's needs agrees with what is measured at single places. */
class NeedsTest {

    private static Site site;

    @BeforeAll
    static void site() {
        site = Site.of(Sites.open("quillback-clinic").orThrow());
    }

    private static Point middle(int cell) {
        return new Point(site.yard().x(cell), site.yard().y(cell));
    }

    @Test
    void rainIsKeptOffWhereTheFactsSaySo() {
        Needs.OfRain rain = (Needs.OfRain) site.siting().needs(SensorKind.RAIN);
        int open = 0;
        int kept = 0;
        for (int c = 0; c < rain.rainShare().length; c += 7) {
            if (!site.yard().builtOver(c)) {
                Siting.Facts facts = site.siting().facts(middle(c), Needs.POST);
                assertEquals(facts.rainShare(), rain.rainShare()[c], 1e-6);
                assertEquals(facts.sprayReach(), rain.sprayed()[c]);
                open += facts.rainShare() > 0.95 ? 1 : 0;
                kept += facts.rainShare() < 0.5 ? 1 : 0;
            }
        }
        assertTrue(open > 100 && kept > 10, open + " open, " + kept + " kept off");
    }

    @Test
    void windIsTheMeanOverTheRose() {
        Needs.OfWind wind = (Needs.OfWind) site.siting().needs(SensorKind.WIND);
        for (int c = 0; c < wind.share().length; c += 41) {
            if (site.yard().builtOver(c)) {
                assertTrue(Float.isNaN(wind.share()[c]));
            } else {
                assertEquals(site.siting().facts(middle(c), Needs.POST).shelter(), wind.share()[c], 1e-6);
            }
        }
    }

    @Test
    void coldIsMeasuredFromTheMeanAndPoolsAreCold() {
        Needs.OfFreeze freeze = (Needs.OfFreeze) site.siting().needs(SensorKind.FREEZE);
        double sum = 0;
        for (float k : freeze.colder()) {
            sum += Float.isNaN(k) ? 0 : k;
        }
        assertEquals(0, sum / freeze.colder().length, 1e-3);
        int coldest = 0;
        for (int c = 0; c < freeze.colder().length; c++) {
            coldest = freeze.colder()[c] > freeze.colder()[coldest] ? c : coldest;
        }
        Point there = middle(coldest);
        assertTrue(
                site.scenario().yard().hollows().stream()
                        .anyMatch(h -> h.colder() > 0 && h.at().distance(there) < h.reach()),
                "the coldest place lies in a hollow: " + there);
        assertEquals(site.scenario().yard().vents().size(), freeze.vents().size());
    }

    @Test
    void everyStretchHasStraightPipeEnough() {
        Needs.OfFlow flow = (Needs.OfFlow) site.siting().needs(SensorKind.FLOW);
        assertFalse(flow.stretches().isEmpty());
        for (List<Point> stretch : flow.stretches()) {
            Point between = stretch.get(stretch.size() / 2);
            Siting.OnPipe on = site.siting().nearestPipe(between);
            assertTrue(site.siting().straightEnough(on), on.toString());
        }
    }

    @Test
    void waterAndSkyAreSharesOfTheZonesMean() {
        Needs.OfSoil soil = (Needs.OfSoil) site.siting().needs(SensorKind.SOIL);
        int zones = site.waterworks().zones().size();
        for (int z = 0; z < zones; z++) {
            double water = 0;
            double sky = 0;
            int count = 0;
            for (int c = 0; c < soil.zone().length; c++) {
                if (soil.zone()[c] == z) {
                    water += soil.water()[c];
                    sky += soil.sky()[c];
                    count++;
                }
            }
            assertTrue(count > 0, "zone " + z);
            assertEquals(1, water / count, 1e-4);
            assertEquals(1, sky / count, 1e-4);
        }
    }

    @Test
    void nothingSpeaksWhereNoZonesWaterLands() {
        Needs.OfSoil soil = (Needs.OfSoil) site.siting().needs(SensorKind.SOIL);
        for (int c = 0; c < soil.zone().length; c++) {
            assertEquals(soil.zone()[c] < 0, Float.isNaN(soil.speaks()[c]));
            assertTrue(soil.zone()[c] < 0 || site.yard().planted(c));
        }
        assertNull(soil.at(-1));
    }
}
