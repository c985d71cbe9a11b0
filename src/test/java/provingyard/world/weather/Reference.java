package provingyard.world.weather;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** The project's reference values as the tests read them, from the class path. */
final class Reference {

    static final DataFiles FILES = Reference::open;

    private Reference() {}

    private static InputStream open(String path) throws IOException {
        InputStream in = Reference.class.getResourceAsStream("/shared/reference/" + path);
        if (in == null) {
            throw new FileNotFoundException("no resource " + path);
        }
        return in;
    }

    /** One row of published.json; its text is the display name. */
    record Row(JsonNode node) {

        String id() {
            return node.get("id").asText();
        }

        JsonNode inputs() {
            return node.get("inputs");
        }

        double input(String name) {
            if (!inputs().has(name)) {
                throw new IllegalArgumentException(id() + " has no input " + name);
            }
            return inputs().get(name).doubleValue();
        }

        double expected() {
            return node.get("expected").doubleValue();
        }

        double tolerance() {
            return node.get("tolerance").get("abs").doubleValue();
        }

        @Override
        public String toString() {
            return id() + ": " + node.get("quantity").asText() + " = " + node.get("expected") + " "
                    + node.get("units").asText() + " (" + node.get("source").asText() + "; "
                    + node.get("status").asText() + ")";
        }
    }

    static Stream<Row> published(Predicate<String> ids) {
        try (InputStream in = FILES.open("weather-soil/published.json")) {
            JsonNode rows = new ObjectMapper().readTree(in);
            return StreamSupport.stream(rows.spliterator(), false).map(Row::new).filter(row -> ids.test(row.id()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A CSV row by column name; its text is the given label. */
    record Line(String label, Map<String, String> cells) {

        double number(String column) {
            return Double.parseDouble(cells.get(column));
        }

        @Override
        public String toString() {
            return label;
        }
    }

    static List<Line> table(String path) {
        try (InputStream in = FILES.open(path)) {
            String[] lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\\R");
            String[] header = lines[0].split(",");
            List<Line> rows = new ArrayList<>();
            for (int i = 1; i < lines.length; i++) {
                String[] cells = lines[i].split(",", -1);
                Map<String, String> row = new LinkedHashMap<>();
                for (int c = 0; c < header.length; c++) {
                    row.put(header[c], cells[c]);
                }
                rows.add(new Line(path + " line " + (i + 1), row));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
