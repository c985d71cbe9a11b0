package provingyard.season;

import provingyard.score.Loss;
import provingyard.setup.SetUp;

/** Sites' own seasons, lived to their end under one set-up. */
public final class LivedSeasons {

    private LivedSeasons() {}

    /** The season, lived. */
    public static Season of(Site site, SetUp setUp) {
        Season season = Season.begin(site, setUp);
        season.liveToEnd();
        return season;
    }

    /** What it loses. */
    public static Loss loss(Site site, SetUp setUp) {
        return Loss.of(of(site, setUp));
    }
}
