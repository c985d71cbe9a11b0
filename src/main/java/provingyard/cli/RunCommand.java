package provingyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import provingyard.quantity.Display;
import provingyard.report.Reports;
import provingyard.report.Story;
import provingyard.scenario.Scenario;
import provingyard.season.Outcome;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.study.Comparison;
import provingyard.study.Debrief;
import provingyard.study.Mark;
import provingyard.study.MarkSearch;
import provingyard.study.MarkStore;
import provingyard.study.Progress;
import provingyard.study.Standing;
import provingyard.text.Texts;

/** Lives a season without a window and says what it came to. */
@Command(name = "run")
final class RunCommand implements Callable<Integer> {

    private static final int MOST_DAYS = 366;
    private static final int MINUTES_A_DAY = 1440;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Common common;

    @Parameters(paramLabel = "SITE", descriptionKey = "run.site")
    private String site;

    @Option(names = "--setup", paramLabel = "FILE|careless|textbook|mark", descriptionKey = "run.setup")
    private String setUpName;

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "run.seed")
    private Long seed;

    @Option(names = "--days", paramLabel = "N", descriptionKey = "run.days")
    private Integer days;

    @Option(names = "--search", descriptionKey = "run.search")
    private boolean search;

    @Option(names = "--json", descriptionKey = "run.json")
    private boolean json;

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
        Optional<Scenario> scenario = inputs.site(site);
        if (scenario.isEmpty()) {
            return Main.BAD_INPUT;
        }
        if (report != null && !madeFolder(texts, err)) {
            return Main.BAD_INPUT;
        }
        Site ready = Site.of(scenario.get());
        Optional<Mark> mark = mark(ready, texts, err);
        Optional<SetUp> setUp =
                "mark".equals(setUpName) && mark.isPresent() ? mark.map(Mark::setUp) : inputs.setUp(setUpName, ready);
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
        RunResult result = new RunResult(ready.scenario(), withSeed, withDays, setUpName, season, standing);
        PrintWriter print = spec.commandLine().getOut();
        Display display = Display.of(common.units(), common.language());
        print.println(json ? result.json() : result.text(texts, display));
        int exit = verdict(season.unsolvedMinutes(), texts, spec.commandLine().getErr());
        return report == null || write(season, standing, mark, texts) ? exit : Main.BAD_INPUT;
    }

    /** Writes the reports; what the clock alone and the mark came to is lived for them. */
    private boolean write(Season season, Standing standing, Optional<Mark> mark, Texts texts) {
        Debrief debrief = new Debrief(
                season,
                standing,
                beside(season, SetUp.CLOCK_ALONE),
                mark.map(m -> beside(season, m.setUp())),
                mark,
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                "");
        Story story = Story.of(debrief).named(setUpName == null ? "" : setUpName);
        try {
            Path page = Reports.write(report, story, texts.language(), common.units());
            if (!json) {
                spec.commandLine().getOut().println(texts.say("report.written", page));
            }
            return true;
        } catch (IOException e) {
            Object where = e instanceof FileSystemException f && f.getFile() != null ? f.getFile() : report;
            spec.commandLine().getErr().println(texts.say("bad.write", where, TextFile.reason(e, texts)));
            return false;
        }
    }

    /** What a set-up comes to on the weather of a lived season. */
    private static Outcome beside(Season lived, SetUp setUp) {
        if (lived.changes().equals(List.of(new Season.Change(0, setUp)))) {
            return lived.outcome();
        }
        int days = (int) (lived.end() / MINUTES_A_DAY);
        Season other = Season.begin(lived.site(), lived.seed(), days, setUp);
        other.liveToEnd();
        return other.outcome();
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
        Mark found = MarkSearch.search(ready, new Progress() {
            @Override
            public void at(int done, int of) {
                if (done % 20 == 0) {
                    err.println(texts.say("search.progress", done, of));
                    err.flush();
                }
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        });
        err.println(texts.say("search.done", found.draws()));
        if (!MarkStore.save(found)) {
            err.println(texts.say("mark.notKept"));
        }
        return Optional.of(found);
    }
}
