package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.season.Site;
import provingyard.season.Siting;
import provingyard.setup.FlowWatch;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** The hand, and what the inspector asks of the season, without a window. */
class YardModelTest {

    private static Site site;
    private YardModel model;

    @BeforeAll
    static void site() {
        site = Site.of(Sites.open("quillback-clinic").orThrow());
    }

    @BeforeEach
    void open() {
        model = new YardModel(site, failure -> {
            throw new AssertionError(failure);
        });
    }

    @AfterEach
    void close() {
        model.close();
    }

    private void until(BooleanSupplier holds) throws InterruptedException {
        for (int i = 0; i < 1500 && !holds.getAsBoolean(); i++) {
            model.refresh();
            TimeUnit.MILLISECONDS.sleep(20);
        }
        assertTrue(holds.getAsBoolean());
    }

    @Test
    void whatIsTakenInHandFitsWhereItBegins() {
        for (SensorKind kind : SensorKind.values()) {
            model.takeInHand(kind);
            assertTrue(model.handProperty().get().fits(), kind.name());
            model.drop();
        }
    }

    @Test
    void aFlowSensorSnapsToThePipeAndLeavesItAgain() {
        Siting siting = site.siting();
        Point onPipe = siting.pointOn(siting.nearestPipe(new Point(30, 7)));
        model.carry(SensorKind.FLOW, null, new Point(onPipe.x(), onPipe.y() + 1));
        Siting.OnPipe near = siting.nearestPipe(model.handProperty().get().spot());
        assertTrue(model.handProperty().get().fits());
        assertEquals(0, siting.pointOn(near).distance(model.handProperty().get().spot()), 1e-9);
        model.nudge(0, YardModel.STEP);
        assertEquals(onPipe.y() + 1.5, model.handProperty().get().at().y(), 1e-9, "the hand itself is free");
        model.carry(SensorKind.FLOW, null, new Point(55, 30));
        assertEquals("hand.flowNeedsPipe", model.handProperty().get().whyNot());
        model.place();
        assertEquals(0, model.setUp().sensors().size());
    }

    @Test
    void noMoreMayBePlacedForAReason() {
        assertNull(model.whyNoMore(SensorKind.RAIN));
        model.takeInHand(SensorKind.RAIN);
        model.place();
        assertEquals("kit.lock.number", model.whyNoMore(SensorKind.RAIN));
        for (SensorKind kind : new SensorKind[] {SensorKind.FLOW, SensorKind.WIND, SensorKind.SOIL, SensorKind.SOIL}) {
            model.takeInHand(kind);
            model.place();
        }
        model.takeInHand(SensorKind.FREEZE);
        model.place();
        assertEquals(900 - 68 - 310 - 145 - 244 - 54, model.budgetLeft(), 1e-9);
        assertNull(model.whyNoMore(SensorKind.FREEZE));
        model.takeInHand(SensorKind.FREEZE);
        model.place();
        assertEquals("kit.lock.number", model.whyNoMore(SensorKind.FREEZE));
    }

    @Test
    void movedByNumbersOnlyWhereItFits() {
        model.takeInHand(SensorKind.RAIN);
        model.place();
        Point inside = new Point(25.5, 22);
        assertEquals("hand.indoors", model.moveTo("rain-1", inside));
        Point open = new Point(3, 3);
        assertNull(model.moveTo("rain-1", open));
        assertEquals(open, ((Placement.Rain) model.setUp().sensors().get(0)).at());
    }

    @Test
    void mapsAreNotShownOnTheHarderLevels() {
        assertTrue(model.showsNeeds());
        Scenario hard = atLevel(4);
        try (YardModel other = new YardModel(Site.of(hard), failure -> {})) {
            assertFalse(other.showsNeeds());
        }
    }

    private static Scenario atLevel(int level) {
        Scenario s = Sites.open("tansy-row").orThrow();
        return new Scenario(
                s.format(),
                s.id(),
                s.title(),
                s.subtitle(),
                s.work(),
                level,
                s.lesson(),
                s.place(),
                s.season(),
                s.weather(),
                s.catalogue(),
                s.yard(),
                s.plumbing(),
                s.schedule(),
                s.kit(),
                s.faults(),
                s.locks(),
                s.costs(),
                s.setUps(),
                s.call(),
                s.remarks());
    }

