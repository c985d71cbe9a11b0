package provingyard.scenario;

import java.time.LocalDate;

/** The season to be lived: first day, number of days, and the seed of its random streams. */
public record SeasonPlan(LocalDate from, int days, long seed) {}
