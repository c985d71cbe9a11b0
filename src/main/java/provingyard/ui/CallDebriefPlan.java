package provingyard.ui;

import java.util.EnumSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import javafx.application.Platform;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import provingyard.call.CallReview;
import provingyard.picture.Layer;
import provingyard.picture.Pixels;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.picture.YardPicture;
import provingyard.scenario.Point;
import provingyard.setup.SetUp;

/**
 * The debrief's yard: how likely each part was after a test, as a band along the mains and a disc at devices, with the
 * reading pinned where it was taken. The yard is painted off the window's thread, what is believed over it at once.
 */
final class CallDebriefPlan extends Region {

    private static final double RADIUS = 20;
    private static final double TALLEST = 352;

    /** Greatest share of a tall window. */
    private static final double SHARE = 0.56;

    private static final View.Free MARGIN = new View.Free(8, 8, 8, 30);

    private record Order(int width, int height, double density, Theme theme) {}

    private final Words words;
    private final CallReview review;
    private final ImageView view = new ImageView();
    private final Canvas canvas = new Canvas();
    private final Rectangle edge = new Rectangle();
    private final ExecutorService artist = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "call-debrief-plan");
        thread.setDaemon(true);
        return thread;
    });
    private Theme theme = Theme.LIGHT;
    private double lettering = 1;
    private CallDebriefArt.Moment moment;
    private Order drawn;
    private Order shown;

    CallDebriefPlan(Words words, CallReview review) {
        this.words = words;
        this.review = review;
        setId("call-debrief-plan");
        getStyleClass().add("call-debrief-plan");
        edge.setArcWidth(RADIUS);
        edge.setArcHeight(RADIUS);
        setClip(edge);
        getChildren().addAll(view, canvas);
        setMinWidth(0);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(CallDebriefWords.say(words, "review.plan"));
    }

    void look(Theme next, double size) {
        theme = next;
        lettering = size;
        requestLayout();
    }

    void show(CallDebriefArt.Moment next) {
        moment = next;
        setAccessibleText(CallDebriefWords.say(words, "review.plan"));
        overlay();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        Point size = review.site().scenario().yard().size();
        double tallest = getScene() == null
                ? TALLEST
                : Math.max(TALLEST, SHARE * getScene().getHeight());
        return Math.round(Math.min(tallest, width * size.y() / size.x() + MARGIN.bottom()));
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        edge.setWidth(getWidth());
        edge.setHeight(getHeight());
        view.setFitWidth(getWidth());
        view.setFitHeight(getHeight());
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        overlay();
        if (getWidth() < 2 || getHeight() < 2) {
            return;
        }
        double density = getScene() == null || getScene().getWindow() == null
                ? 1
                : Math.max(1, getScene().getWindow().getRenderScaleX());
        Order order = new Order((int) getWidth(), (int) getHeight(), density, theme);
        if (!order.equals(drawn)) {
            drawn = order;
            try {
                artist.execute(() -> paint(order));
            } catch (RejectedExecutionException e) {
                // The screen is left: nobody waits for the picture.
                drawn = null;
            }
        }
    }

    private void paint(Order order) {
        if (!order.equals(drawn)) {
            return;
        }
        int w = (int) Math.ceil(order.width() * order.density());
        int h = (int) Math.ceil(order.height() * order.density());
        View.Free free = new View.Free(
                MARGIN.left() * order.density(),
                MARGIN.top() * order.density(),
                MARGIN.right() * order.density(),
                MARGIN.bottom() * order.density());
        View whole = View.fit(review.site().scenario().yard().size(), w, h, free, order.theme())
                .layers(EnumSet.of(Layer.PIPES))
                .labels(false);
        Pixels pixels =
                YardPicture.pixels(YardPicture.render(review.site().scenario(), SetUp.CLOCK_ALONE, null, whole));
        Platform.runLater(() -> {
            if (order.equals(drawn)) {
                view.setImage(CanvasSurface.image(pixels));
                shown = order;
            }
        });
    }

    private View view() {
        return View.fit(review.site().scenario().yard().size(), (int) getWidth(), (int) getHeight(), MARGIN, theme);
    }

    private void overlay() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (moment == null || getWidth() < 2) {
            return;
        }
        new CallDebriefArt(review, view(), lettering, moment).draw(new CanvasSurface(g));
    }

    /** Whether the newest yard is drawn. */
    boolean isDrawn() {
        return drawn != null && drawn.equals(shown);
    }

    void dispose() {
        artist.shutdownNow();
    }
}
