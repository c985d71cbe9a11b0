package provingyard.ui;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import provingyard.scenario.DataFolder;
import provingyard.setup.SetUpWriter;

/** What went wrong unforeseen: told apart, so that each is said once, and kept in files for whoever looks into it. */
final class Mishaps {

    private final Set<String> seen = new HashSet<>();

    /** Whether this one, known by its kind and the place where it came up, was not seen before. */
    boolean isNew(Throwable failure) {
        StackTraceElement[] trace = failure.getStackTrace();
        return seen.add(failure.getClass().getName() + (trace.length == 0 ? "" : " " + trace[0]));
    }

    /**
     * Writes the failure, and the set-up where a yard is open, into the data folder.
     *
     * @return where the set-up is; empty where there is none or it could not be written
     */
    Optional<Path> keep(Throwable failure, YardModel model) {
        try {
            Path folder = Files.createDirectories(DataFolder.find());
            StringWriter trace = new StringWriter();
            failure.printStackTrace(new PrintWriter(trace));
            Files.writeString(folder.resolve("last-mishap.txt"), trace.toString());
            if (model == null) {
                return Optional.empty();
            }
            Path file = folder.resolve("rescued-" + model.scenario().id() + ".json");
            Files.writeString(file, SetUpWriter.write(model.setUp()));
            return Optional.of(file);
        } catch (IOException | RuntimeException e) {
            // Nothing more can be done here; the caller says that it was not kept.
            return Optional.empty();
        }
    }
}
