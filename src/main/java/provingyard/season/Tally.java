package provingyard.season;

import provingyard.world.ground.Flows;
import provingyard.world.ground.Ground;
import provingyard.world.ground.Totals;

/**
 * Volumes that the season itself counts, in m3, and the ledger made of them and of both grounds.
 *
 * <p>Overspray is counted where it lands first; what of it comes back from paving to plants is taken off runoff and
 * percolation, so that no litre is counted twice.
 */
final class Tally {

    private double supplied;
    private double drift;
    private double offSite;
    private double overspray;
    private double leaked;

    Tally() {}

    private Tally(Tally other) {
        supplied = other.supplied;
        drift = other.drift;
        offSite = other.offSite;
        overspray = other.overspray;
        leaked = other.leaked;
    }

    Tally copy() {
        return new Tally(this);
    }

    /** Takes a minute's volumes in m3; {@code paved} is what landed on paving and buildings of the yard. */
    void minute(double supply, double lost, double beyond, double paved, double leak) {
        supplied += supply;
        drift += lost;
        offSite += beyond;
        overspray += paved + beyond;
        leaked += leak;
    }

    /** m3 carried off between nozzle and ground, and landed beside the plants. */
    double astray() {
        return drift + overspray;
    }

    Ledger.Water water(Ground ground, double storeAtStart) {
        Totals t = ground.totals();
        return new Ledger.Water(
                supplied,
                t.rain(),
                t.evapotranspiration(),
                drift,
                t.walkEvaporation(),
                t.runoff(),
                t.percolation(),
                offSite,
                leaked,
                t.store() - storeAtStart);
    }

    Ledger.Irrigation irrigation(Ground ground, Course.Sums twin) {
        Totals with = ground.totals();
        Totals without = twin.totals();
        Flows over = ground.flows();
        Flows twinOver = twin.flows();
        double used = with.evapotranspiration() - without.evapotranspiration();
        double store = over.soil() - twinOver.soil();
        double ran = over.fromPlants() - twinOver.fromPlants();
        double below = with.percolation() - without.percolation();
        double back = over.toPlants() - twinOver.toPlants();
        double gone = Math.max(0, ran) + Math.max(0, below);
        double ranShare = gone > 0 ? Math.max(0, ran) / gone : 0;
        return new Ledger.Irrigation(
                supplied, used, drift, overspray, ran - ranShare * back, below - (1 - ranShare) * back, leaked, store);
    }
}
