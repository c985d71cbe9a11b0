package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.call.Call;
import provingyard.call.CallSite;
import provingyard.call.Deal;
import provingyard.diagnosis.Action;
import provingyard.learner.SavedCall;

/** A call that was left is lived again bit for bit, or not at all. */
class CallKeptTest {

    private static final long SEED = -7;

    private static CallSite site;

    @BeforeAll
    static void ready() {
        site = CallSite.of(CallSamples.dealt(CallSamples.MAIN, 1));
    }

    private static Call call() {
        Call call = Call.begin(site, Deal.of(site, 0), SEED);
        call.act("readMeter");
        call.act("isolate:iso-c");
        call.act("makeSafe");
        return call;
    }

    private static Call ended() {
        Call call = call();
        call.state(new Call.Finding(call.deal().answer(site), 0.9));
        call.act("locate");
        call.repair();
        call.verify();
        return call;
    }

    private static SavedCall kept(Call call) {
        return CallKept.of(call, CallModel.Mode.EXAM);
    }

    private static SavedCall with(SavedCall kept, int deal, List<String> tests, SavedCall.Finding finding) {
        return new SavedCall(kept.content(), kept.engine(), kept.seed(), deal, kept.mode(), tests, finding);
    }

    /** What was told on the way, bit for bit. */
    private static List<String> told(Call call) {
        return call.notes().stream()
                .map(n -> n.test().id() + " " + n.reading() + " " + n.minute() + " " + n.litres())
                .toList();
    }

    private static void assertAlike(Call was, Call is) {
        assertEquals(told(was), told(is));
        assertEquals(was.litres(), is.litres());
        assertEquals(was.minutes(), is.minutes());
        assertEquals(was.finding(), is.finding());
        assertEquals(was.notesBeforeFinding(), is.notesBeforeFinding());
        for (String each : site.hypotheses().classes()) {
            int index = site.hypotheses().classes().indexOf(each);
            assertEquals(was.belief().ofClass(index), is.belief().ofClass(index), each);
        }
    }

    @Test
    void testsAreDoneAgain() {
        Call was = call();
        SavedCall kept = kept(was);
        assertEquals(List.of("readMeter", "isolate:iso-c", "makeSafe"), kept.tests());
        assertTrue(kept.isBegun());
        assertAlike(was, CallKept.again(site, kept).orElseThrow());
    }

    @Test
    void findingRepairAndCheckAreDoneAgain() {
        Call was = ended();
        SavedCall kept = kept(was);
        assertEquals(3, kept.tests().size());
        assertEquals(3, kept.finding().after().size());
        Call is = CallKept.again(site, kept).orElseThrow();
        assertAlike(was, is);
        assertEquals(was.declaration(), is.declaration());
        assertTrue(is.run().steps().stream().anyMatch(s -> s.kind() == Action.Kind.VERIFY));
    }

    @Test
    void whatTheSiteDoesNotKnowAnyMoreIsNotGoneOnWith() {
        SavedCall kept = kept(ended());
        List<String> odd = new ArrayList<>(kept.tests());
        odd.add("runZone:nowhere");
        SavedCall.Finding stated = kept.finding();
        SavedCall.Finding elsewhere = new SavedCall.Finding("main:none/9", 0.9, List.of());
        SavedCall.Finding twice = new SavedCall.Finding(stated.repairClass(), 0.9, List.of("verify"));
        SavedCall.Finding judged = new SavedCall.Finding(stated.repairClass(), 0.9, List.of("readMeter"));
        List<SavedCall> wrong = List.of(
                with(kept, 0, odd, null),
                with(kept, 7, kept.tests(), null),
                with(kept, -1, kept.tests(), null),
                with(kept, 0, kept.tests(), elsewhere),
                with(kept, 0, kept.tests(), twice),
                with(kept, 0, kept.tests(), judged),
                new SavedCall("another", kept.engine(), SEED, 0, "EXAM", kept.tests(), null),
                new SavedCall(kept.content(), "0", SEED, 0, "EXAM", kept.tests(), null));
        wrong.forEach(w -> assertTrue(CallKept.again(site, w).isEmpty(), w.toString()));
    }

    @Test
    void aCallThatOnlyBeganIsNotOffered() {
        SavedCall kept = kept(Call.begin(site, Deal.of(site, 0), SEED));
        assertFalse(kept.isBegun());
        assertEquals(CallModel.Mode.EXAM, CallKept.mode(kept));
        SavedCall unknown = new SavedCall("", "", 0, 0, "SHOUTED", List.of(), null);
        assertEquals(CallModel.Mode.GUIDED, CallKept.mode(unknown));
    }
}
