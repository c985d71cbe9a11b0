package provingyard.control;

import java.util.ArrayList;
import java.util.List;

/**
 * What is to run: one pass for each start, one job for each zone of a pass. A pass is finished before the next one
 * begins; within it the zones take turns, and a zone rests for its soak between its parts. Mutable.
 */
final class RunQueue {

    /** The rest of one zone's run in one pass. */
    static final class Job {
        final int zone;
        final int part;
        final int soak;
        final long asked;
        int left;
        int leftInPart;
        long readyAt;
        boolean paused;

        Job(Program.Entry entry, long asked) {
            zone = entry.zone();
            part = entry.part();
            soak = entry.soak();
            this.asked = asked;
            left = entry.minutes();
            leftInPart = Math.min(part, left);
            readyAt = asked;
        }

        private Job(Job other) {
            zone = other.zone;
            part = other.part;
            soak = other.soak;
            asked = other.asked;
            left = other.left;
            leftInPart = other.leftInPart;
            readyAt = other.readyAt;
            paused = other.paused;
        }
    }

    private final List<List<Job>> passes = new ArrayList<>();

    /** The same in the same state. */
    RunQueue copy() {
        RunQueue other = new RunQueue();
        for (List<Job> pass : passes) {
            List<Job> copied = new ArrayList<>();
            pass.forEach(j -> copied.add(new Job(j)));
            other.passes.add(copied);
        }
        return other;
    }

    /** The job of a copy that stands for a job of this queue; null when the copy is empty or the job is not here. */
    Job inCopy(Job job, RunQueue copy) {
        int index = job == null || copy.isEmpty() ? -1 : jobs().indexOf(job);
        return index < 0 ? null : copy.jobs().get(index);
    }

    boolean isEmpty() {
        return passes.isEmpty();
    }

    void add(List<Job> pass) {
        if (!pass.isEmpty()) {
            passes.add(pass);
        }
    }

    /** All jobs, in order; a new list. */
    List<Job> jobs() {
        List<Job> all = new ArrayList<>();
        passes.forEach(all::addAll);
        return all;
    }

    void remove(Job job) {
        passes.forEach(pass -> pass.remove(job));
        passes.removeIf(List::isEmpty);
    }

    void clear() {
        passes.clear();
    }

    /** A job's part is over: it goes to the end of its pass and rests for its soak. */
    void rest(Job job, long tick) {
        job.leftInPart = Math.min(job.part, job.left);
        job.readyAt = tick + job.soak;
        for (List<Job> pass : passes) {
            if (pass.remove(job)) {
                pass.add(job);
                return;
            }
        }
    }

    /** Whether a zone is held back now. */
    interface Hold {
        boolean holds(Job job);
    }

    /**
     * The job whose turn it is, or null: the first ready one of the first pass that is not held as a whole. A pass
     * whose zones rest makes later passes wait.
     */
    Job next(long tick, Hold hold) {
        for (List<Job> pass : passes) {
            boolean resting = false;
            for (Job job : pass) {
                if (!hold.holds(job)) {
                    if (job.readyAt <= tick) {
                        return job;
                    }
                    resting = true;
                }
            }
            if (resting) {
                return null;
            }
        }
        return null;
    }
}
