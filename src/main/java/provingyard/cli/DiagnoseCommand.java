package provingyard.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import provingyard.call.CallSite;
import provingyard.call.Deal;
import provingyard.call.Judge;
import provingyard.call.Ways;
import provingyard.diagnosis.Policy;
import provingyard.diagnosis.ServiceRun;
import provingyard.quantity.Display;
import provingyard.scenario.Scenario;
import provingyard.text.Texts;

/** Plays a service call by a policy and prints tests, readings, what is believed, and the score. */
@Command(name = "diagnose")
final class DiagnoseCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private Common common;

    @Parameters(paramLabel = "SITE", descriptionKey = "run.site")
    private String site;

    @Option(names = "--policy", paramLabel = "NAME", descriptionKey = "diagnose.policy", defaultValue = "best")
    private String policy;

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "diagnose.seed", defaultValue = "1")
    private long seed;

    @Option(names = "--deal", paramLabel = "N", descriptionKey = "diagnose.deal")
    private Integer number;

    @Option(names = "--json", descriptionKey = "run.json")
    private boolean json;

    @Override
    public Integer call() {
        common.check();
        PrintWriter err = spec.commandLine().getErr();
        Texts texts = common.texts();
        Optional<Scenario> scenario = new Inputs(texts, err).site(site);
        if (scenario.isEmpty()) {
            return Main.BAD_INPUT;
        }
        if (scenario.get().call() == null) {
            err.println(texts.say("bad.noCall", site));
            return Main.BAD_INPUT;
        }
        CallSite ready = CallSite.of(scenario.get());
        Ways ways = Ways.at(ready, seed);
        Optional<Policy> way = ways.named(policy);
        if (way.isEmpty()) {
            err.println(texts.say("bad.policy", policy, String.join(", ", ways.names())));
            return Main.BAD_INPUT;
        }
        int deals = scenario.get().call().deals().size();
        if (number != null && (number < 1 || number > deals)) {
            err.println(texts.say("bad.deal", Integer.toString(deals), Integer.toString(number)));
            return Main.BAD_INPUT;
        }
        Deal deal = number == null ? Deal.drawn(ready, seed) : Deal.of(ready, number - 1);
        return play(ready, deal, way.get(), texts);
    }

    private int play(CallSite ready, Deal deal, Policy way, Texts texts) {
        ServiceRun run = Judge.play(ready, deal, way, seed);
        DiagnoseResult result = DiagnoseResult.of(ready, deal, way.name(), seed, run);
        Display display = Display.of(common.units(), common.language());
        spec.commandLine().getOut().println(json ? result.json() : result.text(texts, display));
        return Main.GOOD;
    }
}
