package provingyard.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import provingyard.scenario.Point;
import provingyard.scenario.ScenarioReader;
import provingyard.scenario.Sites;
import provingyard.season.Site;
import provingyard.setup.FlowWatch;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** Set-ups of the two shipped sites with one thing wrong each. */
public final class MomentSetUps {

    private static final double FOOT = 0.3048;
    private static final Site CLINIC = Site.of(Sites.open("quillback-clinic").orThrow());
    private static final Site ROW = Site.of(Sites.open("tansy-row").orThrow());

    private MomentSetUps() {}

    public static Site clinic() {
        return CLINIC;
    }

    public static Site row() {
        return ROW;
    }

    static SetUp textbook(Site site) {
        return References.textbook(site.scenario()).orElseThrow();
    }

    static SetUp careless(Site site) {
        return References.careless(site.scenario()).orElseThrow();
    }

    /** Only the textbook's flow watch and freeze sensor. */
    static SetUp flowAndFreeze() {
        return textbook(CLINIC).without("soil-1").without("rain-1").without("wind-1");
    }

    static SetUp rainAt(Site site, double x, double y, Mount mount, double height, double trip, double vent) {
        return textbook(site).with(new Placement.Rain("rain-1", new Point(x, y), mount, height, trip, vent));
    }

    static SetUp rainInTheSprayOfTheClinic() {
        Placement.Rain r = (Placement.Rain) textbook(CLINIC).sensor("rain-1").orElseThrow();
        return rainAt(CLINIC, 70 * FOOT, 26 * FOOT, Mount.POST, 1, r.trip(), r.vent());
    }

    /** Elsewhere, or otherwise set. */
    static SetUp freeze(double feetEast, double feetNorth, double below) {
        Point at = new Point(feetEast * FOOT, feetNorth * FOOT);
        return flowAndFreeze().with(new Placement.Freeze("freeze-1", at, Mount.WALL, 2.4, below, below + 1.5));
    }

    static SetUp freezeAtItsPlace(double below) {
        Placement.Freeze f =
                (Placement.Freeze) textbook(CLINIC).sensor("freeze-1").orElseThrow();
        return flowAndFreeze().with(new Placement.Freeze("freeze-1", f.at(), f.mount(), f.height(), below, below + 1));
    }

    static SetUp flow(String pipe, double along) {
        Placement.Flow f = (Placement.Flow) textbook(CLINIC).sensor("flow-1").orElseThrow();
        return textbook(CLINIC).with(new Placement.Flow("flow-1", pipe, along, f.size(), f.pulses(), f.offset()));
    }

    static SetUp wind(double feetEast, double feetNorth, double height, double trip) {
        Point at = new Point(feetEast * FOOT, feetNorth * FOOT);
        return textbook(CLINIC)
                .without("soil-1")
                .without("freeze-1")
                .with(new Placement.Wind("wind-1", at, Mount.POST, height, trip, trip - 1, 300, 600));
    }

    static FlowWatch watch(UnaryOperator<FlowWatch.Action> onAlarm, List<FlowWatch.Expected> expected) {
        FlowWatch w = textbook(CLINIC).flowWatch();
        return new FlowWatch(
                w.sensor(),
                expected,
                true,
                w.high(),
                w.low(),
                w.settling(),
                w.averaging(),
                onAlarm.apply(w.onZone()),
                w.unscheduled(),
                w.unscheduledAfter(),
                onAlarm.apply(w.onUnscheduled()));
    }

    /** A fifth too little typed for each zone. */
    static List<FlowWatch.Expected> typedTooLow() {
        double[] flows = CLINIC.siting().zoneFlows();
        List<FlowWatch.Expected> expected = new ArrayList<>();
        for (int z = 0; z < flows.length; z++) {
            expected.add(new FlowWatch.Expected("zone-" + (z + 1), 0.8 * flows[z]));
        }
        return expected;
    }

    /** The clinic with a sensor that is broken from the first minute on. */
    static Site broken(String kind, String on, String amount) {
        try {
            String text = Files.readString(Path.of("scenarios/quillback-clinic.json"));
            String fault = "\"faults\": [{\"kind\": \"" + kind + "\", \"on\": \"" + on + "\"" + amount
                    + ", \"when\": {\"day\": 1, \"at\": \"00:00\"}, \"rate\": \"0 per season\"},";
            return Site.of(ScenarioReader.read("broken.json", text.replace("\"faults\": [", fault))
                    .orThrow());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
