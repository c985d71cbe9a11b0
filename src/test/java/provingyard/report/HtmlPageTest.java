package provingyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class HtmlPageTest {

    private static final String SLY = "\"'><script>alert('&')</script>";
    private static final String SHOWN = "&quot;&#39;&gt;&lt;script&gt;alert(&#39;&amp;&#39;)&lt;/script&gt;";

    @Test
    void whateverTextComesInIsShownAndNotRun() {
        String page = new HtmlPage("en", SLY)
                .heading(SLY)
                .paragraph(SLY)
                .lead(SLY)
                .note(SLY)
                .picture(new byte[] {1, 2, 3}, SLY, 10)
                .table(List.of(SLY), List.of(List.of(SLY, SLY)))
                .text();
        assertFalse(page.contains("<script"), page);
        // Title, first heading, heading, three paragraphs, the picture's words, three cells.
        assertEquals(10, page.split(java.util.regex.Pattern.quote(SHOWN), -1).length - 1, page);
    }

    @Test
    void thePageIsLightPrintableAndWhole() {
        String page = new HtmlPage("es", "Patio").text();
        assertTrue(page.startsWith("<!DOCTYPE html>\n<html lang=\"es\">"), page);
        assertTrue(page.endsWith("</body></html>\n"), page);
        assertTrue(page.contains("@media print"), page);
        assertTrue(page.contains("charset=\"utf-8\""), page);
    }

    @Test
    void theSameTextIsWellFormedXmlWhateverComesIn() throws Exception {
        String broken = SLY + "\u0000\u0007\uFFFE\uD800 \uD83D\uDE00";
        String page = new HtmlPage("en", broken)
                .paragraph(broken)
                .picture(new byte[] {1}, broken, 10)
                .table(List.of(broken), List.of(List.of(broken)))
                .text();
        var document = PageReader.xml(page);
        String shown = SLY + "\uFFFD\uFFFD\uFFFD\uFFFD \uD83D\uDE00";
        assertEquals(shown, document.getElementsByTagName("p").item(0).getTextContent());
        assertEquals(
                shown,
                document.getElementsByTagName("img")
                        .item(0)
                        .getAttributes()
                        .getNamedItem("alt")
                        .getNodeValue());
    }

    @Test
    void aPageThatIsNotClosedIsADefect() {
        HtmlPage page = new HtmlPage("en", "Yard").open("div", "");
        assertThrows(IllegalStateException.class, page::text);
    }
}
