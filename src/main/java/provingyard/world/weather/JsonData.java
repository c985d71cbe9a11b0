package provingyard.world.weather;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;

/** A JSON data file whose values are checked where they are read. */
final class JsonData {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final String file;
    private final JsonNode root;

    private JsonData(String file, JsonNode root) {
        this.file = file;
        this.root = root;
    }

    static JsonData read(DataFiles files, String file) {
        if (file == null) {
            throw new WeatherDataException("weather", 0, "the source names no data file");
        }
        try (InputStream in = files.open(file)) {
            return new JsonData(file, MAPPER.readTree(in));
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            throw new WeatherDataException(file, line, "is not JSON: " + e.getOriginalMessage());
        } catch (IOException e) {
            throw new WeatherDataException(file, 0, "the file cannot be read: " + e.getMessage());
        }
    }

    /** The node at a JSON pointer. */
    JsonNode at(String pointer) {
        JsonNode node = root.at(pointer);
        if (node.isMissingNode()) {
            throw new WeatherDataException(file, 0, "has nothing at " + pointer);
        }
        return node;
    }

    /** The number at a JSON pointer, between {@code least} and {@code most}. */
    double number(String pointer, double least, double most) {
        JsonNode node = at(pointer);
        double value = node.doubleValue();
        if (!node.isNumber() || !(value >= least && value <= most)) {
            throw new WeatherDataException(
                    file, 0, pointer + " is " + node + "; a number from " + least + " to " + most + " is expected");
        }
        return value;
    }
}
