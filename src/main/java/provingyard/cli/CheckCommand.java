package provingyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import provingyard.call.CallChecks;
import provingyard.scenario.Problem;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.Severity;
import provingyard.setup.References;
import provingyard.text.Texts;

/** Names all problems of scenario files. */
@Command(name = "check")
final class CheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private Common common;

    @Parameters(paramLabel = "FILE", arity = "1..*", descriptionKey = "check.files")
    private List<Path> files;

    @Option(names = "--verbose", descriptionKey = "check.verbose")
    private boolean verbose;

    @Override
    public Integer call() {
        common.check();
        int code = Main.GOOD;
        for (Path file : files) {
            code = Math.max(code, check(file));
        }
        return code;
    }

    private int check(Path file) {
        PrintWriter out = spec.commandLine().getOut();
        Texts texts = common.texts();
        String text;
        try {
            text = TextFile.read(file);
        } catch (IOException e) {
            spec.commandLine().getErr().println(texts.say("bad.read", file, TextFile.reason(e, texts)));
            return Main.BAD_INPUT;
        }
        Read<Scenario> read = CallChecks.check(file.toString(), References.readWithSite(file.toString(), text));
        List<Problem> said = read.problems().stream()
                .filter(p -> verbose || p.severity() != Severity.NOTE)
                .toList();
        said.forEach(p -> out.println(p.line(texts.language())));
        out.println(said.isEmpty() ? texts.say("check.good", file) : texts.say("check.count", file, said.size()));
        return read.errors().isEmpty() ? Main.GOOD : Main.BAD_INPUT;
    }
}
