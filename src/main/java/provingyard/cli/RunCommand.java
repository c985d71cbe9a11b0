package provingyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import provingyard.quantity.Display;
import provingyard.report.Reports;
import provingyard.report.Story;
import provingyard.scenario.Scenario;
import provingyard.score.Loss;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.study.Comparison;
import provingyard.study.Debrief;
import provingyard.study.Debriefing;
import provingyard.study.Mark;
import provingyard.study.MarkSearch;
import provingyard.study.MarkStore;
import provingyard.study.Pace;
import provingyard.study.Progress;
import provingyard.study.SharesStudy;
import provingyard.study.Standing;
import provingyard.study.WorthStudy;
import provingyard.text.Texts;

/** Lives a season without a window and says what it came to. */
@Command(name = "run")
final class RunCommand implements Callable<Integer> {

    private static final int MOST_DAYS = 366;

    /** Other seasons over which reports tell what sensors are worth. */
    private static final int WORTH_DRAWS = 20;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Common common;

    @Mixin
    private SeasonOf of;

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "run.seed")
    private Long seed;

    @Option(names = "--days", paramLabel = "N", descriptionKey = "run.days")
    private Integer days;

    @Option(names = "--search", descriptionKey = "run.search")
    private boolean search;

    @Option(names = "--report", paramLabel = "DIR", descriptionKey = "run.report")
    private Path report;

    @Override
    public Integer call() {
        common.check();
        PrintWriter err = spec.commandLine().getErr();
        Texts texts = common.texts();
        Inputs inputs = new Inputs(texts, err);
        if (days != null && (days < 1 || days > MOST_DAYS)) {
            err.println(texts.say("bad.days", MOST_DAYS, Integer.toString(days)));
            return Main.BAD_INPUT;
        }
        Optional<Scenario> scenario = inputs.site(of.site());
        if (scenario.isEmpty()) {
            return Main.BAD_INPUT;
        }
        if (report != null && !madeFolder(texts, err)) {
            return Main.BAD_INPUT;
        }
        Site ready = Site.of(scenario.get());
        Optional<Mark> mark = mark(ready, texts, err);
        Optional<SetUp> setUp =
                "mark".equals(of.setUp()) && mark.isPresent() ? mark.map(Mark::setUp) : inputs.setUp(of.setUp(), ready);
        return setUp.isEmpty() ? Main.BAD_INPUT : live(ready, setUp.get(), mark, texts);
    }

    /** Made before the season is lived, so that nobody waits for a report that cannot be written. */
    private boolean madeFolder(Texts texts, PrintWriter err) {
        try {
            Files.createDirectories(report);
            return true;
        } catch (IOException e) {
            err.println(texts.say("bad.write", report, TextFile.reason(e, texts)));
            return false;
        }
    }

    private int live(Site ready, SetUp setUp, Optional<Mark> mark, Texts texts) {
        long own = ready.scenario().season().seed();
        int all = ready.scenario().season().days();
        long withSeed = seed == null ? own : seed;
        int withDays = days == null ? all : days;
        Season season = Season.begin(ready, withSeed, withDays, setUp);
        season.liveToEnd();
        // Begun only now: one season that is lived while the machine warms up is quicker than three that share it.
        Comparison comparison = new Comparison(ready, withSeed, withDays, mark, Optional.of(setUp));
        Standing standing = comparison.with(season.outcome(), setUp);
        RunResult result = new RunResult(ready.scenario(), withSeed, withDays, of.setUp(), season, standing);
        PrintWriter print = spec.commandLine().getOut();
        Display display = Display.of(common.units(), common.language());
        print.println(of.json() ? result.json() : result.text(texts, display));
        int exit = verdict(season.unsolvedMinutes(), texts, spec.commandLine().getErr());
        return report == null || write(season, mark, texts) ? exit : Main.BAD_INPUT;
    }

    /** Works out what the reports tell beyond the season, and writes them. */
    private boolean write(Season season, Optional<Mark> mark, Texts texts) {
        PrintWriter err = spec.commandLine().getErr();
        err.println(texts.say("report.working", WORTH_DRAWS));
        err.flush();
        Story story = new Story(debrief(season, mark), of.setUp() == null ? "" : of.setUp());
        try {
            Path page = Reports.write(report, story, texts.language(), common.units());
            if (!of.json()) {
                spec.commandLine().getOut().println(texts.say("report.written", page));
            }
            return true;
        } catch (IOException e) {
            Object where = e instanceof FileSystemException f && f.getFile() != null ? f.getFile() : report;
            err.println(texts.say("bad.write", where, TextFile.reason(e, texts)));
            return false;
        }
    }

    private static Debrief debrief(Season season, Optional<Mark> mark) {
        Debrief lost = Debriefing.of(season, mark, "");
        Optional<Loss> best = lost.standing().mark();
        Debrief shared = mark.map(m -> lost.with(SharesStudy.of(season, m.setUp(), best, Progress.SILENT)))
                .orElse(lost);
        return shared.with(
                WorthStudy.of(season.site(), season.setUp(), mark.map(Mark::setUp), WORTH_DRAWS, Progress.SILENT));
    }

    /** The exit code of a lived season, and the word of warning where flows of some minutes are no answer. */
    static int verdict(long unsolvedMinutes, Texts texts, PrintWriter err) {
        if (unsolvedMinutes == 0) {
            return Main.GOOD;
        }
        err.println(texts.say("season.unsolved", unsolvedMinutes));
        return Main.DID_NOT_HOLD;
    }

    private Optional<Mark> mark(Site ready, Texts texts, PrintWriter err) {
        Optional<Mark> known = MarkStore.find(ready);
        if (known.isPresent() || !search) {
            return known;
        }
        Pace pace = new Pace(System::nanoTime);
        Mark found = MarkSearch.search(ready, new Progress() {
            @Override
            public void at(int done, int of) {
                if (done % 20 == 0) {
                    err.println(texts.say("search.progress", done, of, Math.round(pace.secondsLeft(done, of))));
                    err.flush();
                }
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        });
        err.println(texts.say("search.done", found.draws(), Math.round(pace.seconds())));
        if (!MarkStore.save(found)) {
            err.println(texts.say("mark.notKept"));
        }
        return Optional.of(found);
    }
}
