package provingyard.report;

import java.util.Base64;
import java.util.List;

/**
 * Builds one self-contained HTML page, light and printable. Every text that is given is shown as it is: nothing in it
 * becomes markup, so names and texts from files cannot bring anything in. Pictures are embedded; nothing is loaded from
 * elsewhere.
 */
public final class HtmlPage {

    private static final String STYLE =
            "body{font:15px/1.45 'Source Sans 3',sans-serif;color:#1d2622;background:#fffefb;"
                    + "max-width:60em;margin:2em auto;padding:0 1em}h1,h2{font-family:'Source Serif 4',serif;"
                    + "break-after:avoid}img{max-width:100%;height:auto}table{border-collapse:collapse;margin:1em 0;"
                    + "min-width:24em}tr,img{break-inside:avoid}td,th{padding:.2em .8em .2em 0;"
                    + "border-bottom:1px solid #dcd7ca;text-align:left}td+td,th+th{text-align:right;"
                    + "font-variant-numeric:tabular-nums}.lead{font-weight:600}.note{color:#5f6963}"
                    + "@media print{body{background:#fff;margin:0;max-width:none;font-size:11pt}}";

    private final StringBuilder html = new StringBuilder();

    /** Begins a page in a language ({@code en} or {@code es}) with its title as the first heading. */
    public HtmlPage(String language, String title) {
        html.append("<!DOCTYPE html>\n<html lang=\"").append(escaped(language)).append("\"><head>");
        html.append("<meta charset=\"utf-8\">");
        html.append("<meta name=\"viewport\" content=\"width=device-width\"><title>")
                .append(escaped(title));
        html.append("</title><style>").append(STYLE).append("</style></head><body>\n");
        element("h1", title);
    }

    /** A heading of a section. */
    public HtmlPage heading(String text) {
        return element("h2", text);
    }

    /** A paragraph. */
    public HtmlPage paragraph(String text) {
        return element("p", text);
    }

    /** A paragraph that is read first. */
    public HtmlPage lead(String text) {
        html.append("<p class=\"lead\">").append(escaped(text)).append("</p>\n");
        return this;
    }

    /** A paragraph in the quiet colour. */
    public HtmlPage note(String text) {
        html.append("<p class=\"note\">").append(escaped(text)).append("</p>\n");
        return this;
    }

    /**
     * A picture.
     *
     * @param png the file's bytes
     * @param words what it shows, for those who do not see it
     * @param widthPx width on the screen, px
     */
    public HtmlPage picture(byte[] png, String words, int widthPx) {
        html.append("<img width=\"").append(widthPx).append("\" alt=\"").append(escaped(words));
        html.append("\" src=\"data:image/png;base64,");
        html.append(Base64.getEncoder().encodeToString(png)).append("\">\n");
        return this;
    }

    /**
     * A table: the first column names, the others are numbers.
     *
     * @param head one text per column, or nothing for a table without a head
     * @param rows one text per column each
     */
    public HtmlPage table(List<String> head, List<List<String>> rows) {
        html.append("<table>\n");
        if (!head.isEmpty()) {
            row("th", head);
        }
        rows.forEach(r -> row("td", r));
        html.append("</table>\n");
        return this;
    }

    /** The page's text. */
    public String text() {
        return html + "</body></html>\n";
    }

    private void row(String cell, List<String> texts) {
        html.append("<tr>");
        texts.forEach(t -> html.append('<')
                .append(cell)
                .append('>')
                .append(escaped(t))
                .append("</")
                .append(cell)
                .append('>'));
        html.append("</tr>\n");
    }

    private HtmlPage element(String name, String text) {
        html.append('<')
                .append(name)
                .append('>')
                .append(escaped(text))
                .append("</")
                .append(name)
                .append(">\n");
        return this;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
