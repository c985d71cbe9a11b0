package provingyard.call;

import java.util.List;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.SiteState;
import provingyard.season.Season;
import provingyard.season.Snapshot;
import provingyard.world.hydraulics.Hands;

/**
 * The yard while the technician is there: its season lives on, minute by minute, with the valves that hands hold and the
 * zone that runs for a test, and says what water faults lost meanwhile. A leg of a test takes its minutes in whole minutes
 * of the season; what is left over counts for the next one. At the season's end the yard stands still. Mutable; not for several threads.
 */
final class Visit {

    private static final double LITRES = 1000;
    private static final int SECONDS = 60;

    /** Share of the water handled that the yard's books may miss. */
    private static final double BOOKS = 1e-9;

    private final CallSite site;
    private final Season season;
    private final long arrival;
    private double minutes;
    private double lost;
    private Snapshot seen;

    private Visit(CallSite site, Season season) {
        this.site = site;
        this.season = season;
        arrival = season.tick();
    }

    /** The technician arrives. */
    static Visit arrive(CallSite site, Case wrong) {
        return new Visit(site, site.arrivals().in(wrong));
    }

    /**
     * Lives while a test, a repair or a check is done, and while what was asked for is waited for.
     *
     * @param before the site before it
     * @param after the site after it
     */
    void live(FieldTest test, SiteState before, SiteState after) {
        double began = minutes;
        watch(test, before);
        seen = test.looksAtHeads() ? season.snapshot() : null;
        hold(after, null);
        // The least time that anything takes.
        pass(Math.max(0, test.action().minutes(before, site::walk) - (minutes - began)));
        pass(test.waits());
        prove();
    }

    /** Lives until what is measured has been read, its zone still running. */
    void watch(FieldTest test, SiteState before) {
        SiteState state = before;
        List<Action.Leg> legs = test.action().legsFrom(before);
        for (int i = 0; i < legs.size(); i++) {
            Action.Leg leg = legs.get(i);
            pass(site.walk(state.standing(), leg.place()));
            state = state.after(leg.place(), leg.sets());
            hold(state, i == legs.size() - 1 ? test : null);
            pass(leg.minutes());
        }
    }

    /** A fault of the case, by its place in it, acts no more. */
    void repair(int fault) {
        season.repair(fault);
    }

    private void hold(SiteState state, FieldTest test) {
        boolean runs = test != null && test.runs() != null;
        boolean byHand = runs && test.kind().equals(FieldTest.OPEN_BY_HAND);
        Hands hands = site.ground().hands(state);
        season.hands(byHand ? site.ground().opened(test.runs(), hands) : hands);
        season.runByHand(runs && !byHand ? test.runs() : null);
    }

    private void pass(double more) {
        minutes += more;
        long until = arrival + Math.round(minutes);
        while (season.tick() < until && !season.over()) {
            season.advance();
            lost += season.lost() * SECONDS * LITRES;
        }
    }

    private void prove() {
        double missed = season.ledger().water().closure();
        if (missed > BOOKS) {
            throw new IllegalStateException("the yard's books miss " + missed + " of its water");
        }
    }

    /** L that faults lost since the arrival. */
    double lost() {
        return lost;
    }

    /** The yard at this minute. */
    Snapshot now() {
        return season.snapshot();
    }

    /** The yard as it was while its heads were looked at in the last test; null where they were not. */
    Snapshot seen() {
        return seen;
    }

    /** m3/s that came in at the point of connection in the last minute. */
    double supply() {
        return season.supply();
    }

    /** Fingerprint of all that happened on the yard. */
    String hash() {
        return season.ledgerHash();
    }
}
