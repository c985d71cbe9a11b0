package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Sites;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** Whole seasons of the shipped sites: conserved water, repeatable to the bit, and lessons that hold. */
class SeasonTest {

    private static Site clinic;
    private static Site row;

    @BeforeAll
    static void open() {
        clinic = Site.of(Sites.open("quillback-clinic").orThrow());
        row = Site.of(Sites.open("tansy-row").orThrow());
    }

    private static Season lived(Site site, long seed, int days, SetUp setUp) {
        Season season = Season.begin(site, seed, days, setUp);
        season.liveToEnd();
        return season;
    }

    private static SetUp textbook(Site site) {
        return References.textbook(site.scenario()).orElseThrow();
    }

    @Test
    void bothBalancesCloseOverTheClinicsMeasuredMonth() {
        for (SetUp setUp : new SetUp[] {SetUp.CLOCK_ALONE, textbook(clinic)}) {
            Season season = LivedSeasons.of(clinic, setUp);
            assertTrue(season.ledger().water().closure() < 1e-9, "water of the site");
            assertTrue(season.ledger().irrigation().closure() < 1e-9, "irrigation's share");
        }
    }

    @Test
    void sameSeedSameBitsOtherSeedOther() {
        String first = lived(row, 5, 6, textbook(row)).ledgerHash();
        assertEquals(first, lived(row, 5, 6, textbook(row)).ledgerHash());
        assertNotEquals(first, lived(row, 6, 6, textbook(row)).ledgerHash());
    }

    @Test
    void aCopyGoesOnLikeTheSeasonItself() {
        Season season = Season.begin(clinic, 7, 4, textbook(clinic));
        while (season.tick() < 3000) {
            season.advance();
        }
        Season copy = season.copy();
        season.liveToEnd();
        copy.liveToEnd();
        assertEquals(season.ledgerHash(), copy.ledgerHash());
    }

    @Test
    void anotherSensorShiftsNeitherWeatherNorTheOthers() {
        SetUp all = textbook(row);
        SetUp fewer = all.without(all.sensors().get(0).id());
        Season with = lived(row, 5, 3, all);
        Season without = lived(row, 5, 3, fewer);
        assertEquals(with.ledger().water().rain(), without.ledger().water().rain());
        assertEquals(with.series().air()[40], without.series().air()[40]);
    }

    @Test
    void aMainBreakTakesTheWholeSystemsPressure() {
        int breaks = 0;
        boolean[] open = new boolean[clinic.waterworks().zones().size()];
        open[0] = true;
        double sound = clinic.waterworks().flows(open, true, 0).heads()[0];
        for (int i = 0; i < clinic.scenario().faults().size(); i++) {
            if (clinic.isLeak(i) && clinic.scenario().faults().get(i).opening() > 1e-4) {
                assertTrue(clinic.waterworks().flows(open, true, 1L << i).heads()[0] < sound);
                breaks++;
            }
        }
        assertEquals(1, breaks);
        boolean[] shut = new boolean[open.length];
        assertEquals(0, clinic.waterworks().flows(shut, false, 1L).supply(), 1e-9, "a shut master valve ends it");
    }

    /** Common practice, no source: a main break shuts the whole system, not one zone. */
    @Test
    void aMainBreakShutsTheWholeSystemUntilItIsRepaired() {
        Season season = Season.begin(clinic, textbook(clinic));
        long broke = 16 * 1440 + 3 * 60 + 12;
        while (season.tick() < broke) {
            season.advance();
        }
        assertTrue(season.snapshot().masterOpen());
        while (season.events().stream().noneMatch(e -> e.kind() == SeasonEvent.Kind.MASTER_SHUT)) {
            season.advance();
            assertTrue(season.tick() < broke + 60, "found within the hour");
        }
        season.advance();
        assertEquals(0, season.snapshot().supplyFlow(), 1e-9);
        while (season.tick() < broke + 12 * 60) {
            season.advance();
            assertTrue(season.snapshot().zones().stream().noneMatch(Snapshot.Zone::open));
        }
    }
}
