package provingyard.cli;

import java.io.PrintWriter;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.ResourceBundle;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import provingyard.text.Texts;

/** The headless program: its commands and how they end. */
@Command(
        name = "proving-yard",
        subcommands = {
            RunCommand.class,
            SharesCommand.class,
            WorthCommand.class,
            MomentsCommand.class,
            DiagnoseCommand.class,
            CheckCommand.class,
            NetworkCommand.class,
            PictureCommand.class
        })
public final class Main implements Runnable {

    /** It went well. */
    public static final int GOOD = 0;
    /** A check did not hold. */
    public static final int DID_NOT_HOLD = 1;
    /** The input was bad. */
    public static final int BAD_INPUT = 2;

    @Mixin
    private Common common;

    @Spec
    private CommandSpec spec;

    private Main() {}

    /**
     * Runs a command line.
     *
     * @return the exit code
     */
    public static int execute(PrintWriter out, PrintWriter err, String... args) {
        Texts texts = Texts.of("cli", languageOf(args));
        CommandLine line = new CommandLine(new Main());
        line.setOut(out);
        line.setErr(err);
        line.setResourceBundle(new Bundle(texts));
        line.setUsageHelpAutoWidth(true);
        line.getCommandSpec().usageMessage().synopsisSubcommandLabel(texts.say("help.command"));
        line.setParameterExceptionHandler((problem, arguments) -> {
            err.println(Complaint.of(problem, texts));
            err.println(texts.say(
                    "bad.seeHelp", problem.getCommandLine().getCommandSpec().qualifiedName()));
            return BAD_INPUT;
        });
        line.setExecutionExceptionHandler((failure, command, result) -> {
            if (failure instanceof ParameterException bad) {
                err.println(bad.getMessage());
                return BAD_INPUT;
            }
            err.println(texts.say("bad.unforeseen", nameOf(failure)));
            return BAD_INPUT;
        });
        try {
            return line.execute(args);
        } catch (OutOfMemoryError | StackOverflowError tooLarge) {
            // The parser hands on errors as they are; a person must not meet a trace.
            err.println(texts.say("bad.tooLarge"));
            return BAD_INPUT;
        } finally {
            out.flush();
            err.flush();
        }
    }

    /** The innermost cause, since what runs beside is wrapped. */
    private static String nameOf(Throwable failure) {
        Throwable cause = failure;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }

    /** Without a command: how to use the program. */
    @Override
    public void run() {
        common.check();
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** The language must be known before the line is parsed, since the parser's own complaints need it. */
    private static String languageOf(String... args) {
        List<String> all = List.of(args);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).equals("--lang") && i + 1 < all.size()) {
                return all.get(i + 1);
            }
            if (all.get(i).startsWith("--lang=")) {
                return all.get(i).substring("--lang=".length());
            }
        }
        return "en";
    }

    /** Our texts as the parser wants them. */
    private static final class Bundle extends ResourceBundle {
        private final Texts texts;

        Bundle(Texts texts) {
            this.texts = texts;
        }

        @Override
        protected Object handleGetObject(String key) {
            return texts.has(key) ? texts.all().get(key) : null;
        }

        @Override
        public Enumeration<String> getKeys() {
            return Collections.enumeration(texts.all().keySet());
        }
    }
}
