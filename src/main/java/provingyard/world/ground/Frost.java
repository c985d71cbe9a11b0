package provingyard.world.ground;

import java.util.Arrays;

/** Ice on the paved cells of a ground at some minute; immutable. */
public final class Frost {

    /** No ice anywhere. */
    public static final Frost NONE = new Frost(null, null, null, null, null);

    private final int[] slotOf;
    private final int[] classOf;
    private final double[] dryIce;
    private final int[] wetSlots;
    private final double[] wetIce;

    /**
     * Ice in m of water.
     *
     * @param slotOf slot of each cell, -1 where it is not paved
     * @param classOf class of each slot
     * @param dryIce ice of each class's cells that are not listed
     * @param wetSlots listed slots in rising order
     * @param wetIce their ice
     */
    Frost(int[] slotOf, int[] classOf, double[] dryIce, int[] wetSlots, double[] wetIce) {
        this.slotOf = slotOf;
        this.classOf = classOf;
        this.dryIce = dryIce;
        this.wetSlots = wetSlots;
        this.wetIce = wetIce;
    }

    /** Ice on a cell in mm of water; 0 where it is not paved. */
    public double mm(int cell) {
        return slotOf == null || slotOf[cell] < 0 ? 0 : mmOfSlot(slotOf[cell]);
    }

    /** Ice on a paved slot in mm of water. */
    double mmOfSlot(int slot) {
        if (wetSlots == null) {
            return 0;
        }
        int at = Arrays.binarySearch(wetSlots, slot);
        return 1000 * (at >= 0 ? wetIce[at] : dryIce[classOf[slot]]);
    }
}
