package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.call.Call;
import provingyard.call.CallSite;
import provingyard.call.Deal;
import provingyard.call.FieldTest;
import provingyard.call.Judge;
import provingyard.call.Tool;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Hazard;

/** A service call's view model, without a window. */
class CallModelTest {

    private static CallSite site;
    private static String truth;

    @BeforeAll
    static void site() {
        site = CallSite.of(CallSamples.dealt(CallSamples.MAIN, 1));
        truth = Deal.of(site, 0).answer(site);
    }

    private static CallModel model(CallModel.Mode mode) {
        return new CallModel(Call.begin(site, Deal.of(site, 0), 3), mode, Runnable::run, Runnable::run, e -> {
            throw new AssertionError(e);
        });
    }

    private static void act(CallModel model, Tool tool, String test) {
        if (model.toolProperty().get() != tool) {
            model.take(tool);
        }
        model.choose(test);
        model.act();
    }

    @Test
    void aToolShowsItsPlacesAndATestIsDoneOnce() {
        CallModel model = model(CallModel.Mode.GUIDED);
        model.take(Tool.METER);
        assertEquals("readMeter", model.chosenProperty().get(), "the only place is chosen");
        List<String> atTheMeter = model.beside("readMeter");
        assertTrue(
                atTheMeter.containsAll(List.of("readMeter", "watchMeter", "shutMaster:master")), atTheMeter.toString());
        assertTrue(Double.isNaN(model.litresOf(model.offer().orElseThrow())), "nobody knows yet what runs away");

        model.act();
        CallModel.Now now = model.nowProperty().get();
        assertEquals(1, now.notes().size());
        assertNotNull(model.toldProperty().get());
        assertNull(model.chosenProperty().get());
        assertTrue(now.metered());
        assertTrue(now.running() > 1, "water runs away: " + now.running());
        // The yard lives by whole minutes.
        assertEquals(now.running() * now.minutes(), now.litres(), now.running());

        model.choose("readMeter");
        CallModel.Offer again = model.offer().orElseThrow();
        assertEquals(now.running() * again.minutes(), model.litresOf(again), 1e-9);
    }

    @Test
    void zonesRunFromTheControllerAreMarkedAtTheirValves() {
        CallModel model = model(CallModel.Mode.GUIDED);
        model.take(Tool.RUN_ZONE);
        assertEquals(7, model.marks().size(), "one mark a zone");
        FieldTest run = site.test("runZone:zone-3").orElseThrow();
        assertEquals(site.place("zone-3"), model.place(run));
        assertEquals(
                List.of("runZone:zone-3", "openByHand:zone-3", "catchCans:zone-3", "walkZone:zone-3"),
                model.beside("walkZone:zone-3"));
    }

    @Test
    void diggingIsLockedUntilMarksAreShownUnlessItIsAnExam() {
        CallModel guided = model(CallModel.Mode.GUIDED);
        guided.take(Tool.DIG);
        guided.choose("dig:" + truth);
        assertEquals(Set.of(Hazard.BURIED_LINES), guided.offer().orElseThrow().hazards());
        assertTrue(guided.locked(Tool.DIG));
        guided.act();
        assertEquals(0, guided.nowProperty().get().notes().size(), "nothing was dug");
        act(guided, Tool.REQUEST, "locate");
        assertTrue(guided.nowProperty().get().marked());
        assertFalse(guided.locked(Tool.DIG));
        act(guided, Tool.DIG, "dig:" + truth);
        assertEquals(2, guided.nowProperty().get().notes().size());

        CallModel exam = model(CallModel.Mode.EXAM);
        assertFalse(exam.locked(Tool.DIG));
        act(exam, Tool.DIG, "dig:" + truth);
        exam.state(truth, 0.9);
        exam.judged(new Judge.Reference(20, 100));
        CaseScore score = exam.score().orElseThrow();
        assertEquals(Set.of(Hazard.BURIED_LINES), score.unsafe());
        assertTrue(score.total() <= CaseScore.CAP);
    }

    @Test
    void theWaterCanBeShutAtOnceAndCountsForNothing() {
        CallModel model = model(CallModel.Mode.GUIDED);
        model.makeSafe();
        CallModel.Now now = model.nowProperty().get();
        assertTrue(now.safe());
        assertEquals(0, now.running(), 1e-6);
        assertEquals(0, model.call().run().testMinutes(), 1e-12);
    }

