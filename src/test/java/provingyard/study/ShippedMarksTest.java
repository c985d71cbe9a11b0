package provingyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.scenario.Sites;
import provingyard.scenario.Work;
import provingyard.season.LivedSeasons;
import provingyard.season.Site;
import provingyard.setup.Cost;
import provingyard.setup.SetUp;

/** Each shipped site carries a mark that was found for the very document and simulator shipped with it. */
class ShippedMarksTest {

    @TempDir
    private Path empty;

    @BeforeEach
    void leaveTheUsersOwnMarksOut() {
        System.setProperty("provingyard.home", empty.toString());
    }

    @AfterEach
    void restore() {
        System.clearProperty("provingyard.home");
    }

    @ParameterizedTest
    @ValueSource(strings = {"tansy-row", "sorrel-court", "teasel-field", "quillback-clinic", "burdock-steps"})
    void fitsItsSite(String id) {
        Site site = Site.of(Sites.open(id).orThrow());
        Mark mark = MarkStore.find(site)
                .orElseThrow(() -> new AssertionError("the site or the simulator changed: run " + id
                        + " --setup mark --search and ship the new mark"));
        assertTrue(mark.meanGap() >= site.scenario().costs().leastGap(), "the site teaches something");
        assertTrue(Cost.of(mark.setUp(), site.scenario().kit()).withinBudget());
        // What is shipped as known is what the simulator says, to the bit.
        assertEquals(LivedSeasons.loss(site, SetUp.CLOCK_ALONE), mark.own().clock());
        assertEquals(LivedSeasons.loss(site, mark.setUp()), mark.own().mark());
    }

    @Test
    void everyShippedTuneSiteIsTriedAbove() {
        long tuned = Sites.list().stream()
                .filter(Sites.Site::shipped)
                .filter(s -> Sites.open(s.id()).orThrow().work() == Work.TUNE)
                .count();
        assertEquals(5, tuned);
    }
}
