package provingyard.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What {@code shared/reference/unused.md} lists: reference values that no test compares, each with its reason. */
public final class UnusedRows {

    /**
     * An entry.
     *
     * @param file path below {@code shared/reference/}
     * @param row id of a row, quantity of a row without id, column of a CSV file; {@code *} for the whole file
     * @param part field of a row's expected value; empty for the whole row
     * @param reason why it is not compared
     */
    public record Entry(String file, String row, String part, String reason) {}

    private static final List<Entry> ENTRIES = read();

    private UnusedRows() {}

    private static List<Entry> read() {
        try (InputStream in = Table.open("unused.md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith("| `"))
                    .map(UnusedRows::entry)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Entry entry(String line) {
        String[] cells = line.split("\\|", -1);
        if (cells.length != 6) {
            throw new IllegalStateException("not four cells: " + line);
        }
        return new Entry(
                cells[1].replace('`', ' ').strip(),
                cells[2].replace('`', ' ').strip(),
                cells[3].replace('`', ' ').strip(),
                cells[4].strip());
    }

    /** All entries. */
    public static List<Entry> entries() {
        return ENTRIES;
    }

    /** Rows (or columns) of a file that are listed as a whole. */
    public static Set<String> rows(String file) {
        return ENTRIES.stream()
                .filter(e -> e.file().equals(file) && e.part().isEmpty())
                .map(Entry::row)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Parts of a row that are listed. */
    public static Set<String> parts(String file, String row) {
        return ENTRIES.stream()
                .filter(e -> e.file().equals(file)
                        && e.row().equals(row)
                        && !e.part().isEmpty())
                .map(Entry::part)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
