package provingyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provingyard.quantity.UnitSystem;

class PdfTest {

    private static final double PT_A_MM = 72 / 25.4;
    /** Side margins of the sheets, mm. */
    private static final double MARGIN = 16;

    @ParameterizedTest
    @CsvSource({"en,METRIC,595,842", "es,US,612,792"})
    void theDebriefFitsItsSheetsAndTheyAreNumbered(String language, UnitSystem units, int width, int height)
            throws IOException {
        byte[] pdf = Reports.pdf(LivedDebriefs.clinic(), language, units);
        int pages = Pdf.pages(pdf);
        assertTrue(pages >= 3 && pages <= 9, "pages: " + pages);
        String text = PageReader.text(pdf);
        for (int i = 1; i <= pages; i++) {
            assertTrue(text.contains(i + " / " + pages), i + " of " + pages);
        }
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                assertEquals(width, page.getMediaBox().getWidth(), 1);
                assertEquals(height, page.getMediaBox().getHeight(), 1);
            }
        }
        for (PageReader.Letter letter : PageReader.letters(pdf)) {
            assertTrue(letter.left() >= MARGIN * PT_A_MM - 1, letter.toString());
            assertTrue(letter.right() <= width - MARGIN * PT_A_MM + 1, letter.toString());
            assertTrue(letter.top() > 0 && letter.bottom() < height, letter.toString());
        }
    }

    @Test
    void spanishSignsMinusAndPowersAreInTheFontsThatItCarries() throws IOException {
        Story story = LivedDebriefs.told(LivedDebriefs.clinic(), "Íñigo Muñoz ¿sí? ¡ÁÉÍÓÚ áéíóú üÜ ñÑ!");
        byte[] pdf = Reports.pdf(story, "es", UnitSystem.METRIC);
        String text = PageReader.text(pdf);
        for (String said : new String[] {"Íñigo Muñoz ¿sí? ¡ÁÉÍÓÚ áéíóú üÜ ñÑ!", " m³", "m²·h", "\u2212", "°C"}) {
            assertTrue(text.contains(said), said);
        }
        assertFalse(text.contains("#"), "a letter is missing");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    assertTrue(font.getName().contains("Source"), font.getName());
                }
            }
        }
    }

    @Test
    void namesFromOutsideAreTextOnPaperToo() throws IOException {
        String sly = LivedDebriefs.SLY + " =cmd()\u0000\uD83D\uDE00";
        String text =
                PageReader.text(Reports.pdf(LivedDebriefs.told(LivedDebriefs.clinic(), sly), "en", UnitSystem.METRIC));
        assertTrue(text.contains("<script>alert(1)</script> =cmd()"), "the name is shown");
    }

    @Test
    void aVeryLongNameBreaksAndStaysOnTheSheet() throws IOException {
        Story story = LivedDebriefs.told(LivedDebriefs.bare(LivedDebriefs.clinicAsTheMark()), "W".repeat(300));
        for (PageReader.Letter letter : PageReader.letters(Reports.pdf(story, "en", UnitSystem.METRIC))) {
            assertTrue(letter.right() <= 595, letter.toString());
        }
    }

    @Test
    void aRowOfATableIsOnOneSheet() throws IOException {
        byte[] pdf = Reports.pdf(LivedDebriefs.clinic(), "en", UnitSystem.METRIC);
        // The last of a flow sensor's nine lines stands on the sheet of the first.
        int first = sheet(pdf, "Body size");
        assertEquals(first, sheet(pdf, "When water flows with all valves shut"));
    }

    private static int sheet(byte[] pdf, String words) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                var stripper = new org.apache.pdfbox.text.PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                if (stripper.getText(document).contains(words)) {
                    return page;
                }
            }
        }
        throw new AssertionError("not in the file: " + words);
    }
}
