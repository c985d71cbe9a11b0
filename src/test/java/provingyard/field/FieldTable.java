package provingyard.field;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** The table of results, in the order of its rows' keys. */
final class FieldTable {

    /** What a row's trial was used for. */
    enum Use {
        CALIBRATE("calibrate"),
        TEST("test");

        private final String word;

        Use(String word) {
            this.word = word;
        }
    }

    private static final Path FILE = Path.of("target", "field-results.md");

    private static final String HEAD = """
            ## Field trials

            Seasons set up like published field trials, 30 seeds each: `mvn -Pfield verify` computes this table. Plots of
            13 m² turf on sand with sprays, in a generated climate like inland north Florida's; savings in percent of the
            water that the clock alone applied. 'Ours' is the mean, then the least to the most of the 30 seeds. Rows named
            'calibrate' were used to choose the rain sensor's parameters; rows named 'test' were not. The accepted band
            was set before the runs, somewhat wider than the published range.

            | trial | source | set up | published | accepted | ours | used to | outcome |
            | --- | --- | --- | --- | --- | --- | --- | --- |
            """;

    private final Map<String, String> rows = new TreeMap<>();

    /** Adds a row. */
    void add(String key, Source source, String setUp, String accepted, String ours, Use use, String outcome) {
        rows.put(
                key,
                String.join(
                                " | ",
                                "| " + source.trial,
                                source.text,
                                setUp,
                                source.published,
                                accepted,
                                ours,
                                use.word,
                                outcome)
                        + " |");
    }

    /** A published result. */
    record Source(String trial, String text, String published) {}

    /** Prints and writes it. */
    void write() {
        String text = HEAD + String.join("\n", rows.values()) + "\n";
        System.out.println(text);
        try {
            Files.createDirectories(FILE.getParent());
            Files.writeString(FILE, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
