package provingyard.ui;

import java.util.List;
import provingyard.call.CallSite;
import provingyard.call.FieldTest;
import provingyard.diagnosis.CaseScore;
import provingyard.drill.Card;
import provingyard.drill.Family;
import provingyard.drill.Form;
import provingyard.drill.Goal;
import provingyard.drill.Progress;
import provingyard.drill.Standing;
import provingyard.quantity.Show;
import provingyard.scenario.ServiceCall.Seen;
import provingyard.scenario.Text;

/** Sentences of the drill deck, in the language and units of now. */
final class DrillWords {

    private final Words words;

    DrillWords(Words words) {
        this.words = words;
    }

    String say(String key, Object... values) {
        return words.say(key, values);
    }

    /** What an owner who saw something says, in both languages: made from the test, its answer and its place alone. */
    static Text complaint(CallSite site, List<Seen> seen) {
        return new Text(complaint(site, seen, "en"), complaint(site, seen, "es"));
    }

    private static String complaint(CallSite site, List<Seen> all, String language) {
        Words spoken = new Words();
        spoken.speak(language);
        Seen seen = all.get(0);
        FieldTest test = site.test(seen.test()).orElseThrow();
        String answer = seen.answers().isEmpty() ? "" : "." + seen.answers().get(0);
        String place = CallDebriefWords.capital(new CallWords(site, spoken).target(test.target()));
        String said = spoken.say("drill.says." + test.kind() + answer, place);
        boolean walked = test.kind().equals("walkZone");
        String rest = spoken.say(walked ? "drill.saysOthersWell" : "drill.saysZonesWell");
        return all.size() > 1 ? said + " " + rest : said;
    }

    String family(Family family) {
        return words.say("drill.family." + family.name());
    }

    /** How far a learner came with a family. */
    String standing(Standing standing) {
        List<?> last = standing.lastWhole();
        if (last.isEmpty()) {
            return words.say("drill.standing." + standing.next().name());
        }
        String key = standing.mastered() ? "drill.standing.mastered" : "drill.standing.some";
        return words.say(key, standing.good(), last.size());
    }

    String mastered(Progress progress) {
        return words.say("drill.rowMastered", progress.mastered(), Family.values().length);
    }

    /** What each card asks for. */
    String rule() {
        Goal goal = Goal.of(0, 1);
        return words.say("drill.goalIs", words.display().plain(Goal.EASE, 2), percent(goal.evidence()));
    }

    /** What a card asks for, in its own minutes. */
    String goal(Card card) {
        Goal goal = card.goal();
        return words.say(
                card.done() > 0 ? "drill.goalDone" : "drill.goal",
                minutes(goal.minutes()),
                percent(CaseScore.SUPPORTED));
    }

    /** What is done already, or what is to be done. */
    String task(Card card) {
        if (card.slot().form() == Form.EXAMPLE) {
            return words.say("drill.isExample", family(card.slot().family()));
        }
        return card.done() > 0 ? words.say("drill.isDone", card.done()) : words.say("drill.isWhole");
    }

    /** The form in which a card is played: one with tests done is half done, whatever was planned. */
    String form(Card card) {
        Form form = card.slot().form() == Form.WHOLE && card.done() > 0
                ? Form.HALF
                : card.slot().form();
        return words.say("drill.form." + form.name());
    }

    String minutes(double minutes) {
        return words.say("call.min", words.display().plain(Math.max(1, Math.rint(minutes)), 0));
    }

    String percent(double share) {
        return words.display().text(Show.FRACTION, Math.rint(share * 100) / 100);
    }
}
