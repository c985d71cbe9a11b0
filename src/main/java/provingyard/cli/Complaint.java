package provingyard.cli;

import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import provingyard.text.Texts;

/** A bad command line in plain words of the language asked for. */
final class Complaint {

    private Complaint() {}

    static String of(ParameterException problem, Texts texts) {
        if (problem instanceof UnmatchedArgumentException unmatched) {
            return texts.say("bad.unmatched", String.join(" ", unmatched.getUnmatched()));
        }
        if (problem instanceof MissingParameterException missing) {
            StringBuilder names = new StringBuilder();
            missing.getMissing()
                    .forEach(m -> names.append(names.isEmpty() ? "" : ", ")
                            .append(
                                    m.isOption()
                                            ? ((picocli.CommandLine.Model.OptionSpec) m).longestName()
                                            : m.paramLabel()));
            return texts.say("bad.missing", names);
        }
        if (problem instanceof OverwrittenOptionException twice) {
            return texts.say("bad.twice", twice.getOverwritten().paramLabel());
        }
        if (problem.getArgSpec() != null && problem.getValue() != null) {
            return texts.say(
                    "bad.value", problem.getValue(), problem.getArgSpec().paramLabel());
        }
        return problem.getMessage();
    }
}
