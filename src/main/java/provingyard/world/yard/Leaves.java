package provingyard.world.yard;

import provingyard.scenario.SeasonPlan;

/** How much of their leaves deciduous trees wear over a season. */
final class Leaves {

    /** Share of the leaves from January to December on the northern half of the earth; common practice, no source. */
    private static final double[] BY_MONTH = {0, 0, 0.1, 0.5, 0.9, 1, 1, 1, 1, 0.7, 0.2, 0};

    private Leaves() {}

    /** Mean share of the leaves over the season's days, half a year shifted south of the equator. */
    static double over(SeasonPlan season, double latitude) {
        int shift = latitude < 0 ? 6 : 0;
        int days = Math.max(1, season.days());
        double sum = 0;
        for (int d = 0; d < days; d++) {
            int month = season.from().plusDays(d).getMonthValue() - 1;
            sum += BY_MONTH[(month + shift) % 12];
        }
        return sum / days;
    }
}
