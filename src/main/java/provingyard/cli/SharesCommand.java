package provingyard.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import provingyard.quantity.Display;
import provingyard.scenario.Scenario;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.study.Mark;
import provingyard.study.MarkStore;
import provingyard.study.Progress;
import provingyard.study.Shares;
import provingyard.study.SharesStudy;
import provingyard.text.Texts;

/** Says what each choice of a set-up costs against the mark in the site's own season. */
@Command(name = "shares")
final class SharesCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private Common common;

    @Mixin
    private SeasonOf of;

    @Override
    public Integer call() {
        common.check();
        PrintWriter err = spec.commandLine().getErr();
        Texts texts = common.texts();
        Inputs inputs = new Inputs(texts, err);
        Optional<Scenario> scenario = inputs.site(of.site());
        if (scenario.isEmpty()) {
            return Main.BAD_INPUT;
        }
        Site ready = Site.of(scenario.get());
        Optional<Mark> mark = MarkStore.find(ready);
        if (mark.isEmpty()) {
            err.println(texts.say("bad.noMarkYet", of.site()));
            return Main.BAD_INPUT;
        }
        Optional<SetUp> setUp = inputs.setUp(of.setUp(), ready);
        return setUp.isEmpty() ? Main.BAD_INPUT : share(ready, setUp.get(), mark.get(), texts);
    }

    private int share(Site ready, SetUp setUp, Mark mark, Texts texts) {
        Season season = Season.begin(ready, setUp);
        season.liveToEnd();
        Shares shares =
                SharesStudy.of(season, mark.setUp(), Optional.of(mark.own().mark()), Progress.SILENT);
        SharesResult result = new SharesResult(ready.scenario(), of.setUp(), shares);
        Display display = Display.of(common.units(), common.language());
        spec.commandLine().getOut().println(of.json() ? result.json() : result.text(texts, display));
        return RunCommand.verdict(
                season.unsolvedMinutes(), texts, spec.commandLine().getErr());
    }
}
