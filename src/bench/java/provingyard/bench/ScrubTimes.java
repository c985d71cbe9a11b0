package provingyard.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.locks.LockSupport;
import java.util.random.RandomGenerator;
import provingyard.season.Season;
import provingyard.ui.SeasonPlayer;

/** Looking back over a lived season of the clinic: from the order to the published frame, for minutes at random. */
public final class ScrubTimes {

    private static final int JUMPS = 400;
    private static final int FIRST = 20;

    private ScrubTimes() {}

    /** Prints the measure alone. */
    public static void main(String[] args) {
        System.out.println(measure());
    }

    static String measure() {
        Clinic clinic = Clinic.shipped(false);
        Season season = Season.begin(clinic.site(), clinic.setUp());
        try (SeasonPlayer player = new SeasonPlayer(season, Throwable::printStackTrace)) {
            player.play(Double.POSITIVE_INFINITY);
            while (!player.frame().over() || player.frame().playing()) {
                LockSupport.parkNanos(1_000_000);
            }
            RandomGenerator dice = RandomGenerator.of("L64X128MixRandom");
            double[] times = new double[JUMPS];
            for (int i = 0; i < JUMPS; i++) {
                times[i] = jump(player, dice.nextLong(player.frame().lived()));
            }
            return told("at first", Arrays.copyOf(times, FIRST)) + "\n" + told("in all", times);
        }
    }

    private static String told(String which, double[] times) {
        Arrays.sort(times);
        return String.format(
                Locale.ROOT,
                "Jumps back over a lived season of the clinic, order to frame, %s (%d): median %.1f ms, 95 %% under %.1f"
                        + " ms, worst %.1f ms",
                which,
                times.length,
                times[times.length / 2],
                times[(int) Math.ceil(0.95 * times.length) - 1],
                times[times.length - 1]);
    }

    private static double jump(SeasonPlayer player, long tick) {
        long begun = System.nanoTime();
        player.show(tick);
        while (player.frame().snapshot().tick() != tick) {
            Thread.onSpinWait();
        }
        return (System.nanoTime() - begun) / 1e6;
    }
}
