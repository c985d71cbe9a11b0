package provingyard.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import provingyard.quantity.Display;
import provingyard.scenario.Scenario;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.study.Mark;
import provingyard.study.MarkStore;
import provingyard.study.Progress;
import provingyard.study.WorthStudy;
import provingyard.text.Texts;

/** Says what each kind of sensor saves on a site, over other seasons than the site's own. */
@Command(name = "worth")
final class WorthCommand implements Callable<Integer> {

    private static final int FEWEST_DRAWS = 2;
    private static final int MOST_DRAWS = 1000;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Common common;

    @Mixin
    private SeasonOf of;

    @Option(names = "--draws", paramLabel = "N", descriptionKey = "worth.draws", defaultValue = "20")
    private int draws;

    @Override
    public Integer call() {
        common.check();
        PrintWriter err = spec.commandLine().getErr();
        Texts texts = common.texts();
        Inputs inputs = new Inputs(texts, err);
        if (draws < FEWEST_DRAWS || draws > MOST_DRAWS) {
            err.println(texts.say("bad.draws", FEWEST_DRAWS, Integer.toString(MOST_DRAWS), Integer.toString(draws)));
            return Main.BAD_INPUT;
        }
        Optional<Scenario> scenario = inputs.site(of.site());
        if (scenario.isEmpty()) {
            return Main.BAD_INPUT;
        }
        Site ready = Site.of(scenario.get());
        Optional<SetUp> mark = MarkStore.find(ready).map(Mark::setUp);
        if ("mark".equals(of.setUp()) && mark.isEmpty()) {
            err.println(texts.say("bad.noMarkYet", of.site()));
            return Main.BAD_INPUT;
        }
        Optional<SetUp> setUp = inputs.setUp(of.setUp(), ready);
        return setUp.isEmpty() ? Main.BAD_INPUT : worth(ready, setUp.get(), mark, texts);
    }

    private int worth(Site ready, SetUp setUp, Optional<SetUp> mark, Texts texts) {
        WorthStudy.Result found = WorthStudy.of(ready, setUp, mark, draws, Progress.SILENT);
        WorthResult result = new WorthResult(ready.scenario(), of.setUp(), found);
        Display display = Display.of(common.units(), common.language());
        spec.commandLine().getOut().println(of.json() ? result.json() : result.text(texts, display));
        return RunCommand.verdict(
                found.unsolvedMinutes(), texts, spec.commandLine().getErr());
    }
}
