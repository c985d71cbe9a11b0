package provingyard.cli;

import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import provingyard.quantity.UnitSystem;
import provingyard.text.Texts;

/** Options that every command has. */
final class Common {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(names = "--lang", paramLabel = "en|es", descriptionKey = "option.lang", defaultValue = "en")
    private String language;

    @Option(names = "--units", paramLabel = "us|metric", descriptionKey = "option.units", defaultValue = "metric")
    private String units;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            descriptionKey = "option.help")
    private boolean help;

    /**
     * Complains about a language or units that are not known, before anything is done.
     *
     * @throws ParameterException with the complaint
     */
    void check() {
        language();
        units();
    }

    /** The commands' texts in the language asked for. */
    Texts texts() {
        return Texts.of("cli", language());
    }

    String language() {
        if (!Texts.LANGUAGES.contains(language)) {
            throw new ParameterException(
                    command.commandLine(), Texts.of("cli", "en").say("bad.language", language));
        }
        return language;
    }

    UnitSystem units() {
        return switch (units.toLowerCase(Locale.ROOT)) {
            case "us" -> UnitSystem.US;
            case "metric" -> UnitSystem.METRIC;
            default -> throw new ParameterException(command.commandLine(), texts().say("bad.units", units));
        };
    }
}
