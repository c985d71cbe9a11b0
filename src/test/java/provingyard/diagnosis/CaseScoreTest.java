package provingyard.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import provingyard.diagnosis.Action.Kind;
import provingyard.diagnosis.CaseScore.Flag;
import provingyard.diagnosis.CaseScore.Water;
import provingyard.diagnosis.Declaration.Hit;

class CaseScoreTest {

    private static Step step(
            Kind kind, double gain, double minutes, double bestRate, double target, Hazard... breaches) {
        return new Step("a", kind, gain, minutes, bestRate, 5, 4, target, true, Set.of(breaches));
    }

    private static Declaration declared(Hit hit, double probability) {
        return new Declaration("c", probability, hit, 0.9);
    }

    private static final Step GOOD = step(Kind.TEST, 2, 10, 0.2, 1);

    private static CaseScore score(Declaration declaration, Step... steps) {
        return CaseScore.of(List.of(steps), declaration, 20, Water.NONE);
    }

    @Test
    void allRightIsAHundred() {
        assertEquals(100, score(declared(Hit.RIGHT, 0.95), GOOD, GOOD).total(), 1e-12);
    }

    @Test
    void termsAreThoseOfTheFormula() {
        // 50 minutes, 25 allowed; S = 4.02/9; one of three redundant; ev = 0.8; next cell.
        Step slow = step(Kind.TEST, 2, 20, 0.2, 1);
        Step idle = step(Kind.TEST, 0.02, 20, 0.15, 1);
        CaseScore score = score(declared(Hit.NEAR, 0.72), GOOD, slow, idle);
        double answer = 0.5 * 0.8;
        double expected = 45 * answer + 25 * answer * 0.5 + 20 * 4.02 / 9 * 0.8 + 10 * 2 / 3.0 - 30 * 0.18 / 0.9;
        assertEquals(expected, score.total(), 1e-12);
        assertEquals(4.02 / 9, score.informationShare(), 1e-12);
        assertEquals(1, score.redundant());
        assertEquals(50, score.minutes());
        assertEquals(Set.of(Flag.REDUNDANT, Flag.STOPPED_EARLY), score.flags());
    }

    /** Half an hour of digging is held against what was left to be told, not against half an hour of the best rate. */
    @Test
    void noTestIsHeldAgainstMoreThanWasLeft() {
        Step dig = new Step("dig", Kind.DIG, 0.9, 35, 0.2, 1.2, 0.1, 0.6, true, Set.of());
        assertEquals(1.2, dig.bestBits(), 1e-12);
        assertEquals(0.75, dig.share(), 1e-12);
        assertEquals(0.3, dig.regret(), 1e-12);
        CaseScore score = score(declared(Hit.RIGHT, 0.95), dig);
        assertEquals(0.75, score.informationShare(), 1e-12);
        assertTrue(score.lines().contains(new CaseScore.Line(CaseScore.Kind.PROCESS, 20 * 0.75)));
    }

    @Test
    void aLuckyHitIsCreditedAsFarAsTheEvidenceGoes() {
        double lucky = score(declared(Hit.RIGHT, 0.2), GOOD).total();
        double supported = score(declared(Hit.RIGHT, 0.95), GOOD).total();
        assertTrue(lucky < 0.25 * supported, lucky + " of " + supported);
    }

    @Test
    void aSupportedErrorKeepsItsProcess() {
        assertEquals(30, score(declared(Hit.WRONG, 0.95), GOOD, GOOD).total(), 1e-12);
    }

    @Test
    void withoutATestNothingIsGivenForTesting() {
        CaseScore score = score(declared(Hit.WRONG, 0.9), step(Kind.MAKE_SAFE, 0, 5, 0, 1));
        assertEquals(0, score.total());
        assertEquals(0, score.informationShare());
        assertEquals(0, score.tests());
    }

    @Test
    void makingSafeIsNeverCounted() {
        CaseScore without = score(declared(Hit.RIGHT, 0.95), GOOD);
        CaseScore with = score(
                declared(Hit.RIGHT, 0.95),
                step(Kind.MAKE_SAFE, 0, 60, 0.5, 1),
                step(Kind.REQUEST, 0, 30, 0.5, 1),
                GOOD);
        assertEquals(without.total(), with.total());
        assertEquals(1, with.tests());
        assertEquals(10, with.minutes());
    }

    @Test
    void theFirstUnsupportedDigIsFree() {
        Step dig = step(Kind.DIG, 1, 5, 0.2, 0.2);
        Step right = step(Kind.DIG, 1, 5, 0.2, 0.25);
        double one = score(declared(Hit.RIGHT, 0.95), dig, right, right).total();
        double three = score(declared(Hit.RIGHT, 0.95), dig, dig, dig).total();
        assertEquals(100, one, 1e-12);
        assertEquals(90, three, 1e-12);
    }

