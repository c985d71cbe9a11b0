package provingyard.study;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import provingyard.scenario.DataFolder;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;
import provingyard.score.Loss;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.setup.SetUpReader;
import provingyard.setup.SetUpWriter;

/**
 * Where marks are kept: shipped with a site as {@code scenarios/marks/<id>.json}, or found later in the user's data
 * folder ({@code marks/<id>.json} in {@link DataFolder}). A challenger that beat such a mark is kept there too
 * ({@code marks/challengers/<id>.json}). A mark counts only for the very document and the version of the simulator that
 * it was found with, and a challenger only while the mark that it beat is still the one in force.
 */
public final class MarkStore {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String SET_UP = "setUp";
    private static final String BEATEN = "beaten";

    /** How the mark's set-up is read: held against its schema, or not again. */
    private interface Reading {
        Read<SetUp> read(String name, JsonNode setUp, Scenario scenario);
    }

    private MarkStore() {}

    /** The mark that practice uses, if one is known for this document and this simulator: a challenger goes first. */
    public static Optional<Mark> find(Site site) {
        Optional<Mark> base = base(site);
        return base.flatMap(b -> challenger(site, b)).or(() -> base);
    }

    /** The mark that classes grade against: the shipped one only, so that all machines agree. */
    public static Optional<Mark> shipped(Site site) {
        return shipped(site.scenario()).filter(m -> fits(m, site.contentHash()));
    }

    /** The mark without challengers. */
    private static Optional<Mark> base(Site site) {
        // Each is held against the document by itself: an outdated shipped mark must not hide a good one found here.
        return shipped(site).or(() -> kept(site.scenario()).filter(m -> fits(m, site.contentHash())));
    }

    private static Optional<Mark> challenger(Site site, Mark base) {
        try {
            String text = Files.readString(challengerFile(site.scenario().id()));
            JsonNode beaten = JSON.readTree(text).path(BEATEN);
            return beaten.equals(tree(base))
                    ? read(text, site.scenario(), SetUpReader::read).filter(m -> fits(m, site.contentHash()))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The set-up of a mark as it stands in a file. */
    private static JsonNode tree(Mark mark) throws JsonProcessingException {
        return JSON.readTree(write(mark)).path(SET_UP);
    }

    private static boolean fits(Mark mark, String content) {
        return mark.content().equals(content) && mark.engine().equals(Season.ENGINE);
    }

    private static Optional<Mark> shipped(Scenario scenario) {
        try (InputStream in = Sites.resource("scenarios/marks/" + scenario.id() + ".json")) {
            return read(new String(in.readAllBytes(), StandardCharsets.UTF_8), scenario, SetUpReader::readChecked);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<Mark> kept(Scenario scenario) {
        try {
            return read(Files.readString(file(scenario.id())), scenario, SetUpReader::read);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Keeps a mark in the user's data folder; gives false where that folder cannot be written. */
    public static boolean save(Mark mark) {
        try {
            put(file(mark.site()), write(mark));
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Keeps a challenger that won as the mark of this machine, in the place of an earlier one.
     *
     * @return false where the folder cannot be written, or the site has no mark that it could have beaten
     */
    public static boolean keepChallenger(Site site, Mark challenger) {
        Optional<Mark> base = base(site);
        try {
            if (base.isPresent()) {
                ObjectNode node = (ObjectNode) JSON.readTree(write(challenger));
                node.set(BEATEN, tree(base.get()));
                put(challengerFile(challenger.site()), text(node));
            }
            return base.isPresent();
        } catch (IOException e) {
            return false;
        }
    }

    private static void put(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Path fresh = file.resolveSibling(file.getFileName() + ".new");
        Files.writeString(fresh, text);
        Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    }

    private static Path challengerFile(String id) {
        return DataFolder.find().resolve("marks").resolve("challengers").resolve(id + ".json");
    }

    private static Path file(String id) {
        return DataFolder.find().resolve("marks").resolve(id + ".json");
    }

    /** A mark as JSON. */
    static String write(Mark mark) throws JsonProcessingException {
        ObjectNode node = JSON.createObjectNode();
        node.put("site", mark.site());
        node.put("content", mark.content());
        node.put("engine", mark.engine());
        node.put("draws", mark.draws());
        node.put("meanClock", mark.meanClock());
        node.put("meanMark", mark.meanMark());
        ObjectNode own = node.putObject("own");
        write(own.putObject("clock"), mark.own().clock());
        write(own.putObject("mark"), mark.own().mark());
        node.set(SET_UP, SetUpWriter.tree(mark.setUp()));
        return text(node);
    }

    private static String text(JsonNode node) throws JsonProcessingException {
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(node) + "\n";
    }

    /** Reads a mark; one that is not understood counts as none. */
    private static Optional<Mark> read(String text, Scenario scenario, Reading reading) throws JsonProcessingException {
        JsonNode node = JSON.readTree(text);
        if (node == null || !node.path(SET_UP).isObject()) {
            return Optional.empty();
        }
        SetUp setUp = reading.read("mark", node.get(SET_UP), scenario).value();
        Loss clock = loss(node.path("own").path("clock"));
        Loss best = loss(node.path("own").path("mark"));
        return setUp == null || clock == null || best == null
                ? Optional.empty()
                : Optional.of(new Mark(
                        node.path("site").asText(),
                        node.path("content").asText(),
                        node.path("engine").asText(),
                        setUp,
                        node.path("meanClock").asDouble(),
                        node.path("meanMark").asDouble(),
                        node.path("draws").asInt(),
                        new Mark.OwnSeason(clock, best)));
    }

    private static void write(ObjectNode node, Loss loss) {
        for (Loss.Entry entry : loss.entries()) {
            node.putArray(entry.kind().name()).add(entry.amount()).add(entry.price());
        }
    }

    /** A loss as it was written; null when an entry is missing or no number. */
    private static Loss loss(JsonNode node) {
        List<Loss.Entry> entries = new ArrayList<>();
        for (Loss.Kind kind : Loss.Kind.values()) {
            JsonNode entry = node.path(kind.name());
            if (!entry.path(0).isNumber() || !entry.path(1).isNumber()) {
                return null;
            }
            entries.add(new Loss.Entry(
                    kind, entry.get(0).doubleValue(), entry.get(1).doubleValue()));
        }
        return new Loss(entries);
    }
}
