package provingyard.setup;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import provingyard.quantity.Nearest;
import provingyard.scenario.Binding;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Findings;
import provingyard.scenario.Kit;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Problem.Code;
import provingyard.scenario.Scenario;
import provingyard.scenario.Schedule;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Severity;
import provingyard.scenario.SourceMap;

/** Holds a completed set-up, as a tree in inner units, against its site. */
final class SetUpChecks {

    /** A place may lie this far outside its yard or pipe, in m: plans are measured on paper. */
    private static final double TOLERANCE = 0.01;

    private static final List<String> SWITCHED = List.of("none", "skip", "pause", "shut");
    private static final List<String> SOIL = List.of("none", "block", "allow", "start");
    private static final List<String> WATCHED = List.of("none");

    private final JsonNode tree;
    private final Scenario site;
    private final Findings findings;
    private final List<String> zones;
    private final Map<String, String> kinds = new LinkedHashMap<>();

    SetUpChecks(JsonNode tree, Scenario site, Findings findings) {
        this.tree = tree;
        this.site = site;
        this.findings = findings;
        this.zones = zoneIds(site);
    }

    void run() {
        for (int i = 0; i < tree.path("sensors").size(); i++) {
            sensor(tree.path("sensors").path(i), "/sensors/" + i);
        }
        kit();
        for (int i = 0; i < tree.path("interlocks").size(); i++) {
            interlock(tree.path("interlocks").path(i), "/interlocks/" + i);
        }
        flowWatch(tree.path("flowWatch"), "/flowWatch");
        schedule(tree.path("schedule"), "/schedule");
    }

    private void sensor(JsonNode sensor, String at) {
        String id = sensor.path("id").asText();
        String kind = sensor.path("kind").asText();
        if (kinds.putIfAbsent(id, kind) != null) {
            findings.error(Code.REF_TWICE, at + "/id", id, "/sensors");
        }
        if (site.locks().sensors().stream().anyMatch(k -> name(k).equals(kind))) {
            findings.error(Code.SET_LOCKED, at, kind);
        }
        JsonNode place = sensor.path("at");
        if (outside(place.path(0), site.yard().size().x())
                || outside(place.path(1), site.yard().size().y())) {
            findings.error(
                    Code.GEO_OUTSIDE,
                    at + "/at",
                    number(place.path(0).asDouble()) + ", "
                            + number(place.path(1).asDouble()),
                    number(site.yard().size().x()),
                    number(site.yard().size().y()));
        }
        switch (kind) {
            case "wind" -> order(sensor, at, "rearm", "trip");
            case "freeze" -> order(sensor, at, "below", "rearm");
            case "soil" -> {
                order(sensor, at, "dry", "wet");
                List<String> soils = site.catalogue().soils().stream()
                        .map(Catalogue.Soil::id)
                        .toList();
                named(sensor.path("soil"), "soil", soils, at + "/soil");
            }
            case "flow" -> pipe(sensor, at);
            default -> {
                // A rain sensor has one set point; its schema says all.
            }
        }
    }

    private static boolean outside(JsonNode value, double size) {
        return value.isNumber() && (value.asDouble() < -TOLERANCE || value.asDouble() > size + TOLERANCE);
    }

    private void order(JsonNode sensor, String at, String lower, String higher) {
        double low = sensor.path(lower).asDouble(Double.NaN);
        double high = sensor.path(higher).asDouble(Double.NaN);
        if (low >= high) {
            findings.error(Code.PLA_ORDER, at + "/" + higher, lower + " \u2265 " + higher, lower + " < " + higher);
        }
    }

    private void pipe(JsonNode sensor, String at) {
        List<String> pipes =
                site.plumbing().pipes().stream().map(Plumbing.Pipe::id).toList();
        String on = sensor.path("on").asText();
        if (named(sensor.path("on"), "pipe", pipes, at + "/on")) {
            double length = PipeLength.of(site.plumbing(), on);
            double along = sensor.path("along").asDouble(Double.NaN);
            if (along > length + TOLERANCE) {
                findings.error(Code.GEO_ALONG, at + "/along", number(along), on, number(length));
            }
        }
    }

