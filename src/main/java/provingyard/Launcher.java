package provingyard;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import provingyard.cli.Main;
import provingyard.scenario.Sites;
import provingyard.text.Texts;
import provingyard.ui.ProvingYardApp;

/**
 * Where the program starts. With arguments it is a command; without, it opens the window, or plays the first site headless
 * where no window can be opened. It does not extend the JavaFX application class, so that the class path is enough.
 */
public final class Launcher {

    private static final String REPORT = "proving-yard-report";

    private Launcher() {}

    /** Starts. */
    public static void main(String[] args) {
        Sites.prepare();
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        if (args.length > 0) {
            System.exit(Main.execute(out, err, args));
        }
        Display.State display = Display.look();
        String why =
                switch (display) {
                    case READY -> window() ? "" : "no.window.failed";
                    case NONE -> "no.window.none";
                    case DEAD -> "no.window.dead";
                    case NO_GTK -> "no.window.gtk";
                };
        System.exit(why.isEmpty() ? Main.GOOD : playHeadless(why, out, err));
    }

    /** Opens the window and waits until it is closed; false where the toolkit cannot start here. */
    private static boolean window() {
        try {
            ProvingYardApp.open();
            return true;
        } catch (UnsupportedOperationException | LinkageError e) {
            // No screen, or a library of the toolkit is missing.
            return false;
        }
    }

    private static int playHeadless(String key, PrintWriter out, PrintWriter err) {
        String language = Locale.getDefault().getLanguage().equals("es") ? "es" : "en";
        out.println(Texts.of("cli", language).say(key));
        String first = Sites.list().get(0).id();
        return Main.execute(out, err, "run", first, "--setup", "textbook", "--report", REPORT, "--lang", language);
    }
}
