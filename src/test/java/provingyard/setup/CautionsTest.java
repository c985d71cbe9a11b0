package provingyard.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import provingyard.scenario.SensorKind;

class CautionsTest {

    @Test
    void everyCautionHasASentenceInBothLanguages() {
        for (String key : Cautions.ALL) {
            assertTrue(Cautions.text(key, "en").endsWith("."), key);
            assertTrue(Cautions.text(key, "es").endsWith("."), key);
            assertNotEquals(Cautions.text(key, "en"), Cautions.text(key, "es"));
        }
        assertThrows(IllegalArgumentException.class, () -> Cautions.text("no-such", "en"));
    }

    @Test
    void everyCautionStandsWhereSomeHandIs() {
        Set<String> used = new TreeSet<>();
        for (SensorKind kind : SensorKind.values()) {
            used.addAll(Cautions.of(kind, null));
            for (Mount mount : Mount.values()) {
                used.addAll(Cautions.of(kind, mount));
            }
        }
        assertEquals(new TreeSet<>(Cautions.ALL), used);
    }

    @Test
    void cautionsFitTheWork() {
        assertTrue(Cautions.of(SensorKind.WIND, Mount.ROOF_EDGE).contains(Cautions.LADDER));
        assertFalse(Cautions.of(SensorKind.WIND, Mount.FENCE).contains(Cautions.LADDER));
        assertTrue(Cautions.of(SensorKind.FLOW, null).contains(Cautions.PRESSURE_OFF));
        assertTrue(Cautions.of(SensorKind.SOIL, null).contains(Cautions.BURIED_LINES));
        assertTrue(Cautions.of(SensorKind.FREEZE, Mount.WALL).contains(Cautions.NOT_WINTERISED));
        for (SensorKind kind : SensorKind.values()) {
            assertTrue(Cautions.of(kind, Mount.POST).contains(Cautions.LOW_VOLTAGE), kind.name());
            assertTrue(Cautions.of(kind, Mount.POST).contains(Cautions.CODES), kind.name());
        }
    }
}
