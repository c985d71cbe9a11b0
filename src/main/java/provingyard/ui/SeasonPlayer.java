package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;
import provingyard.season.Series;
import provingyard.season.Snapshot;
import provingyard.setup.SetUp;

/**
 * Lives a season on its own thread. Wall time decides how many minutes are lived, never how long one is, so what is
 * watched at any speed equals a run without a window. Orders come through a queue and act between minutes; the newest
 * frame is published for the window to draw.
 */
public final class SeasonPlayer implements AutoCloseable {

    /**
     * What the window draws.
     *
     * @param snapshot the yard at the minute shown
     * @param series hours lived
     * @param events all that happened so far, in order
     * @param lived minutes lived (the minute shown may lie before)
     * @param over the season was lived to its end
     * @param playing time runs
     */
    public record Frame(
            Snapshot snapshot, Series series, List<SeasonEvent> events, long lived, boolean over, boolean playing) {}

    /**
     * What a season is lived again from.
     *
     * @param tick minutes lived
     * @param changes set-ups with the ticks from which they held
     * @param rearms ticks at which the controller was re-armed by hand, rising
     */
    public record Kept(long tick, List<Season.Change> changes, List<Long> rearms) {}

    private static final long FRAME_NANOS = 33_000_000;
    private static final int CHUNK = 240;
    private static final int KEYFRAME_TICKS = 1440;

    private final LinkedBlockingQueue<Runnable> orders = new LinkedBlockingQueue<>();
    private final AtomicReference<Frame> newest = new AtomicReference<>();
    private final TreeMap<Long, Season> keyframes = new TreeMap<>();
    private final TreeSet<Long> rearms = new TreeSet<>();
    private final Consumer<Throwable> onFailure;
    private final Thread thread;

    private Season season;
    private Season lived;
    private double minutesPerSecond;
    private boolean playing;
    private double owed;
    private boolean closed;
    private SetUp shown;

    /**
     * Starts the thread; time stands still at first.
     *
     * @param onFailure told, on the player's thread, when something unforeseen happens; the player then goes back to
     *     its last keyframe and stands still
     */
    public SeasonPlayer(Season start, Consumer<Throwable> onFailure) {
        this(new SeasonReplay.Lived(start, List.of(), List.of()), onFailure);
    }

    /** Goes on with a season that was lived before. */
    SeasonPlayer(SeasonReplay.Lived begun, Consumer<Throwable> onFailure) {
        this.season = begun.season();
        this.lived = season;
        this.onFailure = onFailure;
        begun.keyframes().forEach(k -> keyframes.put(k.tick(), k));
        rearms.addAll(begun.rearms());
        keyframes.put(season.tick(), season.copy());
        publish();
        thread = new Thread(this::loop, "season");
        thread.setDaemon(true);
        thread.start();
    }

    /** The newest frame. */
    public Frame frame() {
        return newest.get();
    }

    /** Lets time run at a speed in minutes of the season per second of the clock; infinite for as fast as it goes. */
    public void play(double speed) {
        order(() -> {
            if (season != lived) {
                season = lived;
            }
            minutesPerSecond = speed;
            owed = 0;
            playing = !season.over();
        });
    }

    /** Stops time. */
    public void pause() {
        order(() -> playing = false);
    }

    /** Lives until something happens, then stands still. */
    public void nextEvent() {
        order(() -> {
            season = lived;
            playing = false;
            int before = season.events().size();
            while (!season.over() && season.events().size() == before && orders.isEmpty()) {
                step();
            }
        });
    }

    /** Shows another minute: back by replay from the nearest keyframe, forward by living on. */
    public void show(long tick) {
        order(() -> {
            playing = false;
            if (tick >= lived.tick()) {
                season = lived;
                while (season.tick() < Math.min(tick, season.end()) && orders.isEmpty()) {
                    step();
                }
            } else {
                season = keyframes.floorEntry(tick).getValue().copy();
                while (season.tick() < tick) {
                    season.advance();
                }
            }
        });
    }

