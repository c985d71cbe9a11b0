package provingyard.diagnosis;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What has been done to the site, and where the technician stands. Conditions are names with values, such as
 * {@code valve.iso2 = shut}, {@code marks = shown}, {@code soil = wet}; what is not named has the value {@code ""}.
 */
public final class SiteState {

    private final String standing;
    private final SortedMap<String, String> conditions;

    private SiteState(String standing, SortedMap<String, String> conditions) {
        this.standing = standing;
        this.conditions = conditions;
    }

    /** A state at the start of a call. */
    public static SiteState at(String standing, Map<String, String> conditions) {
        return new SiteState(standing, new TreeMap<>(conditions));
    }

    /** The place where the technician stands. */
    public String standing() {
        return standing;
    }

    /** A condition's value, or {@code ""}. */
    public String condition(String name) {
        return conditions.getOrDefault(name, "");
    }

    /** Whether all these conditions hold. */
    public boolean holds(Map<String, String> wanted) {
        return wanted.entrySet().stream().allMatch(e -> condition(e.getKey()).equals(e.getValue()));
    }

    /** The state after walking somewhere and changing conditions there; {@code ""} puts one back as it was found. */
    public SiteState after(String place, Map<String, String> changes) {
        SortedMap<String, String> next = new TreeMap<>(conditions);
        next.putAll(changes);
        next.values().removeIf(String::isEmpty);
        return new SiteState(place, next);
    }

    /** The conditions alone as one text: the same for the same configuration, wherever one stands. */
    public String configuration() {
        return conditions.toString();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SiteState s && s.standing.equals(standing) && s.conditions.equals(conditions);
    }

    @Override
    public int hashCode() {
        return 31 * standing.hashCode() + conditions.hashCode();
    }

    @Override
    public String toString() {
        return standing + " " + conditions;
    }
}
