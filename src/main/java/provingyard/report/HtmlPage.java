package provingyard.report;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Deque;
import java.util.List;

/**
 * Builds one self-contained page, light and printable, well formed as XML too, so that the same text is laid out by a
 * browser and on paper. Every text that is given is shown as it is: nothing in it becomes markup, so names and texts
 * from files cannot bring anything in. Pictures are embedded; nothing is loaded from elsewhere.
 */
public final class HtmlPage {

    private final String language;
    private final String title;
    private final String look;
    private final StringBuilder body = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Begins a page in a language ({@code en} or {@code es}) with its title as the first heading. */
    public HtmlPage(String language, String title) {
        this(language, title, "page");
        element("h1", title);
    }

    /** Begins a page without a heading; {@code look} names its kind to the style sheets. */
    HtmlPage(String language, String title, String look) {
        this.language = language;
        this.title = title;
        this.look = look;
    }

    /** A heading of a section. */
    public HtmlPage heading(String text) {
        return element("h2", text);
    }

    /** A heading with a quiet word beside it. */
    HtmlPage heading(String text, String aside) {
        open("h2", "");
        text(text);
        span("aside", aside);
        return close();
    }

    /** A paragraph. */
    public HtmlPage paragraph(String text) {
        return element("p", text);
    }

    /** A paragraph that is read first. */
    public HtmlPage lead(String text) {
        return element("p", "lead", text);
    }

    /** A paragraph in the quiet colour. */
    public HtmlPage note(String text) {
        return element("p", "note", text);
    }

    /** A list of sentences. */
    HtmlPage list(String look, List<String> sentences) {
        open("ul", look);
        sentences.forEach(s -> element("li", s));
        return close();
    }

    /**
     * A picture.
     *
     * @param png the file's bytes
     * @param words what it shows, for those who do not see it
     * @param widthPx width on the screen, px
     */
    public HtmlPage picture(byte[] png, String words, int widthPx) {
        body.append("<img width=\"").append(widthPx).append("\" alt=\"").append(escaped(words));
        body.append("\" src=\"").append(data(png)).append("\" />\n");
        return this;
    }

    /** A chart as wide as its column, with another drawing for narrow screens. */
    HtmlPage chart(Picture chart, String words) {
        body.append("<picture><source media=\"(max-width:600px)\" srcset=\"").append(data(chart.narrow()));
        body.append("\" /><img class=\"chart\" alt=\"").append(escaped(words));
        body.append("\" src=\"").append(data(chart.wide())).append("\" /></picture>\n");
        return this;
    }

    /** A picture as wide as its column. */
    HtmlPage plan(byte[] png, String words, String style) {
        body.append("<img class=\"plan\" style=\"").append(style).append("\" alt=\"");
        body.append(escaped(words)).append("\" src=\"").append(data(png)).append("\" />\n");
        return this;
    }

    /** A sign before a word. */
    HtmlPage icon(byte[] png) {
        body.append("<img class=\"icon\" alt=\"\" src=\"").append(data(png)).append("\" />");
        return this;
    }

    /**
     * A table: the first column names, the others are numbers.
     *
     * @param head one text per column, or nothing for a table without a head
     * @param rows one text per column each
     */
    public HtmlPage table(List<String> head, List<List<String>> rows) {
        Table table = new Table("");
        if (!head.isEmpty()) {
            table.head(head);
        }
        rows.forEach(r -> table.row(cells(r)));
        return table(table);
    }

    private static List<Cell> cells(List<String> texts) {
        List<Cell> cells = new ArrayList<>();
        for (String text : texts) {
            cells.add(cells.isEmpty() ? Cell.text(text) : Cell.number(text));
        }
        return cells;
    }

    /** A table. */
    HtmlPage table(Table table) {
        table.write(this);
        return this;
    }

    /** Opens an element; {@code look} is its class, or empty. */
    HtmlPage open(String name, String look) {
        return open(name, look, "");
    }

    /** Opens an element with further attributes as they are to stand there. */
    HtmlPage open(String name, String look, String attributes) {
        body.append('<').append(name);
        if (!look.isEmpty()) {
            body.append(" class=\"").append(look).append('"');
        }
        body.append(attributes).append('>');
        open.push(name);
        return this;
    }

    /** Closes the element opened last. */
    HtmlPage close() {
        body.append("</").append(open.pop()).append(">\n");
        return this;
    }

    /** Text in the open element. */
    HtmlPage text(String text) {
        body.append(escaped(text));
        return this;
    }

    /** Some words in a look of their own. */
    HtmlPage span(String look, String text) {
        body.append("<span class=\"").append(look).append("\">").append(escaped(text));
        body.append("</span>");
        return this;
    }

    /** An attribute with a text from anywhere, to be given to {@link #open(String, String, String)}. */
    static String attribute(String name, String text) {
        return " " + name + "=\"" + escaped(text) + "\"";
    }

    /** The attribute of an element of the look {@code signed} that has a sign at its left. */
    static String sign(byte[] png) {
        return " style=\"background-image:url(" + data(png) + ")\"";
    }

    /** An element with a text. */
    HtmlPage element(String name, String look, String text) {
        return open(name, look).text(text).close();
    }

    private HtmlPage element(String name, String text) {
        return element(name, "", text);
    }

    /** The page's text for a browser. */
    public String text() {
        return with(Styles.screen(shown()));
    }

    /** The page's text for a sheet of paper. */
    String text(Paper paper) {
        return with(Styles.paper(paper));
    }

    /** All texts that the page shows, to know which signs it needs. */
    String shown() {
        return title + body.toString().replaceAll("<[^>]*>", "");
    }

    private String with(String style) {
        if (!open.isEmpty()) {
            throw new IllegalStateException("not closed: " + open);
        }
        return "<!DOCTYPE html>\n<html lang=\"" + escaped(language) + "\"><head><meta charset=\"utf-8\" />"
                + "<meta name=\"viewport\" content=\"width=device-width\" /><title>" + escaped(title)
                + "</title><style>\n" + style + "</style></head><body class=\"" + look + "\">\n" + body
                + "</body></html>\n";
    }

    private static String data(byte[] png) {
        return "data:image/png;base64," + Base64.getEncoder().encodeToString(png);
    }

    private static String escaped(String text) {
        return allowed(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    /** XML knows no control characters and no halves of surrogate pairs: the replacement sign stands for them. */
    private static String allowed(String text) {
        StringBuilder good = new StringBuilder(text.length());
        text.codePoints().forEach(c -> good.appendCodePoint(isAllowed(c) ? c : 0xFFFD));
        return good.toString();
    }

    private static boolean isAllowed(int c) {
        boolean space = c == '\t' || c == '\n' || c == '\r';
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        return space || c >= ' ' && !surrogate && c != 0xFFFE && c != 0xFFFF;
    }
}
