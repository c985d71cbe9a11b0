package provingyard.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import provingyard.score.Loss;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;

/**
 * Lives seasons of one site over draws of its climate, events and faults, on all cores. Every set-up meets the same
 * draws, and means are summed in the order of the draws, so the result does not depend on threads. What was lived once
 * is not lived again.
 */
final class Trials implements AutoCloseable {

    /** A set-up in one draw; {@link Draws#OWN} is the site's own season. */
    private record Task(SetUp setUp, int draw) {}

    private final Site site;
    private final Progress progress;
    private final int threads;
    private final ExecutorService pool;
    private final Map<Task, Loss> known = new LinkedHashMap<>();
    private int expected;

    /** Trials of a site on all cores. */
    Trials(Site site, Progress progress) {
        this(site, progress, Runtime.getRuntime().availableProcessors());
    }

    /** Trials of a site on so many threads. */
    Trials(Site site, Progress progress, int threads) {
        this.site = site.keeping(Draws.MOST + 1);
        this.progress = progress;
        this.threads = threads;
        pool = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "trials");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Tells about how many seasons there will be in all, for the progress. */
    void expect(int seasons) {
        expected = seasons;
    }

    /** How many seasons were lived. */
    int lived() {
        return known.size();
    }

    /**
     * Mean loss in USD of each set-up over draws.
     *
     * @throws CancellationException when the progress asks to stop
     */
    List<Double> means(List<SetUp> setUps, List<Integer> draws) {
        live(setUps, draws);
        List<Double> means = new ArrayList<>();
        for (SetUp setUp : setUps) {
            double sum = 0;
            for (int draw : draws) {
                sum += known.get(new Task(setUp, draw)).total();
            }
            means.add(sum / draws.size());
        }
        return means;
    }

    /** Mean loss in USD of one set-up over draws. */
    double mean(SetUp setUp, List<Integer> draws) {
        return means(List.of(setUp), draws).get(0);
    }

    /** What a set-up loses in each draw. */
    List<Loss> losses(SetUp setUp, List<Integer> draws) {
        live(List.of(setUp), draws);
        return draws.stream().map(d -> known.get(new Task(setUp, d))).toList();
    }

    private void live(List<SetUp> setUps, List<Integer> draws) {
        Map<Task, Future<Loss>> running = new LinkedHashMap<>();
        // A few draws at a time, all set-ups of these before the next: seasons of one weather share it and its
        // unwatered twin, and as many draws as threads keep threads from waiting for one twin.
        for (int from = 0; from < draws.size(); from += threads) {
            List<Integer> together = draws.subList(from, Math.min(draws.size(), from + threads));
            for (SetUp setUp : setUps) {
                for (int draw : together) {
                    Task task = new Task(setUp, draw);
                    if (!known.containsKey(task) && !running.containsKey(task)) {
                        running.put(task, pool.submit(() -> live(task)));
                    }
                }
            }
        }
        running.forEach((task, future) -> known.put(task, result(future)));
    }

    private Loss result(Future<Loss> future) {
        try {
            stopIfAsked();
            Loss loss = future.get();
            int done = known.size() + 1;
            progress.at(done, Math.max(done, expected));
            return loss;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof CancellationException cancelled) {
                throw cancelled;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private Loss live(Task task) {
        stopIfAsked();
        Season season = task.draw() == Draws.OWN
                ? Season.begin(site, task.setUp())
                : Season.drawn(site, task.draw(), task.setUp());
        season.liveToEnd();
        return Loss.of(season);
    }

    private void stopIfAsked() {
        if (progress.cancelled()) {
            pool.shutdownNow();
            throw new CancellationException();
        }
    }

    @Override
    public void close() {
        pool.shutdownNow();
    }
}
