package provingyard.world.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The paved cells as slots, ordered by class: cells of one class are one paving under one exposure and lie side by side.
 * Shared between pavements and never changed.
 */
final class PavedClasses {

    /** Water that a full hollow holds in m (common practice, no source). */
    private static final double HOLLOW = 0.03;

    /** Slot of each cell of the yard; -1 where it is not paved. */
    final int[] slotOf;
    /** First slot of each class, and one past the last slot of the last. */
    final int[] start;
    /** Class of each slot. */
    final int[] classOf;
    /** Exposure of each class, and the class's place among that exposure's classes. */
    final int[] exposureOf;

    final int[] placeOf;
    final Exposure[] exposures;
    /** Film in m that each slot holds. */
    final double[] holds;

    PavedClasses(GroundCells cells) {
        Map<Integer, List<Integer>> byKey = new LinkedHashMap<>();
        for (int c = 0; c < cells.count(); c++) {
            if (cells.paved(c)) {
                byKey.computeIfAbsent(Exposure.key(cells, c), key -> new ArrayList<>())
                        .add(c);
            }
        }
        int classes = byKey.size();
        int n = byKey.values().stream().mapToInt(List::size).sum();
        slotOf = new int[cells.count()];
        Arrays.fill(slotOf, -1);
        start = new int[classes + 1];
        classOf = new int[n];
        exposureOf = new int[classes];
        placeOf = new int[classes];
        Map<Integer, List<List<Integer>>> byPaving = new LinkedHashMap<>();
        int k = 0;
        int slot = 0;
        for (List<Integer> members : byKey.values()) {
            int paving = cells.paving()[members.get(0)];
            List<List<Integer>> alike = byPaving.computeIfAbsent(paving, p -> new ArrayList<>());
            exposureOf[k] = new ArrayList<>(byPaving.keySet()).indexOf(paving);
            placeOf[k] = alike.size();
            alike.add(members);
            for (int c : members) {
                classOf[slot] = k;
                slotOf[c] = slot++;
            }
            start[++k] = slot;
        }
        exposures = byPaving.values().stream().map(a -> new Exposure(cells, a)).toArray(Exposure[]::new);
        holds = new double[n];
        for (int c = 0; c < cells.count(); c++) {
            if (slotOf[c] >= 0) {
                double held = exposures[exposureOf[classOf[slotOf[c]]]].paving.filmHeld();
                holds[slotOf[c]] = held + HOLLOW * cells.hollow()[c];
            }
        }
    }

    /** Number of slots. */
    int count() {
        return classOf.length;
    }

    /** Number of classes. */
    int classes() {
        return exposureOf.length;
    }
}
