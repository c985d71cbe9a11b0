package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Sites;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.season.Snapshot;
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

    /** A player of a season that was lived to its end and stands there. */
    private static SeasonPlayer over(Site site, SetUp setUp) throws InterruptedException {
        SeasonPlayer player = new SeasonPlayer(Season.begin(site, 3, DAYS, setUp), e -> {});
        player.play(Double.POSITIVE_INFINITY);
        waitUntilOver(player);
        return player;
    }

    private static SeasonPlayer.Frame shown(SeasonPlayer player, long tick) throws InterruptedException {
        for (int i = 0; i < 3000 && player.frame().snapshot().tick() != tick; i++) {
            TimeUnit.MILLISECONDS.sleep(2);
        }
        assertEquals(tick, player.frame().snapshot().tick());
        return player.frame();
    }

    private static void assertSameYard(Snapshot a, Snapshot b) {
        assertEquals(a.ledger(), b.ledger());
        assertArrayEquals(a.wetness(), b.wetness());
        assertArrayEquals(a.film(), b.film());
        assertArrayEquals(a.ice(), b.ice());
        assertArrayEquals(a.links(), b.links());
        assertEquals(a.zones(), b.zones());
        assertEquals(a.heads(), b.heads());
        assertEquals(a.sensors(), b.sensors());
    }

    @Test
    void lookingBackShowsTheVeryFramesAndLosesNothing() throws Exception {
        Site site = Site.of(Sites.open("tansy-row").orThrow());
        SetUp setUp = References.textbook(site.scenario()).orElseThrow();
        Season alone = Season.begin(site, 3, DAYS, setUp);
        Map<Long, Snapshot> then = new TreeMap<>();
        List<Long> minutes = List.of(305L, 1440L, 2901L, 3333L);
        while (!alone.over()) {
            alone.advance();
            if (minutes.contains(alone.tick())) {
                then.put(alone.tick(), alone.snapshot());
            }
        }
        try (SeasonPlayer player = over(site, setUp)) {
            for (long minute : new long[] {3333, 305, 2901, 1440, 305}) {
                player.show(minute);
                SeasonPlayer.Frame frame = shown(player, minute);
                assertSameYard(then.get(minute), frame.snapshot());
                assertEquals(alone.end(), frame.lived(), "what was lived is still there");
                assertEquals(alone.events(), frame.events());
                assertTrue(frame.over());
            }
            player.play(Double.POSITIVE_INFINITY);
            shown(player, alone.end());
            CompletableFuture<String> hash = new CompletableFuture<>();
            player.ask(Season::ledgerHash, hash::complete);
            assertEquals(alone.ledgerHash(), hash.get(60, TimeUnit.SECONDS));
        }
    }

    private static long tick(SeasonPlayer player) {
        return player.frame().snapshot().tick();
    }

    @Test
    void ofManyMinutesAskedForOnlyTheNewestIsShown() throws Exception {
        Site site = Site.of(Sites.open("tansy-row").orThrow());
        try (SeasonPlayer player = over(site, SetUp.CLOCK_ALONE)) {
            CompletableFuture<Void> held = new CompletableFuture<>();
            // The player is busy while the hand moves on.
            player.ask(season -> held.join(), x -> {});
            for (long tick = 3000; tick > 100; tick--) {
                player.show(tick);
            }
            Set<Long> seen = new TreeSet<>();
            held.complete(null);
            for (long now = 0; now != 101; now = tick(player)) {
                seen.add(now);
                Thread.onSpinWait();
            }
            seen.remove(0L);
            seen.remove(player.frame().lived());
            assertEquals(Set.of(), seen, "no minute that nobody waits for any more was worked out");
        }
    }

    @Test
    void eventsAreStepsBothWays() throws Exception {
        Site site = Site.of(Sites.open("tansy-row").orThrow());
        try (SeasonPlayer player = over(site, SetUp.CLOCK_ALONE)) {
            long first = Happenings.after(player.frame().events(), 0);
            long second = Happenings.after(player.frame().events(), first);
            player.show(0);
            player.nextEvent();
            shown(player, first);
            player.nextEvent();
            shown(player, second);
            player.previousEvent();
            shown(player, first);
        }
    }

    @Test
    void keyframesStayFewHoweverLongTheSeason() {
        Site site = Site.of(Sites.open("tansy-row").orThrow());
        Season season = Season.begin(site, 3, 40, SetUp.CLOCK_ALONE);
        int cells = season.snapshot().wetness().length;
        Keyframes keyframes = new Keyframes(cells, 6L * 72 * 200 * cells);
        assertEquals(72, keyframes.most());
        keyframes.pin(season);
        while (!season.over()) {
            season.advance();
            keyframes.pass(season);
            if (season.tick() == 777) {
                keyframes.pin(season);
            }
            assertTrue(keyframes.size() <= keyframes.most() + 2);
        }
        assertEquals(777, keyframes.at(1_000).tick(), "what was decided stays known, however thin the rest becomes");
        assertTrue(keyframes.size() > keyframes.most() / 2);
        for (long tick = 0; tick < season.end(); tick += 700) {
            long before = tick - keyframes.at(tick).tick();
            assertTrue(before >= 0 && before < 1440, tick + " is replayed from " + before);
        }
        assertEquals(24, new Keyframes(1_000_000, 1_000_000).most(), "a few even where memory is short");
        assertEquals(128, new Keyframes(100, 8_000_000_000L).most(), "and never very many");
    }

    private static void waitUntilOver(SeasonPlayer player) throws InterruptedException {
        for (int i = 0; i < 3000 && !player.frame().over(); i++) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
        assertTrue(player.frame().over(), "the season was lived to its end");
    }
}
