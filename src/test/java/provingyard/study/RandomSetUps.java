package provingyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import provingyard.numeric.RandomStreams;
import provingyard.season.Site;
import provingyard.setup.SetUp;

/** Set-ups by chance within budget, kit and locks: any spot of the search's kind, any action, any setting. */
final class RandomSetUps {

    private static final double PLACED = 0.6;

    private RandomSetUps() {}

    /** So many of a site. */
    static List<SetUp> of(Site site, int count, long seed) {
        Random random = new Random(seed);
        Limits limits = new Limits(site.scenario());
        List<SetUp> drawn = new ArrayList<>();
        while (drawn.size() < count) {
            SetUp setUp = SetUp.CLOCK_ALONE;
            var spots = Spots.of(site, new RandomStreams(random.nextLong()));
            for (Options options : Search.options(site, limits, spots)) {
                for (int n = 1; n <= limits.most(options.kind()) && random.nextDouble() < PLACED; n++) {
                    setUp = drawn(options, random).numbered(n).into(setUp);
                }
            }
            if (limits.keeps(setUp) && !drawn.contains(setUp)) {
                drawn.add(setUp);
            }
        }
        return drawn;
    }

    private static Fitting drawn(Options options, Random random) {
        Fitting fitting = any(options.places(), random);
        fitting = any(options.switches(fitting), random);
        for (int d = 0; d < options.dials(fitting).size(); d++) {
            Dial<Fitting> dial = options.dials(fitting).get(d);
            fitting = dial.turned(dial.low() + random.nextDouble() * dial.range());
        }
        return fitting;
    }

    private static <T> T any(List<T> of, Random random) {
        return of.get(random.nextInt(of.size()));
    }
}
