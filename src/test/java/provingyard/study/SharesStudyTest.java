package provingyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.score.Loss;
import provingyard.season.LivedSeasons;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

class SharesStudyTest {

    private static final int DAY = 1440;

    private static Site row;
    private static SetUp textbook;
    private static Season changed;
    private static Site clinic;
    private static Season careless;

    @BeforeAll
    static void live() {
        row = Site.of(Sites.open("tansy-row").orThrow());
        textbook = References.textbook(row.scenario()).orElseThrow();
        changed = changedHalfWay();
        clinic = Site.of(Sites.open("quillback-clinic").orThrow());
        careless =
                LivedSeasons.of(clinic, References.careless(clinic.scenario()).orElseThrow());
    }

    private static Placement freeze() {
        return new Placement.Freeze("freeze-1", new Point(15, 9), Mount.POST, 1.2, 3, 4);
    }

    /** Nothing at first, then a rain sensor in the spray and a freeze sensor, which later goes again. */
    private static Season changedHalfWay() {
        Placement.Rain dry = (Placement.Rain) textbook.of(SensorKind.RAIN).get(0);
        Placement wet = new Placement.Rain(dry.id(), new Point(4.5, 3.2), Mount.POST, 1, dry.trip(), dry.vent());
        Season season = Season.begin(row, SetUp.CLOCK_ALONE);
        liveTo(season, 10 * DAY + 17);
        SetUp both =
                textbook.with(wet).with(freeze()).with(new Interlock("freeze-1", Interlock.Action.SHUT, List.of()));
        season.change(both);
        season.rearm();
        liveTo(season, 25 * DAY);
        season.change(both.without("freeze-1"));
        season.liveToEnd();
        return season;
    }

    private static void liveTo(Season season, long tick) {
        while (season.tick() < tick) {
            season.advance();
        }
    }

    private static Shares shares(Season trainee, SetUp mark) {
        return SharesStudy.of(trainee, mark, Optional.empty(), Progress.SILENT);
    }

    private static Amounts of(Shares shares, Choice choice) {
        return shares.shares().stream()
                .filter(s -> s.choice() == choice)
                .findFirst()
                .orElseThrow()
                .cost();
    }

    private static Amounts lost(Site site, SetUp setUp) {
        return Amounts.of(LivedSeasons.loss(site, setUp));
    }

    private static void assertAddsUp(Shares shares, Amounts trainee, Amounts mark) {
        Amounts sum = shares.shares().stream().map(Shares.Share::cost).reduce(Amounts.NONE, Amounts::plus);
        assertEquals(trainee.minus(mark), shares.gap());
        double size = Math.max(trainee.money(), mark.money());
        assertEquals(shares.gap().money(), sum.money(), 1e-9 * size);
        assertEquals(shares.gap().water(), sum.water(), 1e-9 * Math.max(trainee.water(), mark.water()));
        assertEquals(shares.gap().ice(), sum.ice(), 1e-9 * Math.max(1, Math.max(trainee.ice(), mark.ice())));
        assertEquals(shares.gap().leaks(), sum.leaks(), 1e-9 * size);
        assertEquals(shares.gap().plants(), sum.plants(), 1e-9 * size);
        assertEquals(shares.gap().sensors(), sum.sensors(), 1e-9 * size);
    }

    @Test
    void whatWasDecidedIsLivedAgainToTheBit() {
        Season again = Decisions.of(changed).live(changed);
        assertEquals(changed.ledgerHash(), again.ledgerHash());
        assertEquals(changed.outcome(), again.outcome());
        Season mixed = Decisions.of(changed)
                .keeping(EnumSet.allOf(Choice.class), SetUp.CLOCK_ALONE)
                .live(changed);
        assertEquals(changed.outcome(), mixed.outcome());
    }

    @Test
    void addUpWhereTheSetUpChangedWithinTheSeason() {
        Shares shares = shares(changed, textbook);
        assertEquals(
                List.of(Choice.RAIN, Choice.FREEZE),
                shares.shares().stream().map(Shares.Share::choice).toList());
        assertAddsUp(shares, Amounts.of(Loss.of(changed)), lost(row, textbook));
        assertTrue(Math.abs(of(shares, Choice.RAIN).money()) > 0.5, shares.toString());
    }

    /** Each sensor that was ever bought is paid for once, whatever it is mixed with. */
    @Test
    void moneySpentWithinTheSeasonGoesToWhatWasBought() {
        Shares shares = shares(changed, textbook);
        double share = changed.outcome().shareOfLife();
        assertEquals(38 + 42, changed.outcome().spent());
        assertEquals(0, of(shares, Choice.RAIN).sensors(), 1e-12, "both have one rain sensor");
        assertEquals(42 * share, of(shares, Choice.FREEZE).sensors(), 1e-12);
        // In June no freeze sensor does anything.
        assertEquals(
                of(shares, Choice.FREEZE).sensors(), of(shares, Choice.FREEZE).money(), 1e-9);
    }

