package provingyard.ui;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Stage;
import provingyard.picture.Theme;
import provingyard.scenario.Sites;
import provingyard.season.Snapshot;

/**
 * Frame times of the real window, 1280 by 720, on the software pipeline: the clinic at 600 times through a night with
 * irrigation, wind, rain and a leak, by dark and by light theme.
 *
 * <p>A frame's time is from one pulse to the next. The toolkit begins no pulse before the last one is painted, so the
 * window thread's work, the copying to the renderer and the renderer's own work are all in it; so is the wait for the
 * sixtieth of a second, unless {@code -Djavafx.animation.fullspeed=true} takes it away, as the profile does. The second row is the window
 * thread's share alone, from the pulse's begin to the end of layout; the third the processor time of window thread and
 * renderer together from pulse to pulse, which other programs on the machine spoil little; its two parts are frames that
 * show a new minute (ten a second at this speed) and those in between, in which only water moves.
 */
public final class Frames {

    /** Half an hour before the rain begins, in the dark; zones run from 05:00 to 06:45. */
    private static final long FROM = 37_710;

    private static final double WARM_SECONDS = 6;
    private static final double SECONDS = 14;
    private static final double NANOS = 1e9;

    private Frames() {}

    /** Opens the window, plays, prints, ends. */
    public static void main(String[] args) throws Exception {
        Sites.prepare();
        CountDownLatch opened = new CountDownLatch(1);
        Shell[] shell = new Shell[1];
        Platform.startup(() -> {
            shell[0] = new Shell(ProvingYardApp.sites(), 1280, 720);
            Stage stage = new Stage();
            stage.setScene(shell[0].scene());
            stage.show();
            opened.countDown();
        });
        opened.await();
        System.out.printf(
                "%-28s %10s %10s %10s %8s%n", "1280x720, software", "median ms", "95th ms", "most ms", "frames");
        for (Theme theme : new Theme[] {Theme.LIGHT, Theme.DARK}) {
            onWindow(() -> {
                shell[0].theme(theme);
                return null;
            });
            play(shell[0], theme.name(), WARM_SECONDS, false);
            play(shell[0], theme.name(), SECONDS, true);
        }
        System.out.flush();
        // An orderly end would let the renderer go before the last pulse, which then complains.
        Runtime.getRuntime().halt(0);
    }

    private static void play(Shell shell, String name, double seconds, boolean told) throws Exception {
        onWindow(() -> {
            shell.open(Sites.open("quillback-clinic").orThrow());
            return null;
        });
        while (onWindow(() -> shell.yard() == null)) {
            TimeUnit.MILLISECONDS.sleep(50);
        }
        YardModel model = onWindow(() -> shell.yard().model());
        onWindow(() -> {
            model.speed(Speed.SIX_HUNDRED);
            model.player().show(FROM);
            return null;
        });
        while (model.player().frame().snapshot().tick() != FROM) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
        TimeUnit.SECONDS.sleep(2);
        Meter meter = new Meter(shell, model, seconds);
        onWindow(() -> {
            model.player().play(Speed.SIX_HUNDRED.minutesPerSecond());
            meter.begin();
            return null;
        });
        meter.done.await();
        onWindow(() -> {
            model.player().pause();
            return null;
        });
        if (told) {
            meter.print(name);
        }
    }

    private static <T> T onWindow(java.util.concurrent.Callable<T> work) throws Exception {
        java.util.concurrent.FutureTask<T> task = new java.util.concurrent.FutureTask<>(work);
        Platform.runLater(task);
        return task.get();
    }

    /** Watches pulses for some seconds. */
    private static final class Meter extends AnimationTimer {

        private final CountDownLatch done = new CountDownLatch(1);
        private final Shell shell;
        private final YardModel model;
        private final double seconds;
        private final double[] frames = new double[20_000];
        private final double[] window = new double[20_000];
        private final double[] worked = new double[20_000];
        private final boolean[] minute = new boolean[20_000];
        private Snapshot before;
        private final ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        private final long[] threads = Thread.getAllStackTraces().keySet().stream()
                .filter(t ->
                        t.getName().startsWith("QuantumRenderer") || t.getName().startsWith("JavaFX Application"))
                .mapToLong(Thread::getId)
                .toArray();
        private final Runnable laidOut = this::laidOut;
        private int count;
        private int watered;
        private int wet;
        private long first;
        private long last;
        private long workedBefore;

        Meter(Shell shell, YardModel model, double seconds) {
            this.shell = shell;
            this.model = model;
            this.seconds = seconds;
        }

        void begin() {
            first = System.nanoTime();
            shell.scene().addPostLayoutPulseListener(laidOut);
            start();
        }

        @Override
        public void handle(long pulse) {
            long now = System.nanoTime();
            long work = Arrays.stream(threads).map(clock::getThreadCpuTime).sum();
            if (last > 0 && count < frames.length) {
                Snapshot snapshot = model.frameProperty().get().snapshot();
                worked[count] = (work - workedBefore) / 1e6;
                minute[count] = snapshot != before;
                before = snapshot;
                frames[count++] = (now - last) / 1e6;
                watered += snapshot.zones().stream().anyMatch(Snapshot.Zone::open) ? 1 : 0;
                wet += snapshot.sky().rainRate() > 0 ? 1 : 0;
            }
            last = now;
            workedBefore = work;
            if (now - first > seconds * NANOS) {
                stop();
                shell.scene().removePostLayoutPulseListener(laidOut);
                done.countDown();
            }
        }

        private void laidOut() {
            if (count > 0) {
                window[count - 1] = (System.nanoTime() - last) / 1e6;
            }
        }

        void print(String theme) {
            row(theme + ", pulse to pulse", Arrays.copyOf(frames, count));
            row(theme + ", window thread", Arrays.copyOf(window, count));
            row(theme + ", processor time", Arrays.copyOf(worked, count));
            row("  of a frame in between", worked(false));
            row("  of a new minute's frame", worked(true));
            System.out.printf(
                    Locale.ROOT,
                    "%s: irrigation in %d %% of the frames, rain in %d %%%n",
                    theme,
                    100 * watered / count,
                    100 * wet / count);
        }

        private double[] worked(boolean newMinute) {
            return IntStream.range(0, count)
                    .filter(i -> minute[i] == newMinute)
                    .mapToDouble(i -> worked[i])
                    .toArray();
        }

        private static void row(String what, double[] times) {
            if (times.length == 0) {
                return;
            }
            Arrays.sort(times);
            System.out.printf(
                    Locale.ROOT,
                    "%-28s %10.1f %10.1f %10.1f %8d%n",
                    what,
                    times[times.length / 2],
                    times[(int) (times.length * 0.95)],
                    times[times.length - 1],
                    times.length);
        }
    }
}