    /** Changes the set-up at the minute shown. When that lies in the past, the season is lived again from there. */
    public void change(SetUp setUp) {
        order(() -> {
            if (season != lived) {
                keyframes.tailMap(season.tick(), false).clear();
                rearms.tailSet(season.tick(), false).clear();
                lived = season;
            }
            season.change(setUp);
            keyframes.put(season.tick(), season.copy());
        });
    }

    /** Hands over a copy of the season as lived so far, on the player's thread. */
    public void handOver(Consumer<Season> told) {
        order(() -> told.accept(lived.copy()));
    }

    /** Re-arms what the flow watch locked out. */
    public void rearm() {
        order(() -> {
            lived.rearm();
            rearms.add(lived.tick());
            // So that showing an earlier minute and coming back lives this again.
            keyframes.put(lived.tick(), lived.copy());
        });
    }

    /** Tells, on the player's thread, what the season is lived again from. */
    void keep(Consumer<Kept> told) {
        order(() -> told.accept(new Kept(lived.tick(), List.copyOf(lived.changes()), List.copyOf(rearms))));
    }

    @Override
    public void close() {
        order(() -> closed = true);
    }

    private void order(Runnable order) {
        orders.add(order);
    }

    private void loop() {
        try {
            while (!closed) {
                try {
                    turn();
                } catch (RuntimeException | Error e) {
                    recover();
                    onFailure.accept(e);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void turn() throws InterruptedException {
        long begun = System.nanoTime();
        obey(playing ? 0 : FRAME_NANOS);
        if (playing) {
            live(begun);
        }
        publish();
        long rest = FRAME_NANOS - (System.nanoTime() - begun);
        if (playing && rest > 0 && orders.isEmpty() && Double.isFinite(minutesPerSecond)) {
            obey(rest);
        }
    }

    /** A season that failed in the middle of a minute is not trusted: back to the last keyframe, time stands still. */
    private void recover() {
        playing = false;
        owed = 0;
        lived = keyframes.lastEntry().getValue().copy();
        season = lived;
        rearms.tailSet(lived.tick(), false).clear();
        try {
            publish();
        } catch (RuntimeException e) {
            // The last good frame stays on the screen.
            shown = null;
        }
    }

    private void obey(long waitNanos) throws InterruptedException {
        Runnable order = waitNanos > 0 ? orders.poll(waitNanos, TimeUnit.NANOSECONDS) : orders.poll();
        List<Runnable> all = new ArrayList<>();
        while (order != null) {
            all.add(order);
            order = orders.poll();
        }
        while (!all.isEmpty()) {
            Runnable next = all.remove(0);
            try {
                next.run();
            } catch (RuntimeException | Error e) {
                // What was ordered after it is still owed, above all that the player closes.
                orders.addAll(all);
                throw e;
            }
        }
    }

    /** Lives one frame's worth of minutes. */
    private void live(long begun) {
        if (Double.isFinite(minutesPerSecond)) {
            owed += minutesPerSecond * FRAME_NANOS / 1e9;
        } else {
            owed = CHUNK;
        }
        while (owed >= 1 && !season.over() && System.nanoTime() - begun < FRAME_NANOS) {
            step();
            owed -= 1;
        }
        owed = Math.min(owed, CHUNK);
        if (season.over()) {
            playing = false;
        }
    }

    private void step() {
        season.advance();
        if (season.tick() % KEYFRAME_TICKS == 0) {
            keyframes.put(season.tick(), season.copy());
        }
    }

    private void publish() {
        Frame last = newest.get();
        boolean same = last != null
                && last.snapshot().tick() == season.tick()
                && last.lived() == lived.tick()
                && last.playing() == playing
                && last.events().size() == lived.events().size()
                && shown == season.setUp();
        if (!same) {
            shown = season.setUp();
            newest.set(
                    new Frame(season.snapshot(), lived.series(), lived.events(), lived.tick(), lived.over(), playing));
        }
    }
}
