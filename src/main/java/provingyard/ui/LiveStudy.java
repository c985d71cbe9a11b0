package provingyard.ui;

import java.util.Optional;
import provingyard.scenario.SeasonPlan;
import provingyard.score.Loss;
import provingyard.season.Season;
import provingyard.study.Debrief;
import provingyard.study.Debriefing;
import provingyard.study.Mark;
import provingyard.study.MarkStore;
import provingyard.study.Progress;
import provingyard.study.Shares;
import provingyard.study.SharesStudy;
import provingyard.study.WorthStudy;

/** Asks the simulator. */
final class LiveStudy implements SeasonStudy {

    /** Draws of the climate over which worth is found: some ten seconds for the largest site. */
    static final int DRAWS = 24;

    private final int draws;

    /** A study that finds worth over so many draws. */
    LiveStudy(int draws) {
        this.draws = draws;
    }

    @Override
    public Optional<Mark> mark(Season lived) {
        return MarkStore.find(lived.site());
    }

    @Override
    public Debrief debrief(Season lived, Optional<Mark> mark, String learner) {
        return Debriefing.of(lived, mark, learner);
    }

    @Override
    public Shares shares(Season lived, Mark mark, Progress progress) {
        SeasonPlan plan = lived.site().scenario().season();
        boolean own =
                lived.over() && lived.seed() == plan.seed() && lived.outcome().days() == plan.days();
        Optional<Loss> known = own ? Optional.of(mark.own().mark()) : Optional.empty();
        return SharesStudy.of(lived, mark.setUp(), known, progress);
    }

    @Override
    public WorthStudy.Result worth(Season lived, Optional<Mark> mark, Progress progress) {
        return WorthStudy.of(lived.site(), lived.setUp(), mark.map(Mark::setUp), draws, progress);
    }
}
