package provingyard.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;

class ContentHashTest {

    private static final String STATED = ", \"seasonsAYear\": 2.5";

    private static Scenario stating(String seasons) {
        String text = ScenarioReaderTest.complete();
        assertEquals(2, text.split(STATED, -1).length);
        return ScenarioReader.read("a.json", text.replace(STATED, seasons)).orThrow();
    }

    private static String hash(String seasons) {
        return stating(seasons).contentHash();
    }

    @Test
    void oneSeasonAYearIsWhatADocumentSaysThatSaysNothing() {
        assertEquals(1, stating("").season().seasonsAYear());
        assertEquals(2.5, stating(STATED).season().seasonsAYear());
        assertEquals(hash(""), hash(", \"seasonsAYear\": 1"));
        assertEquals(hash(""), hash(", \"seasonsAYear\": 1.0"));
    }

    @Test
    void anotherNumberOfSeasonsIsAnotherDocument() {
        assertNotEquals(hash(""), hash(STATED));
        assertNotEquals(hash(STATED), hash(", \"seasonsAYear\": 3"));
    }

    @Test
    void layoutAndUnitsDoNotMatterButValuesDo() {
        String text = ScenarioReaderTest.complete();
        String cell = "\"cell\": \"2 ft\"";
        assertEquals(2, text.split(cell, -1).length);
        String same = text.replace(cell, "\"cell\" :\n \"0.6096 m\"");
        String other = text.replace(cell, "\"cell\": \"2.5 ft\"");
        String known = ScenarioReader.read("a.json", text).orThrow().contentHash();
        assertEquals(known, ScenarioReader.read("b.json", same).orThrow().contentHash());
        assertNotEquals(known, ScenarioReader.read("c.json", other).orThrow().contentHash());
    }
}
