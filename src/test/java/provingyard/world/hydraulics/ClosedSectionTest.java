package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Sites;

/** The fall of pressure in a closed section against its closed form, on the main of a shipped site. */
@Tag("unit")
class ClosedSectionTest {

    private static final double START = 300e3;
    private static final double ATMOSPHERE = 101325;

    private static ClosedSection main() {
        return Waterworks.of(Sites.open("sumac-bend").orThrow()).closed("main-3", 1, Set.of("iso-b"));
    }

    private static ClosedSection.Loss constant(double flow) {
        return new ClosedSection.Loss(flow, START, 0, 0);
    }

    @Test
    void endsAtShutValvesAndOneWayDevices() {
        ClosedSection section = main();
        assertTrue(section.boundary().contains("iso-b") && section.boundary().contains("backflow"));
        assertFalse(section.boundary().contains("iso-a"), "an open valve lets through");
        assertTrue(section.holds("main-1", 3) && section.holds("main-3", 1) && !section.holds("main-3", 5));
        assertTrue(section.holds("lat-1a", 0.1) && !section.holds("lat-1a", 1), "up to the zone valve");
    }

    /** With a loss that does not depend on pressure the time is V times the integral of C: water and wall, and Boyle's air. */
    @Test
    void whatLeaksOutIsWhatWaterWallAndAirGive() {
        ClosedSection section = main();
        double flow = 1e-6;
        double seconds = 20;
        double fell = section.fall(START, List.of(constant(flow)), seconds) * seconds;
        double end = START - fell;
        double wall = section.gives(1e12) * fell;
        double air = ClosedSection.AIR * (ATMOSPHERE / (ATMOSPHERE + end) - ATMOSPHERE / (ATMOSPHERE + START));
        assertEquals(flow * seconds, section.volume() * (wall + air), 1e-4 * flow * seconds);
    }

    /** PVC class 200 of 1 1/2 in has a dimension ratio of some 21 and a wave speed of some 360 m/s. */
    @Test
    void waterAndWallAreAsStiffAsTheWaveSpeedSays() {
        double speed = Math.sqrt(1 / (1000 * main().gives(1e12)));
        assertTrue(speed > 330 && speed < 400, "m/s " + speed);
    }

    @Test
    void aLossAboveTheGaugeStopsWhenItsOwnPressureIsGone() {
        ClosedSection section = main();
        ClosedSection.Loss high = new ClosedSection.Loss(1e-4, START / 2, 0.5, -START / 2);
        assertEquals(START / 2, section.fall(START, List.of(high), 600) * 600, 0.02 * START);
    }

    @Test
    void aTightSectionAndOneWithoutPressureDoNotFall() {
        assertEquals(0, main().fall(START, List.of(), 600));
        assertEquals(0, main().fall(5e3, List.of(constant(1e-4)), 600));
    }
}
