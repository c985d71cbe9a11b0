package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;
import provingyard.setup.Interlock;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.ui.Hints.Hint;
import provingyard.ui.Hints.Seen;

class HintsTest {

    private static final Scenario SITE = Sites.open("tansy-row").orThrow();
    private static final SetUp TEXTBOOK = References.textbook(SITE).orElseThrow();
    private static final String RAIN = TEXTBOOK.sensors().get(0).id();
    private static final long DAY = 1440;

    private static Seen seen(double seconds, SetUp setUp) {
        return new Seen(seconds, setUp, Set.of(), 0, Map.of(), Set.of(), null);
    }

    private static Seen lived(double seconds, long lived, Set<String> tripped) {
        return new Seen(seconds, TEXTBOOK, Set.of(), lived, Map.of(RAIN, 0L), tripped, null);
    }

    private static Hints hints() {
        return new Hints(List.of(), false);
    }

    @Test
    void nothingIsSaidToSomebodyWhoGetsOn() {
        Hints hints = hints();
        for (int second = 0; second < Hints.IDLE; second++) {
            assertEquals(Optional.empty(), hints.look(seen(second, SetUp.CLOCK_ALONE)));
        }
        for (int second = 60; second < 600; second++) {
            assertEquals(Optional.empty(), hints.look(lived(second, 20 * DAY, Set.of(RAIN))));
        }
        assertEquals(Set.of(), hints.takeFollowed());
    }

    @Test
    void whoPlacesNothingIsHelpedAfterAMinute() {
        Hints hints = hints();
        hints.look(seen(0, SetUp.CLOCK_ALONE));
        assertEquals(Optional.of(Hint.NOTHING_PLACED), hints.look(seen(Hints.IDLE, SetUp.CLOCK_ALONE)));
        assertEquals(Optional.empty(), hints.look(seen(70, TEXTBOOK)), "placed: followed");
        assertEquals(Set.of(Hint.NOTHING_PLACED), hints.takeFollowed());
        assertEquals(Set.of(), hints.takeFollowed(), "told once");
        assertEquals(Optional.empty(), hints.look(seen(900, SetUp.CLOCK_ALONE)), "never again once followed");
    }

    @Test
    void theFirstYardSpeaksAtOnceAndOnlyOnce() {
        Hints first = new Hints(List.of(), true);
        assertEquals(Optional.of(Hint.AFTER_RAIN), first.look(seen(0, SetUp.CLOCK_ALONE)));
        first.look(seen(30, TEXTBOOK));
        assertEquals(Set.of(Hint.AFTER_RAIN), first.takeFollowed());
        Hints later = new Hints(List.of(Hint.AFTER_RAIN.key()), true);
        assertEquals(Optional.empty(), later.look(seen(0, SetUp.CLOCK_ALONE)));
    }

    @Test
    void whatIsWavedAwayStaysAwayAndIsNotFollowed() {
        Hints hints = new Hints(List.of(), true);
        hints.look(seen(0, SetUp.CLOCK_ALONE));
        hints.dismiss(1);
        assertEquals(Optional.empty(), hints.look(seen(2, SetUp.CLOCK_ALONE)));
        assertEquals(Set.of(), hints.takeFollowed());
        assertEquals(
                Optional.of(Hint.NOTHING_PLACED),
                hints.look(seen(Hints.IDLE + 5, SetUp.CLOCK_ALONE)),
                "another hint may come later");
    }

    @Test
    void oneAtATimeAndSomeQuietBetween() {
        SetUp idle = TEXTBOOK.with(new Interlock(RAIN, Interlock.Action.NONE, List.of()));
        Hints hints = hints();
        hints.look(seen(0, SetUp.CLOCK_ALONE));
        Seen wet = new Seen(10, idle, Set.of(RAIN), 0, Map.of(), Set.of(), null);
        assertEquals(Optional.empty(), hints.look(wet), "somebody is still at it");
        Seen settled = new Seen(10 + Hints.SETTLED, idle, Set.of(RAIN), 0, Map.of(), Set.of(), null);
        assertEquals(Optional.of(Hint.IN_SPRAY), hints.look(settled));
        assertEquals(Optional.empty(), hints.look(seen(40, idle)), "out of the spray, but not the next one at once");
        assertEquals(Optional.of(Hint.NO_ACTION), hints.look(seen(40 + Hints.QUIET, idle)));
        assertEquals(Optional.empty(), hints.look(seen(70, TEXTBOOK)));
        assertEquals(Set.of(Hint.IN_SPRAY, Hint.NO_ACTION), hints.takeFollowed());
    }

    @Test
    void aSensorThatNeverTripsIsSpokenOfAfterTwoWeeks() {
        Hints hints = hints();
        assertEquals(Optional.empty(), hints.look(lived(0, Hints.NEVER - 1, Set.of())));
        assertEquals(Optional.of(Hint.NEVER_TRIPPED), hints.look(lived(1, Hints.NEVER, Set.of())));
        assertEquals(Optional.empty(), hints.look(lived(2, Hints.NEVER, Set.of(RAIN))));
    }

    @Test
    void fewPointsAreAWordWorth() {
        Hints hints = hints();
        Seen good = new Seen(5, TEXTBOOK, Set.of(), 0, Map.of(), Set.of(), Hints.LOW);
        assertEquals(Optional.empty(), hints.look(good));
        Seen bad = new Seen(6, TEXTBOOK, Set.of(), 0, Map.of(), Set.of(), Hints.LOW - 1);
        assertEquals(Optional.of(Hint.LOW_SCORE), hints.look(bad));
    }
}
