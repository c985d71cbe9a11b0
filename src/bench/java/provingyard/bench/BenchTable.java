package provingyard.bench;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.util.ListStatistics;
import org.openjdk.jmh.util.Statistics;

/** The results of one run as text: median and range of the time, allocation, the floor and the ratio to it. */
final class BenchTable {

    private static final String FLOOR = "floor";
    private static final String THREADS = "threads";
    private static final String ALLOCATED = "gc.alloc.rate.norm";
    private static final double LEAST_OBJECT = 16;

    /** One benchmark's result. */
    private record Row(String type, String method, TreeMap<String, String> parameters, RunResult result) {

        static Row of(RunResult result) {
            BenchmarkParams params = result.getParams();
            String[] path = params.getBenchmark().split("\\.");
            TreeMap<String, String> parameters = new TreeMap<>();
            params.getParamsKeys().forEach(key -> parameters.put(key, params.getParam(key)));
            if (params.getThreads() > 1) {
                parameters.put(THREADS, String.valueOf(params.getThreads()));
            }
            return new Row(path[path.length - 2], path[path.length - 1], parameters, result);
        }

        /** Times of all iterations of all forks. */
        Statistics time() {
            return new ListStatistics(result.getBenchmarkResults().stream()
                    .flatMap(fork -> fork.getIterationResults().stream())
                    .mapToDouble(iteration -> iteration.getPrimaryResult().getScore())
                    .toArray());
        }

        double median() {
            return time().getPercentile(50);
        }

        String allocated() {
            Result<?> bytes = result.getSecondaryResults().get(ALLOCATED);
            // No object is smaller than 16 bytes: less than that per call is the harness's own, spread over all calls.
            return bytes.getScore() < LEAST_OBJECT ? "0" : String.format(Locale.ROOT, "%.0f", bytes.getScore());
        }

        boolean isFloorOf(Row other) {
            return method.equals(FLOOR)
                    && type.equals(other.type)
                    && other.parameters.entrySet().containsAll(parameters.entrySet());
        }

        String named() {
            return parameters.entrySet().stream()
                    .map(e -> e.getKey() + " " + e.getValue())
                    .collect(Collectors.joining(", "));
        }
    }

    private BenchTable() {}

    /** The table, a line for each benchmark. */
    static String of(Collection<RunResult> results) {
        List<Row> rows = results.stream().map(Row::of).toList();
        StringBuilder table =
                new StringBuilder(line("measure", "parameters", "median us", "least - most", "B/op", "x floor"));
        for (Row row : rows) {
            Statistics time = row.time();
            table.append(line(
                    row.type + "." + row.method,
                    row.named(),
                    number(row.median()),
                    number(time.getMin()) + " - " + number(time.getMax()),
                    row.allocated(),
                    ratio(row, rows)));
        }
        return table.append(growths(rows)).append(gains(rows)).toString();
    }

    /** How times grow with the one number that a class's benchmarks vary: exponents of the fitted powers. */
    private static String growths(List<Row> rows) {
        StringBuilder lines = new StringBuilder();
        Map<String, List<Row>> byMeasure = rows.stream()
                .filter(row -> row.parameters.size() == 1 && !row.parameters.containsKey(THREADS))
                .collect(Collectors.groupingBy(row -> row.type + "." + row.method, TreeMap::new, Collectors.toList()));
        byMeasure.forEach((measure, alike) -> {
            if (alike.size() > 2) {
                String varied = alike.get(0).parameters.firstKey();
                lines.append(String.format(
                        Locale.ROOT, "%s grows with %s to the power %.2f%n", measure, varied, exponent(alike, varied)));
            }
        });
        return lines.toString();
    }

    /** Slope of the straight line through the logarithms, by least squares. */
    private static double exponent(List<Row> alike, String varied) {
        SimpleRegression line = new SimpleRegression();
        alike.forEach(
                row -> line.addData(Math.log(Double.parseDouble(row.parameters.get(varied))), Math.log(row.median())));
        return line.getSlope();
    }

    /** How much more is done in a second by several threads than by one. */
    private static String gains(List<Row> rows) {
        StringBuilder lines = new StringBuilder();
        for (Row many : rows) {
            rows.stream()
                    .filter(one -> many.parameters.containsKey(THREADS)
                            && one.parameters.isEmpty()
                            && one.type.equals(many.type)
                            && one.method.equals(many.method))
                    .forEach(one -> {
                        int threads = Integer.parseInt(many.parameters.get(THREADS));
                        lines.append(String.format(
                                Locale.ROOT,
                                "%s.%s on %d threads does %.2f times as much as on one%n",
                                many.type,
                                many.method,
                                threads,
                                threads * one.median() / many.median()));
                    });
        }
        return lines.toString();
    }

    private static String ratio(Row row, List<Row> rows) {
        return rows.stream()
                .filter(floor -> floor.isFloorOf(row) && floor != row)
                .findFirst()
                .map(floor -> String.format(Locale.ROOT, "%.2f", row.median() / floor.median()))
                .orElse("");
    }

    private static String number(double microseconds) {
        return String.format(Locale.ROOT, microseconds < 100 ? "%.2f" : "%.0f", microseconds);
    }

    private static String line(
            String measure, String parameters, String median, String range, String bytes, String ratio) {
        return String.format(
                Locale.ROOT, "%-34s %-36s %11s %19s %8s %8s%n", measure, parameters, median, range, bytes, ratio);
    }
}
