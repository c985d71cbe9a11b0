package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.study.Progress;

/** Lives a season again from what was decided when: the same bits as the first time. */
final class SeasonReplay {

    private static final int DAY = 1440;

    /**
     * A season and how it came there.
     *
     * @param season as it is now
     * @param keyframes copies of it at earlier midnights and decisions, by rising tick
     */
    record Lived(Season season, List<Season> keyframes) {}

    private SeasonReplay() {}

    /** A season at its first minute, without a sensor. */
    static Lived fresh(Site site) {
        return new Lived(Season.begin(site, SetUp.CLOCK_ALONE), List.of());
    }

    /**
     * Lives again.
     *
     * @param progress told the days lived; asked each day whether to go on
     * @throws CancellationException when told to stop
     */
    static Lived of(Site site, SeasonPlayer.Kept kept, Progress progress) {
        Season season = Season.begin(site, SetUp.CLOCK_ALONE);
        Map<Long, SetUp> changes = new TreeMap<>();
        kept.changes().forEach(c -> changes.put(c.tick(), c.setUp()));
        TreeSet<Long> rearms = new TreeSet<>(kept.rearms());
        List<Season> keyframes = new ArrayList<>();
        long until = Math.min(kept.tick(), season.end());
        int days = (int) (until / DAY);
        while (true) {
            long tick = season.tick();
            if (changes.containsKey(tick)) {
                season.change(changes.get(tick));
            }
            if (rearms.contains(tick)) {
                season.rearm();
            }
            if (tick % DAY == 0 || changes.containsKey(tick) || rearms.contains(tick)) {
                keyframes.add(season.copy());
                progress.at((int) (tick / DAY), days);
                if (progress.cancelled()) {
                    throw new CancellationException();
                }
            }
            if (tick >= until) {
                return new Lived(season, keyframes);
            }
            season.advance();
        }
    }
}
