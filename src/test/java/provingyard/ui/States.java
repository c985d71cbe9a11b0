package provingyard.ui;

import java.util.List;
import java.util.NoSuchElementException;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;
import provingyard.season.Site;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** Moments of the shipped sites that are looked at again and again, found from what happens in them. */
final class States {

    static final String CLINIC = "quillback-clinic";
    static final String TANSY_ROW = "tansy-row";
    static final String TEASEL_FIELD = "teasel-field";
    static final String CLAY_SLOPE = "burdock-steps";

    private static final int DAY = 1440;
    private static final int NOON = 720;

    private States() {}

    private static Scenario scenario(String site) {
        return ProvingYardApp.sites().stream()
                .filter(s -> s.id().equals(site))
                .findFirst()
                .orElseThrow();
    }

    static SetUp textbook(String site) {
        return References.textbook(scenario(site)).orElseThrow();
    }

    static SetUp careless(String site) {
        return References.careless(scenario(site)).orElseThrow();
    }

    static SetUp clockAlone() {
        return SetUp.CLOCK_ALONE;
    }

    /** A minute in which a zone waters, after some days. */
    static long watering(String site, SetUp setUp) {
        return minute(site, setUp, SeasonEvent.Kind.ZONE_ON, tick -> tick > 3 * DAY, 4);
    }

    /** A noon of the second week. */
    static long noon() {
        return 8 * DAY + NOON;
    }

    /** Some minutes after a walk has iced. */
    static long icedNight(String site, SetUp setUp) {
        return minute(site, setUp, SeasonEvent.Kind.WALK_ICED, tick -> tick % DAY < NOON, 30);
    }

    private static long minute(
            String site, SetUp setUp, SeasonEvent.Kind kind, java.util.function.LongPredicate when, long after) {
        Season season = Season.begin(Site.of(scenario(site)), setUp);
        while (!season.over()) {
            season.advance();
            List<SeasonEvent> events = season.events();
            if (!events.isEmpty()) {
                SeasonEvent last = events.get(events.size() - 1);
                if (last.kind() == kind && when.test(last.tick())) {
                    return last.tick() + after;
                }
            }
        }
        throw new NoSuchElementException(kind + " does not happen on " + site);
    }

    /** The first sensor of a kind in a set-up. */
    static String sensor(SetUp setUp, SensorKind kind) {
        return setUp.of(kind).stream().map(Placement::id).findFirst().orElseThrow();
    }
}
