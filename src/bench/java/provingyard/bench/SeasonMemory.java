package provingyard.bench;

import java.util.Locale;
import provingyard.season.Season;

/** What a lived season of the clinic holds in memory, with its site, weather and twin: heap in use with and without it. */
final class SeasonMemory {

    private SeasonMemory() {}

    static String measure() {
        Clinic.shipped(1).live();
        long before = used();
        Season season = Clinic.shipped(false).live();
        long with = used();
        return String.format(
                Locale.ROOT,
                "A lived season of the clinic, its site, weather and twin hold %.1f MB (%s)",
                (with - before) / 1e6,
                season.ledgerHash().substring(0, 8));
    }

    private static long used() {
        Runtime runtime = Runtime.getRuntime();
        for (int i = 0; i < 5; i++) {
            System.gc();
        }
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
