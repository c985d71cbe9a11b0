package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import provingyard.scenario.SensorKind;

class ChartsTest {

    private static final MiniPlot RAIN = MiniPlot.of(
            new double[] {
                0.3, 0.2, 1.6, 6.9, 9.4, 8.1, 4, 1.5, 0.4, 0, 0, 2.2, 3.8, 1.9, 0.5, 0, 7.6, 12.8, 10.2, 6.6, 3.1
            },
            6,
            false,
            false,
            "6 mm",
            "17 Sep",
            "yesterday");

    @Test
    void chartsDrawAndLeavePictures() throws IOException {
        for (Theme theme : List.of(Theme.LIGHT, Theme.DARK)) {
            Java2DSurface s = new Java2DSurface(760, 640);
            s.fill(Path.rectangle(0, 0, 760, 640), theme.at(Tone.PAPER));
            s.translate(20, 20);
            double used = Charts.score(
                    s,
                    700,
                    new Charts.Score(
                            new Charts.ScoreMark(0, "Clock alone", "lost $2,140"),
                            new Charts.ScoreMark(0.71, "You", "lost $830"),
                            new Charts.ScoreMark(1, "The mark", "lost $296"),
                            new Charts.ScoreMark(1.12, "best for just", "this weather")),
                    theme);
            s.translate(0, used + 20);
            used = Charts.water(
                    s,
                    700,
                    List.of(
                            new Charts.WaterRow(
                                    "Clock alone", false, 112, "112", new double[] {6, 9, 7, 41, 15.5}, "78.5"),
                            new Charts.WaterRow("You", true, 118, "118", new double[] {5, 8, 3, 12, 0.9}, "28.9"),
                            new Charts.WaterRow("The mark", false, 119, "119", new double[] {1, 4, 2, 8, 0.4}, "15.4")),
                    "kept for the plants",
                    "wasted",
                    theme,
                    "en");
            s.translate(0, used + 20);
            used = Charts.shares(
                    s,
                    700,
                    List.of(
                            new Charts.Share(SensorKind.FREEZE, "Freeze", -558, "−$558", "placed by the vent"),
                            new Charts.Share(SensorKind.WIND, "Wind", -8, "−$8", "not bought"),
                            new Charts.Share(SensorKind.FLOW, "Flow", 0, "$0", "as the mark"),
                            new Charts.Share(SensorKind.RAIN, "Rain", 37, "+$37", "better than the mark")),
                    "cost you",
                    "gained you",
                    theme);
            s.translate(0, used + 20);
            RAIN.draw(s, 254, theme);
            s.translate(300, 0);
            MiniPlot.of(
                            new double[] {
                                8, 9, 8.5, 7, 7.6, 9, 8, 7, 5.5, 5, 6, 5, 4.7, 4, 3.6, 3.8, 2.1, 3.9, 2, 2.6, 4.2
                            },
                            3,
                            true,
                            true,
                            "3 °C",
                            "21 Sep",
                            "now")
                    .draw(s, 254, theme);
            YardPictureTest.write("charts-" + theme.name(), s.image());
        }
    }

    @Test
    void plotCountsTrips() {
        assertEquals(7, RAIN.trips());
        assertEquals(14, MiniPlot.of(RAIN.values(), 6, true, false, "", "", "").trips());
    }

    @Test
    void everyWasteHasItsOwnPattern() {
        Set<Integer> seen = new HashSet<>();
        for (Waste w : Waste.values()) {
            Java2DSurface s = new Java2DSurface(40, 40);
            w.fill(s, 0, 0, 40, 40, Theme.LIGHT);
            // Without hue: which pixels differ from the first one of the waste's own tone.
            int[] argb = YardPicture.pixels(s.image()).argb();
            int tone = Theme.LIGHT.at(w.tone()).argb();
            int[] shape = Arrays.stream(argb).map(p -> p == tone ? 0 : 1).toArray();
            assertTrue(seen.add(Arrays.hashCode(shape)), w.name());
        }
        assertNotEquals(1, seen.size());
    }
}
