package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.season.Chronicle.Guise;
import provingyard.setup.References;
import provingyard.setup.SetUp;

class ChronicleTest {

    private static final int DAY = 1440;

    private static Site site;
    private static Season careless;
    private static Chronicle told;

    @BeforeAll
    static void live() {
        site = Site.of(Sites.open("quillback-clinic").orThrow());
        careless = LivedSeasons.of(site, References.careless(site.scenario()).orElseThrow());
        told = Chronicle.of(careless);
    }

    @Test
    void whatWasLivedIsLivedAgainAndNotChanged() {
        SetUp textbook = References.textbook(site.scenario()).orElseThrow();
        Season season = Season.begin(site, SetUp.CLOCK_ALONE);
        while (season.tick() < 20 * DAY + 77) {
            if (season.tick() == 3 * DAY + 5) {
                season.change(textbook);
            }
            if (season.tick() == 17 * DAY) {
                season.rearm();
            }
            season.advance();
        }
        String before = season.ledgerHash();
        Chronicle again = Chronicle.of(season);
        assertEquals(before, season.ledgerHash());
        assertEquals(20 * DAY + 77, again.tick());
        // The same outcome to the bit, through the change and the re-arming.
        assertEquals(season.outcome(), again.outcome());
        assertTrue(again.sensors().size() == textbook.sensors().size());
        assertTrue(Float.isNaN(again.sensor("freeze-1").shown()[3 * DAY]), "not placed yet");
        season.liveToEnd();
        Season straight = Season.begin(site, SetUp.CLOCK_ALONE);
        while (!straight.over()) {
            if (straight.tick() == 3 * DAY + 5) {
                straight.change(textbook);
            }
            if (straight.tick() == 17 * DAY) {
                straight.rearm();
            }
            straight.advance();
        }
        assertEquals(straight.ledgerHash(), season.ledgerHash(), "a season goes on as if nobody had looked");
    }

    @Test
    void hoursAreTheLedgerOfTheirMinute() {
        Season season = Season.begin(site, References.careless(site.scenario()).orElseThrow());
        while (season.tick() < 9 * DAY + 6 * 60) {
            season.advance();
        }
        assertEquals(season.ledger().irrigation(), told.at(season.tick()));
        assertEquals(told.outcome().ledger().irrigation(), told.at(careless.tick()));
        assertEquals(30 * 24 + 1, told.hours().size());
    }

    @Test
    void partsAddUpToTheLedger() {
        Ledger ledger = careless.ledger();
        double astray = told.runs().stream().mapToDouble(Chronicle.Run::astray).sum();
        assertEquals(ledger.irrigation().drift() + ledger.irrigation().overspray(), astray, 1e-9);
        double leaked =
                told.leaks().stream().mapToDouble(Chronicle.Leak::volume).sum();
        assertEquals(ledger.irrigation().leaked(), leaked, 1e-9);
        double supplied =
                told.runs().stream().mapToDouble(Chronicle.Run::supplied).sum();
        assertEquals(ledger.irrigation().supplied(), supplied + leaked, 1e-6);
        double ice =
                told.iced().stream().mapToDouble(Chronicle.IcedWalk::inTraffic).sum();
        assertTrue(ice > 100, "there was ice");
        assertEquals(ledger.ice().areaHoursInTraffic(), ice, 1e-9);
        assertEquals(
                ledger.ice().areaHours(),
                told.iced().stream().mapToDouble(Chronicle.IcedWalk::areaHours).sum(),
                1e-9);
        assertEquals(
                ice, told.icedByWalk().values().stream().mapToDouble(d -> d).sum(), 1e-9);
        Chronicle.Dryness last = told.days().get(told.days().size() - 1);
        assertEquals(ledger.plants().dryAreaDays(), last.areaDays());
        assertEquals(ledger.plants().deadArea(), last.dead());
    }

    @Test
    void windTakesPartOfWhatGoesAstray() {
        assertTrue(told.runs().stream().anyMatch(r -> r.byWind() > 0 && r.wind() > 3));
        for (Chronicle.Run run : told.runs()) {
            assertTrue(run.byWind() >= 0 && run.byWind() <= run.astray());
            assertEquals(run.byWind() > 0, run.byWind() > 0 && Double.isFinite(run.wind()));
            assertTrue(run.wetness() > 0 && run.wetness() < 3, "share of the available water: " + run.wetness());
        }
    }

