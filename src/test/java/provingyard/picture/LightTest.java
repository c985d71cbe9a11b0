package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import provingyard.season.Snapshot;

class LightTest {

    private static Snapshot.Sky sky(double altitude, double cloud, double rain) {
        return new Snapshot.Sky(10, 5, 1, 270, 0, cloud, rain, altitude, 90);
    }

    @Test
    void nightComesSoftlyAsTheSunSinks() {
        double before = 0;
        int between = 0;
        for (double altitude = 20; altitude >= -30; altitude -= 0.5) {
            double night = Light.of(Theme.LIGHT, sky(altitude, 0, 0)).night();
            assertTrue(night >= before && night - before < 0.12, altitude + " degrees: " + night);
            between += night > 0 && night < 1 ? 1 : 0;
            before = night;
        }
        assertEquals(0, Light.of(Theme.LIGHT, sky(20, 0, 0)).night());
        assertEquals(1, before);
        assertTrue(between > 10, "steps of dusk: " + between);
    }

    @Test
    void lowSunIsWarmAndRainIsDark() {
        Light noon = Light.of(Theme.LIGHT, sky(50, 0, 0));
        Light morning = Light.of(Theme.LIGHT, sky(4, 0, 0));
        Light rain = Light.of(Theme.LIGHT, sky(50, 1, 5));
        Light pour = Light.of(Theme.LIGHT, sky(50, 1, 30));
        assertEquals(Light.DAY, noon);
        assertTrue(morning.blue() < morning.red());
        assertTrue(rain.red() < rain.blue() && rain.red() < 0.9);
        assertTrue(pour.red() < rain.red());
    }

    @Test
    void themesForTheWallAndForWeakEyesStayAsTheyAre() {
        for (Theme theme : new Theme[] {Theme.HIGH_CONTRAST, Theme.PROJECTOR}) {
            assertEquals(Light.DAY, Light.of(theme, sky(-40, 1, 20)));
        }
    }

    @Test
    void pixelsAreBlendedThenMultipliedAndKeepTheirAlpha() {
        int[] day = {0xFF804020, 0x40402010};
        int[] night = {0xFF000000, 0x40000000};
        assertArrayEquals(day, Light.DAY.on(day, night));
        assertArrayEquals(night, new Light(1, 1, 1, 1).on(day, night));
        int[] half = new Light(0.5, 1, 0.5, 1).on(day, night);
        assertArrayEquals(new int[] {0xFF401010, 0x40200808}, half);
    }
}
