package provingyard.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs the benchmarks of this package and prints one table, each measure beside its floor from the same run.
 *
 * <p>To add one: a public class of this package with JMH's annotations. The benchmark called {@code floor} is the floor
 * of the others in its class, matched by the parameters that it has itself. Times are the median of all iterations, so
 * that a neighbour on the machine spoils little. JMH's own report goes to {@code target/benches.txt}.
 */
public final class Benches {

    private static final Path LOG = Path.of("target", "benches.txt");
    private static final Path LOG_OF_TWO = Path.of("target", "benches-two-threads.txt");

    private Benches() {}

    /** Runs the benchmarks whose names match a pattern; all without one. */
    public static void main(String[] patterns) throws Exception {
        Files.createDirectories(LOG.getParent());
        System.out.println("Benchmarks run; the table follows in some minutes. JMH's own report: " + LOG);
        OptionsBuilder all = settings(LOG);
        Arrays.stream(patterns).forEach(all::include);
        List<RunResult> results = new ArrayList<>(new Runner(all.build()).run());
        if (results.stream().anyMatch(Benches::isForTwo)) {
            ChainedOptionsBuilder two = settings(LOG_OF_TWO)
                    .include(TwoSeasonsBench.class.getName())
                    .threads(2);
            results.addAll(new Runner(two.build()).run());
        }
        System.out.println(BenchTable.of(results));
        System.out.println(SeasonMemory.measure());
        System.out.println(ScrubTimes.measure());
        System.out.println(DebriefTimes.measure());
    }

    private static OptionsBuilder settings(Path log) {
        OptionsBuilder options = new OptionsBuilder();
        options.mode(Mode.AverageTime)
                .timeUnit(TimeUnit.MICROSECONDS)
                .forks(2)
                .warmupIterations(5)
                .warmupTime(TimeValue.milliseconds(200))
                .measurementIterations(7)
                .measurementTime(TimeValue.milliseconds(150))
                .addProfiler(GCProfiler.class)
                .shouldFailOnError(true)
                .output(log.toString());
        return options;
    }

    private static boolean isForTwo(RunResult result) {
        return result.getParams().getBenchmark().startsWith(TwoSeasonsBench.class.getName());
    }
}
