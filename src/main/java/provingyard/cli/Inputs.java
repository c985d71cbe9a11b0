package provingyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import provingyard.call.CallChecks;
import provingyard.scenario.Problem;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.setup.SetUpReader;
import provingyard.study.Mark;
import provingyard.study.MarkStore;
import provingyard.text.Texts;

/** Finds sites and set-ups that a command names; what is wrong is printed, all of it, and gives an empty answer. */
final class Inputs {

    private final Texts texts;
    private final PrintWriter err;

    Inputs(Texts texts, PrintWriter err) {
        this.texts = texts;
        this.err = err;
    }

    Optional<Scenario> site(String name) {
        List<Sites.Site> all = Sites.list();
        Optional<Sites.Site> known =
                all.stream().filter(s -> s.id().equals(name)).findFirst();
        if (known.isEmpty() && !isFile(name)) {
            String sites = all.stream().map(Sites.Site::id).collect(Collectors.joining(", "));
            err.println(texts.say("bad.site", name, sites));
            return Optional.empty();
        }
        boolean shipped = known.map(Sites.Site::shipped).orElse(false);
        Read<Scenario> read =
                shipped ? Sites.open(name) : CallChecks.check(name, References.check(name, Sites.open(name)));
        complain(read.errors());
        return Optional.ofNullable(read.value());
    }

    /** A set-up by a reference name or a file; without a name the clock alone. */
    Optional<SetUp> setUp(String name, Site site) {
        if (name == null) {
            return Optional.of(SetUp.CLOCK_ALONE);
        }
        return switch (name) {
            case "careless" -> reference(name, References.careless(site.scenario()));
            case "textbook" -> reference(name, References.textbook(site.scenario()));
            case "mark" -> mark(site);
            default -> file(name, site.scenario());
        };
    }

    private Optional<SetUp> reference(String name, Optional<SetUp> found) {
        if (found.isEmpty()) {
            err.println(texts.say("bad.noReference", name));
        }
        return found;
    }

    private Optional<SetUp> mark(Site site) {
        Optional<SetUp> found = MarkStore.find(site).map(Mark::setUp);
        if (found.isEmpty()) {
            err.println(texts.say("bad.noMark"));
        }
        return found;
    }

    private Optional<SetUp> file(String name, Scenario site) {
        if (!isFile(name)) {
            err.println(texts.say("bad.setup", name));
            return Optional.empty();
        }
        try {
            Read<SetUp> read = SetUpReader.read(name, TextFile.read(Path.of(name)), site);
            complain(read.errors());
            return Optional.ofNullable(read.value());
        } catch (IOException e) {
            err.println(texts.say("bad.read", name, TextFile.reason(e, texts)));
            return Optional.empty();
        }
    }

    private static boolean isFile(String name) {
        try {
            return Files.isRegularFile(Path.of(name));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private void complain(List<Problem> problems) {
        problems.forEach(p -> err.println(p.line(texts.language())));
    }
}
