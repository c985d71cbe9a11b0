package provingyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.picture.Path;
import provingyard.picture.Pen;
import provingyard.picture.Theme;
import provingyard.picture.Tone;
import provingyard.quantity.UnitSystem;

/** Whatever the texts of a call are, its page shows them as they are. */
class CallPageTest {

    private static final String SLY = "<script>alert('1')</script> & \"=\"";

    private static CallStory story() {
        byte[] png = PageCharts.png(new BufferedImage(20, 10, BufferedImage.TYPE_INT_ARGB));
        CallStory.Grid grid = new CallStory.Grid(List.of(SLY, SLY), List.of(List.of(SLY, SLY)), 1);
        CallStory.Part part = new CallStory.Part(SLY, SLY, List.of(SLY), grid);
        CallStory.Drawing line = (s, w) -> {
            s.stroke(Path.segment(0, 5, w, 5), Pen.of(Theme.LIGHT.at(Tone.INK), 1));
            return 10;
        };
        return new CallStory(
                "en",
                SLY,
                SLY,
                List.of(SLY),
                SLY,
                part,
                new CallStory.Points(SLY, SLY),
                grid,
                List.of(SLY),
                SLY,
                new CallStory.Plan(png, SLY, SLY),
                new CallStory.Remarks(SLY, List.of(new CallStory.Remark("ok", SLY))),
                part,
                new CallStory.Chart(SLY, SLY, line, SLY),
                new CallStory.Readings(SLY, List.of(part)),
                part);
    }

    @Test
    void nothingBecomesMarkup() throws Exception {
        String page = CallPage.of(story()).text();
        assertFalse(page.contains("<script"), page);
        String shown = PageReader.xml(page).getElementsByTagName("body").item(0).getTextContent();
        int times = shown.split(java.util.regex.Pattern.quote(SLY), -1).length - 1;
        // What is in attributes (two pictures' words, heads of stacked cells) is no text; unsafe acts need no table.
        assertEquals(40, times, shown);
        assertTrue(shown.contains("must not be used"), "what the program is not for");
    }

    @Test
    void paperShowsTheSame() throws Exception {
        String text = PageReader.text(CallPage.pdf(story(), Paper.LETTER));
        assertTrue(text.contains("<script>alert('1')</script>"), text);
    }

    @Test
    void aTableIsSafeInASpreadsheet() {
        CallCsv.Line line =
                new CallCsv.Line(1, 4, "readMeter", "=2+3", "9.3 L/min", 4, 0.5, Double.NaN, -0.25, 3785.411784);
        String csv = new String(CallCsv.of(List.of(line), "en", UnitSystem.US), StandardCharsets.UTF_8);
        String[] rows = csv.split("\r\n");
        assertEquals(2, rows.length);
        assertTrue(rows[0].endsWith("(gal)\""), rows[0]);
        assertEquals("1,4,\"readMeter\",\"'=2+3\",\"9.3 L/min\",4,0.5,,-0.25,1000", rows[1]);
        String metric = new String(CallCsv.of(List.of(line), "es", UnitSystem.METRIC), StandardCharsets.UTF_8);
        assertTrue(metric.contains("(m³)"), metric);
        assertTrue(metric.contains(",3.785411784\r\n"), metric);
    }
}
