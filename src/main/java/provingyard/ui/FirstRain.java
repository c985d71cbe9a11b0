package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.study.Progress;

/** The minute at which a site shows by itself what is wrong with it: the clock begins to water in the rain. */
final class FirstRain {

    private static final int DAY = 1440;
    private static final int MOST_DAYS = 10;

    private FirstRain() {}

    /**
     * A season of the clock alone, lived to the first minute in which a zone runs in the rain; to its first watering
     * where that does not happen soon; to its first minute where the set-up may not be changed later, or nothing runs.
     */
    static SeasonReplay.Lived of(Site site, Progress progress) {
        if (site.scenario().locks().midSeason()) {
            return SeasonReplay.fresh(site);
        }
        Season season = Season.begin(site, SetUp.CLOCK_ALONE);
        List<Season> keyframes = new ArrayList<>(List.of(season.copy()));
        Season watering = null;
        boolean rains = false;
        int seen = 0;
        int running = 0;
        while (season.tick() < Math.min((long) MOST_DAYS * DAY, season.end())) {
            season.advance();
            if (season.tick() % DAY == 0) {
                keyframes.add(season.copy());
                progress.at((int) (season.tick() / DAY), MOST_DAYS);
                if (progress.cancelled()) {
                    throw new CancellationException();
                }
            }
            for (SeasonEvent event : season.events().subList(seen, season.eventCount())) {
                switch (event.kind()) {
                    case RAIN_BEGAN -> rains = true;
                    case RAIN_ENDED -> rains = false;
                    case ZONE_ON -> running++;
                    case ZONE_OFF -> running--;
                    default -> {
                        continue;
                    }
                }
            }
            seen = season.eventCount();
            if (running > 0 && watering == null) {
                watering = season.copy();
            }
            if (running > 0 && rains) {
                return new SeasonReplay.Lived(season, keyframes, List.of());
            }
        }
        if (watering == null) {
            return SeasonReplay.fresh(site);
        }
        long until = watering.tick();
        return new SeasonReplay.Lived(
                watering, keyframes.stream().filter(k -> k.tick() < until).toList(), List.of());
    }
}
