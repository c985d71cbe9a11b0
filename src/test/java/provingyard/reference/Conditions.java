package provingyard.reference;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Place or make-up behind a series that its file does not print, from {@code weather-soil/series-conditions.json}. */
public record Conditions(JsonNode node) {

    /** The conditions of a file. */
    public static Conditions of(String series) {
        try (InputStream in = Table.open("weather-soil/series-conditions.json")) {
            return new Conditions(new ObjectMapper().readTree(in).get(series));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A number. */
    public double get(String name) {
        return node.get(name).doubleValue();
    }
}
