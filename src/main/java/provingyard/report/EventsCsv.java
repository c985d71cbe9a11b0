package provingyard.report;

import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.SensorKind;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;

/** All that happened in a season as comma-separated values: a row an event, units in the columns' names. */
public final class EventsCsv {

    private final Season season;
    private final PageWords words;
    private final Map<String, SensorKind> kinds = new HashMap<>();

    private EventsCsv(Season season, String language, UnitSystem units) {
        this.season = season;
        words = new PageWords(season.site().scenario(), language, units);
        for (Season.Change change : season.changes()) {
            change.setUp().sensors().forEach(p -> kinds.put(p.id(), p.kind()));
        }
    }

    /** The file's bytes. */
    public static byte[] of(Season season, String language, UnitSystem units) {
        return new EventsCsv(season, language, units).bytes();
    }

    private byte[] bytes() {
        Csv csv = new Csv();
        for (String key : List.of("minute", "date", "time", "event", "what", "subject", "name", "cause", "reading")) {
            csv.text(words.say("csv." + key));
        }
        csv.text(words.say("csv.readingUnit"));
        column(csv, "csv.flow", Show.FLOW);
        column(csv, "csv.expected", Show.FLOW);
        column(csv, "csv.limit", Show.FLOW);
        column(csv, "csv.lasted", Show.DURATION);
        column(csv, "csv.after", Show.DURATION);
        column(csv, "csv.area", Show.AREA);
        csv.end();
        season.events().forEach(e -> row(csv, e));
        return csv.bytes();
    }

    private void column(Csv csv, String key, Show show) {
        csv.text(words.say(key) + " (" + words.display().unit(show) + ")");
    }

    private void row(Csv csv, SeasonEvent event) {
        LocalDateTime at = season.clock(event.tick());
        csv.number(event.tick());
        csv.text(at.toLocalDate().toString()).text(words.time(at));
        csv.text(event.kind().name()).text(what(event.kind()));
        csv.text(event.subject()).text(name(event.subject())).text(cause(event.cause()));
        reading(csv, event);
        value(csv, event, "flow", Show.FLOW);
        value(csv, event, "expected", Show.FLOW);
        value(csv, event, "limit", Show.FLOW);
        Double minutes = event.values().get("minutes");
        csv.number(minutes == null ? Double.NaN : minutes);
        value(csv, event, "after", Show.DURATION);
        value(csv, event, "area", Show.AREA);
        csv.end();
    }

    private String what(SeasonEvent.Kind kind) {
        String key = "event." + kind.name();
        return words.windowHas(key) ? words.window(key) : words.say("happened." + kind.name());
    }

    private String name(String subject) {
        SensorKind kind = kinds.get(subject);
        return kind == null ? words.thing(subject) : words.sensor(kind);
    }

    /** A cause is a sensor's id, or one of the controller's own. */
    private String cause(String cause) {
        String key = "cause." + cause;
        return words.windowHas(key) ? words.window(key) : name(cause);
    }

    private void reading(Csv csv, SeasonEvent event) {
        SensorKind kind = kinds.get(event.subject());
        Double shown = event.values().get("shown");
        if (kind == null || shown == null) {
            csv.number(Double.NaN).text("");
            return;
        }
        Show show =
                switch (kind) {
                    case RAIN -> Show.DEPTH;
                    case WIND -> Show.SPEED;
                    case FREEZE -> Show.TEMPERATURE;
                    case FLOW -> Show.FLOW;
                    case SOIL -> Show.FRACTION;
                };
        csv.number(words.display().shown(show, shown)).text(words.display().unit(show));
    }

    private void value(Csv csv, SeasonEvent event, String name, Show show) {
        Double inner = event.values().get(name);
        csv.number(inner == null ? Double.NaN : words.display().shown(show, inner));
    }
}
