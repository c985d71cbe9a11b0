package provingyard.world.ground;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Check values shipped under {@code shared/reference/weather-soil}. */
final class Reference {

    private static final String FOLDER = "/shared/reference/weather-soil/";

    private Reference() {}

    /** All published rows by id. */
    static Map<String, JsonNode> published() {
        Map<String, JsonNode> rows = new LinkedHashMap<>();
        try (InputStream in = Reference.class.getResourceAsStream(FOLDER + "published.json")) {
            new ObjectMapper()
                    .readTree(in)
                    .forEach(row -> rows.put(row.get("id").asText(), row));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    /** Lines of a CSV file as maps from the header's names. Quoted commas are kept inside their field. */
    static List<Map<String, String>> csv(String file) {
        List<Map<String, String>> lines = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(Reference.class.getResourceAsStream(FOLDER + file), StandardCharsets.UTF_8))) {
            String[] names = split(in.readLine());
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] values = split(line);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < names.length; i++) {
                    row.put(names[i], values[i]);
                }
                lines.add(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return lines;
    }

    private static String[] split(String line) {
        return line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)");
    }

    /** A number of a CSV row. */
    static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    /** Tolerance of a published row, absolute, as the row says. */
    static double tolerance(JsonNode row) {
        JsonNode tolerance = row.get("tolerance");
        return tolerance.has("abs")
                ? tolerance.get("abs").asDouble()
                : tolerance.get("rel").asDouble() * Math.abs(row.get("expected").asDouble());
    }
}
