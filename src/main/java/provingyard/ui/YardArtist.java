package provingyard.ui;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javafx.application.Platform;
import provingyard.picture.Backdrop;
import provingyard.picture.CellField;
import provingyard.picture.Layer;
import provingyard.picture.Light;
import provingyard.picture.View;
import provingyard.picture.YardShapes;
import provingyard.season.Snapshot;
import provingyard.setup.SetUp;

/**
 * Draws what stands still (ground and canopies in this minute's light) off the window's thread, at its own pace: the
 * newest order wins, and at most some eight pictures a second are made.
 */
final class YardArtist {

    /** What is to be drawn: the view in the interface's own theme, and image pixels to one px. */
    record Order(View plan, double density, SetUp setUp, Snapshot snapshot) {}

    /** What was drawn. */
    record Made(View plan, double density, Backdrop.Picture ground, Backdrop.Picture top) {}

    /** Height in m at which the wind's shelter is shown: that of a sensor on a post. */
    static final double SHELTER_HEIGHT = 2;

    private static final long REST_MILLIS = 120;

    /** Degrees between the winds for which shelter is worked out. */
    private static final int WIND_STEP = 15;

    private final YardModel model;
    private final Consumer<Made> told;
    private final Backdrop backdrop;
    private final AtomicReference<Order> wanted = new AtomicReference<>();
    private final AtomicBoolean busy = new AtomicBoolean();
    private final Map<Integer, CellField> shelters = new HashMap<>();
    private List<Object> topOf;
    private Backdrop.Picture top;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread made = new Thread(work, "artist");
        made.setDaemon(true);
        return made;
    });

    /** @param told takes each picture on the window's thread */
    YardArtist(YardModel model, YardShapes shapes, Consumer<Made> told) {
        this.model = model;
        this.told = told;
        backdrop = new Backdrop(shapes);
    }

    /** Whether all that was ordered is drawn. */
    boolean idle() {
        return wanted.get() == null && !busy.get();
    }

    void draw(Order order) {
        wanted.set(order);
        if (busy.compareAndSet(false, true)) {
            start(0);
        }
    }

    private void start(long afterMillis) {
        try {
            thread.schedule(this::work, afterMillis, TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException e) {
            // The window closes: nobody waits for the picture.
            busy.set(false);
        }
    }

    private void work() {
        Order order = wanted.getAndSet(null);
        if (order == null) {
            busy.set(false);
            // An order may have come between the two lines above.
            if (wanted.get() != null && busy.compareAndSet(false, true)) {
                start(0);
            }
            return;
        }
        Made made = made(order);
        Platform.runLater(() -> told.accept(made));
        start(REST_MILLIS);
    }

    private Made made(Order order) {
        Snapshot snapshot = order.snapshot();
        View plan = order.plan().shows(Layer.SHELTER)
                ? order.plan().shelter(shelter(snapshot.sky().windFrom()))
                : order.plan();
        Backdrop.Picture ground = backdrop.ground(plan, order.density(), snapshot);
        boolean cold = plan.shows(Layer.COLD);
        List<Object> key = List.of(
                plan.layers(java.util.Set.of()).shelter(null),
                order.density(),
                Light.of(plan.theme(), snapshot.sky()),
                cold ? List.of(snapshot, order.setUp()) : List.of());
        if (!key.equals(topOf)) {
            topOf = key;
            top = backdrop.top(plan, order.density(), order.setUp(), snapshot);
        }
        return new Made(order.plan(), order.density(), ground, top);
    }

    private CellField shelter(double windFrom) {
        int bearing = (int) Math.round(windFrom / WIND_STEP) * WIND_STEP % 360;
        return shelters.computeIfAbsent(bearing, from -> {
            Snapshot now = model.frameProperty().get().snapshot();
            return new CellField(now.nx(), now.ny(), model.site().siting().windShares(SHELTER_HEIGHT, from));
        });
    }

    void close() {
        thread.shutdownNow();
    }
}
