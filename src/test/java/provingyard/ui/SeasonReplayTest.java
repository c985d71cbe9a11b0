package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Sites;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.study.Progress;

/** What was left is gone on with bit for bit; what failed is gone on with from the last safe minute. */
class SeasonReplayTest {

    private static final Site SITE = Site.of(Sites.open("tansy-row").orThrow());
    private static final SetUp TEXTBOOK = References.textbook(SITE.scenario()).orElseThrow();

    private static SeasonPlayer.Kept kept(SeasonPlayer player) throws Exception {
        CompletableFuture<SeasonPlayer.Kept> kept = new CompletableFuture<>();
        player.keep(kept::complete);
        return kept.get(60, TimeUnit.SECONDS);
    }

    private static Season season(SeasonPlayer player) throws Exception {
        CompletableFuture<Season> season = new CompletableFuture<>();
        player.handOver(season::complete);
        return season.get(60, TimeUnit.SECONDS);
    }

    /** Lives on to a minute; orders that come early end the living, so it is asked until it is there. */
    private static void live(SeasonPlayer player, long until) throws Exception {
        while (season(player).tick() < until) {
            player.show(until);
            TimeUnit.MILLISECONDS.sleep(300);
        }
    }

    @Test
    void livedAgainItIsTheSameToTheBit() throws Exception {
        try (SeasonPlayer player = new SeasonPlayer(Season.begin(SITE, SetUp.CLOCK_ALONE), e -> {})) {
            live(player, 2000);
            player.change(TEXTBOOK);
            live(player, 3000);
            player.rearm();
            live(player, 4000);
            SeasonPlayer.Kept kept = kept(player);
            assertEquals(4000, kept.tick());
            assertEquals(List.of(3000L), kept.rearms());
            assertEquals(2, kept.changes().size());
            SeasonReplay.Lived again = SeasonReplay.of(SITE, kept, Progress.SILENT);
            assertEquals(season(player).ledgerHash(), again.season().ledgerHash());
            assertEquals(4000, again.season().tick());
            try (SeasonPlayer resumed = new SeasonPlayer(again, e -> {})) {
                assertEquals(kept, kept(resumed), "what is kept of it is the same again");
                resumed.show(100);
                assertEquals(4000, season(resumed).tick(), "looking back does not lose what was lived");
            }
        }
    }

    @Test
    void itCanBeStopped() {
        SeasonPlayer.Kept kept = new SeasonPlayer.Kept(20_000, List.of(new Season.Change(0, TEXTBOOK)), List.of());
        Progress impatient = new Progress() {
            private int days;

            @Override
            public void at(int done, int of) {
                days = done;
            }

            @Override
            public boolean cancelled() {
                return days >= 2;
            }
        };
        assertThrows(CancellationException.class, () -> SeasonReplay.of(SITE, kept, impatient));
    }

    @Test
    void afterAFailureThePlayerGoesOnFromItsLastKeyframe() throws Exception {
        CompletableFuture<Throwable> failed = new CompletableFuture<>();
        try (SeasonPlayer player = new SeasonPlayer(Season.begin(SITE, SetUp.CLOCK_ALONE), failed::complete)) {
            live(player, 1500);
            player.change(TEXTBOOK);
            live(player, 1600);
            player.handOver(season -> {
                throw new IllegalStateException("unforeseen");
            });
            assertEquals("unforeseen", failed.get(60, TimeUnit.SECONDS).getMessage());
            assertEquals(1500, season(player).tick());
            assertEquals(TEXTBOOK, season(player).setUp());
            live(player, 1700);
            Season alone = Season.begin(SITE, SetUp.CLOCK_ALONE);
            while (alone.tick() < 1500) {
                alone.advance();
            }
            alone.change(TEXTBOOK);
            while (alone.tick() < 1700) {
                alone.advance();
            }
            assertEquals(alone.ledgerHash(), season(player).ledgerHash());
        }
    }

    @Test
    void theFirstYardOpensAtARunAfterRain() {
        SeasonReplay.Lived begun = AfterRain.of(SITE, Progress.SILENT).orElseThrow();
        Season season = begun.season();
        assertTrue(season.tick() <= AfterRain.MOST_DAYS * 1440L);
        List<SeasonEvent> events = season.events();
        assertEquals(SeasonEvent.Kind.ZONE_ON, events.get(events.size() - 1).kind());
        assertTrue(events.stream().anyMatch(e -> e.kind() == SeasonEvent.Kind.RAIN_BEGAN));
        assertEquals(0, begun.keyframes().get(0).tick());
        Season alone = Season.begin(SITE, SetUp.CLOCK_ALONE);
        while (alone.tick() < season.tick()) {
            alone.advance();
        }
        assertEquals(alone.ledgerHash(), season.ledgerHash());
    }
}
