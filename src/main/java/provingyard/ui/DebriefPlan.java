package provingyard.ui;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import javafx.application.Platform;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import provingyard.picture.Layer;
import provingyard.picture.Marks;
import provingyard.picture.Pixels;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.picture.YardPicture;
import provingyard.scenario.Point;
import provingyard.season.Site;
import provingyard.setup.Placement;
import provingyard.study.Debrief;

/** The debrief's plan: the trainee's sensors, and the mark's as ghosts where they are others. Drawn off the window's thread. */
final class DebriefPlan extends Region {

    private static final double RADIUS = 20;
    private static final double TALLEST = 330;

    /** Greatest share of a tall window. */
    private static final double SHARE = 0.46;

    /** Room for a sensor's sign at the yard's edge, px. */
    private static final View.Free MARGIN = new View.Free(14, 30, 14, 2);

    /** m within which two sensors stand at the same place. */
    private static final double NEAR = 1;

    private record Order(Debrief debrief, int width, int height, double density, Theme theme, double lettering) {}

    private final Words words;
    private final ImageView view = new ImageView();
    private final Rectangle edge = new Rectangle();
    private final ExecutorService artist = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "debrief-plan");
        thread.setDaemon(true);
        return thread;
    });
    private Theme theme = Theme.LIGHT;
    private double lettering = 1;
    private Debrief debrief;
    private Order drawn;
    private Order shown;

    DebriefPlan(Words words) {
        this.words = words;
        setId("debrief-plan");
        edge.setArcWidth(RADIUS);
        edge.setArcHeight(RADIUS);
        view.setClip(edge);
        getChildren().add(view);
        setMinWidth(0);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    void look(Theme next, double size) {
        theme = next;
        lettering = size;
        requestLayout();
    }

    void show(Debrief next) {
        debrief = next;
        setAccessibleText(words.say("debrief.plan"));
        requestLayout();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        if (debrief == null) {
            return TALLEST;
        }
        Point size = debrief.season().site().scenario().yard().size();
        double tallest = getScene() == null
                ? TALLEST
                : Math.max(TALLEST, SHARE * getScene().getHeight());
        return Math.round(Math.min(tallest, width * size.y() / size.x()));
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
        if (debrief == null || getWidth() < 2 || getHeight() < 2) {
            return;
        }
        double density = getScene() == null || getScene().getWindow() == null
                ? 1
                : Math.max(1, getScene().getWindow().getRenderScaleX());
        Order order = new Order(debrief, (int) getWidth(), (int) getHeight(), density, theme, lettering);
        if (!order.equals(drawn)) {
            drawn = order;
            try {
                artist.execute(() -> paint(order));
            } catch (RejectedExecutionException e) {
                // The window closes: nobody waits for the picture.
                drawn = null;
            }
        }
    }

    private void paint(Order order) {
        if (!order.equals(drawn)) {
            return;
        }
        Pixels pixels = YardPicture.pixels(YardPicture.render(
                order.debrief().season().site().scenario(),
                order.debrief().season().setUp(),
                null,
                view(order)));
        Platform.runLater(() -> {
            if (order.equals(drawn)) {
                Image image = CanvasSurface.image(pixels);
                view.setImage(image);
                shown = order;
            }
        });
    }

    private View view(Order order) {
        int w = (int) Math.ceil(order.width() * order.density());
        int h = (int) Math.ceil(order.height() * order.density());
        Point size = order.debrief().season().site().scenario().yard().size();
        return View.fit(size, w, h, MARGIN, order.theme())
                .layers(EnumSet.noneOf(Layer.class))
                .labels(false)
                .in(words.language(), words.units().get())
                .marks(Marks.NONE.ghosts(ghosts(order.debrief())).iced(iced(order.debrief())));
    }

    private static List<String> iced(Debrief debrief) {
        return debrief.chronicle().icedByWalk().entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The mark's sensors that stand elsewhere than the trainee's, or that the trainee has not. */
    static List<Placement> ghosts(Debrief debrief) {
        List<Placement> ghosts = new ArrayList<>();
        debrief.mark().ifPresent(mark -> {
            for (Placement placement : mark.setUp().sensors()) {
                Optional<Placement> same = debrief.season().setUp().of(placement.kind()).stream()
                        .filter(p -> near(debrief.season().site(), p, placement))
                        .findFirst();
                if (same.isEmpty()) {
                    ghosts.add(placement);
                }
            }
        });
        return ghosts;
    }

    private static boolean near(Site site, Placement one, Placement other) {
        return site.siting().place(one).distance(site.siting().place(other)) <= NEAR;
    }

    /** Whether the newest picture is drawn. */
    boolean isDrawn() {
        return drawn != null && drawn.equals(shown);
    }

    void dispose() {
        artist.shutdownNow();
    }
}
