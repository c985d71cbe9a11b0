package provingyard.study;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.UnaryOperator;
import provingyard.scenario.ScenarioReader;
import provingyard.scenario.Sites;
import provingyard.season.Site;

/** The first shipped site with a season of a few days, so that many can be lived within a test. */
final class TinySites {

    private TinySites() {}

    /** A week in Tansy Row. */
    static Site week() {
        return week(text -> text);
    }

    /** A week in Tansy Row with its document changed. */
    static Site week(UnaryOperator<String> change) {
        try (InputStream in = Sites.resource("scenarios/tansy-row.json")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String tiny = replaced(text, "\"id\": \"tansy-row\"", "\"id\": \"tansy-week\"");
            tiny = replaced(tiny, "\"days\": 45", "\"days\": 7");
            return Site.of(
                    ScenarioReader.read("tansy-week.json", change.apply(tiny)).orThrow());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The document with a part replaced that must be there. */
    static String replaced(String text, String part, String by) {
        if (!text.contains(part)) {
            throw new IllegalArgumentException("not in the document: " + part);
        }
        return text.replace(part, by);
    }
}
