package provingyard.field;

import java.util.stream.IntStream;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;
import provingyard.season.Site;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.world.weather.WeatherSeries;

/**
 * What an observer beside a rain gauge would write down: the rain since the last twelve hours without any, at each moment
 * at which a sensor opens. One unit of each set point per seed, so thirty units of each.
 */
final class TripDepths {

    private static final int DRY_GAP = 12 * 60;

    private TripDepths() {}

    /** Mean depth in mm of each seed's unit, for each set point in m. */
    static double[][] observed(Site site, double... setPoints) {
        double[][] means = new double[setPoints.length][Trial.SEEDS];
        IntStream.range(0, Trial.SEEDS).parallel().forEach(i -> {
            double[] ofSeed = means(site, i + 1, setPoints);
            for (int s = 0; s < setPoints.length; s++) {
                means[s][i] = ofSeed[s];
            }
        });
        return means;
    }

    private static double[] means(Site site, long seed, double[] setPoints) {
        Scenario scenario = site.scenario();
        int days = scenario.season().days();
        SetUp setUp = SetUp.CLOCK_ALONE;
        for (int s = 0; s < setPoints.length; s++) {
            setUp = setUp.with(new Placement.Rain("rain-" + s, FieldPlot.BESIDE, Mount.POST, 2, setPoints[s], 0.5));
        }
        Season season = Season.begin(site, seed, days, setUp);
        season.liveToEnd();
        double[] since = rainSinceDry(scenario, seed, days);
        double[] means = new double[setPoints.length];
        for (int s = 0; s < setPoints.length; s++) {
            String id = "rain-" + s;
            means[s] = season.events().stream()
                    .filter(e -> e.kind() == SeasonEvent.Kind.SENSOR_TRIPPED
                            && e.subject().equals(id))
                    .mapToDouble(e -> since[(int) e.tick()])
                    .average()
                    .orElse(Double.NaN);
        }
        return means;
    }

    private static double[] rainSinceDry(Scenario scenario, long seed, int days) {
        WeatherSeries weather = WeatherSeries.of(
                scenario.weather(),
                scenario.place(),
                scenario.season().from(),
                days,
                new RandomStreams(seed),
                path -> Sites.resource("shared/reference/" + path));
        double[] since = new double[days * 1440];
        double depth = 0;
        int dry = DRY_GAP;
        for (int t = 0; t < since.length; t++) {
            double rain = weather.at(t).rain();
            depth = rain > 0 && dry >= DRY_GAP ? 0 : depth;
            dry = rain > 0 ? 0 : dry + 1;
            depth += 1000 * rain;
            since[t] = depth;
        }
        return since;
    }
}
