package provingyard.scenario;

import com.fasterxml.jackson.databind.EnumNamingStrategies.CamelCaseStrategy;
import com.fasterxml.jackson.databind.annotation.EnumNaming;
import java.time.LocalTime;
import java.util.List;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/**
 * The yard's plan.
 *
 * @param size east and north extent in m
 * @param cell side of a ground cell in m
 * @param base the surface where no outline lies: id of a surface without outline
 * @param surfaces later ones lie over earlier ones
 * @param hollows low ground where cold air and water gather
 * @param furnishings things that are drawn and do nothing else
 */
public record YardPlan(
        Point size,
        @In(Dimension.LENGTH) double cell,
        String base,
        List<Surface> surfaces,
        List<Structure> structures,
        List<Tree> trees,
        List<Vent> vents,
        List<Hollow> hollows,
        List<Furnishing> furnishings) {

    /** What a surface is. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum SurfaceKind {
        TURF,
        BED,
        WALK,
        DRIVE,
        STREET;

        /** Plants grow there. */
        public boolean planted() {
            return this == TURF || this == BED;
        }
    }

    /**
     * A surface.
     *
     * @param label shown on the plan; may be absent
     * @param soil catalogue id, planted surfaces only
     * @param plant catalogue id, planted surfaces only
     * @param paving catalogue id, paved surfaces only
     * @param slope fall of the ground
     * @param compacted share of its infiltration that the soil keeps (1 is untouched soil)
     * @param footTraffic from and to, walks only; may be absent
     * @param outline corners in m, empty for the base surface
     */
    public record Surface(
            String id,
            SurfaceKind kind,
            Text label,
            String soil,
            String plant,
            String paving,
            Slope slope,
            @In(Dimension.FRACTION) double compacted,
            List<LocalTime> footTraffic,
            List<Point> outline) {}

    /** Fall of the ground: grade (m per m) toward a compass bearing in degrees. */
    public record Slope(
            @In(Dimension.FRACTION) double grade,
            @In(Dimension.ANGLE) double toward) {}

    /** What a structure is. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum StructureKind {
        BUILDING,
        /** A roof on posts. */
        CANOPY,
        WALL,
        FENCE
    }

    /**
     * A structure.
     *
     * @param height eave height in m
     * @param eave how far the roof reaches beyond the walls in m
     * @param heated a heated building warms its walls
     * @param outline walls' corners in m (a closed outline; fences and walls: a line)
     */
    public record Structure(
            String id,
            StructureKind kind,
            Text label,
            @In(Dimension.LENGTH) double height,
            @In(Dimension.LENGTH) double eave,
            boolean heated,
            List<Point> outline) {}

    /**
     * A tree.
     *
     * @param canopy diameter in m
     * @param height m
     * @param evergreen keeps its leaves in winter
     */
    public record Tree(
            String id,
            Point at,
            @In(Dimension.LENGTH) double canopy,
            @In(Dimension.LENGTH) double height,
            boolean evergreen) {}

    /** A heat vent that warms the air by {@code adds} K at its mouth, less with distance, nothing beyond reach (m). */
    public record Vent(
            String id,
            Point at,
            @In(Dimension.TEMPERATURE_DIFFERENCE) double adds,
            @In(Dimension.LENGTH) double reach) {}

    /**
     * Low ground.
     *
     * @param reach radius in m
     * @param colder K by which its air lies below the yard's at 0.5 m height on a fully clear and calm night
     * @param wetter share by which its soil holds more of the runoff around it, 0 to 1
     */
    public record Hollow(
            String id,
            Point at,
            @In(Dimension.LENGTH) double reach,
            @In(Dimension.TEMPERATURE_DIFFERENCE) double colder,
            @In(Dimension.FRACTION) double wetter) {}

    /** What a furnishing is. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum FurnishingKind {
        CAR,
        BENCH,
        LAMP,
        SHRUB,
        GOAL
    }

    /** A drawn thing; heading is a bearing in degrees, size in m (a shrub's radius, a goal's width). */
    public record Furnishing(
            FurnishingKind kind,
            Point at,
            @In(Dimension.ANGLE) double heading,
            @In(Dimension.LENGTH) double size) {}
}
