package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import provingyard.quantity.Nearest;
import provingyard.scenario.Problem.Code;

/**
 * Finds sites and resources: what is shipped on the class path, and what lies in folders {@code scenarios/},
 * {@code shared/} and {@code assets/} beside the program or in the working directory. Folders add; they do not replace.
 */
public final class Sites {

    private static final String FOLDER = "scenarios";
    private static final String ROUTE = "route.json";
    private static final String ENDING = ".json";

    private Sites() {}

    /** Gets ready in the background for reading sites, which takes longer than the reading; for a program's first lines. */
    public static void prepare() {
        Binding.prepare(Scenario.class);
        CompletableFuture.runAsync(Shelf::tree);
    }

    /** A site that can be opened: its id and where its file is (a path, or a resource's name). */
    public record Site(String id, String where, boolean shipped) {}

    /** All sites: the shipped ones in the order of {@code scenarios/route.json}, then the others by id. */
    public static List<Site> list() {
        Map<String, Site> found = new TreeMap<>();
        for (String id : shippedIds()) {
            found.put(id, new Site(id, FOLDER + "/" + id + ENDING, true));
        }
        for (Path folder : folders()) {
            for (Path file : files(folder.resolve(FOLDER))) {
                String id = stem(file.getFileName().toString());
                found.putIfAbsent(id, new Site(id, file.toString(), false));
            }
        }
        Map<String, Site> ordered = new LinkedHashMap<>();
        for (String id : route()) {
            if (found.containsKey(id)) {
                ordered.put(id, found.get(id));
            }
        }
        found.forEach(ordered::putIfAbsent);
        return List.copyOf(ordered.values());
    }

    /**
     * Reads a site by its id, or by the path of its file.
     *
     * @return the site, or problems; an unknown site is a problem too
     */
    public static Read<Scenario> open(String idOrPath) {
        List<Site> sites = list();
        Optional<Site> site =
                sites.stream().filter(s -> s.id().equals(idOrPath)).findFirst();
        String where = site.map(Site::where).orElse(idOrPath);
        boolean shipped = site.isPresent() && site.get().shipped();
        try (InputStream in = shipped ? resource(where) : file(where)) {
            String text = new String(in.readNBytes(4 * LocatedJson.LONGEST), StandardCharsets.UTF_8);
            return shipped ? ScenarioReader.readShipped(where, text) : ScenarioReader.read(where, text);
        } catch (IOException | InvalidPathException e) {
            List<String> ids = sites.stream().map(Site::id).toList();
            Findings findings = new Findings(idOrPath, SourceMap.NONE, "");
            String maybe = Nearest.of(idOrPath, ids).orElse("");
            findings.add(Severity.ERROR, Code.REF_SITE, "", idOrPath, List.of(String.join(", ", ids)), maybe);
            return new Read<>(null, findings.sorted(), SourceMap.NONE);
        }
    }

    /**
     * A resource of the program, such as {@code shared/reference/catalogue.json}.
     *
     * @throws FileNotFoundException when there is none, or the path leads out of the program's folders
     */
    public static InputStream resource(String path) throws IOException {
        if (path.contains("..") || path.contains("\\") || path.startsWith("/") || path.contains(":")) {
            throw new FileNotFoundException(path);
        }
        InputStream in = Sites.class.getResourceAsStream("/" + path);
        if (in != null) {
            return in;
        }
        for (Path folder : folders()) {
            try {
                Path file = folder.resolve(path);
                if (Files.isRegularFile(file)) {
                    return Files.newInputStream(file);
                }
            } catch (InvalidPathException e) {
                throw new FileNotFoundException(path);
            }
        }
        throw new FileNotFoundException(path);
    }

    private static InputStream file(String path) throws IOException {
        Path file = Path.of(path);
        if (!Files.isRegularFile(file)) {
            throw new FileNotFoundException(path);
        }
        return Files.newInputStream(file);
    }

    private static List<String> route() {
        List<String> route = new ArrayList<>();
        try (InputStream in = resource(FOLDER + "/" + ROUTE)) {
            LocatedJson json = LocatedJson.read(ROUTE, new String(in.readAllBytes(), StandardCharsets.UTF_8));
            JsonNode sites = json.root() == null ? null : json.root().path("sites");
            if (sites != null) {
                sites.forEach(s -> route.add(s.asText()));
            }
        } catch (IOException e) {
            return List.of();
        }
        return route;
    }

    /** Folders that may hold more: the one beside the program's jar, and the working directory. */
    private static List<Path> folders() {
        Set<Path> folders = new LinkedHashSet<>();
        Path program = program();
        if (program != null && Files.isRegularFile(program)) {
            folders.add(program.toAbsolutePath().getParent());
        }
        folders.add(Path.of("").toAbsolutePath());
        return List.copyOf(folders);
    }

    /** The jar or class folder that this class was loaded from; null when it cannot be told. */
    static Path program() {
        try {
            return Path.of(Sites.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException | IllegalArgumentException | NullPointerException e) {
            return null;
        }
    }

    private static List<String> shippedIds() {
        Path program = program();
        if (program == null) {
            return route();
        }
        List<String> names = new ArrayList<>();
        if (Files.isDirectory(program)) {
            files(program.resolve(FOLDER))
                    .forEach(f -> names.add(f.getFileName().toString()));
        } else {
            try (JarFile jar = new JarFile(program.toFile())) {
                jar.stream()
                        .map(e -> e.getName())
                        .filter(n -> n.startsWith(FOLDER + "/") && isSite(n.substring(FOLDER.length() + 1)))
                        .forEach(n -> names.add(n.substring(FOLDER.length() + 1)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return names.stream().map(Sites::stem).sorted().toList();
    }

    private static List<Path> files(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> isSite(f.getFileName().toString()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static boolean isSite(String name) {
        return name.endsWith(ENDING) && !name.contains("/") && !name.equals(ROUTE);
    }

    private static String stem(String name) {
        return name.substring(0, name.length() - ENDING.length());
    }
}
