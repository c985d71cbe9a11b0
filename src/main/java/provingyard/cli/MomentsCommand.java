package provingyard.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.report.MomentWords;
import provingyard.scenario.Scenario;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.study.Gauge;
import provingyard.study.Moment;
import provingyard.study.Moments;

/** Lives a season and tells the moments that mattered. */
@Command(name = "moments")
final class MomentsCommand implements Callable<Integer> {

    private static final int PER_RULE = 3;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Common common;

    @Mixin
    private SeasonOf of;

    @Option(names = "--all", descriptionKey = "moments.all")
    private boolean all;

    @Override
    public Integer call() {
        common.check();
        PrintWriter err = spec.commandLine().getErr();
        Inputs inputs = new Inputs(common.texts(), err);
        Optional<Scenario> scenario = inputs.site(of.site());
        if (scenario.isEmpty()) {
            return Main.BAD_INPUT;
        }
        Site ready = Site.of(scenario.get());
        Optional<SetUp> setUp = inputs.setUp(of.setUp(), ready);
        if (setUp.isEmpty()) {
            return Main.BAD_INPUT;
        }
        Season season = Season.begin(ready, setUp.get());
        season.liveToEnd();
        List<Moment> found = Moments.of(season);
        List<Moment> told = all ? found : Moments.topOf(found, PER_RULE);
        MomentWords words = new MomentWords(scenario.get(), common.language(), common.units());
        spec.commandLine().getOut().println(of.json() ? json(told, words) : text(told, words));
        return RunCommand.verdict(season.unsolvedMinutes(), common.texts(), err);
    }

    private String text(List<Moment> moments, MomentWords words) {
        if (moments.isEmpty()) {
            return common.texts().say("moments.none");
        }
        Display display = Display.of(common.units(), common.language());
        StringBuilder out = new StringBuilder();
        for (Moment moment : moments) {
            String money = display.text(Show.MONEY, moment.money());
            out.append(String.format(Locale.ROOT, "%-14s %14s  %s%n", words.when(moment), money, words.title(moment)));
            out.append("    ").append(words.sentence(moment)).append(System.lineSeparator());
        }
        return out.toString().stripTrailing();
    }

    private String json(List<Moment> moments, MomentWords words) {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode root = mapper.createObjectNode();
        root.put("site", of.site());
        ArrayNode list = root.putArray("moments");
        for (Moment moment : moments) {
            write(list.addObject(), moment, words);
        }
        try {
            return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can be written", e);
        }
    }

    private static void write(ObjectNode node, Moment moment, MomentWords words) {
        node.put("tick", moment.tick());
        node.put("until", moment.until());
        node.put("what", moment.what().name());
        node.put("why", moment.why().name());
        if (moment.sensor() == null) {
            node.putNull("sensor");
        } else {
            node.put("sensor", moment.sensor().name());
        }
        moment.subjects().forEach(node.putArray("subjects")::add);
        node.put("amount", moment.amount());
        node.put("money", moment.money());
        ObjectNode readings = node.putObject("readings");
        for (Gauge gauge : Gauge.of(moment.what())) {
            double value = gauge.on(moment);
            if (Double.isFinite(value)) {
                readings.put(gauge.name(), value);
            } else {
                readings.putNull(gauge.name());
            }
        }
        node.put("title", words.title(moment));
        node.put("sentence", words.sentence(moment));
    }
}
