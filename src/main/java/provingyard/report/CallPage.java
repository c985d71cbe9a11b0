package provingyard.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import provingyard.picture.Icons;
import provingyard.text.Texts;

/**
 * The debrief of a service call as a page: what was unsafe before all else, the score line by line, the yard with what
 * was likely, the tests with what they could tell, what each reading said, and the expert's path.
 */
public final class CallPage {

    /** Signs of the foot of a sheet: it has one line. */
    private static final int LONGEST_FOOT = 80;

    private final CallStory story;

    private CallPage(CallStory story) {
        this.story = story;
    }

    /** The page of a call. */
    public static HtmlPage of(CallStory story) {
        return new CallPage(story).page();
    }

    /** The page as a PDF file. */
    public static byte[] pdf(CallStory story, Paper paper) throws IOException {
        return Pdf.of(of(story), paper);
    }

    private HtmlPage page() {
        HtmlPage page = new HtmlPage(story.language(), story.title(), "debrief");
        int most = Math.min(
                LONGEST_FOOT, story.site().codePointCount(0, story.site().length()));
        page.element("div", "foot paper", story.site().substring(0, story.site().offsetByCodePoints(0, most)));
        page.element("h1", "", story.title());
        story.about().forEach(line -> page.element("p", "sub", line));
        page.element("p", "said", story.complaint());
        page.open("div", "top").open("div", "main");
        unsafe(page);
        score(page);
        part(page, story.tests(), "stack");
        page.close().open("div", "side");
        plan(page);
        remarks(page);
        page.close().open("div", "rest");
        curve(page);
        readings(page);
        part(page, story.expert(), "stack");
        page.close().close();
        return page.note(Texts.of("report", story.language()).say("about.note"));
    }

    private void unsafe(HtmlPage page) {
        CallStory.Part unsafe = story.unsafe();
        if (!unsafe.sentences().isEmpty()) {
            page.open("div", "keep").open("h2", "first");
            page.icon(PageCharts.drawn(Icons.get("alarm"))).span("loss", unsafe.title());
            page.close().list("", unsafe.sentences()).close();
        }
    }

    private void score(HtmlPage page) {
        page.open("div", "keep").open("table", "plain").open("tbody", "").open("tr", "");
        page.open("td", "cell points");
        page.element("div", "score", story.points().score());
        page.element("div", "note", story.points().of()).close();
        page.open("td", "cell");
        grid(page, story.score(), "");
        page.close().close().close().close();
        story.below().forEach(page::paragraph);
        if (!story.answer().isEmpty()) {
            page.element("p", "said", story.answer());
        }
        page.close();
    }

    private void plan(HtmlPage page) {
        page.open("div", "keep").plan(story.plan().png(), story.plan().words(), "");
        page.note(story.plan().legend()).close();
    }

    private void remarks(HtmlPage page) {
        page.open("div", "keep").heading(story.remarks().title()).open("ul", "lines");
        for (CallStory.Remark remark : story.remarks().all()) {
            page.open("li", "").icon(PageCharts.drawn(Icons.get(remark.sign()))).text(remark.text());
            page.close();
        }
        page.close().close();
    }

    private void curve(HtmlPage page) {
        CallStory.Chart curve = story.curve();
        page.open("div", "keep").heading(curve.title(), curve.aside());
        page.chart(PageCharts.picture(curve.drawing()::draw), curve.words());
        page.close();
    }

    private void readings(HtmlPage page) {
        if (story.readings().all().isEmpty()) {
            return;
        }
        page.heading(story.readings().title());
        for (CallStory.Part part : story.readings().all()) {
            page.open("div", "keep").element("p", "lead reading", part.title());
            part.sentences().forEach(page::paragraph);
            grid(page, part.grid(), "stack");
            page.close();
        }
    }

    private static void part(HtmlPage page, CallStory.Part part, String look) {
        page.open("div", "").heading(part.title(), part.aside());
        part.sentences().forEach(page::paragraph);
        grid(page, part.grid(), look);
        page.close();
    }

    private static void grid(HtmlPage page, CallStory.Grid grid, String look) {
        if (grid == null || grid.rows().isEmpty()) {
            return;
        }
        Table table = new Table(look).head(grid.head());
        grid.rows().forEach(r -> table.row(cells(r, grid.numbers())));
        page.table(table);
    }

    private static List<Cell> cells(List<String> row, int numbers) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            boolean number = i >= row.size() - numbers;
            boolean word = row.get(i).indexOf(' ') < 0;
            cells.add(number ? Cell.number(row.get(i)) : word ? Cell.name(row.get(i)) : Cell.text(row.get(i)));
        }
        return cells;
    }
}
