package provingyard.report;

import java.util.List;
import provingyard.quantity.UnitSystem;
import provingyard.season.Season;
import provingyard.study.Debrief;

/**
 * The debrief of a lived season as a page: what was lost between the clock alone and the mark, where the water went, ice
 * and leaks, what each decision cost, what each sensor is worth, the moments that mattered, the set-ups, and how it was
 * computed. What is not known is left out.
 */
public final class DebriefPage {

    private static final double LETTERING = 2.2;

    /** Signs of the foot of a sheet: it has one line. */
    private static final int LONGEST_FOOT = 80;

    private final Story story;
    private final PageWords words;
    private final PageCharts charts;

    private DebriefPage(Story story, String language, UnitSystem units) {
        this.story = story;
        words = new PageWords(story.debrief().season().site().scenario(), language, units);
        charts = new PageCharts(words);
    }

    /** The page in a language and a system of units. */
    public static HtmlPage of(Story story, String language, UnitSystem units) {
        return new DebriefPage(story, language, units).page();
    }

    private HtmlPage page() {
        Debrief debrief = story.debrief();
        PlanPictures plans = new PlanPictures(debrief.season(), words, LETTERING);
        HtmlPage page = new HtmlPage(words.language(), words.say("page.title", words.title()), "debrief");
        foot(page);
        header(page, debrief);
        ResultPart result = new ResultPart(debrief, words, charts);
        SharesPart shares = new SharesPart(debrief, words, charts, plans);
        page.open("div", "top").open("div", "main");
        result.score(page);
        shares.commitment(page);
        result.water(page);
        shares.write(page);
        page.close().open("div", "side");
        new PlanPart(debrief, words, charts, plans).write(page);
        new MomentsPart(debrief, words, charts).write(page);
        page.close().open("div", "rest");
        new LeaksPart(debrief, words).write(page);
        new IcePart(debrief, words, charts, plans).write(page);
        page.close().close();
        new WorthPart(debrief, words, charts).write(page);
        new SetUpsPart(story, words, charts).write(page);
        BooksPart books = new BooksPart(debrief, words);
        books.costs(page);
        books.balances(page);
        books.about(page);
        return page.note(words.say("about.note"));
    }

    /** What stands at the foot of every sheet of paper. */
    private void foot(HtmlPage page) {
        String learner = story.debrief().learner();
        String line = learner.isBlank() ? words.title() : words.title() + ". " + words.say("page.learner", learner);
        int most = Math.min(LONGEST_FOOT, line.codePointCount(0, line.length()));
        page.element("div", "foot paper", line.substring(0, line.offsetByCodePoints(0, most)));
    }

    private void header(HtmlPage page, Debrief debrief) {
        page.element("h1", "", words.say("page.title", words.title()));
        Season season = debrief.season();
        int days = debrief.season().outcome().days();
        String from = words.date(season.clock(0).toLocalDate());
        String to = words.date(season.clock(Math.max(0, season.tick() - 1)).toLocalDate());
        page.element("p", "sub", words.scenario().subtitle().in(words.language()));
        List<String> said = debrief.learner().isBlank()
                ? List.of(words.say("page.season", Integer.toString(days), from, to))
                : List.of(
                        words.say("page.season", Integer.toString(days), from, to),
                        words.say("page.learner", debrief.learner()));
        page.element("p", "sub", String.join(". ", said));
    }
}
