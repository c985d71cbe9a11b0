package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Lives seasons on several threads; what they come to is given in their own order, so nothing depends on the threads. */
final class SideBySide {

    private static final long LOOK_MILLIS = 50;

    private final int threads;
    private final Progress progress;

    SideBySide(int threads, Progress progress) {
        this.threads = threads;
        this.progress = progress;
    }

    /** On all cores of the machine. */
    static SideBySide onAllCores(Progress progress) {
        return new SideBySide(Math.max(1, Runtime.getRuntime().availableProcessors()), progress);
    }

    /**
     * What all seasons come to, in their order.
     *
     * @throws CancellationException when the progress asks to stop
     */
    <T> List<T> live(List<Callable<T>> seasons) {
        ExecutorService pool = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "seasons");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<T>> running = seasons.stream().map(pool::submit).toList();
            List<T> results = new ArrayList<>();
            for (Future<T> each : running) {
                results.add(result(each));
                progress.at(results.size(), running.size());
            }
            return results;
        } finally {
            pool.shutdownNow();
        }
    }

    private <T> T result(Future<T> running) {
        try {
            while (true) {
                if (progress.cancelled()) {
                    throw new CancellationException();
                }
                try {
                    return running.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
                } catch (TimeoutException e) {
                    // Not yet; whether to go on is asked again.
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
    }
}
