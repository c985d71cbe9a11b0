package provingyard.report;

import java.util.Optional;
import java.util.function.Function;
import provingyard.study.Debrief;
import provingyard.study.Moment;

/**
 * All that pages tell of a season.
 *
 * @param debrief what is known of it; what is empty there is left out
 * @param setUp how its set-up was called, such as a file's name; empty where it has no name
 * @param icing where and when walks iced over; empty where nobody looked
 * @param sentences a moment's sentence in the pages' language and units; where it is empty, moments are left out
 */
public record Story(
        Debrief debrief, String setUp, Optional<Icing> icing, Optional<Function<Moment, String>> sentences) {

    /** The debrief alone. */
    public static Story of(Debrief debrief) {
        return new Story(debrief, "", Optional.empty(), Optional.empty());
    }

    /** The same with its set-up's name. */
    public Story named(String name) {
        return new Story(debrief, name, icing, sentences);
    }

    /** The same with its ice. */
    public Story with(Icing ice) {
        return new Story(debrief, setUp, Optional.of(ice), sentences);
    }

    /** The same with sentences for its moments. */
    public Story with(Function<Moment, String> words) {
        return new Story(debrief, setUp, icing, Optional.of(words));
    }
}
