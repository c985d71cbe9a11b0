package provingyard.world.hydraulics;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads the check values of the hydraulics, from the class path or the working directory. */
final class ReferenceFiles {

    private static final String REFERENCE = "shared/reference/hydraulics/";

    private ReferenceFiles() {}

    static String text(String name) {
        return text(REFERENCE, name);
    }

    static JsonNode json(String name) {
        return json(REFERENCE, name);
    }

    static String text(String folder, String name) {
        String path = folder + name;
        try (InputStream in = ReferenceFiles.class.getClassLoader().getResourceAsStream(path)) {
            return in == null ? Files.readString(Path.of(path)) : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode json(String folder, String name) {
        try {
            return new ObjectMapper().readTree(text(folder, name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
