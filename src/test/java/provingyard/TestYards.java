package provingyard;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Costs;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Kit;
import provingyard.scenario.Lesson;
import provingyard.scenario.Locks;
import provingyard.scenario.Place;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.Schedule;
import provingyard.scenario.SeasonPlan;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Text;
import provingyard.scenario.WeatherPlan;
import provingyard.scenario.Work;
import provingyard.scenario.YardPlan;
import provingyard.scenario.YardPlan.Hollow;
import provingyard.scenario.YardPlan.Slope;
import provingyard.scenario.YardPlan.Structure;
import provingyard.scenario.YardPlan.StructureKind;
import provingyard.scenario.YardPlan.Surface;
import provingyard.scenario.YardPlan.SurfaceKind;
import provingyard.scenario.YardPlan.Tree;
import provingyard.scenario.YardPlan.Vent;

/**
 * Builds small scenarios for tests: a plain lawn to which things are added. Lengths in m, bearings in degrees; every
 * method returns the builder.
 *
 * <pre>{@code
 * Scenario scenario = TestYards.lawn(20, 15).building("house", 5, 5, 10, 9, 4, 0.6, true).scenario();
 * }</pre>
 */
public final class TestYards {

    /** Catalogue id of the soil of all planted surfaces. */
    public static final String SOIL = "test-loam";

    /** Catalogue id of the plant of all planted surfaces. */
    public static final String PLANT = "test-turf";

    /** Catalogue id of the paving of all paved surfaces. */
    public static final String PAVING = "test-concrete";

