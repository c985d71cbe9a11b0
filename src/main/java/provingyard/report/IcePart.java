package provingyard.report;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import provingyard.quantity.Show;
import provingyard.season.Ledger;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;

/** Iced walks: which and for how long, where on the plan, and the temperatures of the worst night. */
final class IcePart {

    /** What happened on one walk. */
    private static final class Walk {
        private final Set<LocalDate> days = new TreeSet<>();
        private long minutes;
        private double area;
    }

    private final Story story;
    private final PageWords words;
    private final PageCharts charts;
    private final PlanPictures plans;

    IcePart(Story story, PageWords words, PageCharts charts, PlanPictures plans) {
        this.story = story;
        this.words = words;
        this.charts = charts;
        this.plans = plans;
    }

    void write(HtmlPage page) {
        Season season = story.debrief().season();
        Ledger.Ice ice = season.ledger().ice();
        if (ice.areaHours() <= 0) {
            page.heading(words.say("ice.title"));
            page.paragraph(words.say("ice.none"));
            return;
        }
        page.heading(
                words.say("ice.title"),
                words.say(
                        "ice.aside",
                        words.text(Show.ICE, ice.areaHours()),
                        words.text(Show.ICE, ice.areaHoursInTraffic())));
        table(page, season);
        story.icing().ifPresent(icing -> pictures(page, season, icing));
    }

    private void pictures(HtmlPage page, Season season, Icing icing) {
        page.open("div", "keep");
        String where = words.say("ice.plan", words.title());
        page.plan(plans.ice(icing), where, "").note(where).close();
        Icing.Night night = icing.night();
        if (night != null) {
            long last = night.from() + (long) night.air().length * night.step();
            String says =
                    words.say("ice.night", words.day(season.clock(last).toLocalDate()), words.thing(night.walk()));
            page.open("div", "keep").lead(says).chart(charts.night(night), says).close();
        }
    }

    private void table(HtmlPage page, Season season) {
        Table table = new Table("");
        table.head(
                List.of(words.say("ice.walk"), words.say("ice.days"), words.say("ice.hours"), words.say("ice.area")));
        walks(season)
                .forEach((id, walk) -> table.row(
                        Cell.text(words.thing(id)),
                        Cell.number(words.number(walk.days.size())),
                        Cell.number(words.text(Show.DURATION, walk.minutes * 60.0)),
                        Cell.number(words.text(Show.AREA, walk.area))));
        page.open("div", "keep").table(table).close();
    }

    /** What the season's events tell of each walk; the area is the one at which its ice was seen first. */
    private static Map<String, Walk> walks(Season season) {
        Map<String, Walk> walks = new LinkedHashMap<>();
        Map<String, Long> since = new LinkedHashMap<>();
        for (SeasonEvent event : season.events()) {
            if (event.kind() == SeasonEvent.Kind.WALK_ICED) {
                Walk walk = walks.computeIfAbsent(event.subject(), id -> new Walk());
                walk.area = Math.max(walk.area, event.values().getOrDefault("area", 0.0));
                since.put(event.subject(), event.tick());
            } else if (event.kind() == SeasonEvent.Kind.WALK_CLEAR && since.containsKey(event.subject())) {
                add(season, walks.get(event.subject()), since.remove(event.subject()), event.tick());
            }
        }
        since.forEach((id, from) -> add(season, walks.get(id), from, season.tick()));
        return walks;
    }

    private static void add(Season season, Walk walk, long from, long to) {
        walk.minutes += to - from;
        LocalDate last = season.clock(to).toLocalDate();
        for (LocalDate day = season.clock(from).toLocalDate(); !day.isAfter(last); day = day.plusDays(1)) {
            walk.days.add(day);
        }
    }
}
