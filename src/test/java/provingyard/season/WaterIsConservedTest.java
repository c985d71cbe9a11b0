package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.statistics.Statistics;
import provingyard.world.ground.Ground;

/** No litre is lost or made: whole seasons on random yards, in random weather, with random faults and set-ups. */
class WaterIsConservedTest {

    /** Share of the volume handled that may be missing from either balance. */
    private static final double CLOSURE = 1e-9;

    /**
     * Audited at each end of a five-minute beat. Between two of them rain is nowhere yet on ground that is not watered,
     * and irrigation's share, which is the difference of a watered and an unwatered ground, means nothing there.
     */
    @Property(tries = 520, shrinking = ShrinkingMode.OFF)
    void bothBalancesCloseAtEachBeatAndNoStoreIsNegative(@ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
        Season season = RandomSeasons.draw(seed).season();
        boolean iced = false;
        while (!season.over()) {
            season.advance();
            if (season.tick() % IceLog.BEAT == 0) {
                assertBothBalancesClose(season);
                assertNoStoreIsNegative(season.ground());
                iced |= season.ground().frozen();
            }
        }
        coverage(season.ledger(), iced);
    }

    /** On ground that is watered water moves by the minute: the site's balance must close then too. */
    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void theSitesBalanceClosesEachMinute(@ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
        Season season = RandomSeasons.draw(seed).season();
        while (!season.over()) {
            season.advance();
            Ledger.Water water = season.ledger().water();
            assertTrue(water.closure() < CLOSURE, () -> "minute " + season.tick() + ": " + water);
        }
    }

    private static void assertBothBalancesClose(Season season) {
        Ledger ledger = season.ledger();
        assertEquals(0, season.unsolvedMinutes(), () -> "pipes at minute " + season.tick());
        assertTrue(ledger.water().closure() < CLOSURE, () -> "minute " + season.tick() + ": " + ledger.water());
        assertTrue(
                ledger.irrigation().closure() < CLOSURE, () -> "minute " + season.tick() + ": " + ledger.irrigation());
    }

    /** The draws reach what they are for. */
    private static void coverage(Ledger ledger, boolean iced) {
        Ledger.Water water = ledger.water();
        covers("watered", water.supplied() > 0, 70);
        covers("rained on", water.rain() > 0, 50);
        covers("leaked", water.leaked() > 0, 15);
        covers("thrown beyond the yard", water.offSite() > 0, 20);
        covers("ran off", ledger.irrigation().runoff() > 0, 20);
        covers("drained", water.below() > 0, 30);
        covers("iced", iced, 10);
    }

    private static void covers(String what, boolean seen, double leastPercent) {
        Statistics.label(what).collect(seen).coverage(c -> c.check(true).percentage(p -> p >= leastPercent));
    }

    private static void assertNoStoreIsNegative(Ground ground) {
        for (int c = 0; c < ground.cells().count(); c++) {
            int cell = c;
            assertTrue(ground.soilWater(c) >= 0 && ground.pond(c) >= 0, () -> "soil of cell " + cell);
            assertTrue(ground.filmMm(c) >= 0 && ground.iceMm(c) >= 0, () -> "film or ice of cell " + cell);
        }
    }
}
