package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.setup.References;
import provingyard.setup.SetUp;

class RunTraceTest {

    @Test
    void theMeanLeavesOutWhatSettles() {
        RunTrace run = new RunTrace("zone-1", 300, new double[] {9, 9, 2, 4});
        assertEquals(3, run.mean(120), 1e-12);
        assertEquals(6, run.mean(0), 1e-12);
        assertTrue(Double.isNaN(run.mean(240)));
    }

    @Test
    void eachZonesLastRunIsKept() {
        RunTrace.Recorder recorder = new RunTrace.Recorder();
        recorder.minute(0, "a", 1);
        recorder.minute(1, "a", 2);
        recorder.minute(2, "b", 5);
        recorder.minute(3, null, 0);
        recorder.minute(4, "a", 7);
        assertArrayEquals(new double[] {1, 2}, recorder.last().get(0).flow(), "the second run goes on");
        RunTrace.Recorder other = recorder.copy();
        other.minute(5, null, 0);
        assertArrayEquals(new double[] {1, 2}, recorder.last().get(0).flow(), "a copy goes its own way");
        List<RunTrace> last = other.last();
        assertEquals(List.of("a", "b"), last.stream().map(RunTrace::zone).toList());
        assertArrayEquals(new double[] {7}, last.get(0).flow());
        assertEquals(4, last.get(0).start());
    }

    @Test
    void aSeasonKeepsThemWithWhatTheControllerRecorded() {
        Site site = Site.of(Sites.open("quillback-clinic").orThrow());
        SetUp textbook = References.textbook(site.scenario()).orElseThrow();
        SetUp flowAlone =
                SetUp.CLOCK_ALONE.with(textbook.of(SensorKind.FLOW).get(0)).with(textbook.flowWatch());
        Season season = Season.begin(site, flowAlone);
        while (season.tick() < 1440) {
            season.advance();
        }
        List<String> zones = site.waterworks().zones();
        assertTrue(season.lastRuns().size() >= 3, season.lastRuns().size() + " zones ran");
        for (RunTrace run : season.lastRuns()) {
            double expected = season.expectedFlows()[zones.indexOf(run.zone())];
            assertEquals(1, run.mean(120) / expected, 0.1, run.zone());
        }
    }
}
