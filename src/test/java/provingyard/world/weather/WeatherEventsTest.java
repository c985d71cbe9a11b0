package provingyard.world.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("unit")
class WeatherEventsTest {

    private static final int DAY = 1440;

    @Test
    void aClearCalmNightFallsToItsLowClearCalmAndDry() {
        for (int number : new int[] {1, 2, 9, 27}) {
            WeatherSeries plain = Plans.november(4);
            WeatherSeries night = Plans.november(4, Plans.clearCalmNight(number, 0.5));
            int dawn = (int) night.sunrise(number - 1);
            int dusk = Math.max(0, (int) (dawn - 10 * 60));
            assertEquals(0.5, Plans.least(night, dusk, dawn + 60), 1e-9);
            for (int t = dusk + (dusk == 0 ? 0 : 60); t < dawn + 30; t++) {
                assertTrue(night.wind(t) <= 0.8 + 1e-12, "wind " + night.wind(t) + " at " + t);
                assertEquals(0.0, night.cloud(t), 1e-12);
                assertEquals(0.0, night.rain(t));
            }
            int afternoon = (number - 1) * DAY + 16 * 60;
            assertEquals(plain.at(afternoon), night.at(afternoon));
            int dayBefore = Math.max(0, (number - 2) * DAY + 14 * 60);
            assertTrue(number == 1 || plain.at(dayBefore).equals(night.at(dayBefore)));
        }
    }

    @Test
    void aStormBringsItsDepthInItsTime() {
        WeatherSeries storm = Plans.november(4, Plans.storm(27, "15:20", 0.015, 3000.0));
        int from = 26 * DAY + 15 * 60 + 20;
        assertEquals(0.015, Plans.sum(storm::rain, from, from + 50), 1e-15);
        assertTrue(storm.rain(from) > 0.0 && storm.rain(from + 49) > 0.0);
        assertTrue(storm.cloud(from + 25) >= 0.95);
    }

    @Test
    void aWindBlowsWithItsMeanFromItsBearing() {
        WeatherSeries wind = Plans.november(4, Plans.wind(15, "10:00", 9.0, 350.0, 7200.0));
        int from = 14 * DAY + 600;
        assertEquals(9.0, Plans.sum(wind::wind, from, from + 120) / 120.0, 1e-9);
        assertEquals(350.0, wind.windFrom(from + 60), 1e-9);
        assertEquals(Plans.november(4).wind(from - 15), wind.wind(from - 15));
    }

    @Test
    void dryDaysAreDryAndTheOthersKeepTheirRain() {
        WeatherSeries plain = Plans.november(4);
        WeatherSeries dry = Plans.november(4, Plans.dry(26, 2 * 86400.0));
        assertTrue(Plans.sum(plain::rain, 25 * DAY, 27 * DAY) > 0.04);
        assertEquals(0.0, Plans.sum(dry::rain, 25 * DAY, 27 * DAY));
        assertEquals(Plans.sum(plain::rain, 0, 25 * DAY), Plans.sum(dry::rain, 0, 25 * DAY));
    }

    @Test
    void laterEventsLieOverEarlierOnes() {
        WeatherSeries both = Plans.november(4, Plans.storm(5, "10:00", 0.02, 3600.0), Plans.dry(5, 0.0));
        assertEquals(0.0, Plans.sum(both::rain, 4 * DAY, 5 * DAY));
    }
}
