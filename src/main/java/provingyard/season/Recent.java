package provingyard.season;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** The values last asked for, at most so many; safe for several threads. What is forgotten is made again when asked. */
final class Recent<K, V> {

    private final int most;
    private final Map<K, V> values = new LinkedHashMap<>(16, 0.75f, true);

    Recent(int most) {
        this.most = most;
    }

    /** The value of a key, made if it is not at hand; others wait meanwhile. */
    synchronized V of(K key, Supplier<V> maker) {
        V value = values.get(key);
        if (value == null) {
            value = maker.get();
            values.put(key, value);
            if (values.size() > most) {
                values.remove(values.keySet().iterator().next());
            }
        }
        return value;
    }
}
