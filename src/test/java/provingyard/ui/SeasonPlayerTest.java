package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Sites;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** A season that is watched, paused, and looked back on equals one that nobody watches. */
class SeasonPlayerTest {

    private static final int DAYS = 3;

    @Test
    void watchedEqualsHeadless() throws Exception {
        Site site = Site.of(Sites.open("tansy-row").orThrow());
        SetUp setUp = References.textbook(site.scenario()).orElseThrow();
        Season alone = Season.begin(site, 3, DAYS, setUp);
        alone.liveToEnd();
        CompletableFuture<Throwable> failed = new CompletableFuture<>();
        try (SeasonPlayer player = new SeasonPlayer(Season.begin(site, 3, DAYS, SetUp.CLOCK_ALONE), failed::complete)) {
            player.change(setUp);
            player.play(2000);
            player.pause();
            player.show(1500);
            player.show(200);
            player.nextEvent();
            player.play(Double.POSITIVE_INFINITY);
            CompletableFuture<Season> over = new CompletableFuture<>();
            waitUntilOver(player);
            player.handOver(over::complete);
            Season watched = over.get(60, TimeUnit.SECONDS);
            assertTrue(watched.over());
            assertEquals(alone.ledgerHash(), watched.ledgerHash());
        }
        assertTrue(!failed.isDone());
    }

    private static void waitUntilOver(SeasonPlayer player) throws InterruptedException {
        for (int i = 0; i < 3000 && !player.frame().over(); i++) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
        assertTrue(player.frame().over(), "the season was lived to its end");
    }
}
