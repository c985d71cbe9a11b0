package provingyard.study;

import java.util.List;
import java.util.Optional;
import provingyard.season.Chronicle;
import provingyard.season.Outcome;
import provingyard.season.Season;

/**
 * All that a debrief tells of a season.
 *
 * @param season the season as it was lived; not changed
 * @param standing its loss beside the clock alone and the mark
 * @param clock what the clock alone came to on the same weather
 * @param best what the mark came to on the same weather; empty where none is known
 * @param mark the mark; empty where none is known
 * @param chronicle what the season's runs, nights and leaks were like
 * @param moments those that mattered most first
 * @param shares what each choice cost; empty while it is worked out, or where no mark is known
 * @param worth what each kind is worth here; empty while it is worked out
 * @param commitment what the trainee would change; empty where nobody was asked
 * @param learner who lived it, as they call themselves; may be empty
 */
public record Debrief(
        Season season,
        Standing standing,
        Outcome clock,
        Optional<Outcome> best,
        Optional<Mark> mark,
        Chronicle chronicle,
        List<Moment> moments,
        Optional<Shares> shares,
        Optional<WorthStudy.Result> worth,
        Optional<Commitment> commitment,
        String learner) {

    public Debrief {
        moments = List.copyOf(moments);
    }

    public Debrief with(Shares next) {
        return new Debrief(
                season, standing, clock, best, mark, chronicle, moments, Optional.of(next), worth, commitment, learner);
    }

    public Debrief with(WorthStudy.Result next) {
        return new Debrief(
                season,
                standing,
                clock,
                best,
                mark,
                chronicle,
                moments,
                shares,
                Optional.of(next),
                commitment,
                learner);
    }

    public Debrief with(Commitment next) {
        return new Debrief(
                season, standing, clock, best, mark, chronicle, moments, shares, worth, Optional.of(next), learner);
    }
}
