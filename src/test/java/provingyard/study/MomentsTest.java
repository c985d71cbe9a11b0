package provingyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.scenario.SensorKind;
import provingyard.score.Loss;
import provingyard.season.LivedSeasons;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.SetUp;
import provingyard.study.Moment.What;
import provingyard.study.Moment.Why;

class MomentsTest {

    private static final int DAY = 1440;

    private static final Map<What, List<Loss.Kind>> SPEAKS_OF = new EnumMap<>(Map.of(
            What.WATERED_WET_SOIL, List.of(Loss.Kind.RUNOFF, Loss.Kind.BELOW_ROOTS),
            What.DRIFTED, List.of(Loss.Kind.DRIFT, Loss.Kind.OVERSPRAY),
            What.ICED, List.of(Loss.Kind.ICED_WALK),
            What.LEAKED, List.of(Loss.Kind.LEAK, Loss.Kind.MISSED_LEAK, Loss.Kind.LATE_LEAK),
            What.FALSE_ALARM, List.of(Loss.Kind.FALSE_ALARM),
            What.WENT_DRY, List.of(Loss.Kind.DRY_PLANTS, Loss.Kind.DEAD_PLANTS)));

    private static final Map<List<What>, List<Loss.Kind>> SAVED_OF = Map.of(
            List.of(What.SAVED_WATER, What.SAVED_DRIFT),
            List.of(Loss.Kind.RUNOFF, Loss.Kind.BELOW_ROOTS, Loss.Kind.DRIFT, Loss.Kind.OVERSPRAY),
            List.of(What.SAVED_ICE),
            List.of(Loss.Kind.ICED_WALK),
            List.of(What.LEAK_SHUT),
            List.of(Loss.Kind.LEAK, Loss.Kind.MISSED_LEAK));

    private static Site clinic() {
        return MomentSetUps.clinic();
    }

    private static Site row() {
        return MomentSetUps.row();
    }

    private static SetUp clinicTextbook() {
        return MomentSetUps.textbook(clinic());
    }

    private static SetUp onlyAlarm() {
        return clinicTextbook().with(MomentSetUps.watch(a -> FlowWatch.Action.ALARM, List.of()));
    }

    private static SetUp typedTooLow(SetUp with) {
        return with.with(MomentSetUps.watch(a -> a, MomentSetUps.typedTooLow()));
    }

    private static Arguments first(
            String name, Site site, SetUp setUp, What what, Why why, SensorKind sensor, boolean ofAllLosses) {
        return Arguments.of(name, site, setUp, new Moments.Form(what, why, sensor), ofAllLosses);
    }

