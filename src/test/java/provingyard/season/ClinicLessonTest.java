package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.setup.FlowWatch;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** Each of the five sensors matters on the clinic, by the simulator's own outcome. */
class ClinicLessonTest {

    private static final double FOOT = 0.3048;

    private static Site site;
    private static SetUp textbook;
    private static double clock;

    @BeforeAll
    static void open() {
        site = Site.of(Sites.open("quillback-clinic").orThrow());
        textbook = References.textbook(site.scenario()).orElseThrow();
        clock = loss(SetUp.CLOCK_ALONE);
    }

    private static Season lived(SetUp setUp) {
        return LivedSeasons.of(site, setUp);
    }

    private static double loss(SetUp setUp) {
        return LivedSeasons.loss(site, setUp).total();
    }

    /** The textbook set-up with one kind of sensor only. */
    private static SetUp only(SensorKind kind) {
        SetUp one = textbook;
        for (Placement placement : textbook.sensors()) {
            one = placement.kind() == kind ? one : one.without(placement.id());
        }
        return kind == SensorKind.FLOW ? one : one.with(FlowWatch.OFF);
    }

    private static <T extends Placement> T of(SensorKind kind, Class<T> type) {
        return type.cast(textbook.of(kind).get(0));
    }

    /** A kind of sensor that is put well gains by itself, and gains less, or loses, by itself where it is put badly. */
    private static void matters(SensorKind kind, Placement badly) {
        double good = loss(only(kind));
        double bad = loss(only(kind).with(badly));
        assertTrue(good < clock, kind + " well placed " + good + " loses less than the clock alone " + clock);
        assertTrue(good < bad, kind + " well placed " + good + " loses less than badly placed " + bad);
    }

    /**
     * A sensor that holds back too much looks good by itself here, because less watering ices fewer walks; beside a freeze
     * sensor it spoils what the others gain.
     */
    private static void spoils(SensorKind kind, Placement badly) {
        double alone = loss(only(kind));
        double good = loss(textbook);
        double bad = loss(textbook.with(badly));
        assertTrue(alone < clock, kind + " well placed " + alone + " loses less than the clock alone " + clock);
        assertTrue(good < bad, kind + " well placed " + good + " loses less than badly placed " + bad);
    }

    @Test
    void rainUnderTheEave() {
        Placement.Rain r = of(SensorKind.RAIN, Placement.Rain.class);
        Point eave = new Point(118 * FOOT, 59 * FOOT);
        matters(SensorKind.RAIN, new Placement.Rain(r.id(), eave, Mount.WALL, 2.4, r.trip(), r.vent()));
    }

    @Test
    void rainInTheSpray() {
        Placement.Rain r = of(SensorKind.RAIN, Placement.Rain.class);
        Point lawn = new Point(70 * FOOT, 26 * FOOT);
        spoils(SensorKind.RAIN, new Placement.Rain(r.id(), lawn, Mount.POST, 1, r.trip(), r.vent()));
    }

    @Test
    void windBehindTheHouse() {
        Placement.Wind w = of(SensorKind.WIND, Placement.Wind.class);
        Point lee = new Point(118 * FOOT, 58 * FOOT);
        matters(
                SensorKind.WIND,
                new Placement.Wind(w.id(), lee, Mount.POST, 1.5, w.trip(), w.rearm(), w.averaging(), w.hold()));
    }

    @Test
    void freezeByTheVentOnTheWarmWall() {
        Placement.Freeze f = of(SensorKind.FREEZE, Placement.Freeze.class);
        Point wall = new Point(101 * FOOT, 88 * FOOT);
        matters(SensorKind.FREEZE, new Placement.Freeze(f.id(), wall, Mount.WALL, 2.4, f.below(), f.rearm()));
    }

    @Test
    void freezeOnTheSunnyWall() {
        Placement.Freeze f = of(SensorKind.FREEZE, Placement.Freeze.class);
        Point wall = new Point(75 * FOOT, 41 * FOOT);
        matters(SensorKind.FREEZE, new Placement.Freeze(f.id(), wall, Mount.WALL, 2.4, f.below(), f.rearm()));
    }

    @Test
    void flowOnABranchBehindTheBreak() {
        Placement.Flow f = of(SensorKind.FLOW, Placement.Flow.class);
        matters(SensorKind.FLOW, new Placement.Flow(f.id(), "main-5", 1, f.size(), f.pulses(), f.offset()));
    }

    @Test
    void soilInTheWetHollow() {
        Placement.Soil s = of(SensorKind.SOIL, Placement.Soil.class);
        Point hollow = new Point(18 * FOOT, 56 * FOOT);
        spoils(SensorKind.SOIL, new Placement.Soil(s.id(), hollow, s.depth(), "clay-loam", s.dry(), s.wet()));
    }

    @Test
    void soilThatIsToldAWrongSoil() {
        Placement.Soil s = of(SensorKind.SOIL, Placement.Soil.class);
        SetUp well = only(SensorKind.SOIL);
        assertTrue(loss(well) < clock);
        Placement.Soil deaf = new Placement.Soil(s.id(), s.at(), s.depth(), s.soil(), 0.44, 0.45);
        assertTrue(loss(well) < loss(well.with(deaf)), "a wet point that is never reached blocks nothing");
    }

    /** Common practice, no source: 38 °F keeps walks free of irrigation ice where 32 °F does not. */
    @Test
    void thirtyEightDegreesKeepsTheWalksFreeWhereThirtyTwoDoesNot() {
        Placement.Freeze f = of(SensorKind.FREEZE, Placement.Freeze.class);
        SetUp usual = only(SensorKind.FREEZE);
        SetUp atZero = usual.with(new Placement.Freeze(f.id(), f.at(), f.mount(), f.height(), 0, 1));
        assertEquals(38, f.below() * 9 / 5 + 32, 1e-9);
        assertEquals(0, lived(usual).ledger().ice().mornings());
        assertTrue(lived(atZero).ledger().ice().mornings() > 0);
        assertTrue(lived(SetUp.CLOCK_ALONE).ledger().ice().mornings()
                > lived(atZero).ledger().ice().mornings());
    }
}
