package provingyard.ui;

import java.util.List;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;
import provingyard.season.Series;
import provingyard.season.Shown;
import provingyard.season.Snapshot;
import provingyard.setup.SetUp;

/**
 * Lives a season on its own thread. Wall time decides how many minutes are lived, never how long one is, so what is
 * watched at any speed equals a run without a window. Orders come through a queue and act between minutes; the newest
 * frame is published for the window to draw.
 *
 * <p>Looking back never loses what was lived: the minute shown is a copy that replays from the nearest keyframe, while
 * the season itself stands at the last minute lived. Of several minutes asked for in a row only the newest is worked
 * out, and one on its way gives up for a newer one.
 */
public final class SeasonPlayer implements AutoCloseable {

    /**
     * What the window draws.
     *
     * @param snapshot the yard at the minute shown
     * @param series hours lived
     * @param shown what flow and soil sensors showed over the minutes lived
     * @param events all that happened so far, in order
     * @param lived minutes lived (the minute shown may lie before)
     * @param over the season was lived to its end
     * @param playing time runs
     * @param setUp the set-up in force at the minute shown
     * @param practiceFrom the minute from which a lived season is tried otherwise, or {@link #NO_PRACTICE}
     */
    public record Frame(
            Snapshot snapshot,
            Series series,
            List<Shown> shown,
            List<SeasonEvent> events,
            long lived,
            boolean over,
            boolean playing,
            SetUp setUp,
            long practiceFrom) {

        /** The same with another moment of the yard. */
        Frame showing(Snapshot moment) {
            return new Frame(moment, series, shown, events, lived, over, playing, setUp, practiceFrom);
        }

        /** Whether what is shown is a lived season that is tried otherwise. */
        public boolean practice() {
            return practiceFrom != NO_PRACTICE;
        }
    }

    /** Where the trainee's own season is shown. */
    static final long NO_PRACTICE = -1;

    /** The trainee's own season, put aside while it is tried otherwise from a minute on. */
    private record Own(Season lived, Keyframes keyframes, long from) {}

    /** Something to be done on the player's thread. */
    private interface Order {
        void act();
    }

    /** The order to show another minute; a newer one makes it void. */
    private record Show(SeasonPlayer player, long tick) implements Order {
        @Override
        public void act() {
            player.goTo(tick);
        }
    }

    /** A question or a small deed that another order need not wait for. */
    private record Aside(Order deed) implements Order {
        @Override
        public void act() {
            deed.act();
        }
    }

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

    private final LinkedBlockingQueue<Order> orders = new LinkedBlockingQueue<>();
    private final AtomicReference<Frame> newest = new AtomicReference<>();
    private final Consumer<Throwable> onFailure;
    private final Thread thread;

    private Keyframes keyframes;
    private Season season;
    private Season lived;
    private Own own;
    private double minutesPerSecond;
    private boolean playing;
    private double owed;
    private boolean closed;
    private SetUp set;

    /**
     * Starts the thread; time stands still at first.
     *
     * @param onFailure told, on the player's thread, when something unforeseen happens; the player then goes back to
     *     its last keyframe and stands still
     */
    public SeasonPlayer(Season start, Consumer<Throwable> onFailure) {
        this(new SeasonReplay.Lived(start, List.of()), onFailure);
    }

    /** Goes on with a season that was lived before. */
    SeasonPlayer(SeasonReplay.Lived begun, Consumer<Throwable> onFailure) {
        this.season = begun.season();
        this.lived = season;
        this.onFailure = onFailure;
        keyframes = new Keyframes(
                season.snapshot().wetness().length, Runtime.getRuntime().maxMemory());
        begun.keyframes().forEach(keyframes::pin);
        keyframes.pin(season);
        publish();
        thread = new Thread(this::loop, "season");
        thread.setDaemon(true);
        thread.start();
    }

    /** The newest frame. */
    public Frame frame() {
        return newest.get();
    }

    /**
     * Lets time run at a speed in minutes of the season per second of the clock; infinite for as fast as it goes. From a
     * minute in the past it plays what was lived again, then lives on.
     */
    public void play(double speed) {
        orders.add(() -> {
            minutesPerSecond = speed;
            owed = 0;
            playing = !season.over();
        });
    }

    /** Stops time. */
    public void pause() {
        orders.add(() -> playing = false);
    }

    /** Goes on to the next thing that happens after the minute shown, and stands still there. */
    public void nextEvent() {
        orders.add(() -> {
            playing = false;
            long next = Happenings.after(lived.events(), season.tick());
            if (next >= 0) {
                goTo(next);
                return;
            }
            season = lived;
            int known = season.events().size();
            while (!season.over() && Happenings.count(season.events(), known) == 0 && !interrupted()) {
                liveUntilPublished(season.end(), known);
            }
        });
    }

    /** Goes back to the last thing that happened before the minute shown, or to the first minute. */
    public void previousEvent() {
        orders.add(() -> goTo(Math.max(0, Happenings.before(lived.events(), season.tick()))));
    }

    /** Shows another minute: back by replay from the nearest keyframe, forward by living on. */
    public void show(long tick) {
        orders.add(new Show(this, tick));
    }

    /** Changes the set-up at the minute shown. When that lies in the past, the season is lived again from there. */
    public void change(SetUp setUp) {
        orders.add(() -> {
            if (season != lived) {
                keyframes.forgetAfter(season.tick());
                lived = season;
            }
            season.change(setUp);
            keyframes.pin(season);
        });
    }

