package provingyard.reference;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.stream.StreamSupport;

/** One row of {@code weather-soil/published.json}; its text names quantity, source and status. */
public record ReferenceRow(JsonNode node) {

    /** The file's path below {@code shared/reference/}. */
    public static final String FILE = "weather-soil/published.json";

    private static final List<ReferenceRow> ALL = read();

    private static List<ReferenceRow> read() {
        try (InputStream in = Table.open(FILE)) {
            return StreamSupport.stream(new ObjectMapper().readTree(in).spliterator(), false)
                    .map(ReferenceRow::new)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All rows, in the file's order. */
    public static List<ReferenceRow> all() {
        return ALL;
    }

    /** The row of an id. */
    public static ReferenceRow of(String id) {
        return ALL.stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("no row " + id));
    }

    /** Its id. */
    public String id() {
        return node.get("id").asText();
    }

    /** What it is a value of. */
    public String quantity() {
        return node.get("quantity").asText();
    }

    /** Whether it has an input. */
    public boolean has(String input) {
        return node.get("inputs").has(input);
    }

    /** An input as a number. */
    public double in(String input) {
        return input(input).doubleValue();
    }

    /** An input as it stands. */
    public JsonNode input(String input) {
        if (!has(input)) {
            throw new NoSuchElementException(id() + " has no input " + input);
        }
        return node.get("inputs").get(input);
    }

    /** What is expected: a number, or an object or range. */
    public JsonNode expected() {
        return node.get("expected");
    }

    /** How far a value may lie from an expected number, by the row's own word: absolute, or relative to it. */
    public double tolerance(double wanted) {
        JsonNode tolerance = node.get("tolerance");
        double is = tolerance.has("abs")
                ? tolerance.get("abs").asDouble()
                : tolerance.get("rel").asDouble() * Math.abs(wanted);
        return is * (1 + 1e-4) + 1e-12;
    }

    /** As far as a value may lie from the expected number. */
    public double tolerance() {
        return tolerance(expected().doubleValue());
    }

    @Override
    public String toString() {
        return id() + ": " + quantity() + " = " + expected() + " "
                + node.get("units").asText() + " (" + node.get("source").asText() + "; "
                + node.get("status").asText() + ")";
    }
}
