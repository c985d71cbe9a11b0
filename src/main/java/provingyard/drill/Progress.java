package provingyard.drill;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How far a learner came with the drill deck.
 *
 * @param sessions sessions that were begun
 * @param families by family; those without a card yet are missing
 */
public record Progress(int sessions, Map<Family, Standing> families) {

    /** Nothing done yet. */
    public static final Progress NONE = new Progress(0, Map.of());

    public Progress {
        Map<Family, Standing> sorted = new EnumMap<>(Family.class);
        sorted.putAll(families);
        families = Collections.unmodifiableMap(sorted);
    }

    /** How far they came with a family. */
    public Standing at(Family family) {
        return families.getOrDefault(family, Standing.NONE);
    }

    /** After the beginning of one more session. */
    public Progress begun() {
        return new Progress(sessions + 1, families);
    }

    /** After one more card of a family. */
    public Progress after(Family family, Result result) {
        return with(family, at(family).after(result));
    }

    /** After the trainee asked for explanations of a family, or did without. */
    public Progress choosing(Family family, boolean explained) {
        return with(family, at(family).choosing(explained));
    }

    private Progress with(Family family, Standing standing) {
        Map<Family, Standing> next = new EnumMap<>(Family.class);
        next.putAll(families);
        next.put(family, standing);
        return new Progress(sessions, next);
    }

    /** How many families are mastered. */
    public long mastered() {
        return families.values().stream().filter(Standing::mastered).count();
    }
}
