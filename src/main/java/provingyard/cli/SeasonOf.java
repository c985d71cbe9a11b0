package provingyard.cli;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Whose season a command is about, and how it is told: what all commands about a lived season ask alike. */
final class SeasonOf {

    @Parameters(paramLabel = "SITE", descriptionKey = "run.site")
    private String site;

    @Option(names = "--setup", paramLabel = "FILE|careless|textbook|mark", descriptionKey = "run.setup")
    private String setUp;

    @Option(names = "--json", descriptionKey = "run.json")
    private boolean json;

    /** A site's id or its file. */
    String site() {
        return site;
    }

    /** A reference's name or a file; null for the clock alone. */
    String setUp() {
        return setUp;
    }

    /** Whether a program reads the answer. */
    boolean json() {
        return json;
    }
}
