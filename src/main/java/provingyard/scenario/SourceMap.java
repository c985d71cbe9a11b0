package provingyard.scenario;

import java.util.HashMap;
import java.util.Map;

/** Where in its text each value of a JSON document stands, by JSON pointer. */
public final class SourceMap {

    /** Line and column, from 1. */
    public record Spot(int line, int column) {}

    /** A map that knows nothing: everything is at 1:1. */
    public static final SourceMap NONE = new SourceMap();

    private static final Spot START = new Spot(1, 1);

    private final Map<String, Spot> values = new HashMap<>();
    private final Map<String, Spot> keys = new HashMap<>();

    void value(String pointer, int line, int column) {
        values.put(pointer, new Spot(Math.max(1, line), Math.max(1, column)));
    }

    void key(String pointer, int line, int column) {
        keys.put(pointer, new Spot(Math.max(1, line), Math.max(1, column)));
    }

    /** Where a value begins; for one that is not there, where the nearest one around it begins. */
    public Spot of(String pointer) {
        String at = pointer;
        while (true) {
            Spot spot = values.get(at);
            if (spot != null) {
                return spot;
            }
            int slash = at.lastIndexOf('/');
            if (slash < 0) {
                return START;
            }
            at = at.substring(0, slash);
        }
    }

    /** Where a property's name begins; else as {@link #of}. */
    public Spot ofKey(String pointer) {
        Spot spot = keys.get(pointer);
        return spot == null ? of(pointer) : spot;
    }

    /** A pointer's step for a property's name (RFC 6901). */
    public static String step(String name) {
        return "/" + name.replace("~", "~0").replace("/", "~1");
    }
}
