package provingyard.report;

import java.util.List;
import provingyard.setup.Placement;
import provingyard.study.Debrief;

/** The plan with the trainee's sensors, and the mark's places as ghosts. */
final class PlanPart {

    private final Debrief debrief;
    private final PageWords words;
    private final PageCharts charts;
    private final PlanPictures plans;

    PlanPart(Debrief debrief, PageWords words, PageCharts charts, PlanPictures plans) {
        this.debrief = debrief;
        this.words = words;
        this.charts = charts;
        this.plans = plans;
    }

    void write(HtmlPage page) {
        List<Placement> ghosts = debrief.mark().map(m -> m.setUp().sensors()).orElse(List.of());
        String says = words.say(ghosts.isEmpty() ? "plan.titleYours" : "plan.title", words.title());
        page.open("div", "keep");
        page.plan(plans.sensors(ghosts), says, "");
        if (!ghosts.isEmpty()) {
            page.open("p", "note").icon(charts.ring(false)).text(words.say("plan.yours") + "\u2003");
            page.icon(charts.ring(true)).text(words.say("plan.mark")).close();
        }
        page.close();
    }
}
