package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.scenario.Scenario;
import provingyard.scenario.Schedule.ZoneRun;
import provingyard.scenario.Sites;
import provingyard.setup.SetUp;
import provingyard.setup.SetUpReader;

class SchedulesTest {

    private static final Scenario SITE = Sites.open(States.CLAY_SLOPE).orThrow();
    private static final SetUp TEXTBOOK = States.textbook(States.CLAY_SLOPE);

    private static Schedules found() {
        return Schedules.of(SetUp.CLOCK_ALONE, SITE);
    }

    @Test
    void whatWasFoundNeedsNoScheduleOfItsOwn() {
        assertNull(found().into(SetUp.CLOCK_ALONE, SITE).schedule());
        SetUp changed = found().every(3).into(SetUp.CLOCK_ALONE, SITE);
        assertEquals(3, changed.schedule().every());
        assertNull(Schedules.of(changed, SITE).every(1).into(changed, SITE).schedule(), "changed back");
    }

    @Test
    void everyStepIsOneThatTheSiteTakes() {
        Schedules all = found().on(List.of(DayOfWeek.SUNDAY, DayOfWeek.MONDAY))
                .toggled(DayOfWeek.FRIDAY)
                .oneMoreStart()
                .start(1, LocalTime.of(22, 30))
                .seasonal(0.85)
                .with(new ZoneRun("zone-2", 600, 180, 1800));
        assertEquals(
                List.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY, DayOfWeek.SUNDAY),
                all.schedule().days());
        assertEquals(0, all.schedule().every());
        assertEquals(
                List.of(LocalTime.of(5, 0), LocalTime.of(22, 30)),
                all.schedule().starts());
        assertEquals(180, all.of("zone-2").cycle());
        assertEquals(List.of(), SetUpReader.check(all.into(SetUp.CLOCK_ALONE, SITE), SITE));
    }

    @Test
    void theLastDayAndTheLastStartStay() {
        Schedules monday = found().on(List.of(DayOfWeek.MONDAY));
        assertSame(monday, monday.toggled(DayOfWeek.MONDAY));
        assertEquals(1, found().withoutStart(0).schedule().starts().size());
        Schedules many = found();
        for (int i = 0; i < 20; i++) {
            many = many.oneMoreStart();
        }
        assertEquals(Schedules.MOST_STARTS, many.schedule().starts().size());
        assertEquals(1, found().every(0).schedule().every());
        assertEquals(31, found().every(40).schedule().every());
    }

    /** Cycles of 3 min make four parts of 10 min and two of 6, each zone resting 30 min before its next. */
    @Test
    void aWateringDayIsWhatTheControllerRuns() {
        Schedules.Pass pass = Schedules.of(TEXTBOOK, SITE).pass(SITE);
        assertEquals(4 * 4 + 2 + 1, pass.runs().size());
        assertEquals(4 * 10 + 6 + 20, pass.minutes());
        assertEquals(pass.asked(), pass.minutes());
        assertEquals(4 * 60, pass.from());
        long[] starts = pass.runs().stream()
                .filter(r -> r.zone().equals("zone-1"))
                .mapToLong(r -> r.from())
                .toArray();
        for (int i = 1; i < starts.length; i++) {
            assertTrue(starts[i] - starts[i - 1] >= 33, "3 min of water and 30 of soak");
        }
    }

    @Test
    void whatTheAllowedHoursCutShortIsAskedForAllTheSame() {
        Schedules late = found().start(0, LocalTime.of(8, 30));
        Schedules.Pass pass = late.pass(SITE);
        assertEquals(30, pass.minutes());
        assertEquals(4 * 14 + 12 + 30, pass.asked());
        assertEquals(0, late.seasonal(0).pass(SITE).minutes());
    }

    @ParameterizedTest
    @CsvSource({"5,05:00", "5:30,05:30", "05.30,05:30", "0530,05:30", "' 23:59 ',23:59", "0,00:00"})
    void timesAreReadAsTheyAreTyped(String typed, String time) {
        assertEquals(Optional.of(LocalTime.parse(time)), Schedules.time(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "24:00", "5:60", "noon", "5:3", "-1", "12345", "5:00 pm"})
    void otherTextsAreNoTimes(String typed) {
        assertEquals(Optional.empty(), Schedules.time(typed));
    }
}
