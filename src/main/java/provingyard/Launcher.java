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
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        if (args.length > 0) {
            System.exit(Main.execute(out, err, args));
        }
        Display.State display = Display.look();
        if (display == Display.State.READY) {
            ProvingYardApp.open();
            System.exit(Main.GOOD);
        }
        System.exit(playHeadless(display, out, err));
    }

    private static int playHeadless(Display.State display, PrintWriter out, PrintWriter err) {
        String language = Locale.getDefault().getLanguage().equals("es") ? "es" : "en";
        String key =
                switch (display) {
                    case DEAD -> "no.window.dead";
                    case NO_GTK -> "no.window.gtk";
                    default -> "no.window.none";
                };
        out.println(Texts.of("cli", language).say(key));
        String first = Sites.list().get(0).id();
        return Main.execute(out, err, "run", first, "--setup", "textbook", "--out", REPORT, "--lang", language);
    }
}
