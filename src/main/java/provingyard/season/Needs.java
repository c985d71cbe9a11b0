package provingyard.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.scenario.YardPlan;
import provingyard.world.hydraulics.PipePath;
import provingyard.world.weather.Weather;
import provingyard.world.yard.Wall;
import provingyard.world.yard.Yard;

/**
 * What a kind of sensor needs of its place, over the whole yard: what the plan shows while one is carried. Values by cell
 * go row by row from the south-west, NaN inside buildings; readers must not change them.
 */
public sealed interface Needs {

    /** Cells east. */
    int nx();

    /** Cells north. */
    int ny();

    /**
     * Open sky.
     *
     * @param rainShare share of the open rain that reaches a catcher on a post
     * @param sprayed whether some head's water flies by there
     */
    record OfRain(int nx, int ny, float[] rainShare, boolean[] sprayed) implements Needs {}

    /** Open wind: mean share of the open wind over eight bearings, on a post. */
    record OfWind(int nx, int ny, float[] share) implements Needs {}

    /**
     * The true cold.
     *
     * @param colder K by which the air is colder than the yard's mean in a clear, calm night; negative where warmer
     * @param vents places and reach of what blows warm air
     * @param warmWalls cells by a heated wall
     */
    record OfFreeze(int nx, int ny, float[] colder, List<Vent> vents, boolean[] warmWalls) implements Needs {}

    /** A vent and the m that its warmth reaches. */
    record Vent(Point at, double reach) {}

    /** Straight pipe: stretches with 10 inner diameters before and 5 behind. */
    record OfFlow(int nx, int ny, List<List<Point>> stretches) implements Needs {}

    /**
     * A place that speaks for its zone.
     *
     * @param zone by cell, index of the zone whose water mostly lands there, -1 where none does or nothing grows
     * @param water by cell, share of its zone's mean water that lands there in calm air
     * @param sky by cell, share of its zone's mean sky view
     * @param speaks by cell, 1 where both are as in the mean, 0 where one is off by half or more, NaN outside zones
     */
    record OfSoil(int nx, int ny, int[] zone, float[] water, float[] sky, float[] speaks) implements Needs {

        /** How well a cell speaks; null where no zone's water lands. */
        Spoken at(int cell) {
            return cell < 0 || zone[cell] < 0 ? null : new Spoken(zone[cell], water[cell], sky[cell]);
        }
    }

    /** A cell in its zone (index in the document's order): share of the zone's mean water and of its mean sky view. */
    record Spoken(int zone, double water, double sky) {}

    /** Height in m of rain and wind sensors in the map (common practice, no source). */
    double POST = 2.1;

    /** m from a heated wall in which the air is clearly warmer: it falls to 1/e over 0.4 m. */
    double WALL_WARMS = 0.8;

    /** A clear, calm night at the freezing point. */
    Weather NIGHT = new Weather(0, -3, 0.3, 0, 0, 0, 0, 0, -30, 0);

    /** m between places looked at on a pipe. */
    double ALONG = 0.1;

    /** Works it out for a kind. */
    static Needs of(Site site, SensorKind kind) {
        return switch (kind) {
            case RAIN -> rain(site);
            case WIND -> wind(site.yard());
            case FREEZE -> freeze(site);
            case FLOW -> flow(site);
            case SOIL -> soil(site);
        };
    }

    private static Needs rain(Site site) {
        Yard yard = site.yard();
        float[] share = new float[yard.cells()];
        boolean[] sprayed = new boolean[yard.cells()];
        for (int c = 0; c < share.length; c++) {
            share[c] = yard.builtOver(c) ? Float.NaN : (float) yard.rainShare(yard.x(c), yard.y(c), POST);
            sprayed[c] = site.sprayed(new Point(yard.x(c), yard.y(c)));
        }
        return new OfRain(yard.nx(), yard.ny(), share, sprayed);
    }

