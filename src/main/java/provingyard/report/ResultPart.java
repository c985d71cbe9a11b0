package provingyard.report;

import java.util.ArrayList;
import java.util.List;
import provingyard.quantity.Show;
import provingyard.score.Score;
import provingyard.season.Ledger;
import provingyard.season.Outcome;
import provingyard.study.Debrief;

/** The score between the clock alone and the mark, and where the water went. */
final class ResultPart {

    private final Debrief debrief;
    private final PageWords words;
    private final PageCharts charts;

    ResultPart(Debrief debrief, PageWords words, PageCharts charts) {
        this.debrief = debrief;
        this.words = words;
        this.charts = charts;
    }

    void score(HtmlPage page) {
        Score score = debrief.standing().score();
        page.open("div", "keep");
        if (score.points() == null) {
            page.element("h2", "first", words.say("page.noScore"));
            page.paragraph(words.window("reason." + score.reason().name()));
            page.close();
            counts(page);
            return;
        }
        page.open("table", "plain").open("tbody", "").open("tr", "");
        page.open("td", "cell points");
        page.element("div", "score", Integer.toString(score.shown()));
        page.element("div", "note", words.say("page.points")).close();
        page.open("td", "cell");
        page.chart(charts.score(debrief.standing()), words.say("page.scoreBar"));
        page.close().close().close().close();
        outside(page, score);
        page.close();
        counts(page);
    }

    /** A score beyond the scale is celebrated, or explained. */
    private void outside(HtmlPage page, Score score) {
        if (score.outside()) {
            String raw = words.say("page.outside", words.number(Math.rint(score.points())));
            page.lead(words.say(score.points() > 100 ? "page.better" : "page.worse") + " " + raw);
        }
    }

    private void counts(HtmlPage page) {
        Outcome outcome = debrief.season().outcome();
        Ledger ledger = outcome.ledger();
        Outcome.Leaks leaks = outcome.leaks();
        List<String[]> counts = new ArrayList<>();
        counts.add(new String[] {"page.iced", words.text(Show.ICE, ledger.ice().areaHours())});
        counts.add(new String[] {
            "page.icedPeople", words.text(Show.ICE, ledger.ice().areaHoursInTraffic())
        });
        counts.add(new String[] {"page.mornings", words.number(ledger.ice().mornings())});
        counts.add(new String[] {
            "page.leaks", words.say("page.leaksOf", words.number(leaks.found()), words.number(leaks.happened()))
        });
        counts.add(new String[] {"page.falseAlarms", words.number(leaks.falseAlarms())});
        counts.add(new String[] {"page.dry", days(ledger.plants().dryAreaDays())});
        page.open("p", "");
        for (int i = 0; i < counts.size(); i++) {
            page.text(i == 0 ? "" : "  · ").text(words.say(counts.get(i)[0]) + ": ");
            page.open("b", "").text(counts.get(i)[1]).close();
        }
        page.close();
    }

    private String days(double areaDays) {
        return words.text(Show.AREA, areaDays) + "·d";
    }

    void water(HtmlPage page) {
        Outcome trainee = debrief.season().outcome();
        page.open("div", "keep");
        page.heading(
                words.say("water.title"),
                words.say("water.aside", words.display().unit(Show.VOLUME), words.number(trainee.days())));
        page.chart(charts.water(debrief.clock(), trainee, debrief.best()), words.say("water.chart"));
        page.close();
    }
}
