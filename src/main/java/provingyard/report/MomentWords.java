package provingyard.report;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.scenario.YardPlan;
import provingyard.study.Gauge;
import provingyard.study.Moment;
import provingyard.study.Moment.What;
import provingyard.study.Moment.Why;
import provingyard.text.Texts;

/** Says a moment in one language and system of units: a sentence with cause, cost and remedy, and a title for a list. */
public final class MomentWords {

    /** Depth in m of sprinkler water that wets a rain sensor beyond doubt: the least usual set point is 3 mm. */
    private static final double WETTED = 0.003;

    /** Share of the rain from which a sensor is said to have caught it. */
    private static final double CAUGHT_MOST = 0.7;

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");
    private static final int MOST_WALKS = 3;

    private final Scenario scenario;
    private final Texts texts;
    private final Display display;

    /** Words for moments of a site's seasons. */
    public MomentWords(Scenario scenario, String language, UnitSystem units) {
        this.scenario = scenario;
        texts = Texts.of("debrief", language);
        display = Display.of(units, language);
    }

    /** What happened, why, what it cost, and what would have helped. */
    public String sentence(Moment moment) {
        List<Object> values = new ArrayList<>();
        values.add(at(moment.tick()));
        values.add(subjects(moment));
        values.add(amount(moment));
        values.add(display.text(Show.MONEY, Math.abs(moment.money())));
        values.add(moment.sensor() == null ? "" : texts.say("moment.sensor." + moment.sensor()));
        for (Gauge gauge : Gauge.of(moment.what())) {
            values.add(show(gauge, gauge.on(moment), moment.sensor()));
        }
        String said = capital(texts.say(key(moment), values.toArray()));
        double dead = Gauge.DEAD.on(moment);
        return dead > 0 ? texts.say("moment.dead", said, display.text(Show.AREA, dead)) : said;
    }

    /** The same in few words: what happened, and what brought it about. */
    public String title(Moment moment) {
        String sensor = moment.sensor() == null ? "" : texts.say("moment.shortSensor." + moment.sensor());
        return texts.say(
                "moment.title",
                texts.say("moment.title." + moment.what()),
                texts.say("moment.cause." + moment.why(), sensor));
    }

    /** Date and time of its first minute, such as {@code Nov 9, 05:00}. */
    public String when(Moment moment) {
        LocalDateTime clock = clock(moment.tick());
        String date = DateTimeFormatter.ofPattern(texts.say("moment.date"), texts.locale())
                .format(clock);
        return texts.say("moment.when", date, TIME.format(clock));
    }

    /** How much of what: a volume, iced area times time, dry area times time; empty for alarms. */
    public String amount(Moment moment) {
        return switch (moment.what()) {
            case ICED, SAVED_ICE -> display.text(Show.ICE, moment.amount());
            case WENT_DRY -> display.text(Show.AREA, moment.amount()) + "·d";
            case FALSE_ALARM -> "";
            default -> display.text(Show.VOLUME, moment.amount());
        };
    }

    /** Name of the icon that stands for a What. */
    public static String icon(What what) {
        return switch (what) {
            case WATERED_WET_SOIL, SAVED_WATER -> "drop";
            case DRIFTED, SAVED_DRIFT -> "wind";
            case ICED, SAVED_ICE -> "ice";
            case LEAKED, LEAK_SHUT -> "leak";
            case FALSE_ALARM -> "alarm";
            case WENT_DRY -> "sun";
        };
    }

    /** The most telling key that there is. */
    private String key(Moment moment) {
        String general = "moment." + moment.what() + "." + moment.why();
        String ofKind = general + "." + moment.sensor();
        String special = ofKind + variant(moment);
        return texts.has(special) ? special : texts.has(ofKind) ? ofKind : general;
    }

    private String variant(Moment moment) {
        if (moment.what() == What.WATERED_WET_SOIL && moment.why() == Why.PLACE) {
            return Gauge.CAUGHT.on(moment) >= CAUGHT_MOST * Gauge.FELL.on(moment) ? ".DRIED" : "";
        }
        if (moment.what() == What.WENT_DRY && moment.why() == Why.PLACE) {
            return Gauge.SPRAYED.on(moment) >= WETTED ? ".SPRAYED" : "";
        }
        double after = Gauge.FOUND_AFTER.on(moment);
        if (moment.what() == What.LEAKED && moment.why() == Why.SETTING && Double.isFinite(after)) {
            return after > scenario.costs().lateAfter() ? ".LATE" : ".LEFT";
        }
        return "";
    }