    @Test
    void aRightRepairStopsTheLossAndAWrongOneDoesNot() {
        String other = site.hypotheses().classes().stream()
                .filter(c -> c.startsWith("main:main-1"))
                .findFirst()
                .orElseThrow();
        assertEquals(0, shownAfterRepair(truth), 1e-5);
        assertTrue(shownAfterRepair(other) > 1e-5, "it still runs away");
    }

    private static double shownAfterRepair(String stated) {
        CallModel model = model(CallModel.Mode.GUIDED);
        model.makeSafe();
        act(model, Tool.REQUEST, "locate");
        model.state(stated, 0.7);
        assertEquals(CallModel.Stage.STATED, model.nowProperty().get().stage());
        model.repair();
        assertEquals(CallModel.Stage.REPAIRED, model.nowProperty().get().stage());
        model.verify();
        assertEquals(CallModel.Stage.VERIFIED, model.nowProperty().get().stage());
        model.judged(new Judge.Reference(20, 100));
        CaseScore score = model.score().orElseThrow();
        assertFalse(score.flags().contains(CaseScore.Flag.UNVERIFIED));
        assertEquals(Set.of(), score.unsafe(), "lines were marked and pressure relieved");
        return ((provingyard.diagnosis.Reading.Shown)
                        model.nowProperty().get().last().orElseThrow().reading())
                .value();
    }

    @Test
    void aRepairThatDigsWaitsForTheMarks() {
        CallModel model = model(CallModel.Mode.GUIDED);
        model.state(truth, 0.5);
        assertEquals(Set.of(Hazard.BURIED_LINES), model.nowProperty().get().repairHazards());
        model.repair();
        assertEquals(CallModel.Stage.STATED, model.nowProperty().get().stage(), "nothing was dug");
        model.askForMarks();
        assertEquals(CallModel.Stage.STATED, model.nowProperty().get().stage());
        assertEquals(Set.of(), model.nowProperty().get().repairHazards());
        model.repair();
        assertEquals(CallModel.Stage.REPAIRED, model.nowProperty().get().stage());
        assertTrue(
                model.call().run().steps().stream().allMatch(s -> s.breaches().isEmpty()));
    }

    @Test
    void nothingBeingWrongNeedsNoRepair() {
        CallModel model = model(CallModel.Mode.GUIDED);
        model.state("none", 0.5);
        assertFalse(model.mayRepair());
        model.repair();
        assertEquals(CallModel.Stage.STATED, model.nowProperty().get().stage());
        model.take(Tool.METER);
        assertNull(model.toolProperty().get(), "no more tests after the finding");
    }

    @Test
    void whatATestTaughtIsReadFromTheBeliefBeforeAndAfter() {
        CallModel model = model(CallModel.Mode.GUIDED);
        act(model, Tool.METER, "readMeter");
        CallModel.Now now = model.nowProperty().get();
        Call.Note note = now.last().orElseThrow();
        CallThought thought = CallThought.of(note.prior(), now.after(note));
        assertTrue(thought.gained() > 0.5, "bits " + thought.gained());
        assertTrue(thought.ruledOut().contains("headBroken"), thought.ruledOut().toString());
        assertTrue(thought.left().stream().anyMatch(l -> l.kind().equals("main") && l.places() > 1));
        String kind = thought.left().get(0).kind();
        double share = now.belief().hypotheses().classes().stream()
                .filter(c -> CallThought.kind(c).equals(kind))
                .mapToDouble(now.belief()::ofClass)
                .sum();
        assertEquals(share, thought.left().get(0).share(), 1e-12);

        CallThought nothing = CallThought.of(now.belief(), now.belief());
        assertTrue(nothing.isEmpty());
    }

    @Test
    void nothingIsDoneTwiceAtATime() {
        Deque<Runnable> waiting = new ArrayDeque<>();
        CallModel model = new CallModel(
                Call.begin(site, Deal.of(site, 0), 3), CallModel.Mode.GUIDED, waiting::add, Runnable::run, e -> {
                    throw new AssertionError(e);
                });
        model.take(Tool.METER);
        model.act();
        assertTrue(model.busyProperty().get());
        model.act();
        model.makeSafe();
        model.take(Tool.LISTEN);
        assertEquals(Tool.METER, model.toolProperty().get());
        waiting.forEach(Runnable::run);
        assertEquals(1, model.nowProperty().get().notes().size());
        assertFalse(model.busyProperty().get());
    }
}
