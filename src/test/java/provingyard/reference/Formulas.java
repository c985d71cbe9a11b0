package provingyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * Formulas by kind of row. A row is taken by the first kind whose pattern fits its whole id, so that a new row of a
 * known kind is checked as soon as it stands in the file.
 */
public final class Formulas {

    private final Map<Pattern, ToDoubleFunction<ReferenceRow>> byKind = new LinkedHashMap<>();

    /** Adds a kind, by a regular expression for the ids of its rows. */
    public Formulas add(String ids, ToDoubleFunction<ReferenceRow> formula) {
        byKind.put(Pattern.compile(ids), formula);
        return this;
    }

    /** Whether a row is checked; rows listed as unused are not. */
    public boolean check(ReferenceRow row) {
        return byKind.keySet().stream().anyMatch(p -> p.matcher(row.id()).matches())
                && !UnusedRows.rows(ReferenceRow.FILE).contains(row.id());
    }

    /** What the formula of a row's kind gives for it. */
    public double of(ReferenceRow row) {
        return byKind.entrySet().stream()
                .filter(e -> e.getKey().matcher(row.id()).matches())
                .findFirst()
                .orElseThrow()
                .getValue()
                .applyAsDouble(row);
    }

    /** One test for each row that is checked, named by the row with source and status. */
    public Stream<DynamicTest> tests() {
        return ReferenceRow.all().stream()
                .filter(this::check)
                .map(row -> DynamicTest.dynamicTest(
                        row.toString(),
                        () -> assertEquals(row.expected().doubleValue(), of(row), row.tolerance(), row.toString())));
    }

    /** Kinds that no row of the file has: formulas that are never tried. */
    public List<String> idle() {
        return byKind.keySet().stream()
                .filter(p -> ReferenceRow.all().stream()
                        .noneMatch(row -> p.matcher(row.id()).matches()))
                .map(Pattern::pattern)
                .toList();
    }
}
