package provingyard.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import provingyard.diagnosis.Action.Kind;
import provingyard.diagnosis.Action.Latent;
import provingyard.diagnosis.Action.Leg;
import provingyard.diagnosis.Action.Risk;
import provingyard.text.Texts;

/** Walking, site state, looks that nature answers once, the first tests, and safety gates. */
class CallTest {

    private static final Action.Walk WALK = (from, to) -> from.equals(to) ? 0 : 2;
    private static final ToyLine LINE = new ToyLine();

    private static Action action(Kind kind, Set<Risk> risks, Leg... legs) {
        return new Action("a", kind, List.of(legs), Map.of(), null, null, risks);
    }

    private static Action toy(String id) {
        return LINE.actions().stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void minutesHangOnWhereOneStandsAndOnWhatIsDone() {
        Action split =
                action(Kind.SPLIT, Set.of(), new Leg("box", 3, Map.of("valve", "shut")), new Leg("house", 2, Map.of()));
        SiteState house = SiteState.at("house", Map.of("valve", "open"));
        assertEquals(2 + 3 + 2 + 2, split.minutes(house, WALK));
        SiteState after = split.after(house);
        assertEquals("house", after.standing());
        assertEquals("shut", after.condition("valve"), "a valve stays shut until it is opened");
        assertEquals(2, split.minutes(after, WALK), "a valve that is shut needs no walk");
        assertEquals(3 + 2 + 2, split.minutes(SiteState.at("box", Map.of("valve", "open")), WALK));
    }

    @Test
    void nothingTakesNoTime() {
        assertTrue(action(Kind.TEST, Set.of(), new Leg("house", 0, Map.of()))
                        .minutes(SiteState.at("house", Map.of()), WALK)
                > 0);
    }

    @Test
    void conditionsGateAnAction() {
        Action look = new Action(
                "look", Kind.TEST, List.of(new Leg("s1", 3, Map.of())), Map.of("water", "on"), null, null, Set.of());
        assertFalse(look.possible(SiteState.at("house", Map.of())));
        assertTrue(look.possible(SiteState.at("house", Map.of("water", "on"))));
    }

    @Test
    void aLookAgainIsWorthSomethingOnceConditionsChange() {
        Action look = toy("look-3");
        Ranking ranking = new Ranking(LINE, Trust.USUAL);
        Inquiry start = Inquiry.at(LINE);
        assertTrue(ranking.worth(start, look).gain() > 0.01);
        Inquiry looked = start.after(look, new Reading.Seen(1), LINE, Trust.USUAL);
        assertEquals(0, ranking.worth(looked, look).gain());
        Inquiry again = looked.after(look, new Reading.Seen(1), LINE, Trust.USUAL);
        assertEquals(looked.belief().entropy(), again.belief().entropy());
        assertTrue(again.minutes() > looked.minutes(), "it costs its minutes all the same");
        SiteState wetted = looked.state().after("s3", Map.of("soil", "wet"));
        Inquiry later = new Inquiry(looked.belief(), wetted, looked.done(), looked.minutes());
        assertTrue(ranking.worth(later, look).gain() > 0.001);
    }

    @Test
    void theMeterComesFirst() {
        List<Ranked> ranked = new Ranking(LINE, Trust.USUAL).of(Inquiry.at(LINE));
        assertEquals("meter", ranked.get(0).action().id());
        for (int i = 1; i < ranked.size(); i++) {
            Ranked better = ranked.get(i - 1);
            Ranked worse = ranked.get(i);
            boolean tie = better.rate() == worse.rate()
                    && better.action().id().compareTo(worse.action().id()) < 0;
            assertTrue(better.rate() > worse.rate() || tie);
        }
    }

    @Test
    void latentKeysTellSpotsAndConditionsApart() {
        Latent latent = new Latent("s1", List.of("soil"));
        SiteState dry = SiteState.at("house", Map.of("soil", "dry", "valve", "open"));
        SiteState wet = SiteState.at("house", Map.of("soil", "wet", "valve", "open"));
        assertNotEquals(latent.key(dry), latent.key(wet));
        assertNotEquals(latent.key(dry), new Latent("s2", List.of("soil")).key(dry));
        assertEquals(latent.key(dry), latent.key(dry.after("s9", Map.of("valve", "shut"))));
    }

    @Test
    void diggingNeedsMarks() {
        Action dig = action(Kind.DIG, Set.of(Risk.DIGS), new Leg("s1", 40, Map.of()));
        SiteState start = SiteState.at("house", Map.of());
        assertEquals(Set.of(Hazard.BURIED_LINES), SafetyGates.breaches(dig, start));
        assertFalse(Ranking.isOpen(dig, start));
        assertTrue(SafetyGates.breaches(dig, start.after("house", Map.of("marks", "shown")))
                .isEmpty());
        assertEquals(
                Set.of(Hazard.BURIED_LINES),
                SafetyGates.breaches(dig, start.after("house", Map.of("marks", "asked"))),
                "asking is not enough");
        Action afterAsking = action(
                Kind.DIG,
                Set.of(Risk.DIGS),
                new Leg("house", 2, Map.of("marks", "shown")),
                new Leg("s1", 40, Map.of()));
        assertTrue(SafetyGates.breaches(afterAsking, start).isEmpty());
        Action tooLate = action(Kind.DIG, Set.of(Risk.DIGS), new Leg("s1", 40, Map.of("marks", "shown")));
        assertFalse(SafetyGates.breaches(tooLate, start).isEmpty());
    }

    @Test
    void mainsAndBackflowAreNeverForTheTrainee() {
        SiteState safe = SiteState.at("house", Map.of("marks", "shown", "pressure", "relieved", "walk", "barred"));
        Leg leg = new Leg("house", 5, Map.of());
        assertEquals(
                Set.of(Hazard.MAINS, Hazard.BACKFLOW),
                SafetyGates.breaches(action(Kind.SWAP, Set.of(Risk.TOUCHES_MAINS, Risk.OPENS_BACKFLOW), leg), safe));
    }

    @Test
    void pressureIsRelievedAndWalksAreClosedFirst() {
        Leg leg = new Leg("house", 5, Map.of());
        Action open = action(Kind.REPAIR, Set.of(Risk.OPENS_PRESSURE), leg);
        Action run = action(Kind.TEST, Set.of(Risk.WETS_WALK), leg);
        SiteState start = SiteState.at("house", Map.of("walk", "open"));
        assertEquals(Set.of(Hazard.PRESSURE), SafetyGates.breaches(open, start));
        assertEquals(Set.of(Hazard.SLIP), SafetyGates.breaches(run, start));
        SiteState ready = start.after("house", Map.of("pressure", "relieved", "walk", "barred"));
        assertTrue(SafetyGates.breaches(open, ready).isEmpty());
        assertTrue(SafetyGates.breaches(run, ready).isEmpty());
        assertFalse(SafetyGates.breaches(run, ready.after("house", Map.of("walk", "freezing")))
                .isEmpty());
    }

    @Test
    void everyGateSpeaksBothLanguages() {
        for (String language : Texts.LANGUAGES) {
            Texts texts = Texts.of("diagnosis", language);
            for (Hazard hazard : Hazard.values()) {
                hazard.keys().forEach(key -> assertTrue(texts.has(key), language + " " + key));
            }
            for (CaseScore.Kind kind : CaseScore.Kind.values()) {
                assertTrue(texts.has(kind.key()), language + " " + kind);
            }
            for (CaseScore.Flag flag : CaseScore.Flag.values()) {
                assertTrue(texts.has(flag.key()), language + " " + flag);
            }
        }
    }
}