    @Test
    void aNightsTemperaturesGoWithItsIce() {
        for (Chronicle.IcedWalk walk : told.iced()) {
            assertEquals(walk.air().length, walk.paving().length);
            long end = walk.start() + (long) walk.air().length * Chronicle.TEMPERATURE_STEP;
            assertTrue(walk.start() >= Chronicle.beginOf(walk.night()) && end <= careless.tick() + 10);
            assertTrue(walk.until() > walk.from() && walk.until() <= careless.tick());
            float coldest = Float.POSITIVE_INFINITY;
            for (float t : walk.paving()) {
                coldest = Math.min(coldest, t);
            }
            assertTrue(coldest < 1, walk.walk() + " iced at " + coldest);
        }
    }

    /** The canopy keeps the rain off; under open sky the same sensor would have tripped. */
    @Test
    void theSameSensorElsewhereTellsThePlace() {
        Chronicle.Sensed rain = told.sensor("rain-1");
        long end = careless.tick();
        double[] caught = told.rain().caught().get("rain-1");
        double[] open = told.rain().open();
        assertTrue(caught[caught.length - 1] < 0.2 * open[open.length - 1]);
        assertEquals(0, rain.trips().get(Guise.AS_IT_WAS).seen(0, end));
        assertTrue(rain.trips().get(Guise.WELL_PLACED).seen(0, end) > 0);
        Chronicle.Sensed freeze = told.sensor("freeze-1");
        assertTrue(freeze.trips().get(Guise.WELL_PLACED).seen(0, end)
                > freeze.trips().get(Guise.AS_IT_WAS).seen(0, end));
        assertTrue(freeze.trips().get(Guise.EAGER).seen(0, end)
                > freeze.trips().get(Guise.LAX).seen(0, end));
        assertTrue(told.usual().keySet().containsAll(List.of(SensorKind.RAIN, SensorKind.WIND, SensorKind.FREEZE)));
    }

    @Test
    void whatTheControllerSawIsTheReadingOfTheMinuteBefore() {
        Season season = Season.begin(site, References.careless(site.scenario()).orElseThrow());
        for (int t = 0; t < DAY; t++) {
            season.advance();
            double shown = season.readings().of("freeze-1").orElseThrow().shown();
            assertEquals((float) shown, (float) told.sensor("freeze-1").seenAt(t + 1));
        }
        assertFalse(told.sensor("freeze-1").trips().get(Guise.AS_IT_WAS).seenAt(0));
    }

    @Test
    void rainBeganAfterADryDay() {
        Chronicle.Fallen rain = new Chronicle.Fallen(depths(60), java.util.Map.of(), java.util.Map.of());
        // Rain in hours 10, 12 and 50.
        assertEquals(10 * 60, rain.since(20 * 60));
        assertEquals(10 * 60, rain.since(45 * 60));
        assertEquals(50 * 60, rain.since(55 * 60));
        assertEquals(5 * 60, rain.since(5 * 60), "none fell so far");
        assertEquals(0.002, rain.between(rain.open(), 10 * 60, 20 * 60), 1e-12);
    }

    private static double[] depths(int hours) {
        double[] depths = new double[hours];
        for (int h = 1; h < hours; h++) {
            boolean rained = h - 1 == 10 || h - 1 == 12 || h - 1 == 50;
            depths[h] = depths[h - 1] + (rained ? 0.001 : 0);
        }
        return depths;
    }

    @Test
    void twiceTheSame() {
        Chronicle again = Chronicle.of(careless);
        assertEquals(told.runs(), again.runs());
        assertEquals(told.stops(), again.stops());
        assertEquals(told.leaks(), again.leaks());
        assertEquals(told.hours(), again.hours());
        assertArrayEquals(
                told.sensor("freeze-1").shown(), again.sensor("freeze-1").shown());
        assertEquals(told.iced().size(), again.iced().size());
        for (int i = 0; i < told.iced().size(); i++) {
            assertArrayEquals(told.iced().get(i).paving(), again.iced().get(i).paving());
        }
    }

    @Test
    void theClockAloneIsTheSeasonWithoutSensors() {
        Outcome clock = LivedSeasons.of(site, SetUp.CLOCK_ALONE).outcome();
        assertEquals(clock, Chronicle.ofClockAlone(careless).outcome());
    }

    @Test
    void aSeasonOfNoMinuteHasAChronicle() {
        Chronicle none = Chronicle.of(Season.begin(site, SetUp.CLOCK_ALONE));
        assertEquals(0, none.tick());
        assertTrue(
                none.runs().isEmpty() && none.iced().isEmpty() && none.leaks().isEmpty());
    }
}
