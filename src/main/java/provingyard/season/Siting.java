package provingyard.season;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.scenario.YardPlan;
import provingyard.sensor.FlowBody;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.world.hydraulics.PipePath;
import provingyard.world.hydraulics.StraightPipe;
import provingyard.world.weather.Weather;
import provingyard.world.weather.WeatherSeries;
import provingyard.world.yard.Yard;

/**
 * Answers about places, for the screen, searches and the sensors' surroundings: what a trainee could measure there.
 * Immutable but for answers that it keeps; safe for several threads.
 */
public final class Siting {

    private static final double WALL_REACH = 0.6;
    private static final int ROSE = 8;

    /** A place on a pipe, m from its {@code from} end. */
    public record OnPipe(String pipe, double along) {}

    /**
     * Facts of a place above ground.
     *
     * @param skyView share of the open sky, 0 to 1
     * @param rainShare share of the open rain that reaches it
     * @param sprayReach whether a head's water flies by there
     * @param shelter mean share of the open wind over eight bearings
     * @param toHeat m to the nearest vent or heated wall; infinite where there is none
     * @param openSky open share of the sky by bearing, clockwise from north
     */
    public record Facts(
            double skyView, double rainShare, boolean sprayReach, double shelter, double toHeat, double[] openSky) {}

    private static final int MINUTES_A_DAY = 1440;
    private static final int SUN_STEP = 15;

    private final Site site;
    private final Map<SensorKind, Needs> needs = new ConcurrentHashMap<>();

    Siting(Site site) {
        this.site = site;
    }

    /** Height in m at which a placement senses; 0 for those in the ground. */
    public double heightOf(Placement placement) {
        return height(placement);
    }

    /** Height in m at which a placement senses. */
    static double height(Placement placement) {
        if (placement instanceof Placement.Rain r) {
            return r.height();
        }
        if (placement instanceof Placement.Wind w) {
            return w.height();
        }
        return placement instanceof Placement.Freeze f ? f.height() : 0;
    }

    /** Where a placement is on the plan. */
    public Point place(Placement placement) {
        if (placement instanceof Placement.Rain r) {
            return r.at();
        }
        if (placement instanceof Placement.Wind w) {
            return w.at();
        }
        if (placement instanceof Placement.Freeze f) {
            return f.at();
        }
        if (placement instanceof Placement.Soil s) {
            return s.at();
        }
        Placement.Flow f = (Placement.Flow) placement;
        return site.waterworks().path(f.on()).pointAt(f.along());
    }

    /** What could be measured at a place above ground. */
    public Facts facts(Point at, double height) {
        Yard yard = site.yard();
        double shelter = 0;
        for (int i = 0; i < ROSE; i++) {
            shelter += yard.shelter(at.x(), at.y(), height, i * 360.0 / ROSE) / ROSE;
        }
        double[] horizon = yard.horizon(at.x(), at.y(), height);
        double[] open = new double[horizon.length];
        for (int i = 0; i < open.length; i++) {
            open[i] = Deterministic.cos(Math.toRadians(Math.max(0, horizon[i])));
        }
        return new Facts(
                yard.skyView(at.x(), at.y(), height),
                yard.rainShare(at.x(), at.y(), height),
                SeasonSurroundings.sprayShare(height) > 0 && site.sprayed(at),
                shelter,
                toHeat(at),
                open);
    }

    /**
     * Share of the open wind that comes through, for each cell of the yard at a height in m: below 1 in the lee, above 1
     * at roof edges.
     *
     * @param windFrom bearing in degrees
     */
    public float[] windShares(double height, double windFrom) {
        Yard yard = site.yard();
        float[] shares = new float[yard.cells()];
        for (int c = 0; c < shares.length; c++) {
            shares[c] = (float) yard.shelter(yard.x(c), yard.y(c), height, windFrom);
        }
        return shares;
    }

    private double toHeat(Point at) {
        double nearest = Double.POSITIVE_INFINITY;
        for (YardPlan.Vent vent : site.scenario().yard().vents()) {
            nearest = Math.min(nearest, at.distance(vent.at()));
        }
        var wall = site.yard().nearestWall(at.x(), at.y());
        return wall != null && wall.heated() ? Math.min(nearest, wall.distance()) : nearest;
    }

    /** Hours in which the sun could shine on a place on the season's first day, to the quarter hour. */
    public double sunHours(Point at, double height) {
        WeatherSeries weather = site.ownWeather();
        double hours = 0;
        for (int minute = 0; minute < MINUTES_A_DAY; minute += SUN_STEP) {
            Weather now = weather.at(minute);
            if (now.sunAltitude() > 0) {
                double lit = site.yard().sunlit(at.x(), at.y(), height, now.sunAltitude(), now.sunBearing());
                hours += lit * SUN_STEP / 60.0;
            }
        }
        return hours;
    }

    /** What each kind of sensor needs, over the yard; takes up to some seconds, so not on the window's thread. */
    public Needs needs(SensorKind kind) {
        return needs.computeIfAbsent(kind, k -> Needs.of(site, k));
    }

