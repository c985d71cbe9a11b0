package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import provingyard.scenario.Sites;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.study.Amounts;
import provingyard.study.Choice;
import provingyard.study.Commitment;
import provingyard.study.Debrief;
import provingyard.study.Debriefing;
import provingyard.study.Mark;
import provingyard.study.MarkStore;
import provingyard.study.Progress;
import provingyard.study.Shares;
import provingyard.study.WholeWorth;
import provingyard.study.Worth;
import provingyard.study.WorthStudy;

/** A debrief comes together step by step, keeps what the trainee said, and gives up what nobody waits for any more. */
class DebriefModelTest {

    private static final Worth.Span NOTHING = new Worth.Span(0, 0, 0);
    private static final Shares SHARES = new Shares(Amounts.NONE, List.of());

    private static final WorthStudy.Result WORTH =
            new WorthStudy.Result(List.of(), new WholeWorth(0, NOTHING, NOTHING, NOTHING, 1, 1), 0);

    private final Site site = Site.of(Sites.open("tansy-row").orThrow());
    private final Deque<Runnable> work = new ArrayDeque<>();
    private final List<DebriefModel.Stage> stages = new ArrayList<>();
    private final List<Debrief> told = new ArrayList<>();
    private final List<Throwable> failures = new ArrayList<>();
    private Optional<Mark> mark = MarkStore.find(site);
    private Runnable whileSharing = () -> {};

    private final SeasonStudy study = new SeasonStudy() {
        @Override
        public Optional<Mark> mark(Season lived) {
            return mark;
        }

        @Override
        public Debrief debrief(Season lived, Optional<Mark> known, String learner) {
            return Debriefing.of(lived, known, learner);
        }

        @Override
        public Shares shares(Season lived, Mark known, Progress progress) {
            progress.at(1, 4);
            whileSharing.run();
            if (progress.cancelled()) {
                throw new CancellationException();
            }
            return SHARES;
        }

        @Override
        public WorthStudy.Result worth(Season lived, Optional<Mark> known, Progress progress) {
            return WORTH;
        }
    };

    private final DebriefModel model = new DebriefModel(study, work::add, Runnable::run, failures::add);

    DebriefModelTest() {
        model.stateProperty().addListener((o, was, is) -> {
            if (stages.isEmpty() || stages.get(stages.size() - 1) != is.stage()) {
                stages.add(is.stage());
            }
        });
        model.tell(told::add);
    }

    private Season lived(int days) {
        Season season = Season.begin(site, 5, days, SetUp.CLOCK_ALONE);
        season.liveToEnd();
        return season;
    }

    private void doTheWork() {
        while (!work.isEmpty()) {
            work.poll().run();
        }
    }

    @Test
    void comesTogetherInOrder() {
        model.begin(lived(1), "Ana");
        assertNull(model.stateProperty().get().debrief());
        doTheWork();
        assertEquals(
                List.of(
                        DebriefModel.Stage.BEGUN,
                        DebriefModel.Stage.SHARES,
                        DebriefModel.Stage.WORTH,
                        DebriefModel.Stage.DONE),
                stages);
        assertEquals(1, told.size());
        Debrief debrief = model.stateProperty().get().debrief();
        assertSame(SHARES, debrief.shares().orElseThrow());
        assertEquals("Ana", debrief.learner());
        assertEquals(List.of(), failures);
    }

    @Test
    void withoutAMarkThereAreNoShares() {
        mark = Optional.empty();
        model.begin(lived(1), "");
        doTheWork();
        assertFalse(stages.contains(DebriefModel.Stage.SHARES));
        assertTrue(model.stateProperty().get().debrief().shares().isEmpty());
    }

    @Test
    void whatTheTraineeSaidStays() {
        Commitment said = new Commitment(Choice.RAIN, "under the eave");
        model.begin(lived(1), "");
        model.commit(said);
        doTheWork();
        assertEquals(Optional.of(said), model.stateProperty().get().debrief().commitment());
        assertTrue(model.committed());
        model.begin(lived(1), "");
        assertFalse(model.committed(), "each season is asked for anew");
    }

    @Test
    void aNewerSeasonEndsTheWorkOnTheOlder() {
        Season second = lived(1);
        whileSharing = () -> {
            whileSharing = () -> {};
            model.begin(second, "second");
        };
        model.begin(lived(2), "first");
        doTheWork();
        assertEquals("second", model.stateProperty().get().debrief().learner());
        assertEquals(DebriefModel.Stage.DONE, model.stateProperty().get().stage());
        assertEquals(List.of(), failures);
    }

    @Test
    void afterPracticeTheOwnDebriefIsBack() {
        Commitment said = new Commitment(null, "");
        model.begin(lived(1), "own");
        model.commit(said);
        doTheWork();
        DebriefModel.State own = model.stateProperty().get();
        model.beginPractice(lived(1), "practice");
        assertFalse(model.committed());
        assertSame(own.debrief(), model.own());
        doTheWork();
        model.backToOwn();
        doTheWork();
        assertEquals(own.debrief(), model.stateProperty().get().debrief());
        assertTrue(model.committed());
    }
}
