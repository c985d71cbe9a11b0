package provingyard.bench;

/** Seasons of the clinic, each thread its own; run on one thread and on two. */
public class TwoSeasonsBench extends SeasonMeasures {

    @Override
    Clinic clinic() {
        return Clinic.shipped(false);
    }
}