    /** What was true at a placement's place in the days that a season lived; not on the window's thread. */
    public Past past(Season lived, Placement placement) {
        return Past.of(lived, placement);
    }

    /** How well a place in the ground speaks for its zone; null where no zone's water lands. */
    public Needs.Spoken spoken(Point at) {
        return ((Needs.OfSoil) needs(SensorKind.SOIL)).at(site.yard().cellAt(at.x(), at.y()));
    }

    /** Whether a place on a pipe has straight pipe enough: 10 inner diameters before and 5 behind. */
    public boolean straightEnough(OnPipe on) {
        double[] straight = straight(on);
        double bore = innerDiameter(on.pipe());
        return straight[0] >= StraightPipe.RULE_UPSTREAM * bore && straight[1] >= StraightPipe.RULE_DOWNSTREAM * bore;
    }

    /** Where a place on a pipe is. */
    public Point pointOn(OnPipe on) {
        return site.waterworks().path(on.pipe()).pointAt(on.along());
    }

    /** Whether plants grow at a place. */
    public boolean planted(Point at) {
        int cell = site.yard().cellAt(at.x(), at.y());
        return cell >= 0 && site.yard().planted(cell);
    }

    /** Whether a place lies inside a building. */
    public boolean insideBuilding(Point at) {
        return site.yard().insideBuilding(at.x(), at.y());
    }

    /** Whether a place lies inside a building, out of reach of its walls and roof's edge. */
    public boolean indoors(Point at) {
        var wall = site.yard().nearestWall(at.x(), at.y());
        return insideBuilding(at) && wall != null && wall.distance() > WALL_REACH;
    }

    /** Catalogue id of the soil at a place, or of the first soil of the yard where nothing grows. */
    public String soil(Point at) {
        return soilAt(at).id();
    }

    /** Field capacity of the soil at a place, as a volume share. */
    public double fieldCapacity(Point at) {
        return soilAt(at).fieldCapacity();
    }

    /** Volume share of water that is a share of the available water at a place. */
    public double volumeShare(Point at, double available) {
        Catalogue.Soil soil = soilAt(at);
        return soil.wiltingPoint() + available * (soil.fieldCapacity() - soil.wiltingPoint());
    }

    private Catalogue.Soil soilAt(Point at) {
        int cell = site.yard().cellAt(at.x(), at.y());
        List<Catalogue.Soil> soils = site.scenario().catalogue().soils();
        if (cell >= 0 && site.yard().planted(cell)) {
            return soils.get(site.yard().soil(cell));
        }
        for (int c = 0; c < site.yard().cells(); c++) {
            if (site.yard().planted(c)) {
                return soils.get(site.yard().soil(c));
            }
        }
        return soils.get(0);
    }

    /** The nearest place on any pipe. */
    public OnPipe nearestPipe(Point at) {
        OnPipe best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Plumbing.Pipe pipe : site.scenario().plumbing().pipes()) {
            PipePath.Nearest here = site.waterworks().path(pipe.id()).nearest(at);
            if (here.distance() < least) {
                least = here.distance();
                best = new OnPipe(pipe.id(), here.along());
            }
        }
        return best;
    }

    /** Straight pipe up and down the way of a place, m. */
    public double[] straight(OnPipe on) {
        return site.waterworks().straight(on.pipe(), on.along());
    }

    /** Inner diameter of a pipe in m. */
    public double innerDiameter(String pipe) {
        return site.waterworks().innerDiameter(pipe);
    }

    /** A flow sensor with the factors of its body typed in. */
    public Placement.Flow flowSensor(String id, OnPipe on, double size) {
        FlowBody body = FlowBody.of(size);
        return new Placement.Flow(id, on.pipe(), on.along(), body.size(), body.pulses(), body.offset());
    }

    /** Smallest flow in m3/s that a flow sensor of a size can see. */
    public double cannotSeeBelow(double size) {
        return FlowBody.of(size).cannotSeeBelow();
    }

    /** The mount that a place offers: a wall or roof edge near a building, else what was wanted. */
    public Mount mount(Point at, Mount wanted) {
        var wall = site.yard().nearestWall(at.x(), at.y());
        boolean atWall = wall != null && wall.distance() <= WALL_REACH;
        if (atWall) {
            return wanted == Mount.ROOF_EDGE ? Mount.ROOF_EDGE : Mount.WALL;
        }
        return wanted == Mount.WALL || wanted == Mount.ROOF_EDGE ? Mount.POST : wanted;
    }

    /** Flow of each zone in m3/s when it runs alone in a sound system, in the document's order. */
    public double[] zoneFlows() {
        int n = site.waterworks().zones().size();
        double[] flows = new double[n];
        for (int z = 0; z < n; z++) {
            boolean[] open = new boolean[n];
            open[z] = true;
            flows[z] = site.waterworks().flows(open, true, 0).zones()[z];
        }
        return flows;
    }
}
