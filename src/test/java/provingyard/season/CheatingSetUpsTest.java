package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.scenario.Sites;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.study.PerverseSetUps;

/** Set-ups that dodge the work lose to textbook on every shipped site, by the simulator's own outcome. */
class CheatingSetUpsTest {

    private Site site;
    private SetUp textbook;

    private void open(String id) {
        site = Site.of(Sites.open(id).orThrow());
        textbook = References.textbook(site.scenario()).orElseThrow();
    }

    private Season lived(SetUp setUp) {
        return LivedSeasons.of(site, setUp);
    }

    private double loss(SetUp setUp) {
        return LivedSeasons.loss(site, setUp).total();
    }

    private void losesToTextbook(SetUp other, String what) {
        double good = loss(textbook);
        double bad = loss(other);
        assertTrue(good < bad, what + " loses " + bad + ", textbook " + good);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tansy-row", "sorrel-court", "teasel-field", "quillback-clinic", "burdock-steps"})
    void theClockAloneAndTheCarelessLose(String id) {
        open(id);
        losesToTextbook(SetUp.CLOCK_ALONE, "the clock alone");
        losesToTextbook(References.careless(site.scenario()).orElseThrow(), "careless");
    }

    @ParameterizedTest
    @ValueSource(strings = {"tansy-row", "sorrel-court", "teasel-field", "quillback-clinic", "burdock-steps"})
    void neverWateringLoses(String id) {
        open(id);
        SetUp never = PerverseSetUps.neverWaters();
        assertEquals(0, lived(never).ledger().irrigation().used(), 1e-9);
        losesToTextbook(never, "never watering");
    }

    @ParameterizedTest
    @ValueSource(strings = {"tansy-row", "sorrel-court", "teasel-field", "quillback-clinic", "burdock-steps"})
    void everythingAtItsStrictestLoses(String id) {
        open(id);
        losesToTextbook(PerverseSetUps.strictest(textbook), "everything at its strictest");
    }

    /** As much as the budget lets, kind by kind. */
    @ParameterizedTest
    @ValueSource(strings = {"tansy-row", "sorrel-court", "teasel-field", "quillback-clinic", "burdock-steps"})
    void buyingEverythingLoses(String id) {
        open(id);
        SetUp all = PerverseSetUps.buysEverything(site);
        assertTrue(all.sensors().size() > textbook.sensors().size());
        losesToTextbook(all, "buying everything");
    }

    @Test
    void shuttingTheMasterValveOnDayOneLoses() {
        open("quillback-clinic");
        SetUp shut = PerverseSetUps.shutsTheMaster(site).orElseThrow();
        Season season = lived(shut);
        assertTrue(season.outcome().leaks().falseAlarms() > 0, "it was shut by an alarm without a leak");
        assertTrue(season.ledger().irrigation().supplied()
                < 0.2 * lived(SetUp.CLOCK_ALONE).ledger().irrigation().supplied());
        losesToTextbook(shut, "the master valve shut on day one");
    }
}
