package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** The first site teaches the rain sensor: one that the sprinklers wet holds the watering itself. */
class FirstRainLessonTest {

    private static Site site;
    private static SetUp textbook;
    private static Placement.Rain rain;
    private static double best;

    @BeforeAll
    static void open() {
        site = Site.of(Sites.open("tansy-row").orThrow());
        textbook = References.textbook(site.scenario()).orElseThrow();
        rain = (Placement.Rain) textbook.of(SensorKind.RAIN).get(0);
        best = loss(textbook);
    }

    private static double loss(SetUp setUp) {
        return LivedSeasons.loss(site, setUp).total();
    }

    @Test
    void aSensorInTheSprayHoldsTheWateringItself() {
        for (double height : new double[] {1, 2.1}) {
            Placement wet =
                    new Placement.Rain(rain.id(), new Point(4.5, 3.2), Mount.POST, height, rain.trip(), rain.vent());
            assertTrue(best < loss(textbook.with(wet)), "in spray, " + height + " m high");
        }
    }
}
