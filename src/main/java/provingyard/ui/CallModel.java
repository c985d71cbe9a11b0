package provingyard.ui;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import provingyard.call.Call;
import provingyard.call.CallSite;
import provingyard.call.FieldTest;
import provingyard.call.Judge;
import provingyard.call.Tool;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Hazard;
import provingyard.diagnosis.SafetyGates;
import provingyard.scenario.Point;
import provingyard.season.Snapshot;

/**
 * A service call as the screen shows it: what is in hand, what may be done where, what was read. The call itself is only
 * touched by one thread that may take its time; what it says is published whole. No control is known here.
 */
final class CallModel {

    /** How much the program says on the way. */
    enum Mode {
        /** Explains after each test, shows what is left, and lets nobody dig before marks are shown. */
        GUIDED,
        /** Says what was read, no more. */
        EXAM
    }

    /** How far the call has come. */
    enum Stage {
        TESTING,
        STATED,
        REPAIRED,
        VERIFIED
    }

    /**
     * A test as it could be done from here.
     *
     * @param minutes walking and working
     * @param possible whether its conditions hold
     * @param hazards what would be unsafe about it now
     */
    record Offer(FieldTest test, double minutes, boolean possible, Set<Hazard> hazards) {}

    /**
     * Tests of the tool in hand at one place, in the order in which they are shown.
     *
     * @param at on the plan in m
     */
    record Mark(Point at, List<String> tests) {}

    /**
     * The call at one moment.
     *
     * @param minutes on the site
     * @param running L/min that run away
     * @param litres L that ran away since the arrival
     * @param metered whether the trainee has read what runs away while nothing is used
     * @param marked whether buried lines are marked
     * @param safe whether the water is shut where it comes onto the site
     * @param repairHazards what would be unsafe about the repair now
     * @param yard the yard as it lives, whatever of it was looked at
     */
    record Now(
            Stage stage,
            double minutes,
            double running,
            double litres,
            boolean metered,
            boolean marked,
            boolean safe,
            List<Call.Note> notes,
            Belief belief,
            Map<String, Offer> offers,
            Call.Finding finding,
            Set<Hazard> repairHazards,
            Snapshot yard) {

        /** The note of a test that was done last, if one was. */
        Optional<Call.Note> last() {
            return notes.isEmpty() ? Optional.empty() : Optional.of(notes.get(notes.size() - 1));
        }

        /** What was believed after a note. */
        Belief after(Call.Note note) {
            return note.number() < notes.size() ? notes.get(note.number()).prior() : belief;
        }
    }

    private final Call call;
    private final CallSite site;
    private final Mode mode;
    private final Executor work;
    private final Executor window;
    private final Consumer<Throwable> failed;
    private final ReadOnlyObjectWrapper<Now> now = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ObjectProperty<Tool> tool = new SimpleObjectProperty<>();
    private final ObjectProperty<String> chosen = new SimpleObjectProperty<>();
    private final ObjectProperty<Call.Note> told = new SimpleObjectProperty<>();
    private final BooleanProperty left = new SimpleBooleanProperty(true);
    private final ReadOnlyObjectWrapper<Judge.Reference> reference = new ReadOnlyObjectWrapper<>();

    /**
     * A call that begins.
     *
     * @param work where the call thinks: one thread
     * @param window where its answers are taken
     * @param failed told what should not have happened, on the window's thread
     */
    CallModel(Call call, Mode mode, Executor work, Executor window, Consumer<Throwable> failed) {
        this.call = call;
        this.mode = mode;
        this.work = work;
        this.window = window;
        this.failed = failed;
        site = call.site();
        now.set(look());
        // What the ranking needs is worked out while the trainee looks around.
        work.execute(call::ranked);
    }

    CallSite site() {
        return site;
    }

    Mode mode() {
        return mode;
    }

    boolean guided() {
        return mode == Mode.GUIDED;
    }

    /** The call itself, for its debrief; nobody may act on it meanwhile. */
    Call call() {
        return call;
    }

