package provingyard.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.SensorKind;

/** Marks of the ribbon never lie on each other, and alike ones are counted. */
class RibbonMarksTest {

    private static final int DAYS = 10;

    private static RibbonData data(int holders, List<RibbonData.Hold> holds, List<RibbonData.Sign> signs) {
        double[] none = new double[DAYS * 24];
        LocalDateTime start = LocalDateTime.of(2024, 10, 8, 0, 0);
        return new RibbonData(
                start,
                60,
                none,
                none,
                none,
                none,
                List.of(),
                holders,
                holds,
                signs,
                List.of(),
                DAYS * 1440L,
                null,
                null);
    }

    private static List<RibbonMarks.Mark> laid(RibbonData data, long from, long to, String language) {
        RibbonView view = new RibbonView(
                1280, RibbonPainter.height(data), from, to, to, Theme.LIGHT, language, UnitSystem.METRIC);
        return new RibbonMarks(view, RibbonWords.of(language), w -> 6.2 * w.length()).lay(data);
    }

    private static RibbonData.Hold hold(SensorKind kind, long from, long to) {
        return new RibbonData.Hold(kind, kind.name(), from, to, "word");
    }

    private static RibbonData busy() {
        List<RibbonData.Hold> holds = new ArrayList<>();
        holds.add(hold(SensorKind.RAIN, 700, 4000));
        holds.add(hold(SensorKind.RAIN, 9000, 11_500));
        for (int day = 0; day < DAYS; day++) {
            holds.add(hold(SensorKind.FREEZE, day * 1440L + 60, day * 1440L + 500));
            for (int i = 0; i < 5; i++) {
                holds.add(hold(SensorKind.WIND, day * 1440L + 700 + 70 * i, day * 1440L + 730 + 70 * i));
            }
        }
        return data(3, holds, List.of());
    }

    @Test
    void noMarkLiesOnAnother() {
        for (long span : new long[] {3 * 1440, 10 * 1440}) {
            List<RibbonMarks.Mark> marks = laid(busy(), 0, span, "es");
            assertTrue(marks.size() > 6, "marks are there: " + marks.size());
            for (RibbonMarks.Mark a : marks) {
                for (RibbonMarks.Mark b : marks) {
                    boolean apart = a == b || a.row() != b.row() || a.end() <= b.start() || b.end() <= a.start();
                    assertTrue(apart, a + " lies on " + b);
                }
            }
        }
    }

    @Test
    void alikeMarksThatWouldTouchAreCounted() {
        List<RibbonData.Hold> gusts =
                busy().holds().stream().filter(h -> h.kind() == SensorKind.WIND).toList();
        RibbonMarks.Mark wind =
                laid(data(1, gusts, List.of()), 0, 5 * 1440, "en").get(0);
        assertEquals(5, wind.bars().size());
        assertEquals("word 5×, 2.5\u00a0h", wind.word());
    }

    @Test
    void signsThatRepeatAreOne() {
        List<RibbonData.Sign> signs = List.of(
                new RibbonData.Sign(1000, RibbonData.SignKind.ALARM, "high flow"),
                new RibbonData.Sign(1030, RibbonData.SignKind.ALARM, "high flow"),
                new RibbonData.Sign(9000, RibbonData.SignKind.ALARM, "high flow"));
        List<RibbonMarks.Mark> marks = laid(data(1, List.of(), signs), 0, 10 * 1440, "en");
        assertEquals(2, marks.size());
        assertEquals("high flow 2×", marks.get(0).word());
        assertFalse(marks.get(1).word().contains("×"));
    }
}
