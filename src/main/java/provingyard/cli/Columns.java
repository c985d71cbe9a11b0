package provingyard.cli;

import java.util.ArrayList;
import java.util.List;

/** Rows of text in columns as wide as they need: the first one to the left, numbers to the right. */
final class Columns {

    private static final String BETWEEN = "  ";

    private final List<List<String>> rows = new ArrayList<>();

    /** One more row; all rows have as many cells. */
    void row(String... cells) {
        rows.add(List.of(cells));
    }

    /** The rows as lines. */
    List<String> lines() {
        return rows.stream().map(this::line).toList();
    }

    private String line(List<String> row) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < row.size(); i++) {
            String space = " ".repeat(width(i) - length(row.get(i)));
            line.append(i == 0 ? "" : BETWEEN);
            line.append(i == 0 ? row.get(i) + space : space + row.get(i));
        }
        return line.toString().stripTrailing();
    }

    private int width(int column) {
        return rows.stream().mapToInt(r -> length(r.get(column))).max().orElse(0);
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
