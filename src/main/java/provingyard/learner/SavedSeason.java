package provingyard.learner;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import provingyard.scenario.Scenario;
import provingyard.setup.History;
import provingyard.setup.SetUp;
import provingyard.setup.SetUpReader;
import provingyard.setup.SetUpWriter;

/**
 * A season as far as it was lived: what was decided when, from which it is lived again bit for bit.
 *
 * @param content content hash of the site's document when it was lived
 * @param engine version of the simulator that lived it
 * @param tick minutes lived
 * @param changes set-ups and the ticks from which they held, by rising tick; as JSON, because they can only be held
 *     against their site when it is opened
 * @param rearms ticks at which the controller was re-armed by hand, rising
 */
public record SavedSeason(String content, String engine, long tick, List<Change> changes, List<Long> rearms) {

    /** A set-up's JSON and the tick from which it held. */
    public record Change(long tick, JsonNode setUp) {}

    public SavedSeason {
        changes = List.copyOf(changes);
        rearms = List.copyOf(rearms);
    }

    /** What is kept of a season. */
    public static SavedSeason of(
            String content, String engine, long tick, List<History.Change> changes, List<Long> rearms) {
        List<Change> written = changes.stream()
                .map(c -> new Change(c.tick(), SetUpWriter.tree(c.setUp())))
                .toList();
        return new SavedSeason(content, engine, tick, written, rearms);
    }

    /** The set-ups with their ticks; empty when the site does not take one of them any more. */
    public Optional<List<History.Change>> changes(Scenario site) {
        List<History.Change> read = new ArrayList<>();
        for (Change change : changes) {
            SetUp setUp =
                    SetUpReader.read(site.id(), change.setUp().deepCopy(), site).value();
            if (setUp == null) {
                return Optional.empty();
            }
            read.add(new History.Change(change.tick(), setUp));
        }
        return Optional.of(read);
    }
}
