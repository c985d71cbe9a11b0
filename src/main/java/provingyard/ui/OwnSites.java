package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import provingyard.call.CallChecks;
import provingyard.scenario.Problem;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;

/** Sites as they are found, and what is wrong with those that somebody wrote: said where it stands, not passed over. */
final class OwnSites {

    /** Problems that are told at once; {@code check} names all. */
    private static final int TOLD = 3;

    /**
     * What was found.
     *
     * @param sites those that can be read, in their order
     * @param errors what keeps others from being read
     */
    record Found(List<Scenario> sites, List<Problem> errors) {}

    private OwnSites() {}

    static Found find() {
        List<Scenario> sites = new ArrayList<>();
        List<Problem> errors = new ArrayList<>();
        for (Sites.Site site : Sites.list()) {
            Read<Scenario> read = Sites.open(site.id());
            if (read.ok()) {
                sites.add(read.value());
            } else {
                errors.addAll(read.errors());
            }
        }
        return new Found(sites, errors);
    }

    /** Those of some sites that are shipped. */
    static List<Scenario> shipped(List<Scenario> sites) {
        List<String> ids = Sites.list().stream()
                .filter(Sites.Site::shipped)
                .map(Sites.Site::id)
                .toList();
        return sites.stream().filter(s -> ids.contains(s.id())).toList();
    }

    /**
     * What a service call's document says of tests that its site does not have. Takes some seconds for a site of one's own;
     * shipped ones are right.
     */
    static List<Problem> errors(Scenario call) {
        return Sites.list().stream()
                .filter(s -> s.id().equals(call.id()) && !s.shipped())
                .flatMap(s -> CallChecks.check(s.where(), Sites.open(s.where())).errors().stream())
                .toList();
    }

    /** The first of some problems, a line each, and how all are seen. */
    static String told(List<Problem> errors, Words words) {
        List<String> lines = new ArrayList<>();
        errors.stream().limit(TOLD).forEach(p -> lines.add(p.line(words.language())));
        lines.add(words.say("sites.check", Math.max(0, errors.size() - TOLD)));
        return String.join("\n\n", lines);
    }
}
