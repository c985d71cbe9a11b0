package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.numeric.Deterministic;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.SensorKind;

class RibbonTest {

    private static final int DAYS = 14;

    static RibbonData data(long livedUntil, boolean extra) {
        int n = DAYS * 144;
        double[] air = new double[n];
        double[] rain = new double[n];
        double[] wind = new double[n];
        double[] flow = new double[n];
        double[] soil = new double[n];
        double[] sun = new double[n];
        for (int i = 0; i < n; i++) {
            double d = i / 144.0;
            air[i] = 9 - d * 0.45 - 5 * Deterministic.cos((d - 0.12) * 2 * Math.PI);
            rain[i] = d > 3.4 && d < 3.62 ? 0.35 : d > 6.7 && d < 6.8 ? 0.28 : 0;
            wind[i] = Math.max(0, 2.4 + 1.8 * Deterministic.sin(d * 5.1) + 1.6 * Deterministic.sin(d * 2.3 + 1));
            flow[i] = i % 144 > 28 && i % 144 < 46 ? 40 + 8 * Deterministic.sin(d * 9) : 0;
            sun[i] = Math.max(0, -700 * Deterministic.cos(d * 2 * Math.PI));
            soil[i] = 0.26 + 0.06 * Deterministic.cos(d * 1.7);
        }
        List<RibbonData.Lane> lanes = new ArrayList<>();
        for (int z = 0; z < 6; z++) {
            List<RibbonData.Run> runs = new ArrayList<>();
            for (int d = z % 2; d < DAYS; d += 2) {
                long from = d * 1440L + 280 + z * 43;
                RibbonData.RunState state = from > livedUntil
                        ? RibbonData.RunState.PLANNED
                        : d == 4 || d == 5 ? RibbonData.RunState.SKIPPED : RibbonData.RunState.RAN;
                runs.add(new RibbonData.Run(from, from + 80, state));
            }
            lanes.add(new RibbonData.Lane("zone-" + z, runs));
        }
        List<RibbonData.Span> nights = new ArrayList<>();
        for (int d = -1; d < DAYS; d++) {
            nights.add(new RibbonData.Span(d * 1440L + 1060, d * 1440L + 1440 + 390));
        }
        return new RibbonData(
                LocalDateTime.of(2024, 10, 8, 0, 0),
                10,
                air,
                rain,
                wind,
                sun,
                lanes,
                2,
                List.of(
                        new RibbonData.Hold(SensorKind.RAIN, "rain-1", 5200, 7700, "wet"),
                        new RibbonData.Hold(SensorKind.FREEZE, "freeze-1", 10_100, 10_560, "cold")),
                List.of(
                        new RibbonData.Sign(11_900, RibbonData.SignKind.ICE, "iced"),
                        new RibbonData.Sign(2_300, RibbonData.SignKind.ALARM, "zone 2 high")),
                nights,
                livedUntil,
                extra ? new RibbonData.Flow(10, flow, List.of(new RibbonData.Band(290, 460, 40, 30, 52))) : null,
                extra ? new RibbonData.Soil(10, soil, 0.2, 0.31) : null);
    }

    private static RibbonView view(RibbonData data, Theme theme, long from, long to) {
        return new RibbonView(
                1280, RibbonPainter.height(data), from, to, data.livedUntil(), theme, "en", UnitSystem.METRIC);
    }

    private static int[] pixels(RibbonData data, RibbonView view) {
        Java2DSurface s = new Java2DSurface(view.width(), view.height());
        RibbonPainter.draw(s, data, view);
        return YardPicture.pixels(s.image()).argb();
    }

    @Test
    void looksTheSameEachTimeAndLeavesPictures() throws IOException {
        RibbonData data = data(9 * 1440 + 372, false);
        RibbonView view = view(data, Theme.LIGHT, 0, 14_400);
        assertArrayEquals(pixels(data, view), pixels(data, view));
        for (Theme theme : List.of(Theme.LIGHT, Theme.DARK)) {
            RibbonData extra = data(9 * 1440 + 372, true);
            RibbonView wide = view(extra, theme, 0, 14_400);
            Java2DSurface s = new Java2DSurface(wide.width(), wide.height());
            RibbonPainter.draw(s, extra, wide);
            YardPictureTest.write("ribbon-" + theme.name(), s.image());
        }
    }

    @Test
    void futureIsNotShown() {
        RibbonData a = data(5000, false);
        double[] other = a.air().clone();
        double[] wet = a.rain().clone();
        Arrays.fill(wet, 600, 700, 2);
        for (int i = 510; i < other.length; i++) {
            other[i] = 9 - other[i] * 0.1;
        }
        RibbonData b = new RibbonData(
                a.start(),
                10,
                other,
                wet,
                a.wind(),
                a.sun(),
                a.lanes(),
                a.holders(),
                a.holds(),
                a.signs(),
                a.nights(),
                5000,
                null,
                null);
        assertArrayEquals(pixels(a, view(a, Theme.LIGHT, 0, 14_400)), pixels(b, view(a, Theme.LIGHT, 0, 14_400)));
        RibbonData later = data(9000, false);
        assertNotEquals(
                Arrays.hashCode(pixels(a, view(a, Theme.LIGHT, 0, 14_400))),
                Arrays.hashCode(pixels(later, view(a, Theme.LIGHT, 0, 14_400))));
    }

    @Test
    void pixelsAndTicksAgree() {
        RibbonView view = view(data(5000, false), Theme.LIGHT, 1440, 15_840);
        assertEquals(7000, view.tick(view.x(7000)));
        assertEquals(1440, view.tick(0));
        assertEquals(15_840, view.tick(5000));
        assertTrue(RibbonPainter.height(data(1, true)) > RibbonPainter.height(data(1, false)));
    }
}