    @Test
    void everySettingReadsBackWhatWasPut() {
        SetUp setUp = References.textbook(site.scenario()).orElseThrow();
        for (Placement placement : setUp.sensors()) {
            for (Setting setting : Setting.of(placement, site.siting())) {
                double between = setting.least() + 0.4 * (setting.most() - setting.least());
                SetUp next = setting.put().into(setUp, placement.id(), between);
                boolean kept = setting.key().endsWith("earm") || setting.key().equals("setting.soilDry");
                double read = setting.get().of(next, placement.id());
                assertTrue(
                        kept || Math.abs(read - between) < 1e-9 || setting.key().equals("setting.flowSize"),
                        setting.key());
                assertTrue(
                        setting.usual() == null
                                || setting.usual().from() < setting.usual().to(),
                        setting.key());
            }
        }
        String flow = setUp.of(SensorKind.FLOW).get(0).id();
        for (Setting setting : Setting.ofFlowWatch()) {
            double between = setting.least() + 0.4 * (setting.most() - setting.least());
            assertEquals(
                    between, setting.get().of(setting.put().into(setUp, flow, between), flow), 1e-12, setting.key());
        }
    }

    @Test
    void aReArmNeverCrossesItsTrip() {
        SetUp setUp = SetUp.CLOCK_ALONE.with(
                new Placement.Wind("wind-1", new Point(3, 3), provingyard.setup.Mount.POST, 3, 4.5, 3.6, 600, 600));
        Setting trip = Setting.of(setUp.sensors().get(0), site.siting()).get(0);
        Placement.Wind lower =
                (Placement.Wind) trip.put().into(setUp, "wind-1", 3).sensors().get(0);
        assertEquals(3, lower.trip(), 1e-12);
        assertEquals(3, lower.rearm(), 1e-12);
    }

    @Test
    void theFlowLogTellsRecordedTypedAndLastRun() throws InterruptedException {
        model.takeInHand(SensorKind.FLOW);
        model.carry(SensorKind.FLOW, null, new Point(45, 7));
        model.place();
        String sensor = model.setUp().of(SensorKind.FLOW).get(0).id();
        model.selectedProperty().set(null);
        FlowLog log = new FlowLog(model, Runnable::run);
        model.selectedProperty().set(sensor);
        model.player().show(1440);
        until(() -> log.zonesProperty().get().stream().anyMatch(z -> z.lastRun() != null));
        FlowLog.Zone ran = log.zonesProperty().get().stream()
                .filter(z -> z.lastRun() != null)
                .findFirst()
                .orElseThrow();
        assertEquals(0, ran.difference(), 0.1);
        double typed = ran.mean() * 2;
        FlowWatch next = FlowWatches.of(model.setUp().flowWatch())
                .expected(ran.id(), typed)
                .watch();
        model.decide("step.watch", model.setUp().with(next));
        until(() -> log.zonesProperty().get().stream().anyMatch(z -> z.id().equals(ran.id()) && z.typed()));
        FlowLog.Zone now = log.zonesProperty().get().stream()
                .filter(z -> z.id().equals(ran.id()))
                .findFirst()
                .orElseThrow();
        assertEquals(typed, now.expected(), 1e-15);
        assertEquals(-0.5, now.difference(), 1e-9);
    }

    @Test
    void hindsightFollowsThePlaceNotTheSetting() throws InterruptedException {
        Hindsight hindsight = new Hindsight(model, Runnable::run, Runnable::run);
        model.carry(SensorKind.WIND, null, new Point(3, 3));
        model.place();
        until(() -> hindsight.pastProperty().get() != null);
        assertEquals(0, hindsight.pastProperty().get().days());
        model.player().show(2 * 1440 + 5);
        until(() -> hindsight.pastProperty().get() != null
                && hindsight.pastProperty().get().days() == 2);
        var before = hindsight.pastProperty().get();
        Setting trip = Setting.of(model.setUp().sensors().get(0), site.siting()).get(0);
        model.decide("step.set", trip.put().into(model.setUp(), "wind-1", 5));
        assertEquals(before, hindsight.pastProperty().get(), "another setting has the same past");
        model.moveTo("wind-1", new Point(40, 3));
        until(() -> hindsight.pastProperty().get() != null
                && hindsight.pastProperty().get() != before);
        assertNotEquals(before, hindsight.pastProperty().get());
        model.selectedProperty().set(null);
        assertNull(hindsight.pastProperty().get());
    }

    @Test
    void aScaleHasRoundNumbersWithinItsEnds() {
        assertEquals(java.util.List.of(5.0, 10.0, 15.0, 20.0, 25.0), ScaleSlider.ticks(3, 25));
        assertEquals(java.util.List.of(0.0, 20.0, 40.0, 60.0, 80.0, 100.0), ScaleSlider.ticks(0, 100));
        assertEquals(java.util.List.of(-2.0, 0.0, 2.0, 4.0, 6.0), ScaleSlider.ticks(-2, 6));
    }
}
