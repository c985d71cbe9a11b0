package provingyard.bench;

import java.time.LocalTime;
import java.util.List;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;
import provingyard.scenario.WeatherPlan;
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

    /** The shipped site under the same eight autumn days again and again, so that no month is harder than another. */
    static Clinic repeating(int days) {
        Scenario s = scenario();
        WeatherPlan.Source source = new WeatherPlan.Source(
                WeatherPlan.SourceKind.SCRIPTED,
                null,
                null,
                s.weather().source().dewPointBelowMinimum(),
                null,
                2,
                week());
        return of(s.under(new WeatherPlan(source, List.of())), days);
    }

    private static List<WeatherPlan.Day> week() {
        return List.of(
                day(14, 4, 0, 0.9, 2),
                day(12, -1, 0, 1, 1),
                day(11, 3, 0.004, 0.2, 4),
                day(13, 6, 0.012, 0.1, 5),
                day(10, 1, 0, 0.7, 3),
                day(8, -3, 0, 1, 1),
                day(9, 0, 0, 0.6, 2),
                day(12, 5, 0.002, 0.3, 3));
    }

    private static WeatherPlan.Day day(double high, double low, double rain, double sunshine, double wind) {
        return new WeatherPlan.Day(high, low, rain, rain > 0 ? LocalTime.of(14, 0) : null, 6 * 3600, sunshine, wind);
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
