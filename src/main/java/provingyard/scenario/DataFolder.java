package provingyard.scenario;

import java.nio.file.Files;
import java.nio.file.Path;

/** The folder in which the program keeps what is the user's: learners, marks, rescued work. */
public final class DataFolder {

    /** Name of the folder that, put beside the program, makes it portable. */
    public static final String PORTABLE = "proving-yard-data";

    private DataFolder() {}

    /**
     * The folder: the one that the system property {@code provingyard.home} or the environment's
     * {@code PROVING_YARD_HOME} names; else {@value #PORTABLE} beside the program's jar, where it is there and can be
     * written; else {@code .proving-yard} in the user's home. It need not exist yet.
     */
    public static Path find() {
        Path program = Sites.program();
        boolean jar = program != null && Files.isRegularFile(program);
        return choose(
                System.getProperty("provingyard.home", System.getenv("PROVING_YARD_HOME")),
                jar ? program.toAbsolutePath().getParent() : null,
                Path.of(System.getProperty("user.home")));
    }

    /**
     * Chooses between the places.
     *
     * @param named what the environment names; null or blank for nothing
     * @param beside the folder of the program's jar; null where there is none
     * @param home the user's home
     */
    static Path choose(String named, Path beside, Path home) {
        if (named != null && !named.isBlank()) {
            return Path.of(named);
        }
        Path portable = beside == null ? null : beside.resolve(PORTABLE);
        return portable != null && Files.isDirectory(portable) && Files.isWritable(portable)
                ? portable
                : home.resolve(".proving-yard");
    }
}
