package provingyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import provingyard.world.hydraulics.Constants;
import provingyard.world.hydraulics.NetworkSolver;
import provingyard.world.hydraulics.NetworkState;
import provingyard.world.hydraulics.NeutralNetworkFile;
import provingyard.world.hydraulics.SolveStatus;

/** Solves one pipe network of the neutral format. */
@Command(name = "network")
final class NetworkCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private Common common;

    @Parameters(paramLabel = "FILE", descriptionKey = "network.file")
    private Path file;

    @Override
    public Integer call() {
        common.check();
        String text;
        try {
            text = TextFile.read(file);
        } catch (IOException e) {
            spec.commandLine()
                    .getErr()
                    .println(common.texts().say("bad.read", file, TextFile.reason(e, common.texts())));
            return Main.BAD_INPUT;
        }
        NeutralNetworkFile.Reading reading = NeutralNetworkFile.read(text, Constants.TEXTBOOK);
        if (reading.network() == null) {
            reading.problems().forEach(p -> spec.commandLine().getErr().println(file + ": " + p));
            return Main.BAD_INPUT;
        }
        NetworkState state = reading.network().newState();
        SolveStatus status = new NetworkSolver(reading.network()).solve(state);
        spec.commandLine().getOut().println(NeutralNetworkFile.write(state));
        if (status != SolveStatus.CONVERGED) {
            spec.commandLine().getErr().println(common.texts().say("network.notSolved", file, state.problem()));
            return Main.DID_NOT_HOLD;
        }
        return Main.GOOD;
    }
}
