package provingyard.world.ground;

import java.util.BitSet;

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
    /** Places to be passed, and those on which water stands. */
    private final BitSet due = new BitSet();

    private final BitSet standing;
    /** Whether {@code standing} is not up to date, since all places were passed. */
    private boolean unmarked;

    /** Planted slots that are due, and the water in m that comes to each from above. */
    private final int[] slots;

    private final double[] comes;
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
        standing = new BitSet();
        slots = new int[soil.count];
        comes = new double[soil.count];
    }

    private WaterPass(WaterPass from, RootZone soil, Pavement pavement) {
        way = from.way;
        this.soil = soil;
        this.pavement = pavement;
        supplyTemperature = from.supplyTemperature;
        runOn = from.runOn.clone();
        standing = (BitSet) from.standing.clone();
        unmarked = from.unmarked;
        slots = new int[soil.count];
        comes = new double[soil.count];
    }

    /** The same over the copied soil and pavement. */
    WaterPass over(RootZone copiedSoil, Pavement copiedPavement) {
        return new WaterPass(this, copiedSoil, copiedPavement);
    }

    /** Whether water stands anywhere on planted ground. */
    boolean anyStands() {
        return unmarked ? soil.anyPonded() : !standing.isEmpty();
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
            passAll(fall, rainTemperature, watering, now, minutes);
        } else {
            passDue(rainTemperature, watering, now, minutes);
        }
    }

    private void passAll(double fall, double rainTemperature, Watering watering, long now, int minutes) {
        unmarked = true;
        for (RunoffWay.Stretch stretch : way.stretches) {
            switch (stretch.kind()) {
                case PLANTED -> passPlants(stretch, fall, watering, now, minutes);
                case PAVED -> {
                    for (int i = stretch.from(); i < stretch.to(); i++) {
                        passPaving(i, fall * way.rainShare[i], rainTemperature, sprayed(watering, i));
                    }
                }
                case BUILT -> {
                    for (int i = stretch.from(); i < stretch.to(); i++) {
                        passRoof(i, sprayed(watering, i));
                    }
                }
            }
        }
    }

    /** The slots of a stretch follow each other as its places do. */
    private void passPlants(RunoffWay.Stretch stretch, double fall, Watering watering, long now, int minutes) {
        int first = way.soilSlot[stretch.from()];
        int count = stretch.to() - stretch.from();
        for (int n = 0; n < count; n++) {
            double sprayed = sprayed(watering, stretch.from() + n);
            watered += sprayed;
            comes[n] = fall * way.rainShare[stretch.from() + n] + sprayed;
            slots[n] = first + n;
        }
        soil.wake(slots, count, comes, now, minutes);
        for (int n = 0; n < count; n++) {
            int i = stretch.from() + n;
            double over = soil.receive(first + n, comes[n] + runOn[i], now, minutes);
            runOn[i] = 0;
            if (over > 0) {
                run(i, over);
            }
        }
    }

    /** Without rain only those places are passed that were watered, hold standing water or are run onto. */
    private void passDue(double rainTemperature, Watering watering, long now, int minutes) {
        mark();
        due.clear();
        due.or(standing);
        if (watering != null) {
            due.or(watering.places());
        }
        int planted = 0;
        for (int i = due.nextSetBit(0); i >= 0; i = due.nextSetBit(i + 1)) {
            if (way.soilSlot[i] >= 0) {
                slots[planted] = way.soilSlot[i];
                comes[planted++] = sprayed(watering, i);
            }
        }
        soil.wake(slots, planted, comes, now, minutes);
        // What runs off a place is due further down.
        for (int i = due.nextSetBit(0); i >= 0; i = due.nextSetBit(i + 1)) {
            double sprayed = sprayed(watering, i);
            if (way.soilSlot[i] >= 0) {
                passPlants(i, 0, sprayed, now, minutes);
            } else if (way.pavedSlot[i] >= 0) {
                passPaving(i, 0, rainTemperature, sprayed);
            } else {
                passRoof(i, sprayed);
            }
        }
    }

    private double sprayed(Watering watering, int i) {
        return watering == null ? 0 : watering.depth(way.cell[i]);
    }

    private void passPlants(int i, double rained, double sprayed, long now, int minutes) {
        double came = runOn[i];
        runOn[i] = 0;
        watered += sprayed;
        int s = way.soilSlot[i];
        double over = soil.receive(s, rained + sprayed + came, now, minutes);
        mark(i, soil.ponded(s));
        if (over > 0) {
            run(i, over);
        }
    }

    /** Finds out where water stands, unless that is known. */
    private void mark() {
        if (unmarked) {
            standing.clear();
            for (int i = 0; i < way.soilSlot.length; i++) {
                if (way.soilSlot[i] >= 0 && soil.ponded(way.soilSlot[i])) {
                    standing.set(i);
                }
            }
            unmarked = false;
        }
    }

    private void mark(int i, boolean ponded) {
        if (standing.get(i) != ponded) {
            standing.set(i, ponded);
        }
    }

    private void passPaving(int i, double rained, double rainTemperature, double sprayed) {
        double came = rained + runOn[i];
        runOn[i] = 0;
        watered += sprayed;
        double over = 0;
        if (came > 0) {
            over += pavement.receive(way.pavedSlot[i], came, rainTemperature);
        }
        if (sprayed > 0) {
            over += pavement.receive(way.pavedSlot[i], sprayed, supplyTemperature);
        }
        if (over > 0) {
            run(i, over);
        }
    }

    private void passRoof(int i, double sprayed) {
        double over = sprayed + runOn[i];
        runOn[i] = 0;
        watered += sprayed;
        if (over > 0) {
            run(i, over);
        }
    }

    private void run(int i, double over) {
        leftPlants += way.leavesPlants[i] ? over : 0;
        cameToPlants += way.comesToPlants[i] ? over : 0;
        int down = way.down[i];
        if (down < 0) {
            left += over;
        } else {
            runOn[down] += over;
            due.set(down);
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
