package provingyard.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import provingyard.scenario.Point;
import provingyard.scenario.YardPlan;
import provingyard.season.Chronicle.IcedWalk;
import provingyard.world.weather.Spot;

/** Notes the ice of each walk in each night, and how cold its middle was. Mutable. */
final class IceNotes {

    private static final double HOURS_A_BEAT = IceLog.BEAT / 60.0;

    /** Height in m of the air over a walk. */
    private static final double OVER_WALK = 0.1;

    private static final int STEP = Chronicle.TEMPERATURE_STEP;

    /** Temperatures of a night are those from 18 h to 12 h. */
    private static final int FROM_NOON = 6 * 60;

    private static final int NIGHT_LONG = 18 * 60;

    /** A walk that is iced this night. */
    private static final class Now {
        long from = -1;
        long until;
        double areaHours;
        double inTraffic;
        double largest;
    }

    private final Season season;
    private final WalkMiddles middles;
    private final List<YardPlan.Surface> surfaces;
    private final Now[] now;
    private final float[][] paving;
    private final List<IcedWalk> iced = new ArrayList<>();
    private int night;

    IceNotes(Season season, WalkMiddles middles) {
        this.season = season;
        this.middles = middles;
        surfaces = season.site().scenario().yard().surfaces();
        now = new Now[surfaces.size()];
        paving = new float[surfaces.size()][];
        for (int s : middles.walks()) {
            paving[s] = new float[(int) (season.end() / STEP) + 1];
            Arrays.fill(paving[s], Float.NaN);
        }
    }

    /** Takes the minute that the season has just lived. */
    void minute(long t) {
        if (t % STEP == 0) {
            for (int s : middles.walks()) {
                paving[s][(int) (t / STEP)] = (float) season.ground().surfaceTemperature(middles.cell(s));
            }
        }
        if ((t + 1) % IceLog.BEAT == 0) {
            if (Chronicle.night(t) != night) {
                close(t);
            }
            beat(t);
        }
    }

    private void beat(long t) {
        for (int s : middles.walks()) {
            double area = season.iceLog().counted(s);
            if (area > 0) {
                now[s] = now[s] == null ? new Now() : now[s];
                add(now[s], t, area, IceLog.walked(surfaces.get(s), (int) (t % Chronicle.DAY)));
            }
        }
    }

    private static void add(Now walk, long t, double area, boolean walked) {
        walk.from = walk.from < 0 ? t - IceLog.BEAT + 1 : walk.from;
        walk.until = t + 1;
        walk.areaHours += area * HOURS_A_BEAT;
        walk.inTraffic += walked ? area * HOURS_A_BEAT : 0;
        walk.largest = Math.max(walk.largest, area);
    }

    private void close(long t) {
        for (int s : middles.walks()) {
            if (now[s] != null) {
                iced.add(walk(s, now[s], t));
                now[s] = null;
            }
        }
        night = Chronicle.night(t);
    }

    private IcedWalk walk(int s, Now w, long t) {
        long noon = (long) night * Chronicle.DAY - Chronicle.DAY / 2;
        long start = Math.max(0, noon + FROM_NOON);
        int count = (int) Math.max(0, (Math.min(t, noon + FROM_NOON + NIGHT_LONG) - start) / STEP + 1);
        int first = (int) (start / STEP);
        float[] surface = Arrays.copyOfRange(paving[s], first, first + count);
        float[] air = air(middles.point(s), start, count);
        String id = surfaces.get(s).id();
        return new IcedWalk(night, id, w.from, w.until, w.areaHours, w.inTraffic, w.largest, start, air, surface);
    }

    private float[] air(Point middle, long start, int count) {
        Spot spot = season.site().spot(middle, OVER_WALK);
        float[] air = new float[count];
        for (int i = 0; i < count; i++) {
            long t = start + (long) i * STEP;
            air[i] = (float) spot.air(season.weather(t), season.heat().after(t));
        }
        return air;
    }

    /** The iced walks up to the last minute lived, in the order of nights. */
    List<IcedWalk> iced(long tick) {
        close(tick - 1);
        return iced;
    }
}
