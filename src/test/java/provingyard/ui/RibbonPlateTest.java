package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.picture.RibbonData;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.SensorKind;

class RibbonPlateTest {

    private static double[] all(double value) {
        double[] values = new double[48];
        Arrays.fill(values, value);
        return values;
    }

    private static RibbonData data() {
        double[] flow = new double[288];
        Arrays.fill(flow, 4e-4);
        return new RibbonData(
                LocalDateTime.of(2013, 11, 1, 0, 0),
                60,
                all(5),
                all(2),
                all(3),
                all(250),
                List.of(new RibbonData.Lane(
                        "North lawn",
                        List.of(
                                new RibbonData.Run(300, 320, RibbonData.RunState.RAN),
                                new RibbonData.Run(2700, 2720, RibbonData.RunState.PLANNED)))),
                1,
                List.of(new RibbonData.Hold(SensorKind.RAIN, "rain-1", 200, 900, "wet")),
                List.of(),
                List.of(),
                2400,
                new RibbonData.Flow(10, flow, List.of(new RibbonData.Band(300, 320, 4e-4, 3e-4, 5e-4))),
                null);
    }

    private static RibbonPlate plate(long tick, String language) {
        Words words = new Words();
        words.speak(language);
        words.units().set(UnitSystem.METRIC);
        return RibbonPlate.at(data(), tick, words);
    }

    private static String value(RibbonPlate plate, String name) {
        return plate.rows().stream()
                .filter(r -> r.name().equals(name))
                .findFirst()
                .map(RibbonPlate.Row::value)
                .orElse("missing");
    }

    @Test
    void saysTheTimeAndAllValues() {
        RibbonPlate plate = plate(310, "en");
        assertEquals("Fri 1 Nov, 05:10", plate.title());
        assertEquals("2\u00a0mm", value(plate, "Rain in the hour"));
        assertEquals("5\u00a0°C", value(plate, "Air"));
        assertEquals("250\u00a0W/m²", value(plate, "Sun"));
        assertEquals("3\u00a0m/s", value(plate, "Wind"));
        assertEquals("ran", value(plate, "North lawn"));
        assertEquals("24\u00a0L/min", value(plate, "Flow sensor"));
        assertEquals("18\u00a0L/min – 30\u00a0L/min", value(plate, "Limits"));
        assertEquals("holds", value(plate, "Rain sensor"));
        assertEquals("missing", value(plate(1000, "en"), "Rain sensor"), "it holds no longer");
    }

    @Test
    void whatIsNotLivedIsNotTold() {
        RibbonPlate plate = plate(2710, "es");
        assertEquals(
                List.of("Aún no vivido", "North lawn"),
                plate.rows().stream().map(RibbonPlate.Row::name).toList());
        assertEquals("programada", value(plate, "North lawn"));
        assertTrue(plate.title().contains("21:10"));
    }
}
