package provingyard.setup;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import provingyard.scenario.Problem;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.ScenarioReader;

/** The reference set-ups that a site carries. */
public final class References {

    private References() {}

    /** What a hurried installer would do; empty when the site has none or it has errors ({@link #check} says which). */
    public static Optional<SetUp> careless(Scenario site) {
        return read(site, site.setUps().careless());
    }

    /** What a good technician would do; empty when the site has none or it has errors. */
    public static Optional<SetUp> textbook(Scenario site) {
        return read(site, site.setUps().textbook());
    }

    private static Optional<SetUp> read(Scenario site, JsonNode node) {
        return node == null
                ? Optional.empty()
                : Optional.ofNullable(
                        SetUpReader.readChecked(site.id(), node, site).value());
    }

    /**
     * Reads a site with its reference set-ups, so that their problems stand with the others.
     *
     * @return the site, or null when it or a reference set-up has errors
     */
    public static Read<Scenario> readWithSite(String fileName, String text) {
        return check(fileName, ScenarioReader.read(fileName, text));
    }

    /** A site that was read, its problems joined by those of its reference set-ups. */
    public static Read<Scenario> check(String fileName, Read<Scenario> read) {
        if (!read.ok()) {
            return read;
        }
        Scenario site = read.value();
        List<Problem> problems = new ArrayList<>(read.problems());
        add(problems, fileName, site.setUps().careless(), "/setUps/careless", read);
        add(problems, fileName, site.setUps().textbook(), "/setUps/textbook", read);
        boolean errors = problems.stream().anyMatch(Problem::isError);
        problems.sort(java.util.Comparator.comparing(Problem::severity));
        return new Read<>(errors ? null : site, problems, read.places());
    }

    private static void add(List<Problem> problems, String file, JsonNode node, String base, Read<Scenario> read) {
        if (node != null) {
            problems.addAll(SetUpReader.read(file, node, read.value(), read.places(), base)
                    .problems());
        }
    }
}