    private void kit() {
        double spent = 0;
        for (SensorKind kind : SensorKind.values()) {
            int count = (int) kinds.values().stream().filter(name(kind)::equals).count();
            Kit.Item item = site.kit().item(kind);
            if (count > 0 && item == null) {
                findings.error(Code.SET_NOT_IN_KIT, "/sensors", name(kind), String.join(", ", inKit()));
            } else if (item != null && count > item.most()) {
                findings.error(Code.SET_MOST, "/sensors", count + "", name(kind), item.most() + "");
            }
            spent += item == null ? 0 : count * item.price();
        }
        if (spent > site.kit().budget()) {
            findings.error(
                    Code.SET_BUDGET,
                    "/sensors",
                    number(spent),
                    number(site.kit().budget()));
        }
    }

    private List<String> inKit() {
        List<String> names = new ArrayList<>();
        for (SensorKind kind : SensorKind.values()) {
            if (site.kit().item(kind) != null) {
                names.add(name(kind));
            }
        }
        return names;
    }

    private void interlock(JsonNode interlock, String at) {
        String sensor = interlock.path("sensor").asText();
        zones(interlock.path("zones"), at + "/zones");
        if (named(interlock.path("sensor"), "sensor", List.copyOf(kinds.keySet()), at + "/sensor")) {
            String kind = kinds.get(sensor);
            List<String> actions = kind.equals("soil") ? SOIL : kind.equals("flow") ? WATCHED : SWITCHED;
            String action = interlock.path("action").asText();
            if (!actions.contains(action)) {
                findings.error(Code.SET_ACTION, at + "/action", action, kind, String.join(", ", actions));
            }
        }
    }

    private void zones(JsonNode names, String at) {
        for (int i = 0; i < names.size(); i++) {
            named(names.path(i), "zone", zones, at + "/" + i);
        }
    }

    private void flowWatch(JsonNode watch, String at) {
        if (watch.path("sensor").isTextual()) {
            List<String> flow = kinds.entrySet().stream()
                    .filter(e -> e.getValue().equals("flow"))
                    .map(Map.Entry::getKey)
                    .toList();
            named(watch.path("sensor"), "flow sensor", flow, at + "/sensor");
        }
        for (int i = 0; i < watch.path("expected").size(); i++) {
            JsonNode zone = watch.path("expected").path(i).path("zone");
            named(zone, "zone", zones, at + "/expected/" + i + "/zone");
        }
    }

    private void schedule(JsonNode schedule, String at) {
        if (!schedule.isObject()) {
            return;
        }
        Findings aside = new Findings("", SourceMap.NONE, "");
        Schedule own = Binding.bind(schedule, Schedule.class, aside);
        if (site.locks().schedule() && !site.schedule().equals(own)) {
            findings.error(Code.SET_LOCKED, at, "schedule");
        }
        for (int i = 0; i < schedule.path("zones").size(); i++) {
            JsonNode zone = schedule.path("zones").path(i).path("zone");
            named(zone, "zone", zones, at + "/zones/" + i + "/zone");
        }
    }

    private static List<String> zoneIds(Scenario site) {
        return site.plumbing().fittings().stream()
                .filter(f -> f.kind() == FittingKind.ZONE_VALVE)
                .map(Plumbing.Fitting::id)
                .toList();
    }

    /** Whether a named thing is there; else a problem. */
    private boolean named(JsonNode name, String kind, List<String> known, String at) {
        if (!name.isTextual() || known.contains(name.asText()) || findings.full()) {
            return name.isTextual() && known.contains(name.asText());
        }
        Optional<String> maybe = Nearest.of(name.asText(), known);
        List<String> details = List.of(kind, String.join(", ", known));
        findings.add(Severity.ERROR, Code.REF_UNKNOWN, at, name.asText(), details, maybe.orElse(""));
        return false;
    }

    private static String name(SensorKind kind) {
        return kind.name().toLowerCase(java.util.Locale.ROOT);
    }

    private static String number(double value) {
        return new BigDecimal(value)
                .setScale(2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
