package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;
import provingyard.season.Series;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.study.Progress;

/** The minute at which a site shows by itself what is wrong with it: it has rained, and the clock begins to water. */
final class AfterRain {

    /** Days that may pass before; they are lived, and so count. */
    static final int MOST_DAYS = 5;

    private static final int DAY = 1440;
    private static final int HOURS = 24;
    /** Rain of the last day, m, after which watering is plain waste. */
    private static final double RAIN = 0.005;

    private AfterRain() {}

    /**
     * A season of the clock alone, lived to the first run that begins after a day of rain; empty where none does soon,
     * or where the set-up may not be changed later.
     *
     * @throws CancellationException when told to stop
     */
    static Optional<SeasonReplay.Lived> of(Site site, Progress progress) {
        if (site.scenario().locks().midSeason()) {
            return Optional.empty();
        }
        Season season = Season.begin(site, SetUp.CLOCK_ALONE);
        List<Season> keyframes = new ArrayList<>(List.of(season.copy()));
        int seen = 0;
        while (season.tick() < Math.min((long) MOST_DAYS * DAY, season.end())) {
            season.advance();
            if (season.tick() % DAY == 0) {
                keyframes.add(season.copy());
                progress.at((int) (season.tick() / DAY), MOST_DAYS);
                if (progress.cancelled()) {
                    throw new CancellationException();
                }
            }
            if (season.eventCount() > seen && begins(season.events().subList(seen, season.eventCount()))) {
                if (rained(season.series())) {
                    return Optional.of(new SeasonReplay.Lived(season, keyframes));
                }
            }
            seen = season.eventCount();
        }
        return Optional.empty();
    }

    private static boolean begins(List<SeasonEvent> events) {
        return events.stream().anyMatch(e -> e.kind() == SeasonEvent.Kind.ZONE_ON);
    }

    private static boolean rained(Series series) {
        double sum = 0;
        for (int hour = Math.max(0, series.hours() - HOURS); hour < series.hours(); hour++) {
            sum += series.rain()[hour];
        }
        return sum >= RAIN;
    }
}
