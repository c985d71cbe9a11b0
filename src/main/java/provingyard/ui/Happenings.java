package provingyard.ui;

import java.util.List;
import provingyard.season.SeasonEvent;

/**
 * Which events are worth a stop: all but a run's plain course. Of the runs of one pass only the first start is, so that
 * nobody steps through every valve of every night.
 */
final class Happenings {

    private Happenings() {}

    /** Minute of the first happening that is seen after a minute; -1 when none. */
    static long after(List<SeasonEvent> events, long tick) {
        for (int i = 0; i < events.size(); i++) {
            if (seen(events.get(i)) > tick && worth(events, i)) {
                return seen(events.get(i));
            }
        }
        return -1;
    }

    /** Minute of the last happening that is seen before a minute; -1 when none. */
    static long before(List<SeasonEvent> events, long tick) {
        for (int i = events.size() - 1; i >= 0; i--) {
            if (seen(events.get(i)) < tick && worth(events, i)) {
                return seen(events.get(i));
            }
        }
        return -1;
    }

    /** How many happenings there are from an index on. */
    static int count(List<SeasonEvent> events, int from) {
        int n = 0;
        for (int i = from; i < events.size(); i++) {
            n += worth(events, i) ? 1 : 0;
        }
        return n;
    }

    /** A minute's events show on the yard when the minute was lived. */
    private static long seen(SeasonEvent event) {
        return event.kind() == SeasonEvent.Kind.SET_UP_CHANGED ? event.tick() : event.tick() + 1;
    }

    private static boolean worth(List<SeasonEvent> events, int at) {
        SeasonEvent event = events.get(at);
        return switch (event.kind()) {
            case ZONE_OFF, EXPECTED_RECORDED -> false;
            case ZONE_ON -> beginsPass(events, at);
            default -> true;
        };
    }

    /** Whether nothing ran in the minute before. */
    private static boolean beginsPass(List<SeasonEvent> events, int at) {
        for (int i = at - 1; i >= 0; i--) {
            SeasonEvent event = events.get(i);
            if (event.kind() == SeasonEvent.Kind.ZONE_OFF) {
                return event.tick() < events.get(at).tick();
            }
            if (event.kind() == SeasonEvent.Kind.ZONE_ON) {
                return false;
            }
        }
        return true;
    }
}
