package provingyard.reference;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A CSV file below {@code shared/reference/}, which remembers the columns that were read, so that a test can say that
 * none was passed over.
 */
public final class Table {

    private final List<String> columns;
    private final Set<String> read = new LinkedHashSet<>();
    private final List<Line> lines = new ArrayList<>();

    private Table(String file, List<String> text) {
        columns = split(text.get(0));
        for (int i = 1; i < text.size(); i++) {
            lines.add(new Line(file + " line " + (i + 1), split(text.get(i))));
        }
    }

    /** Reads a file. */
    public static Table of(String file) {
        try (InputStream in = open(file)) {
            return new Table(
                    file,
                    new String(in.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file below {@code shared/reference/}, from the class path. */
    public static InputStream open(String file) throws IOException {
        InputStream in = Table.class.getResourceAsStream("/shared/reference/" + file);
        if (in == null) {
            throw new FileNotFoundException("no resource " + file);
        }
        return in;
    }

    /** Quoted commas stay inside their field. */
    private static List<String> split(String line) {
        return List.of(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1));
    }

    /** The lines below the header. */
    public List<Line> lines() {
        return lines;
    }

    /** Columns that nobody has read so far. */
    public Set<String> unread() {
        Set<String> left = new TreeSet<>(columns);
        left.removeAll(read);
        return left;
    }

    /** A line; its text is its place in the file. */
    public final class Line {

        private final String label;
        private final List<String> cells;

        private Line(String label, List<String> cells) {
            this.label = label;
            this.cells = cells;
        }

        /** A cell as text. */
        public String text(String column) {
            int at = columns.indexOf(column);
            if (at < 0) {
                throw new IllegalArgumentException(label + ": no column " + column);
            }
            read.add(column);
            return cells.get(at);
        }

        /** A cell as a number. */
        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        @Override
        public String toString() {
            return label;
        }
    }
}
