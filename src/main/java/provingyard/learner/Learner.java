package provingyard.learner;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import provingyard.drill.Progress;

/**
 * Someone who learns on this machine.
 *
 * @param id stable name of the file
 * @param name what they call themselves; empty until they say so
 * @param look how they want the window
 * @param sites how far they came, by the sites' ids
 * @param lastSite the site that they were on last; empty for none
 * @param followed hints and examples that need not come again
 * @param drill how far they came with the drill deck
 */
public record Learner(
        String id,
        String name,
        Look look,
        Map<String, SiteProgress> sites,
        String lastSite,
        Set<String> followed,
        Progress drill) {

    /** Longest name, in characters. */
    public static final int LONGEST_NAME = 24;

    public Learner {
        sites = java.util.Collections.unmodifiableMap(new TreeMap<>(sites));
        followed = java.util.Collections.unmodifiableSet(new TreeSet<>(followed));
    }

    /** Someone new. */
    public static Learner fresh(String id, String name, Look look) {
        return new Learner(id, name, look, Map.of(), "", Set.of(), Progress.NONE);
    }

    /** Progress on a site; {@link SiteProgress#NONE} where they never were. */
    public SiteProgress at(String site) {
        return sites.getOrDefault(site, SiteProgress.NONE);
    }

    public Learner named(String next) {
        String plain = next.strip();
        String fits = plain.length() > LONGEST_NAME ? plain.substring(0, LONGEST_NAME) : plain;
        return new Learner(id, fits, look, sites, lastSite, followed, drill);
    }

    public Learner looking(Look next) {
        return new Learner(id, name, next, sites, lastSite, followed, drill);
    }

    /** The same after something happened on a site, which becomes the last one. */
    public Learner on(String site, UnaryOperator<SiteProgress> change) {
        Map<String, SiteProgress> next = new TreeMap<>(sites);
        next.put(site, change.apply(at(site)));
        return new Learner(id, name, look, next, site, followed, drill);
    }

    /** The same, with a hint or example that need not come again. */
    public Learner following(String hint) {
        Set<String> next = new TreeSet<>(followed);
        next.add(hint);
        return new Learner(id, name, look, sites, lastSite, next, drill);
    }

    /** The same after something happened in the drill deck. */
    public Learner drilled(UnaryOperator<Progress> change) {
        return new Learner(id, name, look, sites, lastSite, followed, change.apply(drill));
    }
}
