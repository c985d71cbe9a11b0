package provingyard.report;

import java.util.ArrayList;
import java.util.List;

/** A table of a page; on narrow screens one of the look {@code stack} shows its rows one cell below the other. */
final class Table {

    private record Row(List<Cell> cells, boolean sum) {}

    private final String look;
    private final List<Row> rows = new ArrayList<>();
    private List<String> head = List.of();

    Table(String look) {
        this.look = look;
    }

    /** Names of the columns. */
    Table head(List<String> names) {
        head = List.copyOf(names);
        return this;
    }

    Table row(Cell... cells) {
        return row(List.of(cells));
    }

    Table row(List<Cell> cells) {
        rows.add(new Row(List.copyOf(cells), false));
        return this;
    }

    /** A row that sums up those above. */
    Table sum(List<Cell> cells) {
        rows.add(new Row(List.copyOf(cells), true));
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    void write(HtmlPage page) {
        page.open("table", look);
        if (!head.isEmpty()) {
            page.open("thead", "").open("tr", "head");
            for (int i = 0; i < head.size(); i++) {
                page.element("th", looks(i), head.get(i));
            }
            page.close().close();
        }
        page.open("tbody", "");
        rows.forEach(r -> write(page, r));
        page.close().close();
    }

    /** A column's name stands at the side where its numbers do. */
    private String looks(int column) {
        boolean numbers = !rows.isEmpty() && rows.get(0).cells().get(column).isNumber();
        return numbers ? "n" : "";
    }

    private void write(HtmlPage page, Row row) {
        page.open("tr", row.sum() ? "sum" : "");
        for (int i = 0; i < row.cells().size(); i++) {
            String name = i > 0 && i < head.size() ? head.get(i) : "";
            write(page, row.cells().get(i), name);
        }
        page.close();
    }

    private static void write(HtmlPage page, Cell cell, String name) {
        String head = name.isEmpty() ? "" : HtmlPage.attribute("data-head", name);
        if (cell.icon() == null) {
            page.open("td", cell.look(), head);
        } else {
            page.open("td", cell.look("signed").look(), head + HtmlPage.sign(cell.icon()));
        }
        page.text(cell.text());
        if (!cell.small().isEmpty()) {
            page.span("small", cell.small());
        }
        page.close();
    }
}
