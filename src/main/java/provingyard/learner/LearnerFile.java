package provingyard.learner;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import provingyard.drill.Family;
import provingyard.drill.Form;
import provingyard.drill.Progress;
import provingyard.drill.Result;
import provingyard.drill.Standing;
import provingyard.drill.Support;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.LocatedJson;

/** A learner's file: JSON with a version. */
final class LearnerFile {

    /** The version that is written; higher ones are not understood. */
    static final int VERSION = 1;

    private static final ObjectMapper JSON = new ObjectMapper();

    /** What reading gave: a learner, or null with the reason. */
    record Read(Learner learner, Fault fault) {}

    /** Why a file gives no learner. */
    enum Fault {
        BROKEN,
        NEWER
    }

    /** A value is missing or of the wrong kind; never leaves this class. */
    static final class Amiss extends Exception {
        Amiss(String what) {
            super(what, null, false, false);
        }
    }

    private LearnerFile() {}

    /** The file's text. */
    static String write(Learner learner) {
        ObjectNode root = JSON.createObjectNode();
        root.put("version", VERSION);
        root.put("name", learner.name());
        Look look = learner.look();
        root.putObject("look")
                .put("language", look.language())
                .put("units", look.units().name())
                .put("theme", look.theme())
                .put("textSize", look.textSize())
                .put("still", look.still());
        root.put("lastSite", learner.lastSite());
        ObjectNode sites = root.putObject("sites");
        learner.sites().forEach((id, progress) -> write(sites.putObject(id), progress));
        ArrayNode followed = root.putArray("followed");
        learner.followed().forEach(followed::add);
        if (!learner.drill().equals(Progress.NONE)) {
            write(root.putObject("drill"), learner.drill());
        }
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree can always be written", e);
        }
    }

    private static void write(ObjectNode node, Progress drill) {
        node.put("sessions", drill.sessions());
        ObjectNode families = node.putObject("families");
        drill.families().forEach((family, standing) -> {
            ObjectNode one = families.putObject(family.name());
            one.put("explains", standing.support().explains());
            one.put("row", standing.support().row());
            ArrayNode results = one.putArray("results");
            for (Result result : standing.results()) {
                results.addObject()
                        .put("form", result.form().name())
                        .put("session", result.session())
                        .put("points", result.points())
                        .put("met", result.met());
            }
        });
    }

    private static void write(ObjectNode node, SiteProgress progress) {
        if (progress.best() != null) {
            node.put("best", progress.best());
        }
        node.put("seasons", progress.seasons());
        if (progress.answer() != null) {
            node.putObject("answer")
                    .put("choice", progress.answer().choice())
                    .put("why", progress.answer().why());
        }
        if (progress.call() != null) {
            SavedCallFile.write(node.putObject("call"), progress.call());
        }
        SavedSeason season = progress.season();
        if (season == null) {
            return;
        }
        ObjectNode saved = node.putObject("season");
        saved.put("content", season.content());
        saved.put("engine", season.engine());
        saved.put("tick", season.tick());
        ArrayNode changes = saved.putArray("changes");
        for (SavedSeason.Change change : season.changes()) {
            changes.addObject().put("tick", change.tick()).set("setUp", change.setUp());
        }
        ArrayNode rearms = saved.putArray("rearms");
        season.rearms().forEach(rearms::add);
    }

    /** Reads a file's text. */
    static Read read(String id, String text) {
        JsonNode root = LocatedJson.read(id, text).root();
        if (root == null || !root.path("version").isInt() || root.get("version").intValue() < 1) {
            return new Read(null, Fault.BROKEN);
        }
        if (root.get("version").intValue() > VERSION) {
            return new Read(null, Fault.NEWER);
        }
        try {
            return new Read(learner(id, root), null);
        } catch (Amiss e) {
            return new Read(null, Fault.BROKEN);
        }
    }

    private static Learner learner(String id, JsonNode root) throws Amiss {
        Map<String, SiteProgress> sites = new TreeMap<>();
        Iterator<Map.Entry<String, JsonNode>> fields = object(root, "sites").fields();
        while (fields.hasNext()) {
            Map.Entry<String, JsonNode> field = fields.next();
            sites.put(field.getKey(), progress(field.getValue()));
        }
        Set<String> followed = new TreeSet<>();
        for (JsonNode hint : array(root, "followed")) {
            followed.add(hint.asText());
        }
        // Files from before there was a drill deck have none.
        Progress drill = root.has("drill") ? drill(object(root, "drill")) : Progress.NONE;
        return new Learner(
                id, text(root, "name"), look(object(root, "look")), sites, text(root, "lastSite"), followed, drill);
    }

    private static Progress drill(JsonNode node) throws Amiss {
        Map<Family, Standing> families = new EnumMap<>(Family.class);
        JsonNode kept = object(node, "families");
        for (Family family : Family.values()) {
            if (kept.has(family.name())) {
                families.put(family, standing(object(kept, family.name())));
            }
        }
        return new Progress(whole(node, "sessions"), families);
    }

    private static Standing standing(JsonNode node) throws Amiss {
        List<Result> results = new ArrayList<>();
        for (JsonNode one : array(node, "results")) {
            String name = text(one, "form");
            Form form = Arrays.stream(Form.values())
                    .filter(f -> f.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new Amiss("form"));
            int points = Math.min(100, whole(one, "points"));
            results.add(new Result(
                    form, whole(one, "session"), points, one.path("met").asBoolean()));
        }
        return new Standing(new Support(node.path("explains").asBoolean(true), whole(node, "row")), results);
    }

    private static int whole(JsonNode node, String name) throws Amiss {
        return (int) Math.max(0, Math.min(Integer.MAX_VALUE, number(node, name)));
    }

    private static Look look(JsonNode node) throws Amiss {
        UnitSystem units = text(node, "units").equals(UnitSystem.US.name()) ? UnitSystem.US : UnitSystem.METRIC;
        return new Look(
                text(node, "language"),
                units,
                text(node, "theme"),
                (int) number(node, "textSize"),
                node.path("still").asBoolean());
    }

    private static SiteProgress progress(JsonNode node) throws Amiss {
        Integer best = node.has("best") ? (int) Math.max(0, Math.min(100, number(node, "best"))) : null;
        int seasons = (int) Math.max(0, number(node, "seasons"));
        SavedSeason season = node.has("season") ? season(object(node, "season")) : null;
        SiteProgress.Answer answer = node.has("answer") ? answer(object(node, "answer")) : null;
        SavedCall call = node.has("call") ? SavedCallFile.read(object(node, "call")) : null;
        return new SiteProgress(best, seasons, season, answer, call);
    }

    private static SiteProgress.Answer answer(JsonNode node) throws Amiss {
        return new SiteProgress.Answer(text(node, "choice"), text(node, "why"));
    }

    private static SavedSeason season(JsonNode node) throws Amiss {
        List<SavedSeason.Change> changes = new ArrayList<>();
        long last = -1;
        for (JsonNode change : array(node, "changes")) {
            long tick = number(change, "tick");
            if (tick <= last) {
                throw new Amiss("tick");
            }
            last = tick;
            changes.add(new SavedSeason.Change(tick, object(change, "setUp")));
        }
        List<Long> rearms = new ArrayList<>();
        for (JsonNode rearm : array(node, "rearms")) {
            rearms.add(rearm.asLong());
        }
        if (changes.isEmpty()) {
            throw new Amiss("changes");
        }
        return new SavedSeason(text(node, "content"), text(node, "engine"), number(node, "tick"), changes, rearms);
    }

    static JsonNode object(JsonNode node, String name) throws Amiss {
        return kind(node.path(name).isObject(), node, name);
    }

    static JsonNode array(JsonNode node, String name) throws Amiss {
        return kind(node.path(name).isArray(), node, name);
    }

    static String text(JsonNode node, String name) throws Amiss {
        return kind(node.path(name).isTextual(), node, name).textValue();
    }

    static long number(JsonNode node, String name) throws Amiss {
        return kind(node.path(name).canConvertToExactIntegral(), node, name).longValue();
    }

    static JsonNode kind(boolean right, JsonNode node, String name) throws Amiss {
        if (!right) {
            throw new Amiss(name);
        }
        return node.get(name);
    }
}
