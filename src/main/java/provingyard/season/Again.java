package provingyard.season;

import java.util.List;
import java.util.function.LongConsumer;

/** Lives a season a second time, so that what it did not note can be noted. */
final class Again {

    private Again() {}

    /**
     * Lives the first minutes of a season again, with all that people did in it: changes of set-up, re-arming, hands
     * on valves, repairs.
     *
     * @param lived the season; not changed
     * @param again the same season before its first minute
     * @param minutes how many
     * @param changed told after each change, with the minute that it holds from
     * @param after told each minute once it is lived
     */
    static void live(Season lived, Season again, long minutes, LongConsumer changed, LongConsumer after) {
        List<Season.Change> changes = lived.changes();
        int next = 1;
        for (long t = 0; t < minutes; t++) {
            while (next < changes.size() && changes.get(next).tick() <= t) {
                again.change(changes.get(next++).setUp());
                changed.accept(t);
            }
            if (lived.rearmedAt(t)) {
                again.rearm();
            }
            lived.handledAt(t).ifPresent(h -> again.handle(h.hands(), h.zone()));
            lived.repairsAt(t).forEach(again::repair);
            again.advance();
            after.accept(t);
        }
    }
}
