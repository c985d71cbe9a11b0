package provingyard.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.Hazard;
import provingyard.scenario.FaultPlan;

class ProgressTest {

    private static Support after(Support support, boolean... met) {
        Support now = support;
        for (boolean each : met) {
            now = now.after(each);
        }
        return now;
    }

    @Test
    void explanationsFoldAwayAfterTwoInARowAndReturnAfterTwoMissed() {
        assertTrue(after(Support.FIRST, true).explains());
        assertFalse(after(Support.FIRST, true, true).explains());
        assertTrue(after(Support.FIRST, true, false, true).explains(), "not in a row");
        Support folded = after(Support.FIRST, true, true);
        assertFalse(after(folded, true, false).explains());
        assertFalse(after(folded, false, true, false).explains(), "not in a row");
        assertTrue(after(folded, false, false).explains());
        assertFalse(after(folded, false, false, true, true).explains(), "and fold away again");
    }

    @Test
    void explanationsReturnWhenAskedFor() {
        Support asked = after(Support.FIRST, true, true).chosen(true);
        assertEquals(new Support(true, 0), asked);
        assertTrue(after(asked, true).explains(), "two in a row count from then on");
        assertEquals(new Support(true, 1), new Support(true, 1).chosen(true), "nothing new was asked for");
        assertFalse(new Support(true, 1).chosen(false).explains());
    }

    private static Result whole(int points) {
        return new Result(Form.WHOLE, 1, points, points >= 80);
    }

    @Test
    void twoOfTheLastThreeWholeCardsMaster() {
        Progress half = Progress.NONE
                .after(Family.SENSOR, Result.shown(1))
                .after(Family.SENSOR, new Result(Form.HALF, 1, 99, true))
                .after(Family.SENSOR, whole(80));
        assertFalse(half.at(Family.SENSOR).mastered(), "half-done cards do not count");
        assertTrue(half.after(Family.SENSOR, whole(80)).at(Family.SENSOR).mastered());
        Progress missed = half.after(Family.SENSOR, whole(79)).after(Family.SENSOR, whole(79));
        assertEquals(1, missed.at(Family.SENSOR).good());
        assertFalse(missed.at(Family.SENSOR).mastered());
        Progress again = missed.after(Family.SENSOR, whole(90)).after(Family.SENSOR, whole(90));
        assertTrue(again.at(Family.SENSOR).mastered());
        assertEquals(1, again.mastered());
        assertFalse(again.after(Family.SENSOR, whole(50))
                .after(Family.SENSOR, whole(50))
                .at(Family.SENSOR)
                .mastered());
    }

    @Test
    void aFamilyGoesOnFromFormToForm() {
        Standing standing = Standing.NONE;
        assertEquals(Form.EXAMPLE, standing.next());
        standing = standing.after(Result.shown(1));
        assertEquals(Form.HALF, standing.next());
        assertEquals(Support.FIRST, standing.support(), "looking on is no success");
        standing = standing.after(new Result(Form.HALF, 1, 40, false));
        assertEquals(Form.WHOLE, standing.next());
        for (int i = 0; i < 40; i++) {
            standing = standing.after(whole(i % 101));
        }
        assertEquals(Standing.KEPT, standing.results().size());
        assertEquals(Form.WHOLE, standing.next());
        assertEquals(39, standing.results().get(Standing.KEPT - 1).points());
    }

    @Test
    void aGoalNeedsTheRightFindingWithEvidenceInTime() {
        Goal goal = Goal.of(10, 0.97);
        assertEquals(12.5, goal.minutes());
        assertTrue(goal.met(stated(Declaration.Hit.RIGHT, 0.9), taking(12.5)));
        assertFalse(goal.met(stated(Declaration.Hit.RIGHT, 0.89), taking(12.5)), "a guess");
        assertFalse(goal.met(stated(Declaration.Hit.RIGHT, 0.99), taking(12.6)), "slow");
        assertFalse(goal.met(stated(Declaration.Hit.NEAR, 0.99), taking(5)), "beside it");
        Goal hidden = Goal.of(10, 0.82);
        assertTrue(hidden.met(stated(Declaration.Hit.RIGHT, 0.82), taking(10)), "more cannot be known");
        assertFalse(hidden.met(stated(Declaration.Hit.RIGHT, 0.80), taking(10)));
        CaseScore unsafe = new CaseScore(taking(5).lines(), 59, EnumSet.of(Hazard.BURIED_LINES), Set.of(), 1, 0, 3, 5);
        assertFalse(goal.met(stated(Declaration.Hit.RIGHT, 0.99), unsafe));
    }

    private static Declaration stated(Declaration.Hit hit, double probability) {
        return new Declaration("x", probability, hit, 0.9);
    }

    private static CaseScore taking(double minutes) {
        return new CaseScore(java.util.List.of(), 90, Set.of(), Set.of(), 1, 0, 3, minutes);
    }

    @Test
    void everyFamilyHasKinds() {
        Set<Family> seen = EnumSet.of(Family.NONE);
        for (FaultPlan.Kind kind : FaultPlan.Kind.values()) {
            seen.add(Family.of(kind));
        }
        assertEquals(EnumSet.allOf(Family.class), seen);
    }
}
