package provingyard.field;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import provingyard.field.FieldHome.Card;
import provingyard.field.FieldHome.Hang;
import provingyard.season.Site;

/**
 * A year of the homes of {@link HomeMix} under each treatment. The year stands for the first and for the second of the
 * trial: the two differ in how many homes follow the card. The groups are the same homes, not others like them.
 */
final class HomesTrial {

    /** What was done to homes; clock is without any sensor. */
    enum Group {
        CLOCK,
        SOIL,
        RAIN,
        CARD_AND_RAIN_FIRST_YEAR,
        CARD_AND_RAIN_SECOND_YEAR
    }

    /** Water in mm of a seed's homes together, by seed. */
    private final Map<Group, double[]> applied = new EnumMap<>(Group.class);

    private final int[][] card;

    private HomesTrial(int[][] card) {
        this.card = card;
        for (Group group : Group.values()) {
            applied.put(group, new double[Trial.SEEDS]);
        }
    }

    /** Lives all. The card: see {@link Treatment#card}. */
    static HomesTrial lived(int[][] card) {
        HomesTrial trial = new HomesTrial(card);
        List<Site> sites = HomeMix.GROUNDS.stream().map(FieldHome::site).toList();
        IntStream.range(0, Trial.SEEDS).parallel().forEach(i -> {
            List<FieldHome> homes = HomeMix.of(i + 1L);
            for (int h = 0; h < homes.size(); h++) {
                trial.live(sites.get(h), i, homes.get(h), "rain-" + (h + 1));
            }
        });
        return trial;
    }

    private void live(Site site, int seed, FieldHome home, String rainSensor) {
        Treatment plain = Treatment.clock(home.daysAWeek(), home.minutesAWeek());
        Treatment soil =
                plain.soilBlocks(site.scenario().catalogue(), home.ground().soil(), 0.65);
        double clock = applied(site, seed, plain);
        double rain = home.hang() == Hang.DEAD ? clock : applied(site, seed, with(rainSensor, home, plain));
        double byCard = home.card() == Card.NEVER
                ? rain
                : applied(site, seed, with(rainSensor, home, Treatment.card(home.daysAWeek(), card)));
        applied.get(Group.CLOCK)[seed] += clock;
        applied.get(Group.SOIL)[seed] += applied(site, seed, soil);
        applied.get(Group.RAIN)[seed] += rain;
        applied.get(Group.CARD_AND_RAIN_FIRST_YEAR)[seed] += byCard;
        applied.get(Group.CARD_AND_RAIN_SECOND_YEAR)[seed] += home.card() == Card.BOTH_YEARS ? byCard : rain;
    }

    private static Treatment with(String rainSensor, FieldHome home, Treatment plain) {
        return home.hang() == Hang.DEAD ? plain : plain.rainSensor(home.rainSensor(rainSensor));
    }

    private static double applied(Site site, int seed, Treatment treatment) {
        return Trial.live(site, seed + 1L, treatment).applied();
    }

    /** Water saved in percent of what the homes without sensors applied, by seed. */
    double[] savings(Group group) {
        double[] clock = applied.get(Group.CLOCK);
        double[] mine = applied.get(group);
        return IntStream.range(0, Trial.SEEDS)
                .mapToDouble(i -> 100 * (1 - mine[i] / clock[i]))
                .toArray();
    }

    /** The same over the seeds. */
    Spread saving(Group group) {
        return Spread.of(savings(group));
    }

    /** Water in mm of the mean home without sensors. */
    Spread clock() {
        return Spread.of(IntStream.range(0, Trial.SEEDS)
                .mapToDouble(i -> applied.get(Group.CLOCK)[i] / HomeMix.HOMES)
                .toArray());
    }
}