    /** With {@code true} where the moment costs more than all others, not only than those of its own rule. */
    static Stream<Arguments> whatIsWrong() {
        SetUp noFlow = clinicTextbook().without("flow-1").with(FlowWatch.OFF);
        SetUp deaf = MomentSetUps.flowAndFreeze().with(new Interlock("freeze-1", Interlock.Action.NONE, List.of()));
        return Stream.of(
                first("clock", clinic(), SetUp.CLOCK_ALONE, What.LEAKED, Why.NO_SENSOR, SensorKind.FLOW, true),
                first("clock", clinic(), SetUp.CLOCK_ALONE, What.ICED, Why.NO_SENSOR, SensorKind.FREEZE, false),
                first("clock", clinic(), SetUp.CLOCK_ALONE, What.DRIFTED, Why.NO_SENSOR, SensorKind.WIND, false),
                first(
                        "careless",
                        clinic(),
                        MomentSetUps.careless(clinic()),
                        What.LEAKED,
                        Why.SETTING,
                        SensorKind.FLOW,
                        true),
                first(
                        "careless",
                        clinic(),
                        MomentSetUps.careless(clinic()),
                        What.ICED,
                        Why.PLACE,
                        SensorKind.FREEZE,
                        false),
                first("flow missing", clinic(), noFlow, What.LEAKED, Why.NO_SENSOR, SensorKind.FLOW, true),
                first(
                        "flow on a branch",
                        clinic(),
                        MomentSetUps.flow("main-5", 1),
                        What.LEAKED,
                        Why.PLACE,
                        SensorKind.FLOW,
                        true),
                first(
                        "flow not watched",
                        clinic(),
                        clinicTextbook().with(FlowWatch.OFF),
                        What.LEAKED,
                        Why.NOT_CONNECTED,
                        SensorKind.FLOW,
                        true),
                first("alarm alone", clinic(), onlyAlarm(), What.LEAKED, Why.SETTING, SensorKind.FLOW, true),
                first(
                        "wheel jammed",
                        MomentSetUps.broken("flowJammed", "flow", ""),
                        clinicTextbook(),
                        What.LEAKED,
                        Why.FAULT,
                        SensorKind.FLOW,
                        true),
                first(
                        "expected flow too low",
                        clinic(),
                        typedTooLow(clinicTextbook().without("soil-1").without("freeze-1")),
                        What.FALSE_ALARM,
                        Why.SETTING,
                        SensorKind.FLOW,
                        false),
                first(
                        "flow at a bend",
                        clinic(),
                        typedTooLow(MomentSetUps.flow("main-1", 0.05)),
                        What.FALSE_ALARM,
                        Why.PLACE,
                        SensorKind.FLOW,
                        false),
                first(
                        "freeze by the vent",
                        clinic(),
                        MomentSetUps.freeze(101, 88, 3.3),
                        What.ICED,
                        Why.PLACE,
                        SensorKind.FREEZE,
                        true),
                first(
                        "freeze on the sunny wall",
                        clinic(),
                        MomentSetUps.freeze(75, 41, 1),
                        What.ICED,
                        Why.PLACE,
                        SensorKind.FREEZE,
                        true),
                first(
                        "freeze at 0 °C",
                        clinic(),
                        MomentSetUps.freezeAtItsPlace(0),
                        What.ICED,
                        Why.SETTING,
                        SensorKind.FREEZE,
                        true),
                first("freeze does nothing", clinic(), deaf, What.ICED, Why.NOT_CONNECTED, SensorKind.FREEZE, true),
                first(
                        "freeze reads warm",
                        MomentSetUps.broken("freezeReadsWarm", "freeze", ", \"amount\": 8.0"),
                        MomentSetUps.flowAndFreeze(),
                        What.ICED,
                        Why.FAULT,
                        SensorKind.FREEZE,
                        true),
                first(
                        "rain in the spray",
                        clinic(),
                        MomentSetUps.rainInTheSprayOfTheClinic(),
                        What.WENT_DRY,
                        Why.PLACE,
                        SensorKind.RAIN,
                        true),
                first(
                        "rain stuck wet",
                        MomentSetUps.broken("rainStuck", "rain", ""),
                        clinicTextbook(),
                        What.WENT_DRY,
                        Why.FAULT,
                        SensorKind.RAIN,
                        true),
                first(
                        "soil in a void",
                        MomentSetUps.broken("soilVoid", "soil", ""),
                        clinicTextbook().without("rain-1").without("freeze-1").without("wind-1"),
                        What.WATERED_WET_SOIL,
                        Why.FAULT,
                        SensorKind.SOIL,
                        false),
                first(
                        "wind in the lee",
                        clinic(),
                        MomentSetUps.wind(118, 58, 1.5, 4.5),
                        What.DRIFTED,
                        Why.PLACE,
                        SensorKind.WIND,
                        false),
                first(
                        "wind at 9 m/s",
                        clinic(),
                        MomentSetUps.wind(8, 92, 3, 9),
                        What.DRIFTED,
                        Why.SETTING,
                        SensorKind.WIND,
                        false),
                first(
                        "cups seized",
                        MomentSetUps.broken("windSeized", "wind", ""),
                        MomentSetUps.wind(8, 92, 3, 4),
                        What.DRIFTED,
                        Why.FAULT,
                        SensorKind.WIND,
                        false),
                first("clock", row(), SetUp.CLOCK_ALONE, What.WATERED_WET_SOIL, Why.NO_SENSOR, SensorKind.RAIN, true),
                first(
                        "rain under the eave",
                        row(),
                        MomentSetUps.careless(row()),
                        What.WATERED_WET_SOIL,
                        Why.PLACE,
                        SensorKind.RAIN,
                        true),
                first(
                        "rain in the spray",
                        row(),
                        MomentSetUps.rainAt(row(), 5, 3, Mount.POST, 1, 0.005, 0.5),
                        What.WENT_DRY,
                        Why.PLACE,
                        SensorKind.RAIN,
                        true),
                first(
                        "1/8 in and the vent shut",
                        row(),
                        MomentSetUps.rainAt(row(), 15.1, 9, Mount.ROOF_EDGE, 3, 0.003, 0),
                        What.WENT_DRY,
                        Why.SETTING,
                        SensorKind.RAIN,
                        true),
                first(
                        "set to 40 mm",
                        row(),
                        MomentSetUps.rainAt(row(), 15.1, 9, Mount.ROOF_EDGE, 3, 0.04, 1),
                        What.WATERED_WET_SOIL,
                        Why.SETTING,
                        SensorKind.RAIN,
                        true));
    }

