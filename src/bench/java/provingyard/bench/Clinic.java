package provingyard.bench;

import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;
import provingyard.scenario.YardPlan;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/**
 * The clinic under one set-up, for a number of days; weather, twin and plumbing are made before the first season begins.
 */
record Clinic(Site site, SetUp setUp, int days) {

    private static final int DAYS = 30;
    private static final int WARM = 25;

    /** The shipped site. */
    static Clinic shipped(int days) {
        return of(scenario(), days);
    }

    /** The shipped site for its own thirty days under the textbook's set-up, or the clock alone. */
    static Clinic shipped(boolean clockAlone) {
        Clinic clinic = shipped(DAYS);
        return clockAlone ? new Clinic(clinic.site, SetUp.CLOCK_ALONE, DAYS) : clinic;
    }

    /** The shipped site cut into about so many cells. */
    static Clinic cut(int cells, int days) {
        Scenario s = scenario();
        YardPlan yard = s.yard();
        YardPlan cut = new YardPlan(
                yard.size(),
                Math.sqrt(yard.size().x() * yard.size().y() / cells),
                yard.base(),
                yard.surfaces(),
                yard.structures(),
                yard.trees(),
                yard.vents(),
                yard.hollows(),
                yard.furnishings());
        return of(s.with(s.catalogue(), cut, s.faults()), days);
    }

    private static Clinic of(Scenario scenario, int days) {
        return new Clinic(Site.of(scenario), References.textbook(scenario).orElseThrow(), days);
    }

    private static Scenario scenario() {
        return Sites.open("quillback-clinic").orThrow();
    }

    /** Lives the season often enough for the compiler to be done with it, and gives the last one. */
    Season warmUp() {
        Season last = live();
        for (int i = 0; i < WARM; i++) {
            last = live();
        }
        return last;
    }

    /** One season, lived to its end. */
    Season live() {
        Season season = Season.begin(site, site.scenario().season().seed(), days, setUp);
        season.liveToEnd();
        return season;
    }
}
