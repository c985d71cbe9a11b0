package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Sites;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** A season that is over can be tried otherwise from any minute; the own one is never lost and practice never kept. */
class PracticeTest {

    private static final int DAYS = 4;
    private static final long FROM = 2000;
    private static final long END = DAYS * 1440L;

    private final Site site = Site.of(Sites.open("tansy-row").orThrow());
    private final SetUp own = References.careless(site.scenario()).orElseThrow();
    private final SetUp other = References.textbook(site.scenario()).orElseThrow();
    private SeasonPlayer player;

    @BeforeEach
    void liveToTheEnd() throws Exception {
        player = new SeasonPlayer(Season.begin(site, 3, DAYS, SetUp.CLOCK_ALONE), e -> {});
        player.show(700);
        until(f -> f.snapshot().tick() == 700);
        player.change(own);
        player.play(Double.POSITIVE_INFINITY);
        until(f -> f.over() && !f.playing() && f.snapshot().tick() == END);
    }

    @AfterEach
    void close() {
        player.close();
    }

    private SeasonPlayer.Frame until(Predicate<SeasonPlayer.Frame> holds) throws InterruptedException {
        for (int i = 0; i < 15_000 && !holds.test(player.frame()); i++) {
            TimeUnit.MILLISECONDS.sleep(2);
        }
        assertTrue(
                holds.test(player.frame()),
                () -> "waited in vain at " + player.frame().snapshot().tick());
        return player.frame();
    }

    private Season handedOver() throws Exception {
        CompletableFuture<Season> told = new CompletableFuture<>();
        player.handOver(told::complete);
        return told.get(60, TimeUnit.SECONDS);
    }

    private SeasonPlayer.Kept kept() throws Exception {
        CompletableFuture<SeasonPlayer.Kept> told = new CompletableFuture<>();
        player.keep(told::complete);
        return told.get(60, TimeUnit.SECONDS);
    }

    private void practise() throws InterruptedException {
        player.show(FROM);
        until(f -> f.snapshot().tick() == FROM);
        player.practise();
        until(SeasonPlayer.Frame::practice);
        player.change(other);
    }

    @Test
    void practiceEqualsASeasonThatChangedThen() throws Exception {
        practise();
        assertEquals(FROM, player.frame().practiceFrom());
        player.play(Double.POSITIVE_INFINITY);
        until(f -> f.over() && f.snapshot().tick() == END);
        Season same = Season.begin(site, 3, DAYS, SetUp.CLOCK_ALONE);
        while (!same.over()) {
            if (same.tick() == 700) {
                same.change(own);
            }
            if (same.tick() == FROM) {
                same.change(other);
            }
            same.advance();
        }
        assertEquals(same.ledgerHash(), handedOver().ledgerHash());
    }

    @Test
    void theOwnSeasonComesBackWhole() throws Exception {
        String before = handedOver().ledgerHash();
        practise();
        player.play(Double.POSITIVE_INFINITY);
        until(f -> f.practice() && f.over());
        assertNotEquals(before, handedOver().ledgerHash());
        player.backToOwn();
        SeasonPlayer.Frame frame = until(f -> !f.practice());
        assertEquals(END, frame.lived());
        assertEquals(own, frame.setUp());
        assertEquals(before, handedOver().ledgerHash());
        player.show(FROM + 300);
        SeasonPlayer.Frame back = until(f -> f.snapshot().tick() == FROM + 300);
        assertEquals(own, back.setUp(), "a replay knows what was decided, not what was tried");
    }

    @Test
    void practiceIsNotKept() throws Exception {
        practise();
        SeasonPlayer.Kept kept = kept();
        assertEquals(END, kept.tick());
        assertEquals(2, kept.changes().size());
        assertEquals(own, kept.changes().get(1).setUp());
    }

    @Test
    void anotherTrialGoesOnFromItsOwnMinute() throws Exception {
        practise();
        player.show(FROM + 500);
        until(f -> f.snapshot().tick() == FROM + 500);
        player.show(FROM + 100);
        until(f -> f.snapshot().tick() == FROM + 100);
        player.practise();
        SeasonPlayer.Frame frame = until(f -> f.lived() == FROM + 100);
        assertEquals(FROM, frame.practiceFrom());
        player.backToOwn();
        assertEquals(END, until(f -> !f.practice()).lived());
    }

    @Test
    void restartGivesUpWhatWasLived() throws Exception {
        practise();
        player.restart(other);
        SeasonPlayer.Frame frame = until(f -> f.lived() == 0 && f.setUp().equals(other));
        assertFalse(frame.practice());
        player.play(Double.POSITIVE_INFINITY);
        until(SeasonPlayer.Frame::over);
        Season alone = Season.begin(site, 3, DAYS, other);
        alone.liveToEnd();
        assertEquals(alone.ledgerHash(), handedOver().ledgerHash());
    }
}
