package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RibbonWindowTest {

    private static final long DAY = 1440;

    @Test
    void standsStillWhileTheHeadMovesWithin() {
        RibbonWindow window = new RibbonWindow(30 * DAY, 10 * DAY);
        window.follow(20 * DAY, true);
        long from = window.from();
        assertTrue(window.to() > 20 * DAY, "what comes is seen");
        window.follow(from + 600, false);
        window.follow(from + 5000, false);
        assertEquals(from, window.from(), "what lies under the hand stays there");
        assertEquals(from + 10 * DAY, window.to());
    }

    @Test
    void followsTimeThatRunsAndTurnsBack() {
        RibbonWindow window = new RibbonWindow(30 * DAY, 10 * DAY);
        window.follow(25 * DAY, true);
        assertEquals(25 * DAY + 1200, window.to(), "a twelfth lies ahead");
        window.follow(2 * DAY, false);
        assertTrue(window.from() <= 2 * DAY && window.to() >= 2 * DAY);
        window.follow(30 * DAY, true);
        assertEquals(30 * DAY, window.to(), "never beyond the season");
        window.span(0);
        assertEquals(0, window.from());
        assertEquals(30 * DAY, window.to());
    }
}
