package provingyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import provingyard.scenario.Schedule;
import provingyard.scenario.SensorKind;
import provingyard.setup.Cost;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.study.Mark;

/** The trainee's set-up and the mark's, decision by decision. */
final class SetUpsPart {

    private final Story story;
    private final PageWords words;
    private final PageCharts charts;
    private final SensorWords sensors;

    SetUpsPart(Story story, PageWords words, PageCharts charts) {
        this.story = story;
        this.words = words;
        this.charts = charts;
        sensors = new SensorWords(words);
    }

    void write(HtmlPage page) {
        SetUp own = story.debrief().season().setUp();
        Optional<SetUp> mark = story.debrief().mark().map(Mark::setUp);
        page.open("div", "begin").heading(words.say("setUp.title"));
        page.paragraph(name(own));
        page.open("table", "stack").open("thead", "").open("tr", "head");
        page.element("th", "", words.say("setUp.what"));
        page.element("th", "own half", words.say("page.you"));
        mark.ifPresent(m -> page.element("th", "half", words.say("page.mark")));
        page.close().close().open("tbody", "");
        for (SensorKind kind : SensorKind.values()) {
            if (!own.of(kind).isEmpty() || mark.map(m -> !m.of(kind).isEmpty()).orElse(false)) {
                row(page, kind, own, mark);
            }
        }
        schedule(page, own, mark);
        price(page, own, mark);
        page.close().close().close();
    }

    private String name(SetUp own) {
        if (!story.setUp().isBlank()) {
            return words.say("setUp.named", story.setUp());
        }
        return own.equals(SetUp.CLOCK_ALONE) ? words.say("setUp.clock") : "";
    }

    private void row(HtmlPage page, SensorKind kind, SetUp own, Optional<SetUp> mark) {
        page.open("tr", "").open("td", "who signed", HtmlPage.sign(charts.icon(kind)));
        page.text(words.window("kind." + kind.name())).close();
        side(page, "page.you", kind, own);
        mark.ifPresent(m -> side(page, "page.mark", kind, m));
        page.close();
    }

    private void side(HtmlPage page, String whose, SensorKind kind, SetUp setUp) {
        cell(page, whose);
        if (setUp.of(kind).isEmpty()) {
            page.span("quiet", words.say("setUp.none"));
        }
        for (Placement placement : setUp.of(kind)) {
            page.element("div", "lead", words.sensor(placement, setUp));
            page.element("div", "", sensors.place(placement));
            page.list("lines", sensors.settings(placement, setUp));
        }
        page.close();
    }

    private void cell(HtmlPage page, String whose) {
        page.open("td", "half block", HtmlPage.attribute("data-head", words.say(whose)));
    }

    private void schedule(HtmlPage page, SetUp own, Optional<SetUp> mark) {
        List<Schedule> any = new ArrayList<>();
        any.add(own.schedule());
        mark.ifPresent(m -> any.add(m.schedule()));
        if (any.stream().allMatch(Objects::isNull)) {
            return;
        }
        page.open("tr", "").open("td", "who signed", HtmlPage.sign(charts.icon(null)));
        page.text(words.say("share.schedule")).close();
        schedule(page, "page.you", own);
        mark.ifPresent(m -> schedule(page, "page.mark", m));
        page.close();
    }

    private void schedule(HtmlPage page, String whose, SetUp setUp) {
        cell(page, whose);
        if (setUp.schedule() == null) {
            page.span("quiet", words.say("setUp.site"));
        } else {
            page.list("lines", sensors.schedule(setUp.schedule()));
        }
        page.close();
    }

    private void price(HtmlPage page, SetUp own, Optional<SetUp> mark) {
        page.open("tr", "sum").element("td", "", words.say("setUp.price"));
        price(page, "page.you", own);
        mark.ifPresent(m -> price(page, "page.mark", m));
        page.close();
    }

    private void price(HtmlPage page, String whose, SetUp setUp) {
        cell(page, whose);
        page.text(words.money(Cost.of(setUp, words.scenario().kit()).spent())).close();
    }
}
