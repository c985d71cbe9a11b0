package provingyard.report;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import provingyard.picture.NightPlot;
import provingyard.quantity.Show;
import provingyard.season.Chronicle;
import provingyard.season.Ledger;
import provingyard.study.Debrief;

/** Iced walks: night by night, where on the plan, and the temperatures of the worst night. */
final class IcePart {

    /** More would be a list and no lesson. */
    private static final int MOST = 10;

    private static final int HALF_DAY = 720;

    /** The ice that people met counts first. */
    private static final Comparator<Chronicle.IcedWalk> WORST_FIRST = Comparator.comparingDouble(
                    Chronicle.IcedWalk::inTraffic)
            .thenComparingDouble(Chronicle.IcedWalk::areaHours)
            .reversed();

    private final Debrief debrief;
    private final PageWords words;
    private final PageCharts charts;
    private final PlanPictures plans;

    IcePart(Debrief debrief, PageWords words, PageCharts charts, PlanPictures plans) {
        this.debrief = debrief;
        this.words = words;
        this.charts = charts;
        this.plans = plans;
    }

    void write(HtmlPage page) {
        List<Chronicle.IcedWalk> iced = debrief.chronicle().iced();
        if (iced.isEmpty()) {
            page.heading(words.say("ice.title"));
            page.paragraph(words.say("ice.none"));
            return;
        }
        Ledger.Ice ice = debrief.season().ledger().ice();
        page.heading(
                words.say("ice.title"),
                words.say(
                        "ice.aside",
                        words.text(Show.ICE, ice.areaHours()),
                        words.text(Show.ICE, ice.areaHoursInTraffic())));
        List<Chronicle.IcedWalk> worst =
                iced.stream().sorted(WORST_FIRST).limit(MOST).toList();
        table(page, iced.size(), worst);
        night(page, worst.get(0));
        plan(page, iced);
    }

    private void table(HtmlPage page, int all, List<Chronicle.IcedWalk> worst) {
        Table table = new Table("");
        table.head(List.of(
                words.say("ice.morning"), words.say("ice.walk"), words.say("ice.ice"), words.say("ice.people")));
        for (Chronicle.IcedWalk walk : worst) {
            table.row(
                    Cell.name(words.day(morning(walk))),
                    Cell.text(words.thing(walk.walk())),
                    Cell.number(words.text(Show.ICE, walk.areaHours())),
                    Cell.number(words.text(Show.ICE, walk.inTraffic())).look(walk.inTraffic() > 0 ? "loss" : ""));
        }
        page.table(table);
        if (all > worst.size()) {
            page.note(words.say("ice.most", words.number(worst.size()), words.number(all)));
        }
    }

    /** The day on whose morning a night ends: nights are counted from noon to noon. */
    private LocalDate morning(Chronicle.IcedWalk walk) {
        return debrief.season().clock(walk.from() + HALF_DAY).toLocalDate();
    }

    private void night(HtmlPage page, Chronicle.IcedWalk worst) {
        NightPlot plot =
                IcedNight.of(debrief.season(), debrief.chronicle(), worst, words.windowTexts(), words.display());
        String says = words.say("ice.night", words.day(morning(worst)), words.thing(worst.walk()));
        page.open("div", "keep").lead(says).chart(charts.night(plot), says);
        page.note(words.window("ice.key")).close();
    }

    private void plan(HtmlPage page, List<Chronicle.IcedWalk> iced) {
        List<String> walks =
                iced.stream().map(Chronicle.IcedWalk::walk).distinct().toList();
        String where = words.say("ice.plan", words.title());
        page.open("div", "keep").plan(plans.iced(walks), where, "").note(where).close();
    }
}
