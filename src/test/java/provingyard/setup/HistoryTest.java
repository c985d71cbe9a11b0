package provingyard.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;

class HistoryTest {

    private static SetUp withRain(double x) {
        return SetUp.CLOCK_ALONE.with(new Placement.Rain("rain-1", new Point(x, 1), Mount.POST, 1.8, 0.006, 0.5));
    }

    @Test
    void undoAndRedoAreNamedAndLeaveWhatWasLived() {
        History history = History.of(SetUp.CLOCK_ALONE)
                .inForceFrom(0)
                .then(withRain(1), "step.place", "rain-1")
                .inForceFrom(600)
                .then(withRain(2), "step.move", "rain-1");
        assertEquals("step.move", history.undoable().orElseThrow().key());
        History back = history.undo().undo();
        assertEquals(SetUp.CLOCK_ALONE, back.draft());
        assertEquals(List.of("rain-1"), back.redoable().orElseThrow().arguments());
        assertEquals(history, back.redo().redo());
        assertEquals(Optional.of(withRain(1)), back.at(700));
        assertEquals(Optional.of(SetUp.CLOCK_ALONE), back.at(599));
    }

    @Test
    void aNewStepForgetsWhatWasUndone() {
        History history =
                History.of(SetUp.CLOCK_ALONE).then(withRain(1), "a").undo().then(withRain(2), "b");
        assertTrue(history.redoable().isEmpty());
        assertSame(history, history.redo());
        assertSame(history, history.then(withRain(2), "c"));
    }

    @Test
    void ticksRiseAndTheLastWordOfATickCounts() {
        History history =
                History.of(withRain(1)).inForceFrom(5).then(withRain(2), "a").inForceFrom(5);
        assertEquals(List.of(new History.Change(5, withRain(2))), history.changes());
        assertEquals(history, history.inForceFrom(9));
        History other = history.then(withRain(3), "b");
        assertThrows(IllegalArgumentException.class, () -> other.inForceFrom(4));
    }

    @Property(tries = 300)
    void anyUndosFollowedByAsManyRedosChangeNothing(
            @ForAll @Size(max = 30) List<@IntRange(min = 0, max = 9) Integer> places,
            @ForAll @IntRange(max = 40) int back) {
        History history = History.of(SetUp.CLOCK_ALONE);
        for (int place : places) {
            history = history.then(withRain(place), "step.move");
        }
        History moved = history;
        for (int i = 0; i < back; i++) {
            moved = moved.undo();
        }
        for (int i = 0; i < back; i++) {
            moved = moved.redo();
        }
        assertEquals(history, moved);
    }
}
