package provingyard.world.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A season of thirty days on a yard of some 5,000 cells, with its unwatered twin. */
class GroundSeasonTest {

    private static final int DAYS = 30;
    private static final int COLUMNS = 72;

    private static GroundCells yard() {
        String[] rows = new String[70];
        for (int r = 0; r < rows.length; r++) {
            StringBuilder row = new StringBuilder();
            for (int x = 0; x < COLUMNS; x++) {
                row.append(
                        r > 20 && r < 40 && x > 20 && x < 45
                                ? 'r'
                                : x % 18 < 2 || r % 35 < 2 ? 'w' : r > 64 ? 'd' : x < 30 ? 'c' : x < 60 ? 'l' : 'b');
            }
            rows[r] = row.toString();
        }
        return Plots.of(0.6, 0.03, rows);
    }

    static MinuteForcing weather(int minute) {
        int day = minute / 1440;
        double hour = minute / 60.0 % 24;
        double sun = Math.max(0, 450 * (1 - Math.abs(hour - 12) / 5));
        double air = 5 + day % 7 - 3 + 5 * (1 - Math.abs(hour - 14) / 6);
        double rain = day % 5 == 3 && hour >= 14 && hour < 15.5 ? 4.0 / 60e3 : 0;
        return new MinuteForcing(
                rain,
                sun * 4e-9,
                air,
                air - 3,
                1 + day % 3,
                sun,
                day % 5 / 5.0,
                30 - 6 * Math.abs(hour - 12),
                15 * hour);
    }

    @Test
    void aMonthWithItsTwinCloses() {
        Ground ground = new Ground(yard(), GroundSettings.usual(9));
        Ground twin = ground.copy();
        double before = ground.store();
        double[] landed = new double[ground.cells().count()];
        for (int minute = 0; minute < DAYS * 1440; minute++) {
            MinuteForcing now = weather(minute);
            ground.step(now, watering(minute, landed));
            twin.step(now, null);
        }
        Totals totals = ground.totals();
        assertEquals(0, totals.residual(before) / (totals.rain() + totals.irrigation()), 1e-12);
        assertTrue(totals.store() > twin.totals().store());
    }

    /** Eight zones of twenty minutes from five in the morning every second day. */
    private static Watering watering(int minute, double[] landed) {
        int inDay = minute % 1440 - 300;
        if (minute / 1440 % 2 == 1 || inDay < 0 || inDay >= 160) {
            return null;
        }
        int zone = inDay / 20;
        int each = landed.length / 8;
        for (int c = 0; c < landed.length; c++) {
            landed[c] = c / each == zone ? 0.035 / 60 : 0;
        }
        return Watering.of(landed);
    }
}
