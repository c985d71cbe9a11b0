package provingyard.call;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Hazard;
import provingyard.diagnosis.Inquiry;
import provingyard.diagnosis.Prediction;
import provingyard.diagnosis.Ranked;
import provingyard.diagnosis.Ranking;
import provingyard.diagnosis.Reading;
import provingyard.diagnosis.SafetyGates;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.SiteState;
import provingyard.diagnosis.Trust;
import provingyard.season.Season;
import provingyard.season.Snapshot;

/**
 * A service call as one trainee lives it: a pure function of the site, the deal, the seed and the list of tests done. Each
 * test moves the clock, lets the yard's season live on meanwhile, and gives a note. Mutable; not for several threads. {@link #fork} gives
 * another one that goes its own way from any test on.
 */
public final class Call {

    /** Version of what tests read and the yard does meanwhile; calls kept by another version begin anew. */
    public static final String ENGINE = Season.ENGINE + "/1";

    /**
     * A line of the field notes.
     *
     * @param number from 1
     * @param test what was done
     * @param before the site before it, with the technician's place
     * @param reading what it gave; null where nothing is read
     * @param prediction what it would have read under each hypothesis; null where nothing is read
     * @param prior what was believed before it
     * @param minute minutes on the site at its end
     * @param litres L that ran away since the arrival, at its end
     * @param seen the yard while the test's heads were looked at; null where they were not
     */
    public record Note(
            int number,
            FieldTest test,
            SiteState before,
            Reading reading,
            Prediction prediction,
            Belief prior,
            double minute,
            double litres,
            Snapshot seen) {}

    /**
     * What was stated at the end.
     *
     * @param repairClass what is to be repaired
     * @param confidence 0 to 1
     */
    public record Finding(String repairClass, double confidence) {}

    private final CallSite site;
    private final Deal deal;
    private final long seed;
    private final Ranking ranking;
    private final Instruments instruments;
    private final List<Note> notes = new ArrayList<>();
    private final Visit visit;
    private ServiceRun run;
    private Finding finding;
    private int beforeFinding;
    private Case wrong;

    private Call(CallSite site, Deal deal, long seed) {
        this.site = site;
        this.deal = deal;
        this.seed = seed;
        wrong = deal.wrong();
        ranking = new Ranking(site, Trust.USUAL);
        instruments = new Instruments(site, deal.wrong(), seed);
        visit = Visit.arrive(site, deal.wrong());
        run = ServiceRun.at(site);
    }

    /** The technician arrives. */
    public static Call begin(CallSite site, Deal deal, long seed) {
        return new Call(site, deal, seed);
    }

    /** Another call that did the same first tests and goes its own way from there. */
    public Call fork(int tests) {
        Call other = new Call(site, deal, seed);
        notes.subList(0, tests).stream()
                .filter(n -> site.test(n.test().id()).isPresent())
                .forEach(n -> other.act(n.test().id()));
        return other;
    }

    /** The site. */
    public CallSite site() {
        return site;
    }

    /** What has to be found; not for the trainee's eyes before the finding. */
    public Deal deal() {
        return deal;
    }

    /** What all chance of this call is drawn from. */
    public long seed() {
        return seed;
    }

    /** The field notes so far. */
    public List<Note> notes() {
        return Collections.unmodifiableList(notes);
    }

    /** What was done and how it rates. */
    public ServiceRun run() {
        return run;
    }

    /** What the evidence says now. */
    public Belief belief() {
        return run.inquiry().belief();
    }

    /** The site as it is now. */
    public SiteState state() {
        return run.inquiry().state();
    }

    /** Minutes on the site. */
    public double minutes() {
        return run.inquiry().minutes();
    }

    /** L that ran away since the arrival. */
    public double litres() {
        return visit.lost();
    }

    /** The yard as it lives, whatever of it was looked at. */
    public Snapshot yard() {
        return visit.now();
    }

    /** Fingerprint of all that happened on the yard: the same for the same site, deal and tests. */
    public String yardHash() {
        return visit.hash();
    }

    /** L/min that run away now. */
    public double running() {
        return site.lostAtRest(state(), wrong);
    }

    /** Minutes that a test would take from here. */
    public double minutesOf(FieldTest test) {
        return test.action().minutes(state(), site::walk);
    }

    /** What would be unsafe about a test now. */
    public Set<Hazard> hazards(FieldTest test) {
        return SafetyGates.breaches(test.action(), state());
    }

    /** Possible next tests, the most telling for its minutes first. Takes some 50 ms, the first time some seconds. */
    public List<Ranked> ranked() {
        return ranking.of(run.inquiry());
    }