    @Test
    void aChoiceThatIsTheSameInBothCostsExactlyNothingAndNoSeasonIsLivedForIt() {
        List<Integer> of = new ArrayList<>();
        SetUp mark = careless.setUp().with(new Placement.Soil("soil-1", new Point(18, 8), 0.1, "loam", 0.19, 0.23));
        Shares shares = SharesStudy.of(careless, mark, Optional.empty(), counting(of, Integer.MAX_VALUE));
        assertEquals(List.of(1), of, "the mark's season alone");
        for (Choice same : List.of(Choice.RAIN, Choice.WIND, Choice.FREEZE, Choice.FLOW)) {
            assertEquals(Amounts.NONE, of(shares, same));
        }
        assertEquals(shares.gap(), of(shares, Choice.SOIL));
        assertNotEquals(Amounts.NONE, shares.gap());
        assertEquals(5, shares.shares().size(), "the schedule is locked");
    }

    @Test
    void theMarkAgainstItselfIsNoGap() {
        List<Integer> of = new ArrayList<>();
        Loss known = Loss.of(careless);
        Shares shares = SharesStudy.of(careless, careless.setUp(), Optional.of(known), counting(of, Integer.MAX_VALUE));
        assertEquals(Amounts.NONE, shares.gap());
        assertTrue(shares.shares().stream().allMatch(s -> s.cost().equals(Amounts.NONE)), shares.toString());
        assertEquals(List.of(), of);
    }

    @Test
    void thirtyTwoSeasonsOfTheClinicAddUpOnAnyNumberOfThreads() {
        SetUp mark = References.textbook(clinic.scenario()).orElseThrow();
        Amounts best = lost(clinic, mark);
        List<Integer> of = new ArrayList<>();
        Shares one =
                SharesStudy.of(careless, mark, Optional.empty(), new SideBySide(1, counting(of, Integer.MAX_VALUE)));
        assertEquals(31, of.size(), "all but the trainee's own");
        assertAddsUp(one, Amounts.of(Loss.of(careless)), best);
        Loss known = LivedSeasons.loss(clinic, mark);
        Shares three = SharesStudy.of(careless, mark, Optional.of(known), new SideBySide(3, Progress.SILENT));
        assertEquals(one, three);
        // The careless one's flow sensor is the wrong size and only calls: both leaks run on.
        assertTrue(of(one, Choice.FLOW).leaks() > 100, one.toString());
        assertEquals(0, of(one, Choice.RAIN).leaks(), 1e-9);
    }

    @Test
    void reArmingByHandBelongsToTheFlowWatch() {
        SetUp setUp = References.textbook(clinic.scenario()).orElseThrow();
        Season season = Season.begin(clinic, setUp);
        // After the break of day 17 the watch has shut the master valve; somebody opens it again before the repair.
        liveTo(season, 16 * DAY + 400);
        season.rearm();
        season.liveToEnd();
        Shares shares = shares(season, setUp);
        assertTrue(shares.gap().water() > 1, shares.toString());
        assertEquals(shares.gap(), of(shares, Choice.FLOW));
    }

    @Test
    void aDrawnSeasonIsSharedOutOnItsOwnWeather() {
        Season drawn = Season.drawn(row, 3, References.careless(row.scenario()).orElseThrow());
        drawn.liveToEnd();
        Season mark = Season.drawn(row, 3, textbook);
        mark.liveToEnd();
        assertAddsUp(shares(drawn, textbook), Amounts.of(Loss.of(drawn)), Amounts.of(Loss.of(mark)));
    }

    @Test
    void aSeasonThatIsNotOverIsComparedAsFarAsItWasLived() {
        Season begun = Season.begin(row, References.careless(row.scenario()).orElseThrow());
        liveTo(begun, 12 * DAY);
        Season mark = Season.begin(row, textbook);
        liveTo(mark, 12 * DAY);
        assertAddsUp(shares(begun, textbook), Amounts.of(Loss.of(begun)), Amounts.of(Loss.of(mark)));
    }

    @Test
    void stopsWhenAskedTo() {
        List<Integer> done = new ArrayList<>();
        SetUp mark = References.textbook(clinic.scenario()).orElseThrow();
        assertThrows(
                CancellationException.class, () -> SharesStudy.of(careless, mark, Optional.empty(), counting(done, 3)));
        assertEquals(List.of(1, 2, 3), done);
    }

    /** Notes what is told, and asks to stop after so many seasons. */
    static Progress counting(List<Integer> done, int most) {
        return new Progress() {
            @Override
            public void at(int now, int of) {
                done.add(now);
            }

            @Override
            public boolean cancelled() {
                return done.size() >= most;
            }
        };
    }
}
