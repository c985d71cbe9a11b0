package provingyard.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import provingyard.call.Call;
import provingyard.call.CallSite;
import provingyard.call.Deal;
import provingyard.diagnosis.Action;
import provingyard.learner.SavedCall;

/** A service call that is left before its end: what is kept of it, and how it is lived again from that. */
final class CallKept {

    private static final String VERIFY = "verify";
    private static final String REPAIR = "repair:";
    private static final String NONE = "none";

    private CallKept() {}

    /** What is kept of a call as the screen shows it; what is being done is not yet part of it. */
    static SavedCall of(CallModel model) {
        CallModel.Now now = model.nowProperty().get();
        return of(model.call(), model.mode(), now.notes(), now.finding());
    }

    /** What is kept of a call that nobody acts on. */
    static SavedCall of(Call call, CallModel.Mode mode) {
        return of(call, mode, call.notes(), call.finding().orElse(null));
    }

    private static SavedCall of(Call call, CallModel.Mode mode, List<Call.Note> notes, Call.Finding finding) {
        List<String> done = notes.stream().map(n -> n.test().id()).toList();
        int before = finding == null ? done.size() : call.notesBeforeFinding();
        SavedCall.Finding stated = finding == null
                ? null
                : new SavedCall.Finding(finding.repairClass(), finding.confidence(), done.subList(before, done.size()));
        return new SavedCall(
                call.site().scenario().contentHash(),
                Call.ENGINE,
                call.seed(),
                call.deal().number(),
                mode.name(),
                done.subList(0, before),
                stated);
    }

    /** How much the program says in a call that was kept. */
    static CallModel.Mode mode(SavedCall kept) {
        return Arrays.stream(CallModel.Mode.values())
                .filter(m -> m.name().equals(kept.mode()))
                .findFirst()
                .orElse(CallModel.Mode.GUIDED);
    }

    /**
     * Lives a call again. Takes as long as its tests do.
     *
     * @return the call as it was left; empty where the site does not know a deal, test or suspect of it any more
     */
    static Optional<Call> again(CallSite site, SavedCall kept) {
        boolean dealt =
                kept.deal() >= 0 && kept.deal() < site.scenario().call().deals().size();
        boolean fits = kept.fits(site.scenario().contentHash(), Call.ENGINE);
        if (!dealt || !fits) {
            return Optional.empty();
        }
        Call call = Call.begin(site, Deal.of(site, kept.deal()), kept.seed());
        boolean same =
                kept.tests().stream().allMatch(id -> act(call, id)) && (kept.finding() == null || end(call, kept));
        return same ? Optional.of(call) : Optional.empty();
    }

    private static boolean act(Call call, String id) {
        boolean may = call.site()
                .test(id)
                .filter(t -> t.action().possible(call.state()))
                .filter(t -> call.finding().isEmpty() || !t.action().kind().judged())
                .isPresent();
        if (may) {
            call.act(id);
        }
        return may;
    }

    private static boolean end(Call call, SavedCall kept) {
        SavedCall.Finding finding = kept.finding();
        if (!call.site().hypotheses().classes().contains(finding.repairClass())) {
            return false;
        }
        call.state(new Call.Finding(finding.repairClass(), finding.confidence()));
        return finding.after().stream().allMatch(id -> mend(call, id));
    }

    private static boolean mend(Call call, String id) {
        if (id.equals(VERIFY) && did(call, Action.Kind.REPAIR) && !did(call, Action.Kind.VERIFY)) {
            call.verify();
            return true;
        }
        boolean none = call.finding().orElseThrow().repairClass().equals(NONE);
        if (id.startsWith(REPAIR) && !none && !did(call, Action.Kind.REPAIR)) {
            call.repair();
            return true;
        }
        return act(call, id);
    }

    private static boolean did(Call call, Action.Kind kind) {
        return call.run().steps().stream().anyMatch(s -> s.kind() == kind);
    }
}
