package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provingyard.scenario.Problem;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;

/** What is wrong with a site that somebody wrote is said in a few lines, in the user's language. */
@Tag("unit")
class OwnSitesTest {

    @TempDir
    Path folder;

    @Test
    void theFirstProblemsAreToldAndHowManyThereAreMore() throws Exception {
        String text = Files.readString(Path.of("scenarios/sumac-bend.json"));
        Path file = Files.writeString(folder.resolve("mine.json"), text.replace("\"days\"", "\"dayz\""));
        Read<Scenario> read = Sites.open(file.toString());
        List<Problem> errors = read.errors();
        assertTrue(errors.size() > 3, "so many mistakes: " + errors.size());
        Words words = new Words();
        words.speak("en");
        String told = OwnSites.told(errors, words);
        assertTrue(told.contains("mine.json:") && told.contains("\"dayz\""), told);
        assertEquals(4, told.split("\n\n").length, told);
        words.speak("es");
        assertFalse(OwnSites.told(errors, words).contains("more:"));
        assertTrue(OwnSites.told(errors.subList(0, 1), words).contains("otra vez"));
    }

    @Test
    void shippedSitesHaveNoProblemsAndNoneIsCheckedTwice() {
        OwnSites.Found found = OwnSites.find();
        assertEquals(List.of(), found.errors());
        assertEquals(found.sites(), OwnSites.shipped(found.sites()));
        assertEquals(List.of(), OwnSites.errors(found.sites().get(7)));
    }
}