    ReadOnlyObjectProperty<Now> nowProperty() {
        return now.getReadOnlyProperty();
    }

    /** Whether something is being done. */
    ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** What is in hand; null for nothing. */
    ObjectProperty<Tool> toolProperty() {
        return tool;
    }

    /** Id of the test on the card; null for none. */
    ObjectProperty<String> chosenProperty() {
        return chosen;
    }

    /** The note that is being told on the card; null for none. */
    ObjectProperty<Call.Note> toldProperty() {
        return told;
    }

    /** Whether the plan shows what is left. */
    BooleanProperty leftProperty() {
        return left;
    }

    /** How long the reference takes; null while it is worked out. */
    ReadOnlyObjectProperty<Judge.Reference> referenceProperty() {
        return reference.getReadOnlyProperty();
    }

    /** Takes what the reference needs, once it is known. */
    void judged(Judge.Reference known) {
        reference.set(known);
    }

    /** Tools that this site has tests for, in their order. */
    List<Tool> tools() {
        return Arrays.stream(Tool.values())
                .filter(t -> site.tests().stream().anyMatch(test -> test.tool() == t))
                .toList();
    }

    /** Takes a tool in hand, or puts it away again. Where it has one place only, that one is chosen. */
    void take(Tool next) {
        if (busy.get() || now.get().stage() != Stage.TESTING) {
            return;
        }
        chosen.set(null);
        told.set(null);
        tool.set(next == tool.get() ? null : next);
        List<Mark> places = marks();
        if (places.size() == 1) {
            choose(places.get(0).tests().get(0));
        }
    }

    /** Places of the tests of what is in hand. */
    List<Mark> marks() {
        Map<Point, List<String>> byPlace = new LinkedHashMap<>();
        for (FieldTest test : site.tests()) {
            if (test.tool() == tool.get()) {
                byPlace.computeIfAbsent(place(test), p -> new ArrayList<>()).add(test.id());
            }
        }
        return byPlace.entrySet().stream()
                .map(e -> new Mark(e.getKey(), List.copyOf(e.getValue())))
                .toList();
    }

    /** Where a test's mark stands: what is done from the controller is marked at the valve that it is about. */
    Point place(FieldTest test) {
        Point controller = site.place(site.start().standing());
        Point target = site.place(test.target());
        return target != null && test.where().equals(controller) ? target : test.where();
    }

    /** Tests at the place of a test, that one among them. */
    List<String> beside(String id) {
        return marks().stream()
                .map(Mark::tests)
                .filter(t -> t.contains(id))
                .findFirst()
                .orElse(List.of(id));
    }

    /** The least minutes that any test of a tool takes from here. */
    double leastMinutes(Tool of) {
        return offers(of).mapToDouble(Offer::minutes).min().orElse(0);
    }

    private java.util.stream.Stream<Offer> offers(Tool of) {
        return now.get().offers().values().stream().filter(o -> o.test().tool() == of);
    }

    /** Whether everything that a tool does would be unsafe now, and may therefore not be done. */
    boolean locked(Tool of) {
        return guided() && offers(of).allMatch(o -> !o.hazards().isEmpty());
    }

    /** Puts a test on the card. */
    void choose(String id) {
        if (!busy.get() && now.get().stage() == Stage.TESTING) {
            told.set(null);
            chosen.set(id);
        }
    }

    /** Puts the card away. */
    void cancel() {
        if (!busy.get()) {
            chosen.set(null);
            told.set(null);
        }
    }

    /** The test on the card. */
    Optional<Offer> offer() {
        return Optional.ofNullable(chosen.get()).map(now.get().offers()::get);
    }

    /** Whether the test on the card may be done. */
    boolean mayAct() {
        return offer().filter(this::may).isPresent() && !busy.get();
    }

    private boolean may(Offer offer) {
        return offer.possible() && (mode == Mode.EXAM || offer.hazards().isEmpty());
    }

    /** L that run away while a test is done, as far as the trainee can know; NaN before the meter was read. */
    double litresOf(Offer offer) {
        return now.get().metered()
                ? now.get().running() * (offer.minutes() + offer.test().waits())
                : Double.NaN;
    }