    /**
     * Does a test.
     *
     * @throws IllegalArgumentException for a test that this site does not have
     * @throws IllegalStateException after the finding, and for a test whose conditions do not hold
     */
    public Note act(String id) {
        FieldTest test = site.test(id).orElseThrow(() -> new IllegalArgumentException("no test " + id));
        if (finding != null && test.action().kind().judged()) {
            throw new IllegalStateException("the finding is stated");
        }
        Inquiry before = run.inquiry();
        if (!test.action().possible(before.state())) {
            throw new IllegalStateException(id + " cannot be done now");
        }
        Reading reading = instruments.read(test.action(), before.state(), notes.size());
        Prediction prediction = reading == null ? null : site.predict(test.action(), before.state());
        run = run.after(test.action(), reading, ranking);
        return noted(test, before, reading, prediction);
    }

    private Note noted(FieldTest test, Inquiry before, Reading reading, Prediction prediction) {
        visit.live(test, before.state(), state());
        Note note = new Note(
                notes.size() + 1,
                test,
                before.state(),
                reading,
                prediction,
                before.belief(),
                minutes(),
                litres(),
                visit.seen());
        notes.add(note);
        return note;
    }

    /** What would be unsafe about the repair of what was stated now; empty before the finding. */
    public Set<Hazard> repairHazards() {
        return finding == null
                ? Set.of()
                : SafetyGates.breaches(
                        Mending.repair(site, finding.repairClass()).action(), state());
    }

    /**
     * Repairs what was stated, whatever is really wrong.
     *
     * @throws IllegalStateException before the finding, after it says that nothing is wrong, and a second time
     */
    public Note repair() {
        if (finding == null || finding.repairClass().equals(Suspects.NONE) || did(Action.Kind.REPAIR)) {
            throw new IllegalStateException("there is nothing to repair now");
        }
        Inquiry before = run.inquiry();
        FieldTest repair = Mending.repair(site, finding.repairClass());
        run = run.after(repair.action(), null, ranking);
        Note note = noted(repair, before, null, null);
        mend();
        return note;
    }

    private void mend() {
        List<Integer> all = deal.wrong().faults();
        for (int i = 0; i < all.size(); i++) {
            if (site.repairClass(all.get(i)).equals(finding.repairClass())) {
                visit.repair(i);
            }
        }
        wrong = new Case(wrong.faults().stream()
                .filter(f -> !site.repairClass(f).equals(finding.repairClass()))
                .toList());
    }

    /**
     * Checks after the repair with the test that would show the fault. What it reads is no evidence for the finding any
     * more, so the belief stays.
     *
     * @throws IllegalStateException before the repair and a second time
     */
    public Note verify() {
        if (!did(Action.Kind.REPAIR) || did(Action.Kind.VERIFY)) {
            throw new IllegalStateException("there is nothing to check now");
        }
        Inquiry before = run.inquiry();
        FieldTest check = Mending.check(site, finding.repairClass());
        Action shown = Mending.shows(site, finding.repairClass()).action();
        Reading reading = new Instruments(site, wrong, seed).read(shown, before.state(), notes.size());
        Prediction prediction = site.predict(shown, before.state());
        run = run.after(check.action(), null, ranking);
        return noted(check, before, reading, prediction);
    }

    private boolean did(Action.Kind kind) {
        return run.steps().stream().anyMatch(s -> s.kind() == kind);
    }

    /** States the finding; once. */
    public void state(Finding stated) {
        if (finding != null) {
            throw new IllegalStateException("the finding is stated");
        }
        finding = stated;
        beforeFinding = notes.size();
        run = run.declare(stated.repairClass());
    }

    /** What was stated, if it was. */
    public Optional<Finding> finding() {
        return Optional.ofNullable(finding);
    }

    /** How many notes were taken before the finding; 0 as long as nothing was stated. */
    public int notesBeforeFinding() {
        return beforeFinding;
    }

    /** What the finding counts as. */
    public Declaration declaration() {
        Declaration.Hit hit = Judge.hit(site, deal, finding.repairClass());
        return new Declaration(finding.repairClass(), run.declaredProbability(), hit, finding.confidence());
    }

    /**
     * The score.
     *
     * @param reference how long the reference takes on this deal, and what runs away meanwhile
     */
    public CaseScore score(Judge.Reference reference) {
        CaseScore.Water water = new CaseScore.Water(litres(), reference.litres());
        return CaseScore.of(run.steps(), declaration(), reference.minutes(), water);
    }
}
