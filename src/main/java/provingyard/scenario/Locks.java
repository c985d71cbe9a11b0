package provingyard.scenario;

import java.util.List;

/**
 * What a trainee may not touch.
 *
 * @param schedule the schedule stays as it is
 * @param sensors kinds that may not be placed or moved
 * @param midSeason the set-up may not change once the season runs
 */
public record Locks(boolean schedule, List<SensorKind> sensors, boolean midSeason) {}
