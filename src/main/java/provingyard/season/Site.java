package provingyard.season;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.SeasonPlan;
import provingyard.scenario.Sites;
import provingyard.world.electric.ValveWires;
import provingyard.world.ground.GroundCells;
import provingyard.world.hydraulics.Waterworks;
import provingyard.world.weather.DataFiles;
import provingyard.world.weather.LocalClimate;
import provingyard.world.weather.Spot;
import provingyard.world.weather.WeatherSeries;
import provingyard.world.yard.Yard;

/**
 * A scenario made ready: all that does not change while seasons are lived, shared by them and safe to read from several
 * threads.
 */
public final class Site {

    private static final DataFiles FILES = path -> Sites.resource("shared/reference/" + path);

    /** Courses kept for the next season under the same weather. */
    private static final int COURSES_KEPT = 6;

    /** Bytes that a course takes for each day, and for each day and cell: some 18 MB for a month and 5000 cells. */
    private static final double BYTES_A_DAY = 240e3;

    private static final double BYTES_A_CELL_DAY = 75;

    /** The share of the memory that the courses of a search may fill. */
    private static final double SHARE = 0.25;

    private final Scenario scenario;
    private final Yard yard;
    private final LocalClimate climate;
    private final GroundCells cells;
    private final Waterworks waterworks;
    private final ValveWires valveWires;
    private final Spraying spraying;
    private final Siting siting;
    private final boolean[] sprayed;
    private final CompletableFuture<WeatherSeries> ownWeather;
    private final Map<Place, Spot> spots = new ConcurrentHashMap<>();

    private final Recent<CourseKey, Course> courses;

    private record CourseKey(long seed, int days, boolean drawn) {}

    private record Place(double x, double y, double height) {}

    private Site(Scenario scenario) {
        this.scenario = scenario;
        courses = new Recent<>(COURSES_KEPT);
        ownWeather = CompletableFuture.supplyAsync(() -> weather(
                scenario.season().days(), new RandomStreams(scenario.season().seed())));
        CompletableFuture<Waterworks> plumbed = CompletableFuture.supplyAsync(() -> Waterworks.of(scenario));
        yard = Yard.of(scenario);
        climate = LocalClimate.of(yard, scenario);
        cells = GroundCells.of(yard, scenario.catalogue());
        waterworks = plumbed.join();
        valveWires = ValveWires.of(scenario);
        spraying = new Spraying(scenario, cells);
        siting = new Siting(this);
        sprayed = spraying.sprinklers().reached();
    }

    private Site(Site other, int coursesKept) {
        scenario = other.scenario;
        yard = other.yard;
        climate = other.climate;
        cells = other.cells;
        waterworks = other.waterworks;
        valveWires = other.valveWires;
        spraying = other.spraying;
        siting = other.siting;
        sprayed = other.sprayed;
        ownWeather = other.ownWeather;
        courses = new Recent<>(coursesKept);
    }

    private Site(Site other, Scenario scenario) {
        this.scenario = scenario;
        yard = other.yard;
        climate = other.climate;
        cells = other.cells;
        waterworks = Waterworks.of(scenario);
        valveWires = ValveWires.of(scenario);
        spraying = other.spraying;
        siting = new Siting(this);
        sprayed = other.sprayed;
        ownWeather = other.ownWeather;
        courses = other.courses;
    }

    /** The same place with other faults, made ready in a moment: what does not hang on faults is shared. */
    public Site with(List<FaultPlan> faults) {
        return new Site(this, scenario.with(scenario.catalogue(), scenario.yard(), faults));
    }

    /**
     * The same site for a search that comes back to so many draws again and again: it keeps what their seasons have in
     * common, as far as a quarter of the memory goes, until it is itself given up. Results are the same.
     */
    public Site keeping(int draws) {
        double bytes = scenario.season().days() * (BYTES_A_DAY + BYTES_A_CELL_DAY * yard.cells());
        double fit = SHARE * Runtime.getRuntime().maxMemory() / bytes;
        return new Site(this, (int) Math.max(COURSES_KEPT, Math.min(draws, fit)));
    }

    /** Makes a scenario ready. */
    public static Site of(Scenario scenario) {
        return new Site(scenario);
    }

    /** The document. */
    public Scenario scenario() {
        return scenario;
    }

    /** Answers about places and settings, for the screen and for searches. */
    public Siting siting() {
        return siting;
    }

    /** Hexadecimal SHA-256 of what the document says. */
    public String contentHash() {
        return scenario.contentHash();
    }

    Yard yard() {
        return yard;
    }

    LocalClimate climate() {
        return climate;
    }

    GroundCells cells() {
        return cells;
    }

    Waterworks waterworks() {
        return waterworks;
    }

    ValveWires valveWires() {
        return valveWires;
    }

    Spraying spraying() {
        return spraying;
    }

    /** The climate at a place, asked of the yard once. */
    Spot spot(Point at, double height) {
        Place place = new Place(at.x(), at.y(), height);
        Spot known = spots.get(place);
        return known != null ? known : spots.computeIfAbsent(place, p -> climate.at(p.x(), p.y(), p.height()));
    }

    /** Whether some head's water lands at a place in calm air. */
    boolean sprayed(Point at) {
        int cell = yard.cellAt(at.x(), at.y());
        return cell >= 0 && sprayed[cell];
    }

    /** Whether the scenario's i-th fault is an opening in a pipe. */
    boolean isLeak(int fault) {
        return switch (scenario.faults().get(fault).kind()) {
            case MAINLINE_BREAK, MAINLINE_LEAK, LATERAL_BREAK -> true;
            default -> false;
        };
    }

    /** What all own seasons of so many days on these streams have in common. */
    Course course(int days, RandomStreams streams) {
        SeasonPlan plan = scenario.season();
        boolean own = days == plan.days() && streams.seed() == plan.seed();
        return courses.of(
                new CourseKey(streams.seed(), days, false),
                () -> new Course(this, own ? ownWeather() : weather(days, streams)));
    }

    private WeatherSeries weather(int days, RandomStreams streams) {
        return WeatherSeries.of(
                scenario.weather(), scenario.place(), scenario.season().from(), days, streams, FILES);
    }

    /** The weather of the season as the author wrote it. */
    WeatherSeries ownWeather() {
        try {
            return ownWeather.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }

    /** What all other seasons of the same climate, drawn on these streams, have in common. */
    Course drawnCourse(int days, RandomStreams streams) {
        return courses.of(new CourseKey(streams.seed(), days, true), () -> {
            WeatherSeries weather = WeatherSeries.drawn(
                    scenario.weather(), scenario.place(), scenario.season().from(), days, streams, FILES);
            return new Course(this, weather);
        });
    }
}
