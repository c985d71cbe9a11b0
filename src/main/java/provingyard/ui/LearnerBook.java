package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import provingyard.learner.Learner;
import provingyard.learner.LearnerStore;
import provingyard.learner.LearnerStore.Trouble;
import provingyard.learner.Look;

/**
 * The learners of this machine and the one who is at it. Changes are written at once, on a thread of their own. Belongs
 * to one thread but for the writing; no control is known here.
 */
final class LearnerBook implements AutoCloseable {

    private static final int WAIT_SECONDS = 5;

    private final LearnerStore store;
    private final List<Learner> learners = new ArrayList<>();
    private final List<Trouble> found = new ArrayList<>();
    private final ReadOnlyObjectWrapper<Learner> current = new ReadOnlyObjectWrapper<>();
    private final Map<String, Learner> owed = new ConcurrentHashMap<>();
    private final ExecutorService writer = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "learner");
        thread.setDaemon(true);
        return thread;
    });
    private volatile boolean lost;
    private Consumer<Trouble> told = trouble -> {};
    private final boolean guided;

    /**
     * Opens the book; somebody new where nobody was.
     *
     * @param first the look of somebody new
     */
    LearnerBook(LearnerStore store, Look first) {
        this.store = store;
        guided = true;
        LearnerStore.Found all = store.all();
        learners.addAll(all.learners());
        found.addAll(all.troubles());
        if (learners.isEmpty()) {
            learners.add(Learner.fresh(store.freeId(), "", first));
        }
        String last = store.last();
        current.set(
                learners.stream().filter(l -> l.id().equals(last)).findFirst().orElse(learners.get(0)));
    }

    private LearnerBook() {
        store = null;
        guided = false;
        learners.add(Learner.fresh("nobody", "", Look.first("en", "US")));
        current.set(learners.get(0));
    }

    /** A book that keeps nothing and guides nobody, for windows that belong to no learner. */
    static LearnerBook unwritten() {
        return new LearnerBook();
    }

    /** Whether examples and hints are wanted here at all. */
    boolean guided() {
        return guided;
    }

    /** Whether the learner never lived anything yet. */
    boolean isNew() {
        return guided && current.get().sites().isEmpty();
    }

    ReadOnlyObjectProperty<Learner> currentProperty() {
        return current.getReadOnlyProperty();
    }

    Learner current() {
        return current.get();
    }

    /** All learners, in the order of their files. */
    List<Learner> all() {
        return List.copyOf(learners);
    }

    /** What opening the book found; each is given once. */
    List<Trouble> takeTroubles() {
        List<Trouble> taken = List.copyOf(found);
        found.clear();
        return taken;
    }

    /** Who hears, on the writing thread, of the first write that failed; and again after one that went well. */
    void onTrouble(Consumer<Trouble> next) {
        told = next;
    }

    /** Whether the last write failed, so that something would be lost. */
    boolean lost() {
        return lost;
    }

    /** Changes the learner who is here. */
    void change(UnaryOperator<Learner> change) {
        change(current.get().id(), change);
    }

    /** Changes a learner; nothing happens when there is none of that id any more. */
    void change(String id, UnaryOperator<Learner> change) {
        for (int i = 0; i < learners.size(); i++) {
            Learner was = learners.get(i);
            Learner next = was.id().equals(id) ? change.apply(was) : was;
            if (!next.equals(was)) {
                learners.set(i, next);
                write(next);
                if (current.get().id().equals(id)) {
                    current.set(next);
                }
            }
        }
    }

    /** Somebody new, with the look of the one who is here. */
    void add(String name) {
        Learner next = Learner.fresh(freeId(), "", current.get().look()).named(name);
        learners.add(next);
        write(next);
        switchTo(next.id());
    }

    private String freeId() {
        String id = store == null ? "nobody" : store.freeId();
        int number = 1;
        String free = id;
        // What is still to be written has its name, too.
        while (taken(free)) {
            number++;
            free = "learner-" + number;
        }
        return free;
    }

    private boolean taken(String id) {
        return learners.stream().anyMatch(l -> l.id().equals(id));
    }

    /** Another learner sits down. */
    void switchTo(String id) {
        learners.stream().filter(l -> l.id().equals(id)).findFirst().ifPresent(l -> {
            current.set(l);
            if (store != null) {
                writer.execute(() -> store.remember(id));
            }
        });
    }

    /** Takes a learner away with all progress; somebody is always here. */
    void remove(String id) {
        Look look = current.get().look();
        learners.removeIf(l -> l.id().equals(id));
        if (store != null) {
            owed.remove(id);
            writer.execute(() -> store.remove(id).ifPresent(told));
        }
        if (learners.isEmpty()) {
            learners.add(Learner.fresh(id, "", look));
        }
        if (current.get().id().equals(id)) {
            switchTo(learners.get(0).id());
        }
    }

    private void write(Learner learner) {
        if (store == null) {
            return;
        }
        owed.put(learner.id(), learner);
        writer.execute(() -> {
            Learner newest = owed.remove(learner.id());
            if (newest != null) {
                save(newest);
            }
        });
    }

    private void save(Learner learner) {
        Optional<Trouble> trouble = store.save(learner);
        boolean before = lost;
        lost = trouble.isPresent();
        if (lost && !before) {
            told.accept(trouble.get());
        }
    }

    /** Writes all again that is known, such as before closing; waits for it. */
    boolean flush() {
        write(current.get());
        try {
            writer.submit(() -> {}).get(WAIT_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (java.util.concurrent.ExecutionException | java.util.concurrent.TimeoutException e) {
            return false;
        }
        return !lost;
    }

    @Override
    public void close() {
        writer.shutdown();
        try {
            if (!writer.awaitTermination(WAIT_SECONDS, TimeUnit.SECONDS)) {
                writer.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
