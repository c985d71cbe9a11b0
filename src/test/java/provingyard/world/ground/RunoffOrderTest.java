package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("unit")
class RunoffOrderTest {

    @Test
    void cellsOfOneKindStayTogetherAsFarAsRunoffLetsThem() {
        // 0 and 1 are roofs, 2 a walk below 0, 3 and 4 lawn below 2 and 1, 5 a walk below 3.
        int[] downhill = {2, 4, 3, 5, -1, -1};
        int[] kind = {0, 0, 1, 2, 2, 1};
        assertArrayEquals(new int[] {0, 1, 2, 4, 3, 5}, RunoffOrder.grouped(downhill, kind, 3));
    }

    @Test
    void everyCellComesOnceAndBeforeTheOneThatTakesItsRunoff() {
        Random random = new Random(7);
        int n = 400;
        int[] downhill = IntStream.range(0, n)
                .map(c -> c == n - 1 || random.nextInt(9) == 0 ? -1 : c + 1 + random.nextInt(n - 1 - c))
                .toArray();
        int[] kind = random.ints(n, 0, 3).toArray();
        int[] order = RunoffOrder.grouped(downhill, kind, 3);
        int[] placeOf = new int[n];
        Arrays.fill(placeOf, -1);
        for (int i = 0; i < n; i++) {
            assertEquals(-1, placeOf[order[i]], "comes once");
            placeOf[order[i]] = i;
        }
        for (int c = 0; c < n; c++) {
            assertTrue(downhill[c] < 0 || placeOf[c] < placeOf[downhill[c]]);
        }
    }
}
