package provingyard.ui;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import javafx.application.Platform;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import provingyard.picture.Pixels;
import provingyard.picture.Theme;
import provingyard.picture.YardPicture;
import provingyard.scenario.Scenario;

/** The sites' small pictures, drawn off the window's thread and kept, so that nothing flickers when cards are made anew. */
final class SitePictures {

    private static final int DENSITY = 2;
    private static final int MOST_KEPT = 120;

    private record Order(String site, int width, int height, String theme) {}

    private final Map<Order, Image> kept = new ConcurrentHashMap<>();
    private final ExecutorService artist = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "cards");
        thread.setDaemon(true);
        return thread;
    });
    private Theme theme = Theme.LIGHT;

    void theme(Theme next) {
        theme = next;
    }

    /** Draws a site's picture into a view, now where it is kept, else soon. */
    void draw(Scenario site, int width, int height, ImageView into) {
        Order order = new Order(site.id(), width, height, theme.name());
        Image ready = kept.get(order);
        into.setUserData(order);
        if (ready != null) {
            into.setImage(ready);
            return;
        }
        Theme now = theme;
        try {
            artist.execute(() -> paint(site, order, now, into));
        } catch (RejectedExecutionException e) {
            // The sheet is being left.
            into.setImage(null);
        }
    }

    private void paint(Scenario site, Order order, Theme now, ImageView into) {
        if (!order.equals(into.getUserData())) {
            return;
        }
        Pixels pixels =
                YardPicture.pixels(YardPicture.thumbnail(site, DENSITY * order.width(), DENSITY * order.height(), now));
        Platform.runLater(() -> {
            Image image = kept.computeIfAbsent(order, o -> CanvasSurface.image(pixels));
            if (kept.size() > MOST_KEPT) {
                kept.clear();
            }
            if (order.equals(into.getUserData())) {
                into.setImage(image);
            }
        });
    }

    void dispose() {
        artist.shutdownNow();
    }
}
