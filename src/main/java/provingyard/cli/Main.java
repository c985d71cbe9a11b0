package provingyard.cli;

import java.io.PrintWriter;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.ResourceBundle;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;
import provingyard.text.Texts;

/** The headless program: its commands and how they end. */
@Command(
        name = "proving-yard",
        subcommands = {RunCommand.class, CheckCommand.class, NetworkCommand.class, PictureCommand.class})
public final class Main implements Runnable {

    /** It went well. */
    public static final int GOOD = 0;
    /** A check did not hold. */
    public static final int DID_NOT_HOLD = 1;
    /** The input was bad. */
    public static final int BAD_INPUT = 2;

    @Mixin
    private Common common;

    private final PrintWriter out;

    private Main(PrintWriter out) {
        this.out = out;
    }

    /**
     * Runs a command line.
     *
     * @return the exit code
     */
    public static int execute(PrintWriter out, PrintWriter err, String... args) {
        Texts texts = Texts.of("cli", languageOf(args));
        CommandLine line = new CommandLine(new Main(out));
        line.setOut(out);
        line.setErr(err);
        line.setResourceBundle(new Bundle(texts));
        line.setUsageHelpAutoWidth(true);
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
            err.println(texts.say("bad.unforeseen", String.valueOf(failure.getMessage())));
            return BAD_INPUT;
        });
        int code = line.execute(args);
        out.flush();
        err.flush();
        return code;
    }

    /** Without a command: how to use the program. */
    @Override
    public void run() {
        CommandLine line = new CommandLine(this);
        line.setResourceBundle(new Bundle(common.texts()));
        line.usage(out);
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
