package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.setup.FlowWatch;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** The controller's records as a technician reads them: they add up, and they know nothing of the true yard. */
class LogBookTest {

    private static final int DAYS = 21;
    private static Season season;

    @BeforeAll
    static void live() {
        Site site = Site.of(Sites.open("quillback-clinic").orThrow());
        SetUp textbook = References.textbook(site.scenario()).orElseThrow();
        season = Season.begin(site, site.scenario().season().seed(), DAYS, textbook);
        season.liveToEnd();
    }

    @Test
    void zonesAndNightsAddUpToTheRuns() {
        LogBook book = season.logBook();
        assertTrue(book.watched());
        assertFalse(book.runs().isEmpty());
        int minutes = book.runs().stream().mapToInt(LogBook.Run::minutes).sum();
        assertEquals(minutes, book.minutes());
        assertEquals(
                minutes, book.nights().stream().mapToInt(LogBook.Night::minutes).sum());
        double volume = book.zones().stream()
                .mapToDouble(LogBook.Zone::volume)
                .filter(Double::isFinite)
                .sum();
        assertEquals(book.volume(), volume, 1e-9);
        assertEquals(
                volume,
                book.nights().stream().mapToDouble(LogBook.Night::volume).sum(),
                1e-9);
        for (LogBook.Zone zone : book.zones()) {
            if (zone.minutes() > 0) {
                assertEquals(zone.volume(), zone.meanFlow() * 60 * zone.minutes(), 1e-9);
            }
        }
    }

    @Test
    void alarmsAndTripsAreNotedWithTheirKind() {
        LogBook book = season.logBook();
        assertTrue(book.notes().stream().anyMatch(n -> n.kind() == SeasonEvent.Kind.FLOW_UNSCHEDULED));
        assertTrue(book.notes().stream()
                .filter(n -> n.kind() == SeasonEvent.Kind.SENSOR_TRIPPED)
                .allMatch(n -> n.sensor() != null));
        assertTrue(book.notes().stream().anyMatch(n -> n.sensor() == SensorKind.FREEZE));
        assertTrue(book.notes().stream()
                .noneMatch(n -> n.kind() == SeasonEvent.Kind.FAULT_HAPPENED
                        || n.kind() == SeasonEvent.Kind.WALK_ICED
                        || n.kind() == SeasonEvent.Kind.RAIN_BEGAN));
        double most =
                book.nights().stream().mapToDouble(LogBook.Night::largest).max().orElse(0);
        assertTrue(most > 1e-4, "the break shows in its night: " + most);
    }

    @Test
    void withoutAWatchedSensorItKnowsNoFlow() {
        Site site = Site.of(Sites.open("tansy-row").orThrow());
        Season dry = Season.begin(site, 3, 4, SetUp.CLOCK_ALONE.with(FlowWatch.OFF));
        dry.liveToEnd();
        LogBook book = dry.logBook();
        assertFalse(book.watched());
        assertFalse(book.runs().isEmpty());
        assertTrue(Double.isNaN(book.volume()));
        assertTrue(book.zones().stream().allMatch(z -> Double.isNaN(z.volume()) && Double.isNaN(z.expected())));
    }

    @Test
    void whatSensorsShowedIsThereForEveryTenMinutes() {
        for (Shown shown : season.shown()) {
            assertEquals(DAYS * 144, shown.values().length);
            for (double value : shown.values()) {
                assertTrue(Double.isFinite(value));
            }
        }
        assertEquals(2, season.shown().size());
        assertEquals(
                season.shown().get(0).values().length,
                season.copy().shown().get(0).values().length);
    }

    @Test
    void thePlanIsWhatAClockAloneRuns() {
        Site site = Site.of(Sites.open("tansy-row").orThrow());
        Season clock = Season.begin(site, 3, 6, SetUp.CLOCK_ALONE);
        clock.liveToEnd();
        var planned = Plan.of(site.scenario(), null, clock.end());
        assertEquals(
                clock.logBook().runs().stream()
                        .map(r -> new Plan.Run(r.zone(), r.tick(), r.tick() + r.minutes()))
                        .toList(),
                planned);
    }
}
