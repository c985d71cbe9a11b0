package provingyard.ui;

import java.util.List;
import java.util.Optional;
import provingyard.season.Season;
import provingyard.study.Amounts;
import provingyard.study.Debrief;
import provingyard.study.Debriefing;
import provingyard.study.Mark;
import provingyard.study.MarkStore;
import provingyard.study.Progress;
import provingyard.study.Shares;
import provingyard.study.Worth;

/** Asks the simulator. */
final class LiveStudy implements SeasonStudy {

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
        return new Shares(Amounts.NONE, List.of());
    }

    @Override
    public List<Worth> worth(Season lived, Optional<Mark> mark, Progress progress) {
        return List.of();
    }
}