    @ParameterizedTest(name = "{0}: {3}")
    @MethodSource("whatIsWrong")
    void theMomentOfWhatIsWrongComesFirst(String name, Site site, SetUp setUp, Moments.Form form, boolean ofAllLosses) {
        Season season = LivedSeasons.of(site, setUp);
        List<Moment> moments = Moments.of(season);
        Moment first = moments.stream()
                .filter(m -> m.money() > 0)
                .filter(m -> ofAllLosses || m.what() == form.what())
                .findFirst()
                .orElseThrow();
        assertEquals(form, Moments.formOf(first), first.toString());
        holds(season, moments);
    }

    @ParameterizedTest
    @MethodSource("references")
    void referencesHoldTheRules(Site site, SetUp setUp) {
        Season season = LivedSeasons.of(site, setUp);
        holds(season, Moments.of(season));
    }

    static Stream<Arguments> references() {
        return Stream.of(
                Arguments.of(clinic(), SetUp.CLOCK_ALONE),
                Arguments.of(clinic(), clinicTextbook()),
                Arguments.of(row(), SetUp.CLOCK_ALONE),
                Arguments.of(row(), MomentSetUps.textbook(row())));
    }

    /** What is true of the moments of any season. */
    private static void holds(Season season, List<Moment> moments) {
        for (Moment m : moments) {
            assertTrue(Moments.all().contains(Moments.formOf(m)), "a form of its own: " + m);
            assertTrue(0 <= m.tick() && m.tick() <= m.until() && m.until() <= season.tick(), "after its time: " + m);
            assertEquals(Gauge.of(m.what()).size(), m.readings().size());
            assertTrue(Math.abs(m.money()) >= Story.LEAST_MONEY && m.amount() >= 0, m.toString());
            assertEquals(m.why() == Why.WORKED, m.money() < 0, m.toString());
        }
        for (int i = 1; i < moments.size(); i++) {
            assertTrue(Math.abs(moments.get(i - 1).money())
                    >= Math.abs(moments.get(i).money()));
        }
        Loss lost = Loss.of(season);
        SPEAKS_OF.forEach((what, entries) -> within(lost, entries, sum(moments, List.of(what))));
        Season clock = season.beside(SetUp.CLOCK_ALONE);
        while (clock.tick() < season.tick()) {
            clock.advance();
        }
        Loss clocks = Loss.of(clock);
        SAVED_OF.forEach((whats, entries) -> within(clocks, entries, -sum(moments, whats)));
    }

    private static double sum(List<Moment> moments, List<What> whats) {
        return moments.stream()
                .filter(m -> whats.contains(m.what()))
                .mapToDouble(Moment::money)
                .sum();
    }

    /** No litre and no m2 h is told twice. */
    private static void within(Loss loss, List<Loss.Kind> entries, double told) {
        double whole = entries.stream().mapToDouble(loss::money).sum();
        assertTrue(told <= whole + 1e-9, entries + ": " + told + " told of " + whole);
    }