    private String show(Gauge gauge, double value, SensorKind sensor) {
        return switch (gauge) {
            case FELL, CAUGHT, SPRAYED -> display.text(Show.DEPTH, value);
            case SEEN, TRIPS -> display.text(reading(sensor), value);
            case WETNESS -> display.text(Show.FRACTION, value);
            case BELOW, RUNOFF -> display.text(Show.VOLUME, value);
            case WIND -> display.text(Show.SPEED, value);
            case AIR -> display.text(Show.TEMPERATURE, value);
            case AREA, DEAD -> display.text(Show.AREA, value);
            case FLOW, EXPECTED, TRUTH -> display.text(Show.FLOW, value);
            case FOUND_AFTER, LASTED -> display.text(Show.DURATION, value);
            case STOPS -> Double.isNaN(value) ? "" : Long.toString(Math.round(value));
        };
    }

    private static Show reading(SensorKind sensor) {
        if (sensor == null) {
            return Show.FRACTION;
        }
        return switch (sensor) {
            case RAIN -> Show.DEPTH;
            case WIND -> Show.SPEED;
            case FREEZE -> Show.TEMPERATURE;
            case FLOW -> Show.FLOW;
            case SOIL -> Show.FRACTION;
        };
    }

    private LocalDateTime clock(long tick) {
        return scenario.season().from().atStartOfDay().plusMinutes(tick);
    }

    /** Spanish says one o’clock in the singular. */
    private String at(long tick) {
        LocalDateTime clock = clock(tick);
        return texts.say(clock.getHour() == 1 ? "moment.at.one" : "moment.at", TIME.format(clock));
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private String subjects(Moment moment) {
        return switch (moment.what()) {
            case ICED -> walks(moment.subjects());
            case LEAKED, LEAK_SHUT -> leak(moment.subjects().get(0));
            case FALSE_ALARM -> running(moment.subjects());
            default -> zones(moment.subjects());
        };
    }

    private List<String> allZones() {
        return scenario.plumbing().fittings().stream()
                .filter(f -> f.kind() == Plumbing.FittingKind.ZONE_VALVE)
                .map(Plumbing.Fitting::id)
                .toList();
    }

    /** The zone that ran; an alarm between runs names its sensor instead. */
    private String running(List<String> ids) {
        boolean zone = allZones().containsAll(ids);
        return zone ? texts.say("moment.running", zones(ids)) : texts.say("moment.shut");
    }

    /** Zones by their number in the document. */
    private String zones(List<String> ids) {
        List<String> all = allZones();
        TreeSet<Integer> numbers = new TreeSet<>();
        ids.stream().filter(all::contains).forEach(id -> numbers.add(all.indexOf(id) + 1));
        if (numbers.isEmpty()) {
            return "";
        }
        if (numbers.size() == all.size() && all.size() > 1) {
            return texts.say("moment.allZones");
        }
        return texts.say(numbers.size() == 1 ? "moment.zone" : "moment.zones", joined(ranges(numbers)));
    }

    /** Three or more in a row as a range. */
    private List<String> ranges(TreeSet<Integer> numbers) {
        List<String> parts = new ArrayList<>();
        Integer first = numbers.first();
        while (first != null) {
            int last = first;
            while (numbers.contains(last + 1)) {
                last++;
            }
            if (last - first >= 2) {
                parts.add(texts.say("moment.range", first, last));
            } else {
                for (int n = first; n <= last; n++) {
                    parts.add(Integer.toString(n));
                }
            }
            first = numbers.higher(last);
        }
        return parts;
    }

    private String joined(List<String> parts) {
        String text = parts.get(0);
        for (int i = 1; i < parts.size(); i++) {
            text = texts.say(i == parts.size() - 1 ? "moment.and" : "moment.list", text, parts.get(i));
        }
        return text;
    }

    /** The walks that iced most, those that have labels. */
    private String walks(List<String> ids) {
        List<String> names = ids.stream()
                .flatMap(id -> label(id).stream())
                .distinct()
                .limit(MOST_WALKS)
                .toList();
        return names.isEmpty() ? texts.say("moment.walk") : joined(names);
    }

    private Optional<String> label(String surface) {
        return scenario.yard().surfaces().stream()
                .filter(s -> s.id().equals(surface) && s.label() != null)
                .map(YardPlan.Surface::label)
                .map(l -> l.in(texts.language()))
                .findFirst();
    }

    private String leak(String on) {
        String kind = scenario.faults().stream()
                .filter(f -> f.on().equals(on))
                .map(FaultPlan::kind)
                .map(k -> "moment.fault." + k)
                .filter(texts::has)
                .findFirst()
                .orElse("moment.fault.OTHER");
        return texts.say("moment.place", texts.say(kind), on);
    }
}
