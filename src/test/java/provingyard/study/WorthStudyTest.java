package provingyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.scenario.ScenarioReader;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.score.Loss;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

class WorthStudyTest {

    private static Site row;
    private static SetUp textbook;
    private static Site clinic;

    @BeforeAll
    static void open() {
        row = Site.of(Sites.open("tansy-row").orThrow());
        textbook = References.textbook(row.scenario()).orElseThrow();
        clinic = Site.of(Sites.open("quillback-clinic").orThrow());
    }

    private static WorthStudy.Result worth(Site site, SetUp own, SetUp reference, int draws) {
        return WorthStudy.of(site, own, Optional.ofNullable(reference), draws, Progress.SILENT);
    }

    private static Worth of(WorthStudy.Result result, SensorKind kind) {
        return result.kinds().stream().filter(w -> w.kind() == kind).findFirst().orElseThrow();
    }

    private static Season lived(int draw, SetUp setUp) {
        Season season = Season.drawn(row, draw, setUp);
        season.liveToEnd();
        return season;
    }

    @Test
    void isTheMeanDifferenceOverTheDrawsKeptForIt() {
        Worth rain = of(worth(row, textbook, null, 3), SensorKind.RAIN);
        double water = 0;
        double money = 0;
        for (int draw = 401; draw <= 403; draw++) {
            Amounts with = Amounts.of(Loss.of(lived(draw, textbook)));
            Amounts without = Amounts.of(Loss.of(lived(draw, SetUp.CLOCK_ALONE)));
            water += (without.water() - with.water()) / 3;
            money += (without.money() - with.money() + with.sensors()) / 3;
        }
        assertTrue(Math.abs(water) > 0.1, "the sensor does something: " + water);
        assertEquals(water, rain.water().mean(), 1e-9);
        assertEquals(money, rain.money().mean(), 1e-9);
        assertEquals(38, rain.price());
        assertEquals(3, rain.draws());
        assertTrue(rain.placed());
        assertTrue(rain.water().low() <= rain.water().mean()
                && rain.water().mean() <= rain.water().high());
    }

    /** With one kind placed, it is the whole set-up. */
    @Test
    void theWholeIsSetAgainstTheClockAlone() {
        WorthStudy.Result result = worth(row, textbook, null, 3);
        Worth rain = of(result, SensorKind.RAIN);
        assertEquals(
                new WholeWorth(38, rain.water(), rain.ice(), rain.money(), rain.seasonsAYear(), 3), result.whole());
        WholeWorth nothing = worth(row, SetUp.CLOCK_ALONE, null, 2).whole();
        assertEquals(0, nothing.price());
        assertEquals(new Worth.Span(0, 0, 0), nothing.money());
    }

    @Test
    void whatDoesNothingSavesNothing() {
        SetUp frost = textbook.with(new Placement.Freeze("freeze-1", new Point(15, 9), Mount.POST, 1.2, 3, 4))
                .with(new Interlock("freeze-1", Interlock.Action.SHUT, List.of()));
        Worth inJune = of(worth(row, frost, null, 3), SensorKind.FREEZE);
        assertEquals(new Worth.Span(0, 0, 0), inJune.money());
        assertEquals(new Worth.Span(0, 0, 0), inJune.water());
        assertEquals(Double.POSITIVE_INFINITY, inJune.paybackYears());
        SetUp deaf = textbook.with(new Interlock("rain-1", Interlock.Action.NONE, List.of()));
        Worth unconnected = of(worth(row, deaf, null, 3), SensorKind.RAIN);
        assertTrue(unconnected.money().high() <= 0, unconnected.toString());
        assertEquals(0, unconnected.moneyAYear());
    }

    /** It sees its own sprinklers and holds the watering: plants pay. */
    @Test
    void whatHarmsIsWorthLessThanNothing() {
        Placement.Rain dry = (Placement.Rain) textbook.of(SensorKind.RAIN).get(0);
        SetUp wet = textbook.with(new Placement.Rain(dry.id(), new Point(4.5, 3.2), Mount.POST, 1, 0.003, 0.1));
        Worth rain = of(worth(row, wet, null, 3), SensorKind.RAIN);
        assertTrue(rain.money().mean() < 0, rain.toString());
        assertEquals(Double.POSITIVE_INFINITY, rain.paybackYears());
    }

