package provingyard.world.hydraulics;

import java.util.List;
import java.util.Optional;

/** Standard PVC pipe sizes: outer diameters and minimum walls of ASTM D1785 and D2241 (from memory, in inches). */
public final class PipeSizes {

    private static final double INCH_M = 0.0254;

    /** Average wall over minimum wall of Schedule 40 pipe (handbook practice; fits listed average diameters). */
    private static final double AVERAGE_WALL = 1.06;

    private PipeSizes() {}

    /** Wall classes. */
    public enum WallClass {
        /** Schedule 40 (ASTM D1785). */
        SCHEDULE_40,
        /** Class 160, SDR 26 (ASTM D2241). */
        CLASS_160,
        /** Class 200, SDR 21 (ASTM D2241). */
        CLASS_200
    }

    /**
     * One size.
     *
     * @param nominalIn nominal size, inches (a name, not a length)
     * @param outerM outer diameter, m
     * @param wallM minimum wall, m
     */
    public record Size(double nominalIn, double outerM, double wallM) {

        /** Outer diameter less twice the minimum wall, m: what friction tables use. */
        public double innerDiameter() {
            return outerM - 2 * wallM;
        }

        /** Outer diameter less twice the average wall, m: some 1.5 % less, and some 6 % more loss. */
        public double averageInnerDiameter() {
            return outerM - 2 * AVERAGE_WALL * wallM;
        }

        /** Dimension ratio DR: outer diameter over wall, for the speed of pressure waves. */
        public double dimensionRatio() {
            return outerM / wallM;
        }
    }

    private static final double[][] OUTER = {
        {0.5, 0.840},
        {0.75, 1.050},
        {1, 1.315},
        {1.25, 1.660},
        {1.5, 1.900},
        {2, 2.375},
        {2.5, 2.875},
        {3, 3.500},
        {4, 4.500},
        {6, 6.625}
    };
    private static final List<Size> SCHEDULE_40 =
            sizes(0.109, 0.113, 0.133, 0.140, 0.145, 0.154, 0.203, 0.216, 0.237, 0.280);
    private static final List<Size> CLASS_160 =
            sizes(0.060, 0.060, 0.060, 0.064, 0.073, 0.091, 0.110, 0.135, 0.173, 0.255);
    private static final List<Size> CLASS_200 =
            sizes(0.060, 0.060, 0.063, 0.079, 0.090, 0.113, 0.137, 0.167, 0.214, 0.316);

    private static List<Size> sizes(double... wallsIn) {
        Size[] sizes = new Size[wallsIn.length];
        for (int i = 0; i < sizes.length; i++) {
            sizes[i] = new Size(OUTER[i][0], OUTER[i][1] * INCH_M, wallsIn[i] * INCH_M);
        }
        return List.of(sizes);
    }

    /** All sizes of a class, rising. */
    public static List<Size> of(WallClass wall) {
        return switch (wall) {
            case SCHEDULE_40 -> SCHEDULE_40;
            case CLASS_160 -> CLASS_160;
            case CLASS_200 -> CLASS_200;
        };
    }

    /** The size with a nominal size in inches, if the class has it. */
    public static Optional<Size> find(WallClass wall, double nominalIn) {
        return of(wall).stream().filter(s -> s.nominalIn() == nominalIn).findFirst();
    }
}
