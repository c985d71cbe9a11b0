package provingyard.world.ground;

/**
 * Moves water over the ground within one beat: every cell that gets any, or on which some stands, takes in what it can and
 * gives the rest to the next one downhill. Cells are passed in the order in which runoff moves, so that what runs on can
 * still soak in on the way.
 */
final class WaterPass {

    private final RunoffWay way;
    private final RootZone soil;
    private final Pavement pavement;
    private final double supplyTemperature;
    /** Water in m on its way to each place. */
    private final double[] runOn;
    /** Places to be passed, and those on which water stands; a bit each. */
    private final long[] due;

    private final long[] standing;
    private double watered;
    private double left;
    private double leftPlants;
    private double cameToPlants;

    WaterPass(RunoffWay way, RootZone soil, Pavement pavement, double supplyTemperature) {
        this.way = way;
        this.soil = soil;
        this.pavement = pavement;
        this.supplyTemperature = supplyTemperature;
        runOn = new double[way.cell.length];
        due = new long[Watering.words(runOn.length)];
        standing = new long[due.length];
    }

    private WaterPass(WaterPass from, RootZone soil, Pavement pavement) {
        way = from.way;
        this.soil = soil;
        this.pavement = pavement;
        supplyTemperature = from.supplyTemperature;
        runOn = from.runOn.clone();
        due = new long[from.due.length];
        standing = from.standing.clone();
    }

    /** The same over the copied soil and pavement. */
    WaterPass over(RootZone copiedSoil, Pavement copiedPavement) {
        return new WaterPass(this, copiedSoil, copiedPavement);
    }

    /** Whether water stands anywhere on planted ground. */
    boolean anyStands() {
        for (long word : standing) {
            if (word != 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * Passes rain, irrigation and what stands.
     *
     * @param fall rain in m
     * @param rainTemperature °C
     * @param watering null for none
     * @param now minute of the season at the beat's end
     * @param minutes length of the beat
     */
    void pass(double fall, double rainTemperature, Watering watering, long now, int minutes) {
        watered = 0;
        left = 0;
        leftPlants = 0;
        cameToPlants = 0;
        if (fall > 0 || watering != null && watering.places() == null) {
            for (int i = 0; i < runOn.length; i++) {
                double sprayed = watering == null ? 0 : watering.depth(way.cell[i]);
                visit(i, fall * way.rainShare[i], rainTemperature, sprayed, now, minutes);
            }
            return;
        }
        for (int w = 0; w < due.length; w++) {
            due[w] = standing[w] | (watering == null ? 0 : watering.places()[w]);
        }
        for (int w = 0; w < due.length; w++) {
            // What runs off a place is due further down, so a word may gain bits while it is worked through.
            while (due[w] != 0) {
                int i = (w << 6) + Long.numberOfTrailingZeros(due[w]);
                due[w] &= due[w] - 1;
                double sprayed = watering == null ? 0 : watering.depth(way.cell[i]);
                visit(i, 0, rainTemperature, sprayed, now, minutes);
            }
        }
    }

    private void visit(int i, double rained, double rainTemperature, double sprayed, long now, int minutes) {
        double came = runOn[i];
        runOn[i] = 0;
        watered += sprayed;
        double over;
        int s = way.soilSlot[i];
        if (s >= 0) {
            over = soil.receive(s, rained + sprayed + came, now, minutes);
            mark(i, soil.ponded(s));
        } else if (way.pavedSlot[i] >= 0) {
            over = wet(way.pavedSlot[i], rained + came, rainTemperature, sprayed);
        } else {
            over = sprayed + came;
        }
        if (over > 0) {
            run(i, over);
        }
    }

    private void mark(int i, boolean ponded) {
        long bit = 1L << i;
        standing[i >> 6] = ponded ? standing[i >> 6] | bit : standing[i >> 6] & ~bit;
    }

    private double wet(int slot, double rainAndRunOn, double temperature, double sprayed) {
        double over = 0;
        if (rainAndRunOn > 0) {
            over += pavement.receive(slot, rainAndRunOn, temperature);
        }
        if (sprayed > 0) {
            over += pavement.receive(slot, sprayed, supplyTemperature);
        }
        return over;
    }

    private void run(int i, double over) {
        leftPlants += way.leavesPlants[i] ? over : 0;
        cameToPlants += way.comesToPlants[i] ? over : 0;
        int down = way.down[i];
        if (down < 0) {
            left += over;
        } else {
            runOn[down] += over;
            due[down >> 6] |= 1L << down;
        }
    }

    /** Irrigation that landed in the last pass, as m on one cell. */
    double watered() {
        return watered;
    }

    /** What ran off the site in the last pass, as m on one cell. */
    double left() {
        return left;
    }

    /** What ran from plants to where none grow, or off the site. */
    double leftPlants() {
        return leftPlants;
    }

    /** What ran from where nothing grows to plants. */
    double cameToPlants() {
        return cameToPlants;
    }
}