    private static Needs wind(Yard yard) {
        int bearings = 8;
        float[] share = new float[yard.cells()];
        for (int c = 0; c < share.length; c++) {
            double sum = yard.builtOver(c) ? Double.NaN : 0;
            for (int i = 0; i < bearings; i++) {
                sum += yard.shelter(yard.x(c), yard.y(c), POST, i * 360.0 / bearings) / bearings;
            }
            share[c] = (float) sum;
        }
        return new OfWind(yard.nx(), yard.ny(), share);
    }

    private static Needs freeze(Site site) {
        Yard yard = site.yard();
        float[] colder = site.climate().cold(NIGHT);
        boolean[] warm = new boolean[colder.length];
        double sum = 0;
        int open = 0;
        for (int c = 0; c < colder.length; c++) {
            if (!yard.builtOver(c)) {
                Wall wall = yard.nearestWall(yard.x(c), yard.y(c));
                warm[c] = wall != null && wall.heated() && wall.distance() <= WALL_WARMS;
                sum += colder[c];
                open++;
            }
        }
        for (int c = 0; c < colder.length; c++) {
            colder[c] = yard.builtOver(c) ? Float.NaN : (float) (sum / open - colder[c]);
        }
        List<Vent> vents = new ArrayList<>();
        for (YardPlan.Vent v : site.scenario().yard().vents()) {
            vents.add(new Vent(v.at(), v.reach()));
        }
        return new OfFreeze(yard.nx(), yard.ny(), colder, vents, warm);
    }

    private static Needs flow(Site site) {
        List<List<Point>> all = new ArrayList<>();
        for (Plumbing.Pipe pipe : site.scenario().plumbing().pipes()) {
            PipePath path = site.waterworks().path(pipe.id());
            List<Point> stretch = new ArrayList<>();
            for (double along = 0; along <= path.length(); along += ALONG) {
                if (site.siting().straightEnough(new Siting.OnPipe(pipe.id(), along))) {
                    stretch.add(path.pointAt(along));
                } else if (!stretch.isEmpty()) {
                    all.add(stretch);
                    stretch = new ArrayList<>();
                }
            }
            if (!stretch.isEmpty()) {
                all.add(stretch);
            }
        }
        all.removeIf(s -> s.size() < 2);
        return new OfFlow(site.yard().nx(), site.yard().ny(), all);
    }

    private static Needs soil(Site site) {
        Yard yard = site.yard();
        int n = yard.cells();
        int zones = site.waterworks().zones().size();
        int[] zone = new int[n];
        Arrays.fill(zone, -1);
        double[] most = new double[n];
        for (int z = 0; z < zones; z++) {
            double[] depth = site.spraying().alone(site, z);
            for (int c = 0; c < n; c++) {
                if (yard.planted(c) && depth[c] > most[c]) {
                    most[c] = depth[c];
                    zone[c] = z;
                }
            }
        }
        double[] sky = new double[n];
        for (int c = 0; c < n; c++) {
            sky[c] = yard.skyView(c);
        }
        float[] water = ofMean(zone, zones, most);
        float[] open = ofMean(zone, zones, sky);
        float[] speaks = new float[n];
        for (int c = 0; c < n; c++) {
            double off = Math.max(Math.abs(water[c] - 1), Math.abs(open[c] - 1));
            speaks[c] = zone[c] < 0 ? Float.NaN : (float) Math.max(0, 1 - 2 * off);
        }
        return new OfSoil(yard.nx(), yard.ny(), zone, water, open, speaks);
    }

    private static float[] ofMean(int[] zone, int zones, double[] value) {
        double[] sum = new double[zones];
        int[] count = new int[zones];
        for (int c = 0; c < zone.length; c++) {
            if (zone[c] >= 0) {
                sum[zone[c]] += value[c];
                count[zone[c]]++;
            }
        }
        float[] share = new float[zone.length];
        for (int c = 0; c < zone.length; c++) {
            double mean = zone[c] < 0 ? 0 : sum[zone[c]] / count[zone[c]];
            share[c] = mean > 0 ? (float) (value[c] / mean) : 0;
        }
        return share;
    }
}
