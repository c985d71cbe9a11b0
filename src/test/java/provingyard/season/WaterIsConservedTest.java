package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.LongRange;
import provingyard.world.ground.Ground;

/** No litre is lost or made: whole seasons on random yards, in random weather, with random faults and set-ups. */
class WaterIsConservedTest {

    /** Share of the volume handled that may be missing from either balance. */
    private static final double CLOSURE = 1e-9;

    /**
     * The site's water is audited each minute. Irrigation's share is audited at each end of a beat in which rain moves:
     * where it is watered water moves by the minute and takes along the rain that still waits on the unwatered twin.
     */
    @Property(tries = 520, shrinking = ShrinkingMode.OFF)
    void bothBalancesCloseAtAllTimesAndNoStoreIsNegative(@ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
        Season season = RandomSeasons.draw(seed).season();
        while (!season.over()) {
            season.advance();
            Ledger ledger = season.ledger();
            assertTrue(
                    ledger.water().closure() < CLOSURE,
                    () -> "minute " + season.tick() + ", water of the site: " + ledger.water());
            if (season.tick() % IceLog.BEAT == 0) {
                assertTrue(
                        ledger.irrigation().closure() < CLOSURE,
                        () -> "minute " + season.tick() + ", irrigation's share: " + ledger.irrigation());
                assertNoStoreIsNegative(season.ground());
            }
        }
    }

    private static void assertNoStoreIsNegative(Ground ground) {
        for (int c = 0; c < ground.cells().count(); c++) {
            int cell = c;
            assertTrue(ground.soilWater(c) >= 0 && ground.pond(c) >= 0, () -> "soil of cell " + cell);
            assertTrue(ground.filmMm(c) >= 0 && ground.iceMm(c) >= 0, () -> "film or ice of cell " + cell);
        }
    }
}
