package provingyard.season;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provingyard.scenario.YardPlan;

/**
 * Iced walks over the season, looked at every {@value #BEAT} minutes: a walk counts while at least {@link #LEAST_AREA} m2 of it carries ice from irrigation.
 */
final class IceLog {

    /** m2 of one walk from which it counts as iced. */
    static final double LEAST_AREA = 1.0;

    /** Minutes from one look to the next. */
    static final int BEAT = 5;

    private static final int MINUTES_A_DAY = 1440;
    private static final double MINUTES_AN_HOUR = 60.0;

    private final List<YardPlan.Surface> surfaces;
    private final boolean[] iced;
    private final double[] last;
    private double areaHours;
    private double inTraffic;
    private int mornings;
    private long lastDay = -1;
    private int walksIced;

    IceLog(List<YardPlan.Surface> surfaces) {
        this.surfaces = surfaces;
        this.iced = new boolean[surfaces.size()];
        this.last = new double[surfaces.size()];
    }

    private IceLog(IceLog other) {
        surfaces = other.surfaces;
        iced = other.iced.clone();
        last = other.last.clone();
        areaHours = other.areaHours;
        inTraffic = other.inTraffic;
        mornings = other.mornings;
        lastDay = other.lastDay;
        walksIced = other.walksIced;
    }

    IceLog copy() {
        return new IceLog(this);
    }

    /**
     * Takes a beat, at its last minute.
     *
     * @param area iced m2 of each surface, by its index; only walks count
     */
    List<SeasonEvent> beat(long tick, double[] area) {
        List<SeasonEvent> events = new ArrayList<>();
        int minuteOfDay = (int) (tick % MINUTES_A_DAY);
        for (int i = 0; i < surfaces.size(); i++) {
            YardPlan.Surface surface = surfaces.get(i);
            boolean now = surface.kind() == YardPlan.SurfaceKind.WALK && area[i] >= LEAST_AREA;
            if (now != iced[i]) {
                iced[i] = now;
                walksIced += now ? 1 : -1;
                SeasonEvent.Kind kind = now ? SeasonEvent.Kind.WALK_ICED : SeasonEvent.Kind.WALK_CLEAR;
                events.add(new SeasonEvent(tick, kind, surface.id(), Map.of("area", area[i])));
            }
            last[i] = now ? area[i] : 0;
            if (now) {
                count(tick, minuteOfDay, surface, area[i]);
            }
        }
        return events;
    }

    private void count(long tick, int minuteOfDay, YardPlan.Surface surface, double area) {
        double areaHoursNow = area * BEAT / MINUTES_AN_HOUR;
        areaHours += areaHoursNow;
        if (walked(surface, minuteOfDay)) {
            inTraffic += areaHoursNow;
        }
        if (tick / MINUTES_A_DAY != lastDay) {
            lastDay = tick / MINUTES_A_DAY;
            mornings++;
        }
    }

    /** m2 of a surface that counted as iced at the last beat. */
    double counted(int surface) {
        return last[surface];
    }

    /** Whether people walk on a surface at a minute of the day. */
    static boolean walked(YardPlan.Surface surface, int minuteOfDay) {
        List<LocalTime> traffic = surface.footTraffic();
        return traffic.size() == 2
                && minuteOfDay >= traffic.get(0).toSecondOfDay() / 60
                && minuteOfDay < traffic.get(1).toSecondOfDay() / 60;
    }

    /** Whether some walk was iced at the last beat. */
    boolean anyIced() {
        return walksIced > 0;
    }

    Ledger.Ice ice() {
        return new Ledger.Ice(areaHours, inTraffic, mornings);
    }
}
