package provingyard.report;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads pages back as others would. */
final class PageReader {

    /** A letter on a sheet: its page and its edges in pt from the left and the top. */
    record Letter(int page, double left, double right, double top, double bottom) {}

    private PageReader() {}

    /** The page as XML. */
    static Document xml(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    /** All elements of a page. */
    static List<Element> elements(Document page) {
        NodeList all = page.getElementsByTagName("*");
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            elements.add((Element) all.item(i));
        }
        return elements;
    }

    /** The text of a PDF file, with lines and no-break spaces as plain spaces. */
    static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0\\u2003]+", " ");
        }
    }

    /** Every letter of a PDF file. */
    static List<Letter> letters(byte[] pdf) throws IOException {
        List<Letter> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition t) {
                    double right = t.getXDirAdj() + t.getWidthDirAdj();
                    double top = t.getYDirAdj() - t.getHeightDir();
                    letters.add(new Letter(getCurrentPageNo(), t.getXDirAdj(), right, top, t.getYDirAdj()));
                }
            }.getText(document);
        }
        return letters;
    }
}
