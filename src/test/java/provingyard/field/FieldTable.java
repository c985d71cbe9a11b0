package provingyard.field;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The model document's section of field trials: rows in the order of their keys, what stands around them. */
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

    /** Where a result was published; the table names it by its number. */
    enum Study {
        DRY_PLOTS("McCready, Dukes and Miller 2009, Agric. Water Manage. 96 (abstract)."),
        UNITS("Five-year evaluation of expanding-disk rain sensors, University of Florida (abstract)."),
        WET_PLOTS("Cárdenas-Lailhacar, Dukes and Miller 2008, J. Irrig. Drain. Eng. 134 (from memory)."),
        SET_POINTS("Cárdenas-Lailhacar and Dukes 2008, J. Irrig. Drain. Eng. 134, expanding disks (from memory)."),
        SOIL("Cárdenas-Lailhacar and Dukes, review of soil moisture control in Florida (abstract)."),
        HOMES("Haley and Dukes, homes of Pinellas County (abstract; the rain sensor's 14 % from memory)."),
        DECADES("Dukes 2020, two decades of smart irrigation research (abstract)."),
        ON_DEMAND(
                "Davis and Dukes, review of control by evapotranspiration (abstract); ours is soil control on demand."),
        DESIGN("Orders that the design of this program asks for, after the same studies.");

        private final String text;

        Study(String text) {
            this.text = text;
        }

        private int number() {
            return ordinal() + 1;
        }
    }

    /** A published result: the name of its trial in the program's design, where it was published, and what. */
    record Source(String trial, Study study, String published) {

        private String cell() {
            return trial + " [" + study.number() + "]";
        }
    }

    private static final Path FILE = Path.of("target", "field-trials.md");

    private static final Path DOCUMENT = Path.of("shared", "model.md");

    private static final String TITLE = "## Field trials\n";

    private static final String HEAD = TITLE + """

            Seasons set up like published field trials, 30 seeds each; `mvn -Pfield verify` computes this section and
            compares it with what stands here. Plots are 13 m² of turf on sand with sprays, in a generated climate like inland north
            Florida's. Savings are in percent of the water that the clock alone applied. *Ours* is the mean, and the least to
            the most of the 30 seeds. Rows used to calibrate chose the rain sensor's parameters; rows used to test did not.
            The accepted bands of savings of CV-2, CV-3, CV-5 (but for the rain sensor alone) and CV-7 were set with the
            design of the program; the others are an own choice around the published numbers. Weather and schedules of the
            trials are not published day by day: ours are like them, not theirs.

            """;

    private static final String COLUMNS = """

            | trial | set up | published | accepted | ours | used to | met |
            | --- | --- | --- | --- | --- | --- | --- |
            """;

    private final Map<String, String> places = new TreeMap<>();
    private final Map<String, String> rows = new TreeMap<>();
    private final Map<String, String> reasons = new TreeMap<>();

    /** Says what a place of trials is. */
    void place(String name, String is) {
        places.put(name, "- *" + name + "*: " + is);
    }

    /** Adds a row. */
    void add(String key, Source source, String setUp, String accepted, String ours, Use use, boolean met) {
        List<String> cells =
                List.of(source.cell(), setUp, source.published, accepted, ours, use.word, met ? "yes" : "no");
        rows.put(key, "| " + String.join(" | ", cells) + " |");
    }

    /** Says why a row is likely not met. */
    void notMet(String key, String row, String likely) {
        reasons.put(key, "- " + row + ": " + likely);
    }

    /** The whole as Markdown. */
    String text() {
        List<String> parts = new ArrayList<>();
        parts.add(HEAD + lines(places) + COLUMNS + lines(rows));
        if (!reasons.isEmpty()) {
            parts.add("Not met, and the likely reason:\n\n" + lines(reasons));
        }
        parts.add("The mix of homes is our assumption, made before its result was seen: eight homes in each seed, whose"
                + " parts\nare dealt anew for each. The study did not publish its homes one by one.\n\n"
                + HomeMix.table());
        parts.add("Sources:\n\n"
                + Arrays.stream(Study.values())
                        .map(s -> s.number() + ". " + s.text + "\n")
                        .collect(Collectors.joining()));
        return String.join("\n", parts);
    }

    private static String lines(Map<String, String> entries) {
        return String.join("\n", entries.values()) + "\n";
    }

    /** The section as it stands in the model document. */
    static String kept() {
        try {
            String document = Files.readString(DOCUMENT);
            return document.substring(Math.max(0, document.indexOf(TITLE)));
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
