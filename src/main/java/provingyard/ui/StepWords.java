package provingyard.ui;

import java.util.Locale;
import provingyard.scenario.SensorKind;
import provingyard.setup.History;

/** What a step of the set-up's history is called on the screen. */
final class StepWords {

    private StepWords() {}

    /** Such as “place Rain 1”, in the language of now. */
    static String name(History.Step step, Words words) {
        Object[] named = step.arguments().stream().map(a -> argument(a, words)).toArray();
        return words.say(step.key(), named);
    }

    /** A setting is named by its key, a sensor by the id that it got when it was placed. */
    private static String argument(String argument, Words words) {
        if (argument.startsWith("setting.")) {
            return words.say(argument);
        }
        for (SensorKind kind : SensorKind.values()) {
            String prefix = kind.name().toLowerCase(Locale.ROOT) + "-";
            if (argument.startsWith(prefix)) {
                return words.say("kind." + kind.name()) + " " + argument.substring(prefix.length());
            }
        }
        return argument;
    }
}
