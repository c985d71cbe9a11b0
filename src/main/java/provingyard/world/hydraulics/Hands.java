package provingyard.world.hydraulics;

import java.util.Collection;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Valves that people hold, by fitting id. Any fitting can be shut (an isolation valve by its handle, a backflow preventer
 * by its own shut-off, a meter by its stop); zone and master valves can be held open. A valve that is stuck stays stuck.
 *
 * @param opened valves held open whatever the controller wants
 * @param shut fittings that are shut
 */
public record Hands(SortedSet<String> opened, SortedSet<String> shut) {

    /** Nobody touches anything. */
    public static final Hands OFF = new Hands(new TreeSet<>(), new TreeSet<>());

    public Hands {
        opened = copy(opened);
        shut = copy(shut);
    }

    /** Hands on some fittings. */
    public static Hands of(Collection<String> opened, Collection<String> shut) {
        return new Hands(new TreeSet<>(opened), new TreeSet<>(shut));
    }

    private static SortedSet<String> copy(SortedSet<String> ids) {
        return Collections.unmodifiableSortedSet(new TreeSet<>(ids));
    }
}
