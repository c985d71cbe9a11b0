package provingyard.world.hydraulics;

/** Straight pipe that a flow sensor needs, in inner diameters. */
public final class StraightPipe {

    /** Before an insertion sensor (common rule of flow-measurement literature; from memory). */
    public static final double RULE_UPSTREAM = 10;

    /** After an insertion sensor (same). */
    public static final double RULE_DOWNSTREAM = 5;

    private StraightPipe() {}

    /** What disturbs the flow before a point-velocity (insertion) sensor: ISO 7145:1982, minimum straight lengths. */
    public enum BeforePointSensor {
        /** 90 degree elbow or tee bend. */
        ELBOW(50, 25),
        /** Several 90 degree bends not in one plane. */
        BENDS_NOT_IN_ONE_PLANE(80, 50),
        /** Narrowing at 18 to 36 degrees. */
        CONVERGENT(30, 10),
        /** Fully open butterfly valve. */
        BUTTERFLY_VALVE(45, 25),
        /** Fully open plug valve. */
        PLUG_VALVE(30, 15);

        private final double atMeanVelocity;
        private final double onAxis;

        BeforePointSensor(double atMeanVelocity, double onAxis) {
            this.atMeanVelocity = atMeanVelocity;
            this.onAxis = onAxis;
        }

        /** Diameters needed by a sensor at the point of mean velocity. */
        public double atMeanVelocityPoint() {
            return atMeanVelocity;
        }

        /** Diameters needed by a sensor on the axis. */
        public double onAxis() {
            return onAxis;
        }
    }

    /** What disturbs the flow near an orifice meter of beta 0.5: ISO 5167-2:2003, Table 3. */
    public enum NearOrificeMeter {
        /** One 90 degree bend before it. */
        BEND(22, 9),
        /** Two 90 degree bends in perpendicular planes before it. */
        BENDS_IN_PERPENDICULAR_PLANES(44, 18),
        /** Any fitting after it. */
        DOWNSTREAM(6, 3);

        private final double full;
        private final double reduced;

        NearOrificeMeter(double full, double reduced) {
            this.full = full;
            this.reduced = reduced;
        }

        /** Diameters for no added uncertainty (column A). */
        public double full() {
            return full;
        }

        /** Diameters for 0.5 % added uncertainty (column B). */
        public double reduced() {
            return reduced;
        }
    }
}
