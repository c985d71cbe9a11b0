package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import provingyard.scenario.Problem.Code;

/** Season, weather, schedule, soils and lesson fit each other. */
final class SeasonChecks {

    /** Days that a season goes on after a technician's arrival at least: a visit, and two days until marks are there. */
    private static final int STAY = 3;

    private final JsonNode tree;
    private final JsonNode own;
    private final Findings findings;

    /** Checks of a completed tree; {@code own} is the site's own part of its catalogue. */
    SeasonChecks(JsonNode tree, JsonNode own, Findings findings) {
        this.tree = tree;
        this.own = own;
        this.findings = findings;
    }

    void run() {
        source();
        int days = tree.at("/season/days").asInt(0);
        for (int i = 0; i < tree.at("/weather/events").size(); i++) {
            event(tree.at("/weather/events").path(i), "/weather/events/" + i, days);
        }
        for (int i = 0; i < tree.path("faults").size(); i++) {
            JsonNode day = tree.path("faults").path(i).at("/when/day");
            day(day, "/faults/" + i + "/when/day", days);
        }
        scripted();
        schedule();
        soils();
        lesson();
    }

    private void source() {
        JsonNode source = tree.at("/weather/source");
        String kind = source.path("kind").asText();
        boolean scripted = kind.equals("scripted");
        if (scripted && source.path("days").isEmpty()) {
            findings.error(Code.REF_NEEDS, "/weather/source", kind, "days");
        }
        if (!scripted && source.path("file").isNull()) {
            findings.error(Code.REF_NEEDS, "/weather/source", kind, "file");
        }
        if (!scripted && source.path("location").isNull()) {
            findings.error(Code.REF_NEEDS, "/weather/source", kind, "location");
        }
        String file = source.path("file").asText();
        if (source.path("file").isTextual() && !exists("shared/reference/" + file)) {
            findings.error(Code.REF_FILE, "/weather/source/file", file);
        }
    }

    private static boolean exists(String path) {
        try (InputStream in = Sites.resource(path)) {
            return in.read() >= 0;
        } catch (IOException e) {
            return false;
        }
    }

    private void event(JsonNode event, String at, int days) {
        String kind = event.path("kind").asText();
        String needed =
                switch (kind) {
                    case "clearCalmNight" -> "low";
                    case "storm" -> "depth";
                    case "wind" -> "speed";
                    default -> "";
                };
        if (!needed.isEmpty() && event.path(needed).isNull()) {
            findings.error(Code.REF_NEEDS, at, kind, needed);
        }
        day(event.path("day"), at + "/day", days);
    }

    private void day(JsonNode day, String at, int days) {
        if (day.isInt() && days > 0 && day.asInt() > days) {
            findings.warn(Code.GEO_DAY, at, day.asText(), days + "");
        }
    }

    private void scripted() {
        JsonNode days = tree.at("/weather/source/days");
        for (int i = 0; i < days.size(); i++) {
            double high = days.path(i).path("high").asDouble(Double.NaN);
            double low = days.path(i).path("low").asDouble(Double.NaN);
            if (low > high) {
                order("/weather/source/days/" + i, "low > high", "low \u2264 high");
            }
        }
    }

    private void order(String at, String found, String allowed) {
        findings.error(Code.PLA_ORDER, at, found, allowed);
    }

    private void schedule() {
        JsonNode schedule = tree.path("schedule");
        boolean weekdays = schedule.path("days").size() > 0;
        if (schedule.path("every").isInt() && schedule.path("days").isArray()) {
            if (weekdays == schedule.path("every").asInt() > 0) {
                order("/schedule", weekdays ? "days + every" : "days 0, every 0", "days | every");
            }
        }
        for (int i = 0; i < schedule.path("zones").size(); i++) {
            double minutes = schedule.path("zones").path(i).path("runs").asDouble(Double.NaN) / 60;
            if (minutes > 120) {
                findings.warn(
                        Code.PLA_ODD,
                        "/schedule/zones/" + i + "/runs",
                        YardChecks.metres(minutes) + " min",
                        "0\u2013120 min");
            }
        }
    }

    private void soils() {
        for (int i = 0; i < own.path("soils").size(); i++) {
            JsonNode soil = own.path("soils").path(i);
            double wilting = soil.path("wiltingPoint").asDouble(Double.NaN);
            double capacity = soil.path("fieldCapacity").asDouble(Double.NaN);
            double saturation = soil.path("saturation").asDouble(Double.NaN);
            if (wilting >= capacity || capacity >= saturation) {
                String found = soil.path("id").asText();
                order("/catalogue/soils/" + i, found, "wiltingPoint < fieldCapacity < saturation");
            }
        }
    }

    private void lesson() {
        boolean tune = tree.path("work").asText().equals("tune");
        if (tune) {
            for (String name : List.of("careless", "textbook")) {
                if (!tree.path("setUps").path(name).isObject()) {
                    findings.warn(Code.REF_NEEDS, "/setUps", "tune", name);
                }
            }
        } else if (tree.path("call").isNull()) {
            findings.error(Code.REF_NEEDS, "", "serviceCall", "call");
        }
        deals();
        arrival();
        for (int i = 0; i < tree.at("/lesson/about").size(); i++) {
            String kind = tree.at("/lesson/about").path(i).asText();
            if (tune && tree.path("kit").path(kind).isNull()) {
                findings.warn(Code.REF_NEEDS, "/kit", "lesson", kind);
            }
        }
        JsonNode mastery = tree.at("/lesson/mastery");
        if (mastery.path("need").asInt(0) > mastery.path("ofLast").asInt(99)) {
            order("/lesson/mastery", "need > ofLast", "need \u2264 ofLast");
        }
    }

    /** The season must go on while the technician is there and waits for marks. */
    private void arrival() {
        int days = tree.at("/season/days").asInt(0);
        JsonNode day = tree.at("/call/arrives/day");
        if (day.isInt() && days > 0 && day.asInt() > days) {
            findings.error(Code.GEO_DAY, "/call/arrives/day", day.asText(), days + "");
        } else if (day.isInt() && day.asInt() > days - STAY) {
            findings.error(Code.SCH_RANGE, "/call/arrives/day", day.asText(), "1", days - STAY + "");
        }
    }

    private void deals() {
        int most = tree.path("faults").size() - 1;
        for (int i = 0; i < tree.at("/call/deals").size(); i++) {
            JsonNode deal = tree.at("/call/deals").path(i);
            for (int k = 0; k < deal.size(); k++) {
                int fault = deal.path(k).asInt(-1);
                if (fault > most) {
                    findings.error(Code.SCH_RANGE, "/call/deals/" + i + "/" + k, fault + "", "0", most + "");
                }
            }
        }
    }
}
