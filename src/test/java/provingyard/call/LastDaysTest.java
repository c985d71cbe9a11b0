package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.control.ControllerRecords.Run;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Scenario;
import provingyard.season.Exposure;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.world.electric.Wiring;

/** The days that are lived again without the ground are those of a whole season with the same fault. */
class LastDaysTest {

    /** m3/s by which networks with other possible faults, and one pulse more or less, may differ. */
    private static final double SOLVERS_DIFFERENCE = 1e-6;

    /** Runs of a season in which a fault acts from a minute on, of that minute and later. */
    private static List<Run> whole(Scenario shipped, SetUp installed, FaultPlan fault, long from, long until) {
        Scenario one = shipped.with(shipped.catalogue(), shipped.yard(), List.of(fault));
        Season season = Season.begin(Site.of(one), installed, List.of(new Season.Dealt(0, from)));
        while (season.tick() < until) {
            season.advance();
        }
        return season.records().runs().stream().filter(r -> r.start() >= from).toList();
    }

    private static Ground ground(CallSite site, SetUp installed) {
        Scenario call = site.scenario();
        Wiring wiring = Wiring.usual(call);
        Suspects suspects = Suspects.of(call, installed, wiring, Rates.SHIPPED);
        return new Ground(call.with(call.catalogue(), call.yard(), site.faults()), installed, suspects, wiring);
    }

    @ParameterizedTest
    @CsvSource({
        "teasel-field, 14, WIND_SEIZED, wind",
        "teasel-field, 14, RAIN_STUCK, rain",
        "teasel-field, 14, EXTRA_START, controller",
        "teasel-field, 14, SEASONAL_WRONG, controller",
        "sorrel-court, 20, FREEZE_READS_WARM, freeze",
        "sumac-bend, 14, COIL_OPEN, zone-2",
        "sumac-bend, 14, ZONES_ON_ONE_OUTPUT, zone-2",
        "sumac-bend, 14, MAINLINE_BREAK, main-3",
        "sumac-bend, 14, FLOW_FACTOR_WRONG, flow"
    })
    void theControllerRemembersWhatAWholeSeasonWouldLeaveInIt(String id, int day, Kind kind, String on) {
        CallSite site = CallSites.of(id, day);
        SetUp installed = References.textbook(site.scenario()).orElseThrow();
        Case wrong = CallSites.suspect(site, kind, on);
        Ground ground = ground(site, installed);
        Exposure exposure = new LastDays(ground).exposure();
        Memory again = new DaysAgain(ground, exposure, wrong, exposure.from()).live();
        FaultPlan fault = site.faults().get(wrong.faults().get(0));
        List<Run> whole = whole(site.scenario(), installed, fault, exposure.from(), exposure.until());
        assertEquals(whole.size(), again.runs().size());
        for (int i = 0; i < whole.size(); i++) {
            Run expected = whole.get(i);
            Run run = again.runs().get(i);
            assertEquals(
                    List.of(expected.zone(), expected.start(), expected.end(), expected.why()),
                    List.of(run.zone(), run.start(), run.end(), run.why()));
            assertEquals(expected.meanFlow(), run.meanFlow(), SOLVERS_DIFFERENCE);
        }
        assertEquals(kind == Kind.RAIN_STUCK, whole.isEmpty());
        assertFalse(exposure.until() - exposure.from() < LastDays.DAYS * 1440L);
    }
}
