package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.scenario.FaultPlan.Kind;

/** Water runs on while people wait for marks, unless it was shut; minutes on the site do not. */
@Tag("unit")
class CallWaterTest {

    private static final CallSite SITE = CallSites.of("quillback-clinic", 10);
    private static final double TWO_DAYS = 2 * 1440;

    private static Call leaking() {
        Case broken = CallSites.suspect(SITE, Kind.MAINLINE_BREAK);
        Call call = Call.begin(SITE, new Deal(0, broken), 1);
        call.act("readMeter");
        return call;
    }

    @Test
    void theMainRunsForTheDaysUntilTheMarksAreThere() {
        Call call = leaking();
        double before = call.litres();
        double minutes = call.minutes();
        call.act("locate");
        assertTrue(call.minutes() - minutes < 10, "the wait is outside the minutes");
        double took = call.minutes() - minutes;
        // The yard lives by whole minutes.
        assertEquals(call.running() * (TWO_DAYS + took), call.litres() - before, call.running());
    }

    @Test
    void nothingRunsOnceTheWaterIsShut() {
        Call call = leaking();
        call.act("makeSafe");
        double before = call.litres();
        call.act("locate");
        assertEquals(0, call.running(), 1e-12);
        assertEquals(before, call.litres(), 1e-9);
    }
}
