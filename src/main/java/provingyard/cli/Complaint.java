package provingyard.cli;

import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
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
                    .forEach(m -> names.append(names.isEmpty() ? "" : ", ").append(name(m)));
            return texts.say("bad.missing", names);
        }
        if (problem instanceof OverwrittenOptionException twice) {
            return texts.say("bad.twice", name(twice.getOverwritten()));
        }
        if (problem.getArgSpec() != null && problem.getValue() != null) {
            return texts.say("bad.value", problem.getValue(), name(problem.getArgSpec()));
        }
        return problem.getMessage();
    }

    /** What a person types for it: an option by its longest name, a parameter by its label. */
    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }
}