    @Test
    void theClinicsIceAndLeaksAreToldInFull() {
        Season season = LivedSeasons.of(clinic(), SetUp.CLOCK_ALONE);
        List<Moment> moments = Moments.of(season);
        Loss loss = Loss.of(season);
        assertEquals(loss.money(Loss.Kind.ICED_WALK), sum(moments, List.of(What.ICED)), 1e-6);
        assertEquals(
                loss.money(Loss.Kind.LEAK) + loss.money(Loss.Kind.MISSED_LEAK),
                sum(moments, List.of(What.LEAKED)),
                1e-6);
    }

    @Test
    void textbookShutsBothLeaksAndKeepsTheWalksFree() {
        Season season = LivedSeasons.of(clinic(), clinicTextbook());
        List<Moment> moments = Moments.of(season);
        assertEquals(Why.WORKED, moments.get(0).why());
        assertEquals(2, moments.stream().filter(m -> m.what() == What.LEAK_SHUT).count());
        double ice = Loss.of(LivedSeasons.of(clinic(), SetUp.CLOCK_ALONE)).money(Loss.Kind.ICED_WALK);
        assertEquals(ice, -sum(moments, List.of(What.SAVED_ICE)), 1e-6);
        assertEquals(0, sum(moments, List.of(What.ICED)));
    }

    /** A moment of a season half lived knows nothing of what comes, and looking does not change what comes. */
    @Test
    void nothingIsToldOfWhatIsNotLivedYet() {
        SetUp careless = MomentSetUps.careless(clinic());
        Season half = Season.begin(clinic(), careless);
        while (half.tick() < 20 * DAY + 333) {
            half.advance();
        }
        List<Moment> early = Moments.of(half);
        assertTrue(early.stream().anyMatch(m -> m.what() == What.LEAKED));
        holds(half, early);
        half.liveToEnd();
        Season whole = LivedSeasons.of(clinic(), careless);
        assertEquals(whole.ledgerHash(), half.ledgerHash());
        assertEquals(Moments.of(whole), Moments.of(half));
    }

    @Test
    void aSeasonBeforeItsFirstMinuteHasNoMoments() {
        assertEquals(List.of(), Moments.of(Season.begin(clinic(), SetUp.CLOCK_ALONE)));
    }

    /** After the change of set-up the freeze sensor is placed, and no night is told as one without. */
    @Test
    void theSetUpInForceIsBlamed() {
        Season season = Season.begin(clinic(), SetUp.CLOCK_ALONE);
        while (!season.over()) {
            if (season.tick() == 14 * DAY) {
                season.change(MomentSetUps.freeze(101, 88, 0));
            }
            season.advance();
        }
        List<Moment> ice =
                Moments.of(season).stream().filter(m -> m.what() == What.ICED).toList();
        assertTrue(ice.stream().anyMatch(m -> m.tick() < 14 * DAY && m.why() == Why.NO_SENSOR));
        assertTrue(ice.stream().anyMatch(m -> m.tick() > 15 * DAY));
        for (Moment m : ice) {
            assertEquals(m.tick() < 14 * DAY, m.why() == Why.NO_SENSOR, m.toString());
        }
    }

    @Test
    void drawnSeasonsHaveMomentsToo() {
        Season season = Season.drawn(clinic(), 3, SetUp.CLOCK_ALONE);
        season.liveToEnd();
        holds(season, Moments.of(season));
    }

    @Test
    void topTakesAFewOfEach() {
        List<Moment> all = Moments.of(LivedSeasons.of(clinic(), SetUp.CLOCK_ALONE));
        List<Moment> top = Moments.topOf(all, 3);
        for (What what : What.values()) {
            List<Moment> ofAll = all.stream().filter(m -> m.what() == what).toList();
            List<Moment> ofTop = top.stream().filter(m -> m.what() == what).toList();
            assertEquals(ofAll.subList(0, Math.min(3, ofAll.size())), ofTop);
        }
        assertTrue(top.size() < all.size());
    }
}