    @Test
    void aRepairIsChecked() {
        Step repair = step(Kind.REPAIR, 0, 30, 0, 1);
        Step check = step(Kind.VERIFY, 0, 5, 0, 1);
        assertEquals(95, score(declared(Hit.RIGHT, 0.95), GOOD, repair).total(), 1e-12);
        assertEquals(100, score(declared(Hit.RIGHT, 0.95), GOOD, repair, check).total(), 1e-12);
        assertEquals(
                95,
                score(declared(Hit.RIGHT, 0.95), GOOD, repair, check, repair).total(),
                1e-12);
        assertTrue(score(declared(Hit.RIGHT, 0.95), GOOD, repair).flags().contains(Flag.UNVERIFIED));
    }

    @Test
    void waterHasItsOwnLine() {
        Declaration right = declared(Hit.RIGHT, 0.95);
        List<Step> steps = List.of(GOOD);
        assertEquals(100, CaseScore.of(steps, right, 20, new Water(400, 450)).total(), 1e-12);
        assertEquals(95, CaseScore.of(steps, right, 20, new Water(950, 450)).total(), 1e-12);
        double flood = CaseScore.of(steps, right, 20, new Water(1e9, 450)).total();
        assertEquals(90, flood, 1e-3);
    }

    @Test
    void anUnsafeActCapsTheCaseAndComesFirst() {
        Step unsafe = step(Kind.DIG, 2, 10, 0.2, 0.9, Hazard.PRESSURE, Hazard.BURIED_LINES);
        CaseScore score = score(declared(Hit.RIGHT, 0.95), GOOD, unsafe);
        assertEquals(CaseScore.CAP, score.total(), 1e-12);
        assertEquals(CaseScore.Kind.UNSAFE, score.lines().get(0).kind());
        assertEquals(Flag.UNSAFE, score.flags().iterator().next());
        assertEquals(Hazard.BURIED_LINES, score.unsafe().iterator().next());
        CaseScore low = score(declared(Hit.WRONG, 0.95), GOOD, unsafe);
        assertEquals(30, low.total(), 1e-12, "the cap gives nothing");
    }

    @Test
    void threeTestsThatCannotTellAreOneSided() {
        Step blind = new Step("a", Kind.TEST, 1, 10, 0.1, 3, 2, 1, false, Set.of());
        assertFalse(score(declared(Hit.RIGHT, 0.95), blind, blind, GOOD, blind)
                .flags()
                .contains(Flag.ONE_SIDED));
        assertTrue(score(declared(Hit.RIGHT, 0.95), GOOD, blind, blind, blind)
                .flags()
                .contains(Flag.ONE_SIDED));
    }

    @Test
    void stepsTellRegretAndLuckApart() {
        Step step = new Step("a", Kind.TEST, 0.4, 10, 0.1, 3, 1.2, 1, true, Set.of());
        assertEquals(0.6, step.regret(), 1e-12);
        assertEquals(0.4, step.share(), 1e-12);
        assertEquals(1.8, step.realised(), 1e-12);
        assertEquals(1.4, step.luck(), 1e-12);
    }

    @Test
    void confidenceIsJudgedBySquares() {
        assertEquals(0.01, declared(Hit.RIGHT, 0.5).brier(), 1e-12);
        assertEquals(0.81, declared(Hit.NEAR, 0.5).brier(), 1e-12);
    }

    @Property(tries = 500)
    void scoresLieWithinTheirBoundsAndAddUp(@ForAll long seed) {
        Random random = new Random(seed);
        List<Step> steps = new ArrayList<>();
        for (int k = random.nextInt(12); k > 0; k--) {
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            Hazard[] breaches = random.nextInt(10) == 0 ? new Hazard[] {Hazard.SLIP} : new Hazard[0];
            steps.add(step(
                    kind,
                    random.nextDouble(),
                    60 * random.nextDouble(),
                    random.nextDouble(),
                    random.nextDouble(),
                    breaches));
        }
        Declaration declaration = declared(Hit.values()[random.nextInt(3)], random.nextDouble());
        Water water = new Water(1e4 * random.nextDouble(), 1e3 * random.nextDouble());
        double reference = 40 * random.nextDouble();
        CaseScore score = CaseScore.of(steps, declaration, reference, water);
        assertTrue(score.total() >= 0 && score.total() <= 100 + 1e-9, () -> "total " + score.total());
        assertTrue(score.unsafe().isEmpty() || score.total() <= CaseScore.CAP + 1e-9);
        assertTrue(score.informationShare() >= 0 && score.informationShare() <= 1);
        double sum = score.lines().stream().mapToDouble(CaseScore.Line::points).sum();
        assertEquals(score.total(), sum, 1e-9);
        assertEquals(score, CaseScore.of(steps, declaration, reference, water));
    }
}
