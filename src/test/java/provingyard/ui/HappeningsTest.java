package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import provingyard.season.SeasonEvent;
import provingyard.season.SeasonEvent.Kind;

class HappeningsTest {

    private static SeasonEvent at(long tick, Kind kind) {
        return new SeasonEvent(tick, kind, "it", Map.of());
    }

    private static final List<SeasonEvent> NIGHT = List.of(
            at(300, Kind.ZONE_ON),
            at(312, Kind.ZONE_OFF),
            at(312, Kind.ZONE_ON),
            at(320, Kind.EXPECTED_RECORDED),
            at(320, Kind.ZONE_OFF),
            at(900, Kind.RAIN_BEGAN),
            at(1740, Kind.ZONE_ON));

    @Test
    void stopsAtAPassNotAtEachValve() {
        assertEquals(301, Happenings.after(NIGHT, 0));
        assertEquals(901, Happenings.after(NIGHT, 301));
        assertEquals(1741, Happenings.after(NIGHT, 901));
        assertEquals(-1, Happenings.after(NIGHT, 1741));
        assertEquals(3, Happenings.count(NIGHT, 0));
    }

    @Test
    void goesBackTheSameWay() {
        assertEquals(901, Happenings.before(NIGHT, 1741));
        assertEquals(301, Happenings.before(NIGHT, 901));
        assertEquals(-1, Happenings.before(NIGHT, 301));
    }
}