    /**
     * Tries the season otherwise from the minute shown: what was lived so far is put aside whole, and comes back by
     * {@link #backToOwn()}. In practice already, it goes on from the minute shown.
     */
    void practise() {
        orders.add(() -> {
            playing = false;
            long tick = season.tick();
            if (own == null) {
                own = new Own(lived, keyframes, tick);
                keyframes = keyframes.upTo(tick);
            } else {
                keyframes.forgetAfter(tick);
            }
            lived = season == lived ? season.copy() : season;
            season = lived;
            keyframes.pin(lived);
        });
    }

    /** Ends practice: the trainee's own season is back, at its last minute lived. */
    void backToOwn() {
        orders.add(this::endPractice);
    }

    private void endPractice() {
        if (own != null) {
            playing = false;
            lived = own.lived();
            season = lived;
            keyframes = own.keyframes();
            own = null;
        }
    }

    /** Begins the season again under a set-up; what was lived is given up. */
    void restart(SetUp setUp) {
        orders.add(() -> {
            endPractice();
            playing = false;
            lived = keyframes.at(0).copy();
            season = lived;
            keyframes.forgetAfter(0);
            season.change(setUp);
            keyframes.pin(season);
        });
    }

    /** Hands over a copy of the season as lived so far, on the player's thread. */
    public void handOver(Consumer<Season> told) {
        orders.add(new Aside(() -> told.accept(lived.copy())));
    }

    /**
     * Asks the season as lived so far, on the player's thread; the question must not change it.
     *
     * @param told gets the answer, on the player's thread
     */
    public <T> void ask(Function<Season, T> question, Consumer<T> told) {
        orders.add(new Aside(() -> told.accept(question.apply(lived))));
    }

    /** Re-arms what the flow watch locked out. */
    public void rearm() {
        orders.add(() -> {
            lived.rearm();
            keyframes.pin(lived);
        });
    }

    /** Tells, on the player's thread, what the trainee's own season is lived again from; practice is not kept. */
    void keep(Consumer<Kept> told) {
        orders.add(new Aside(() -> {
            Season kept = own == null ? lived : own.lived();
            told.accept(new Kept(kept.tick(), List.copyOf(kept.changes()), kept.rearms()));
        }));
    }

    @Override
    public void close() {
        orders.add(() -> closed = true);
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
            Order next = orders.poll(rest, TimeUnit.NANOSECONDS);
            if (next != null) {
                obey(next);
                publish();
            }
        }
    }

    /** A season that failed in the middle of a minute is not trusted: back to the last keyframe, time stands still. */
    private void recover() {
        playing = false;
        owed = 0;
        lived = keyframes.last().copy();
        season = lived;
        try {
            publish();
        } catch (RuntimeException e) {
            // The last good frame stays on the screen.
            set = null;
        }
    }

    private void obey(long waitNanos) throws InterruptedException {
        obey(waitNanos > 0 ? orders.poll(waitNanos, TimeUnit.NANOSECONDS) : orders.poll());
    }

    /** Does this order and all that wait behind it; a minute to be shown gives way to a newer one right behind it. */
    private void obey(Order first) {
        Order order = first;
        while (order != null) {
            Order next = orders.peek();
            if (!(order instanceof Show && next instanceof Show)) {
                order.act();
            }
            order = orders.poll();
        }
    }

    /** Whether another order waits that ends this one; questions are answered in between. */
    private boolean interrupted() {
        while (orders.peek() instanceof Aside aside) {
            orders.poll();
            aside.act();
        }
        return !orders.isEmpty();
    }

    private void goTo(long tick) {
        playing = false;
        long to = Math.max(0, Math.min(tick, lived.end()));
        if (to >= lived.tick()) {
            season = lived;
            while (season.tick() < to && !interrupted()) {
                liveUntilPublished(to, Integer.MAX_VALUE);
            }
            return;
        }
        Season back = nearest(to);
        while (back.tick() < to && !(orders.peek() instanceof Show)) {
            back.advance();
        }
        if (back.tick() == to) {
            season = back;
        }
    }

    /** A copy of what was lived at or before a minute: what is shown already, where that lies nearer than a keyframe. */
    private Season nearest(long tick) {
        Season keyframe = keyframes.at(tick);
        boolean shownIsNearer = season != lived && season.tick() <= tick && season.tick() >= keyframe.tick();
        return shownIsNearer ? season : keyframe.copy();
    }

    /** Lives on towards a minute for one frame's time, or until something happens beyond so many events; publishes. */
    private void liveUntilPublished(long to, int known) {
        long begun = System.nanoTime();
        while (season.tick() < to && System.nanoTime() - begun < FRAME_NANOS && !happened(known)) {
            step();
        }
        publish();
    }

    private boolean happened(int known) {
        return season.eventCount() > known && Happenings.count(season.events(), known) > 0;
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

    /** Lives a minute, or plays one again where the minute shown lies in the past. */
    private void step() {
        season.advance();
        if (season == lived) {
            keyframes.pass(season);
        } else if (season.tick() == lived.tick()) {
            season = lived;
        }
    }

    private void publish() {
        Frame last = newest.get();
        boolean same = last != null
                && last.snapshot().tick() == season.tick()
                && last.lived() == lived.tick()
                && last.playing() == playing
                && last.events().size() == lived.eventCount()
                && last.practiceFrom() == practiceFrom()
                && set == season.setUp();
        if (same) {
            return;
        }
        set = season.setUp();
        boolean lookedBack = last != null
                && last.lived() == lived.tick()
                && last.events().size() == lived.eventCount()
                && last.practiceFrom() == practiceFrom();
        newest.set(new Frame(
                season.snapshot(),
                lookedBack ? last.series() : lived.series(),
                lookedBack ? last.shown() : lived.shown(),
                lookedBack ? last.events() : lived.events(),
                lived.tick(),
                lived.over(),
                playing,
                set,
                practiceFrom()));
    }

    private long practiceFrom() {
        return own == null ? NO_PRACTICE : own.from();
    }
}
