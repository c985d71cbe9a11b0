package provingyard.world.ground;

/** Where the water of running heads and drip lines went first, summed in m3: the fates add up to what was supplied. */
public final class SprayFate {

    private final Sum supplied = new Sum();
    private final Sum drift = new Sum();
    private final Sum offSite = new Sum();
    private final Sum onPaving = new Sum();
    private final Sum onBuildings = new Sum();
    private final Sum onPlants = new Sum();

    void add(double volume, double lost, SprayKernel kernel, double[] byKind) {
        double landing = volume - lost;
        supplied.add(volume);
        drift.add(lost);
        offSite.add(landing * kernel.offSite());
        onPlants.add(landing * byKind[0]);
        onPaving.add(landing * byKind[1]);
        onBuildings.add(landing * byKind[2]);
    }

    /** What left the nozzles. */
    public double supplied() {
        return supplied.value();
    }

    /** Drifted off or evaporated before it landed. */
    public double drift() {
        return drift.value();
    }

    /** Thrown beyond the yard. */
    public double offSite() {
        return offSite.value();
    }

    /** Landed on walks, drives and streets. */
    public double onPaving() {
        return onPaving.value();
    }

    /** Landed on roofs and walls. */
    public double onBuildings() {
        return onBuildings.value();
    }

    /** Landed where plants grow. */
    public double onPlants() {
        return onPlants.value();
    }

    /** Landed on anything but plants, or beyond the yard. */
    public double overspray() {
        return onPaving.value() + onBuildings.value() + offSite.value();
    }
}
