package provingyard.call;

import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Policies;
import provingyard.diagnosis.Policy;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.SiteState;
import provingyard.diagnosis.Step;
import provingyard.diagnosis.Trust;

/** Holds what was stated against what is wrong, and knows how long the reference takes. */
public final class Judge {

    /** Runs of the reference that its mean minutes are taken from (design; an author's check takes more). */
    private static final int REFERENCE_RUNS = 12;

    private Judge() {}

    /** How near a stated repair class is to the truth of a deal. */
    public static Declaration.Hit hit(CallSite site, Deal deal, String stated) {
        boolean right = deal.wrong().faults().isEmpty()
                ? stated.equals(Suspects.NONE)
                : deal.wrong().faults().stream()
                        .anyMatch(f -> site.repairClass(f).equals(stated));
        if (right) {
            return Declaration.Hit.RIGHT;
        }
        boolean near = deal.wrong().faults().stream().anyMatch(f -> isNear(site, site.repairClass(f), stated));
        return near ? Declaration.Hit.NEAR : Declaration.Hit.WRONG;
    }

    /** The next cell of the same main, or another part of the same zone. */
    private static boolean isNear(CallSite site, String truth, String stated) {
        if (truth.startsWith(Suspects.MAIN) && stated.startsWith(Suspects.MAIN)) {
            return site.place(truth).distance(site.place(stated)) <= 1.5 * Suspects.CELL;
        }
        int a = truth.indexOf(':');
        int b = stated.indexOf(':');
        return a > 0 && b > 0 && truth.substring(a).equals(stated.substring(b));
    }

    /**
     * The reference on a deal.
     *
     * @param minutes mean minutes of its tests
     * @param litres L that run away on average until it states its finding
     */
    public record Reference(double minutes, double litres) {}

    /** How long the reference takes on a deal, and what runs away meanwhile, over a dozen seeds. */
    public static Reference reference(CallSite site, Deal deal) {
        double minutes = 0;
        double litres = 0;
        for (long seed = 0; seed < REFERENCE_RUNS; seed++) {
            Reference one = of(site, deal, play(site, deal, Policies.best(site, Trust.USUAL), seed));
            minutes += one.minutes();
            litres += one.litres();
        }
        return new Reference(minutes / REFERENCE_RUNS, litres / REFERENCE_RUNS);
    }

    /** How long one way through a deal takes, and what runs away on the living yard meanwhile. */
    public static Reference of(CallSite site, Deal deal, ServiceRun run) {
        return new Reference(run.testMinutes(), lost(site, deal, run));
    }

    private static double lost(CallSite site, Deal deal, ServiceRun run) {
        Visit visit = Visit.arrive(site, deal.wrong());
        SiteState state = site.start();
        for (Step step : run.steps()) {
            FieldTest test = site.test(step.action()).orElseThrow();
            SiteState after = test.action().after(state);
            visit.live(test, state, after);
            state = after;
        }
        return visit.lost();
    }

    /** A policy's way through a deal. */
    public static ServiceRun play(CallSite site, Deal deal, Policy policy, long seed) {
        return ServiceRun.play(site, Trust.USUAL, new Prudent(site, policy), new Instruments(site, deal.wrong(), seed));
    }
}
