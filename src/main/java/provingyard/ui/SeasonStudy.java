package provingyard.ui;

import java.util.Optional;
import provingyard.season.Season;
import provingyard.study.Debrief;
import provingyard.study.Mark;
import provingyard.study.Progress;
import provingyard.study.Shares;
import provingyard.study.WorthStudy;

/** What a debrief asks of the many seasons behind it; each question may take seconds and is asked off the window's thread. */
interface SeasonStudy {

    /** The mark of the season's site, where one is known. */
    Optional<Mark> mark(Season lived);

    /** Loss beside clock and mark, and the moments that mattered. */
    Debrief debrief(Season lived, Optional<Mark> mark, String learner);

    /** What each choice cost against the mark. */
    Shares shares(Season lived, Mark mark, Progress progress);

    /** What each kind of sensor is worth on the site. */
    WorthStudy.Result worth(Season lived, Optional<Mark> mark, Progress progress);
}
