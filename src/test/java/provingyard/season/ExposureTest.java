package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import provingyard.control.Commands;
import provingyard.control.Controller;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;
import provingyard.sensor.Readings;
import provingyard.sensor.SensorFaults;
import provingyard.sensor.Sensors;
import provingyard.setup.References;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.hydraulics.Waterworks;

class ExposureTest {

    private static final int DAY = 1440;

    private static Season clinic() {
        Scenario shipped = Sites.open("quillback-clinic").orThrow();
        Scenario sound = shipped.with(shipped.catalogue(), shipped.yard(), List.of());
        return Season.begin(Site.of(sound), References.textbook(sound).orElseThrow());
    }

    /** All five kinds of sensors are on this site, so each kind of value that is kept takes part. */
    @Test
    void daysLivedAgainWithoutFaultAreTheSameToTheBit() {
        Season season = clinic();
        while (season.tick() < 3 * DAY) {
            season.advance();
        }
        Exposure exposure = Exposure.of(season, 7 * DAY + 100);
        assertEquals(exposure.until(), season.tick());
        Exposure.Devices devices = exposure.begin();
        Sensors sensors = devices.sensors();
        Controller controller = devices.controller();
        Readings readings = devices.readings();
        Waterworks pipes = Waterworks.of(season.site().scenario());
        Exposure.Again again = exposure.again(pipes);
        for (long tick = exposure.from(); tick < exposure.until(); tick++) {
            Commands commands = controller.decide(tick, readings);
            WaterFlows flows = pipes.flows(commands.open(), commands.masterOpen(), 0);
            again.go(tick, flows);
            readings = sensors.minute(tick, again, SensorFaults.NONE);
        }
        assertEquals(season.readings(), readings);
        assertEquals(season.records(), controller.records());
        assertFalse(controller.records().runs().isEmpty(), "something ran");
    }

    @Test
    void minutesThatWillNotBeLivedAreRefused() {
        Season season = clinic();
        assertThrows(IllegalArgumentException.class, () -> Exposure.of(season, season.end() + 1));
        season.advance();
        assertThrows(IllegalArgumentException.class, () -> Exposure.of(season, 0));
    }
}