    /** Does the test on the card. */
    void act() {
        if (mayAct()) {
            String id = chosen.get();
            run(() -> call.act(id));
        }
    }

    /** Shuts the water at the point of connection: always offered. */
    void makeSafe() {
        if (!busy.get()
                && now.get().stage() == Stage.TESTING
                && now.get().offers().containsKey("makeSafe")) {
            run(() -> call.act("makeSafe"));
        }
    }

    private boolean isSafe() {
        return site.test("makeSafe")
                .map(t -> t.action().legs().get(0).sets())
                .filter(sets -> call.state().holds(sets))
                .isPresent();
    }

    /** States the finding. */
    void state(String repairClass, double confidence) {
        if (!busy.get() && now.get().stage() == Stage.TESTING) {
            tool.set(null);
            chosen.set(null);
            run(() -> {
                call.state(new Call.Finding(repairClass, confidence));
                return null;
            });
        }
    }

    /** Whether what was stated can be repaired: nothing being wrong cannot. */
    boolean mayRepair() {
        Call.Finding finding = now.get().finding();
        return now.get().stage() == Stage.STATED && !finding.repairClass().equals("none") && !busy.get();
    }

    /** Has buried lines marked before a repair digs. */
    void askForMarks() {
        if (mayRepair() && !now.get().marked() && now.get().offers().containsKey("locate")) {
            run(() -> call.act("locate"));
        }
    }

    /** Repairs what was stated. */
    void repair() {
        boolean safe = mode == Mode.EXAM || now.get().repairHazards().isEmpty();
        if (mayRepair() && safe) {
            run(call::repair);
        }
    }

    /** Checks after the repair. */
    void verify() {
        if (now.get().stage() == Stage.REPAIRED && !busy.get()) {
            run(call::verify);
        }
    }

    private void run(Supplier<Call.Note> deed) {
        busy.set(true);
        work.execute(() -> {
            try {
                Call.Note note = deed.get();
                Now next = look();
                window.execute(() -> done(next, note));
            } catch (RuntimeException | Error e) {
                window.execute(() -> {
                    busy.set(false);
                    failed.accept(e);
                });
            }
        });
    }

    private void done(Now next, Call.Note note) {
        now.set(next);
        busy.set(false);
        chosen.set(null);
        told.set(note);
    }

    private Now look() {
        Map<String, Offer> offers = new LinkedHashMap<>();
        for (FieldTest test : site.tests()) {
            boolean possible = test.action().possible(call.state());
            offers.put(test.id(), new Offer(test, call.minutesOf(test), possible, call.hazards(test)));
        }
        return new Now(
                stage(),
                call.minutes(),
                call.running(),
                call.litres(),
                call.notes().stream().anyMatch(CallModel::readsWhatRunsAway),
                call.state().condition(SafetyGates.MARKS).equals(SafetyGates.SHOWN),
                isSafe(),
                List.copyOf(call.notes()),
                call.belief(),
                offers,
                call.finding().orElse(null),
                call.repairHazards(),
                call.yard());
    }

    private static boolean readsWhatRunsAway(Call.Note note) {
        return note.test().runs() == null
                && note.test().measure() instanceof FieldTest.Measure.Number number
                && number.quantity() == FieldTest.Quantity.FLOW;
    }

    private Stage stage() {
        if (call.finding().isEmpty()) {
            return Stage.TESTING;
        }
        // Marks may be asked for between finding and repair.
        String last = call.notes().isEmpty()
                ? ""
                : call.notes().get(call.notes().size() - 1).test().kind();
        return last.equals("verify") ? Stage.VERIFIED : last.equals("repair") ? Stage.REPAIRED : Stage.STATED;
    }

    /** The score, once the finding is stated and the reference known. */
    Optional<CaseScore> score() {
        boolean ready = now.get().stage() != Stage.TESTING && reference.get() != null;
        return ready ? Optional.of(call.score(reference.get())) : Optional.empty();
    }
}