    private final List<Surface> surfaces = new ArrayList<>();
    private final List<Structure> structures = new ArrayList<>();
    private final List<Tree> trees = new ArrayList<>();
    private final List<Vent> vents = new ArrayList<>();
    private final List<Hollow> hollows = new ArrayList<>();
    private final double east;
    private final double north;
    private double cell = 0.6;
    private double latitude = 40;
    private SeasonPlan season = new SeasonPlan(LocalDate.of(2013, 11, 1), 30, 4711, 0.8, 0, 1);
    private WeatherPlan weather = mildDays();
    private Plumbing plumbing = new Plumbing(
            Plumbing.Friction.HAZEN_WILLIAMS,
            new Plumbing.Supply(Plumbing.SupplyKind.FIXED, "poc", 400_000, List.of()),
            List.of(new Plumbing.Junction("poc", new Point(0, 0), 0)),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    private Schedule schedule =
            new Schedule(List.of(), List.of(), 0, List.of(), 1, new Schedule.Allowed(List.of(), List.of()));
    private List<FaultPlan> faults = List.of();

    private TestYards(double east, double north, Slope slope) {
        this.east = east;
        this.north = north;
        surfaces.add(new Surface("lawn", SurfaceKind.TURF, null, SOIL, PLANT, null, slope, 1, null, List.of()));
    }

    /** A level lawn. */
    public static TestYards lawn(double east, double north) {
        return new TestYards(east, north, new Slope(0, 0));
    }

    /** A lawn that falls toward a bearing. */
    public static TestYards lawn(double east, double north, double grade, double toward) {
        return new TestYards(east, north, new Slope(grade, toward));
    }

    /** Side of a cell. */
    public TestYards cell(double side) {
        cell = side;
        return this;
    }

    /** Degrees north. */
    public TestYards latitude(double degrees) {
        latitude = degrees;
        return this;
    }

    /** First day and number of days; seed 4711. */
    public TestYards season(LocalDate from, int days) {
        season = new SeasonPlan(from, days, 4711, 0.8, 0, 1);
        return this;
    }

    /** The weather instead of ten mild scripted days that repeat. */
    public TestYards weather(WeatherPlan plan) {
        weather = plan;
        return this;
    }

    /** The plumbing instead of a bare supply. */
    public TestYards plumbing(Plumbing plan) {
        plumbing = plan;
        return this;
    }

    /** The schedule instead of an empty one. */
    public TestYards schedule(Schedule plan) {
        schedule = plan;
        return this;
    }

    /** Faults that can happen. */
    public TestYards faults(List<FaultPlan> plan) {
        faults = plan;
        return this;
    }

    /** A rectangular surface from its south-west to its north-east corner. */
    public TestYards surface(
            String id, SurfaceKind kind, double x1, double y1, double x2, double y2, double grade, double toward) {
        boolean planted = kind.planted();
        List<LocalTime> traffic = kind == SurfaceKind.WALK ? List.of(LocalTime.of(6, 30), LocalTime.of(19, 0)) : null;
        surfaces.add(new Surface(
                id,
                kind,
                null,
                planted ? SOIL : null,
                planted ? PLANT : null,
                planted ? null : PAVING,
                new Slope(grade, toward),
                1,
                traffic,
                box(x1, y1, x2, y2)));
        return this;
    }

    /** A rectangular building. */
    public TestYards building(
            String id, double x1, double y1, double x2, double y2, double height, double eave, boolean heated) {
        return structure(id, StructureKind.BUILDING, height, eave, heated, box(x1, y1, x2, y2));
    }

    /** Any structure by its outline. */
    public TestYards structure(
            String id, StructureKind kind, double height, double eave, boolean heated, List<Point> outline) {
        structures.add(new Structure(id, kind, null, height, eave, heated, outline));
        return this;
    }

    /** A straight fence. */
    public TestYards fence(String id, double x1, double y1, double x2, double y2, double height) {
        return structure(id, StructureKind.FENCE, height, 0, false, List.of(new Point(x1, y1), new Point(x2, y2)));
    }

    /** A deciduous or evergreen tree. */
    public TestYards tree(String id, double x, double y, double canopy, double height, boolean evergreen) {
        trees.add(new Tree(id, new Point(x, y), canopy, height, evergreen));
        return this;
    }

    /** A warm vent. */
    public TestYards vent(String id, double x, double y, double adds, double reach) {
        vents.add(new Vent(id, new Point(x, y), adds, reach));
        return this;
    }

    /** A hollow. */
    public TestYards hollow(String id, double x, double y, double reach, double colder, double wetter) {
        hollows.add(new Hollow(id, new Point(x, y), reach, colder, wetter));
        return this;
    }

    /** The corners of a rectangle. */
    public static List<Point> box(double x1, double y1, double x2, double y2) {
        return List.of(new Point(x1, y1), new Point(x2, y1), new Point(x2, y2), new Point(x1, y2));
    }

    /** The yard alone. */
    public YardPlan plan() {
        return new YardPlan(
                new Point(east, north),
                cell,
                "lawn",
                List.copyOf(surfaces),
                List.copyOf(structures),
                List.copyOf(trees),
                List.copyOf(vents),
                List.copyOf(hollows),
                List.of());
    }

    /** The whole scenario. */
    public Scenario scenario() {
        Text text = new Text("A test yard", "Un jardín de prueba");
        return new Scenario(
                "1.0",
                "test-yard",
                text,
                text,
                Work.TUNE,
                1,
                new Lesson(List.of(SensorKind.FREEZE), text, text, text, List.of(), new Lesson.Mastery(80, 2, 3)),
                new Place(text, latitude, -74, 10, -5 * 3600),
                season,
                weather,
                catalogue(),
                plan(),
                plumbing,
                schedule,
                new Kit(
                        900,
                        new Kit.Item(60, 1),
                        new Kit.Item(90, 1),
                        new Kit.Item(70, 1),
                        new Kit.Item(380, 2),
                        new Kit.Item(150, 2)),
                faults,
                new Locks(false, List.of(), false),
                new Costs(2, 40, 250, 100, 86_400, 35, 0.6, 0.9, 20, 7 * 365 * 86_400.0, 10),
                new Scenario.ReferenceSetUps(null, null),
                null,
                List.of());
    }

    /** One soil, one plant and one paving, with textbook numbers. */
    public static Catalogue catalogue() {
        Text name = new Text("Test", "Prueba");
        return new Catalogue(
                List.of(new Catalogue.Soil(SOIL, name, 0.46, 0.27, 0.12, 3.7e-6, 0.09, 86_400)),
                List.of(new Catalogue.Plant(PLANT, name, 0.8, 0.2, 0.4, 0.06)),
                List.of(new Catalogue.Paving(PAVING, name, 0.1, 1.5, 900, 2300, 0.3, 0.95, 0.0005)),
                List.of(),
                List.of());
    }

    private static WeatherPlan mildDays() {
        WeatherPlan.Day dry = new WeatherPlan.Day(12, 2, 0, null, 0, 0.7, 2);
        WeatherPlan.Day wet = new WeatherPlan.Day(9, 4, 0.008, LocalTime.of(14, 0), 7200, 0.1, 3);
        return new WeatherPlan(
                new WeatherPlan.Source(
                        WeatherPlan.SourceKind.SCRIPTED,
                        null,
                        null,
                        1,
                        List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0),
                        2,
                        List.of(dry, dry, dry, wet, dry, dry, dry, dry, wet, dry)),
                List.of());
    }
}
