package provingyard.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The course of a set-up: what was in force from which tick, and the draft with its steps back and forth. Immutable;
 * every change gives a new history.
 *
 * <p>Undo belongs to the draft, never to a run: what was lived stays lived.
 *
 * @param changes what came into force, by rising tick
 * @param past steps that led to the draft; the first is the beginning
 * @param future steps that were undone, the next to be redone first
 */
public record History(List<Change> changes, List<Step> past, List<Step> future) {

    /** Most steps that can be undone. */
    public static final int MOST_STEPS = 500;

    /** A set-up that came into force at a tick (minute of the season). */
    public record Change(long tick, SetUp setUp) {}

    /**
     * A gesture.
     *
     * @param key names it for the screen, such as {@code step.place}
     * @param arguments what its text names
     * @param setUp the set-up that it made
     */
    public record Step(String key, List<String> arguments, SetUp setUp) {
        public Step {
            arguments = List.copyOf(arguments);
        }
    }

    public History {
        changes = List.copyOf(changes);
        past = List.copyOf(past);
        future = List.copyOf(future);
        if (past.isEmpty()) {
            throw new IllegalArgumentException("a history has a beginning");
        }
        for (int i = 1; i < changes.size(); i++) {
            if (changes.get(i).tick() <= changes.get(i - 1).tick()) {
                throw new IllegalArgumentException("ticks must rise");
            }
        }
    }

    /** A history that begins with a set-up; nothing is in force yet. */
    public static History of(SetUp first) {
        return new History(List.of(), List.of(new Step("step.begin", List.of(), first)), List.of());
    }

    /** The set-up as the trainee has it before them. */
    public SetUp draft() {
        return past.get(past.size() - 1).setUp();
    }

    /** The history after a gesture; the same when it changed nothing. */
    public History then(SetUp next, String key, String... arguments) {
        if (next.equals(draft())) {
            return this;
        }
        List<Step> steps = new ArrayList<>(past);
        steps.add(new Step(key, List.of(arguments), next));
        if (steps.size() > MOST_STEPS) {
            steps.remove(0);
        }
        return new History(changes, steps, List.of());
    }

    /** The step that undo would take back; empty at the beginning. */
    public Optional<Step> undoable() {
        return past.size() > 1 ? Optional.of(past.get(past.size() - 1)) : Optional.empty();
    }

    /** The step that redo would make again. */
    public Optional<Step> redoable() {
        return future.isEmpty() ? Optional.empty() : Optional.of(future.get(0));
    }

    /** One step back; the same at the beginning. */
    public History undo() {
        if (undoable().isEmpty()) {
            return this;
        }
        List<Step> undone = new ArrayList<>(List.of(past.get(past.size() - 1)));
        undone.addAll(future);
        return new History(changes, past.subList(0, past.size() - 1), undone);
    }

    /** One step forth; the same when nothing was undone. */
    public History redo() {
        if (future.isEmpty()) {
            return this;
        }
        List<Step> steps = new ArrayList<>(past);
        steps.add(future.get(0));
        return new History(changes, steps, future.subList(1, future.size()));
    }

    /**
     * The draft comes into force; the same when it is in force already.
     *
     * @param tick minute of the season, not before the last change
     * @throws IllegalArgumentException when it lies before the last change
     */
    public History inForceFrom(long tick) {
        List<Change> next = new ArrayList<>(changes);
        if (!next.isEmpty() && next.get(next.size() - 1).tick() == tick) {
            next.remove(next.size() - 1);
        }
        boolean same = !next.isEmpty() && next.get(next.size() - 1).setUp().equals(draft());
        if (!same) {
            next.add(new Change(tick, draft()));
        }
        return new History(next, past, future);
    }

    /** What is in force at a tick; empty before the first change. */
    public Optional<SetUp> at(long tick) {
        Optional<SetUp> found = Optional.empty();
        for (Change change : changes) {
            if (change.tick() <= tick) {
                found = Optional.of(change.setUp());
            }
        }
        return found;
    }
}
