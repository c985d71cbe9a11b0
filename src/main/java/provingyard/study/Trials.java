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
 * draws, and means are summed in the order of the draws, so the result does not depend on threads.
 */
final class Trials implements AutoCloseable {

    private record Task(SetUp setUp, int draw) {}

    private final Site site;
    private final Progress progress;
    private final int expected;
    private final ExecutorService pool;
    private final Map<Task, Double> known = new LinkedHashMap<>();
    private int done;

    /**
     * Trials of a site.
     *
     * @param expected about how many seasons there will be, for the progress
     */
    Trials(Site site, int expected, Progress progress) {
        this.site = site;
        this.expected = expected;
        this.progress = progress;
        pool = Executors.newFixedThreadPool(Math.max(1, Runtime.getRuntime().availableProcessors()), work -> {
            Thread thread = new Thread(work, "trials");
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * Mean loss in USD of each set-up over the draws 1 to {@code draws}.
     *
     * @throws CancellationException when the progress asks to stop
     */
    List<Double> meanLosses(List<SetUp> setUps, int draws) {
        Map<Task, Future<Double>> running = new LinkedHashMap<>();
        // All set-ups of a draw before the next draw: seasons of one weather share it and its unwatered twin.
        for (int draw = 1; draw <= draws; draw++) {
            for (SetUp setUp : setUps) {
                Task task = new Task(setUp, draw);
                if (!known.containsKey(task) && !running.containsKey(task)) {
                    running.put(task, pool.submit(() -> live(task)));
                }
            }
        }
        running.forEach((task, future) -> known.put(task, result(future)));
        List<Double> means = new ArrayList<>();
        for (SetUp setUp : setUps) {
            double sum = 0;
            for (int draw = 1; draw <= draws; draw++) {
                sum += known.get(new Task(setUp, draw));
            }
            means.add(sum / draws);
        }
        return means;
    }

    private double result(Future<Double> future) {
        if (progress.cancelled()) {
            pool.shutdownNow();
            throw new CancellationException();
        }
        try {
            double loss = future.get();
            progress.at(++done, Math.max(done, expected));
            return loss;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
    }

    private double live(Task task) {
        Season season = Season.drawn(site, task.draw(), task.setUp());
        season.liveToEnd();
        return Loss.of(season).total();
    }

    @Override
    public void close() {
        pool.shutdownNow();
    }
}