    @Test
    void whatIsNotPlacedIsTriedAsTheReferenceHasIt() {
        SetUp careless = References.careless(clinic.scenario()).orElseThrow();
        SetUp reference = References.textbook(clinic.scenario()).orElseThrow();
        SetUp noSoil = Mix.without(reference, SensorKind.SOIL);
        WorthStudy.Result result = worth(clinic, careless, noSoil, 2);
        assertEquals(
                List.of(SensorKind.RAIN, SensorKind.WIND, SensorKind.FREEZE, SensorKind.FLOW),
                result.kinds().stream().map(Worth::kind).toList());
        Worth wind = of(result, SensorKind.WIND);
        assertTrue(!wind.placed() && of(result, SensorKind.RAIN).placed());
        assertEquals(145, wind.price());
        // Without a reference the textbook set-up stands in, which has a soil sensor.
        assertEquals(5, worth(clinic, careless, null, 1).kinds().size());
    }

    @Test
    void doesNotDependOnThreadsAndTellsHowFarItIs() {
        SetUp setUp = References.textbook(clinic.scenario()).orElseThrow();
        List<Integer> done = new ArrayList<>();
        Progress progress = SharesStudyTest.counting(done, Integer.MAX_VALUE);
        WorthStudy.Result one = WorthStudy.of(clinic, setUp, Optional.empty(), 2, new SideBySide(1, progress));
        assertEquals(one, WorthStudy.of(clinic, setUp, Optional.empty(), 2, new SideBySide(3, Progress.SILENT)));
        assertEquals(2 * (5 + 2), done.size(), "each set-up once a draw");
        assertEquals(0, one.unsolvedMinutes());
        assertTrue(one.whole().ice().high() > 0, one.toString());
    }

    @Test
    void stopsWhenAskedTo() {
        List<Integer> done = new ArrayList<>();
        Progress progress = SharesStudyTest.counting(done, 2);
        assertThrows(CancellationException.class, () -> WorthStudy.of(row, textbook, Optional.empty(), 400, progress));
        assertEquals(List.of(1, 2), done);
    }

    @Test
    void countsTheSeasonsThatTheSiteStatesAndLeavesLockedKindsOut() throws IOException {
        String text = Files.readString(Path.of("scenarios/tansy-row.json"));
        String stated = text.replace("\"repairAfter\": \"24 h\"", "\"repairAfter\": \"24 h\", \"seasonsAYear\": 2.5")
                .replace("\"days\": 45", "\"days\": 5");
        Site site = Site.of(ScenarioReader.read("row.json", stated).orThrow());
        Worth rain = of(worth(site, textbook, null, 2), SensorKind.RAIN);
        assertEquals(2.5, rain.seasonsAYear());
        assertEquals(2.5 * rain.money().mean(), rain.moneyAYear());
        String locked = stated.replace("\"schedule\": true", "\"schedule\": true, \"sensors\": [\"rain\"]");
        Site shut = Site.of(ScenarioReader.read("row.json", locked).orThrow());
        assertEquals(List.of(), worth(shut, SetUp.CLOCK_ALONE, textbook, 1).kinds());
    }

    /** By hand for ten values: h = 0.9 and 8.1 counted from 0. */
    @Test
    void spreadIsInterpolatedBetweenDraws() {
        double[] draws = {90, 10, 20, 30, 70, 40, 50, 60, 80, 100};
        Worth.Span span = Worth.Span.over(draws);
        assertEquals(55, span.mean(), 1e-12);
        assertEquals(19, span.low(), 1e-12);
        assertEquals(91, span.high(), 1e-12);
        assertEquals(90, draws[0], "the draws are not sorted in place");
        assertEquals(new Worth.Span(7, 7, 7), Worth.Span.over(new double[] {7}));
    }

    @Test
    void paysForItselfInPriceOverYearlySavings() {
        Worth.Span five = new Worth.Span(5, 1, 9);
        assertEquals(4, new Worth(SensorKind.RAIN, 40, true, five, five, five, 2, 3).paybackYears());
        assertEquals(4, new WholeWorth(40, five, five, five, 2, 3).paybackYears());
        Worth.Span none = new Worth.Span(0, 0, 0);
        assertEquals(Double.POSITIVE_INFINITY, new WholeWorth(40, five, five, none, 2, 3).paybackYears());
    }
}
