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

    private static final Path KEPT = Path.of("shared", "field-results.md");

    private static final String HEAD = """
            ## Field trials

            Seasons set up like published field trials, 30 seeds each: `mvn -Pfield verify` computes this table. Plots of
            13 m² turf on sand with sprays, in a generated climate like inland north Florida's; savings in percent of the
            water that the clock alone applied. 'Ours' is the mean, then the least to the most of the 30 seeds. Rows named
            'calibrate' were used to choose the rain sensor's parameters, rows named 'test' were not. The accepted bands
            of savings in rows CV-2, CV-3, CV-5 (but for the rain sensor alone) and CV-7 were set with the design of the
            program; the other bands are an own choice around the published numbers. Weather and schedules of the trials
            are not published day by day: ours are like them, not theirs.

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

    /** The whole as Markdown. */
    String text() {
        return HEAD + String.join("\n", rows.values()) + "\n";
    }

    /** The table that is kept for readers. */
    static String kept() {
        try {
            return Files.readString(KEPT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Prints and writes it. */
    void write() {
        String text = text();
        System.out.println(text);
        try {
            Files.createDirectories(FILE.getParent());
            Files.writeString(FILE, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
