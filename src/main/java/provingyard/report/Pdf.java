package provingyard.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A page as a PDF file with the program's own fonts in it. */
final class Pdf {

    static {
        // Its log would stand among the answers of a command.
        XRLog.setLoggingEnabled(false);
    }

    private Pdf() {}

    /** Lays a page out on paper. */
    static byte[] of(HtmlPage page, Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        for (PageFonts.Face face : PageFonts.FACES) {
            byte[] letters = PageFonts.letters(face, page.shown());
            builder.useFont(
                    () -> new ByteArrayInputStream(letters), face.family(), face.weight(), FontStyle.NORMAL, true);
        }
        builder.withProducer("Proving Yard");
        builder.withHtmlContent(page.text(paper), null);
        builder.toStream(out);
        builder.run();
        return out.toByteArray();
    }

    /** How many pages a PDF file has. */
    static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }
}
