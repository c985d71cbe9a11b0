package provingyard.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Tooltip;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import provingyard.picture.HitTest;
import provingyard.picture.Java2DSurface;
import provingyard.picture.Layer;
import provingyard.picture.Marks;
import provingyard.picture.Pixels;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.picture.YardPainter;
import provingyard.picture.YardPicture;
import provingyard.picture.YardShapes;
import provingyard.scenario.Point;
import provingyard.season.Snapshot;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * The drawn yard: two cached pictures (ground and canopies) made off the window's thread, two canvases for what moves,
 * and a focusable node on every sensor. Pan by dragging, zoom with the wheel or + and −, fit with 0.
 */
final class YardPane extends Pane {

    private static final double ZOOM = 1.15;
    private static final double CLOSEST = 120;
    private static final double NUDGE = 0.25;

    /** What was drawn last, so that nothing is drawn twice. */
    private record Drawn(View view, Snapshot snapshot, SetUp setUp) {}

    private final YardModel model;
    private final Words words;
    private final YardShapes shapes;
    private final ImageView ground = new ImageView();
    private final Canvas live = new Canvas();
    private final ImageView top = new ImageView();
    private final Canvas marks = new Canvas();
    private final Pane sensors = new Pane();
    private final Map<String, SensorNode> nodes = new LinkedHashMap<>();
    private final ExecutorService artist = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "artist");
        thread.setDaemon(true);
        return thread;
    });
    private final Tooltip tooltip = new Tooltip();
    private final ThingWords things;
    private final PlacingLayer placing;

    private Theme theme = Theme.LIGHT;
    private View.Free free = View.Free.ALL;
    private View view;
    private View cached;
    private View asked;
    private boolean fitted = true;
    private Drawn drawn;
    private Point pressed;
    private double pressedX;
    private double pressedY;
    private String hovered;
    private double seconds;

    YardPane(YardModel model, Words words) {
        this.model = model;
        this.words = words;
        shapes = YardShapes.of(model.scenario());
        things = new ThingWords(model, words);
        placing = new PlacingLayer(model, words, shapes);
        setId("yard");
        setFocusTraversable(true);
        getStyleClass().add("yard-canvas");
        setAccessibleText(words.say("yard.accessible"));
        ground.setMouseTransparent(true);
        top.setMouseTransparent(true);
        live.setMouseTransparent(true);
        marks.setMouseTransparent(true);
        sensors.setPickOnBounds(false);
        Region ring = new Region();
        ring.getStyleClass().add("focus-ring");
        ring.setMouseTransparent(true);
        ring.setManaged(false);
        ring.visibleProperty().bind(focusedProperty());
        getChildren().addAll(ground, live, placing.map(), top, marks, sensors, placing.over(), ring);
        layoutBoundsProperty().addListener(o -> ring.resizeRelocate(0, 0, getWidth(), getHeight()));
        setOnMousePressed(this::pressed);
        setOnMouseDragged(this::dragged);
        setOnMouseReleased(this::released);
        setOnMouseMoved(this::moved);
        setOnMouseExited(e -> hover(null));
        setOnScroll(this::scrolled);
        setOnKeyPressed(this::key);
        Tooltip.install(this, tooltip);
        model.handProperty()
                .addListener((o, was, is) ->
                        setAccessibleText(is == null ? words.say("yard.accessible") : placing.spoken()));
    }

    void theme(Theme next) {
        theme = next;
        view = null;
    }

    /** What panels cover, in px. */
    void free(View.Free next) {
        if (!next.equals(free)) {
            free = next;
            view = null;
        }
    }

    @Override
    protected void layoutChildren() {
        double w = Math.max(1, getWidth());
        double h = Math.max(1, getHeight());
        live.setWidth(w);
        live.setHeight(h);
        marks.setWidth(w);
        marks.setHeight(h);
        ground.setFitWidth(w);
        ground.setFitHeight(h);
        top.setFitWidth(w);
        top.setFitHeight(h);
        sensors.resizeRelocate(0, 0, w, h);
        placing.resize(w, h);
        view = null;
    }

    /** Draws what changed; called once a pulse. */
    void pulse(boolean running) {
        if (getWidth() < 2 || getHeight() < 2 || model.frameProperty().get() == null) {
            return;
        }
        Snapshot snapshot = model.frameProperty().get().snapshot();
        look(snapshot);
        if (running) {
            seconds += 1 / 30.0;
        }
        View now = view.marks(markings())
                .seconds(running ? seconds : 0)
                .in(words.language(), words.units().get());
        placing.pulse(now);
        Drawn next = new Drawn(now, snapshot, model.setUp());
        if (next.equals(drawn)) {
            return;
        }
        drawn = next;
        still(now);
        live.getGraphicsContext2D().clearRect(0, 0, live.getWidth(), live.getHeight());
        marks.getGraphicsContext2D().clearRect(0, 0, marks.getWidth(), marks.getHeight());
        YardPainter.live(new CanvasSurface(live.getGraphicsContext2D()), shapes, now, snapshot);
        YardPainter.marks(new CanvasSurface(marks.getGraphicsContext2D()), shapes, now, model.setUp(), snapshot);
        placeNodes(now);
    }

    private void look(Snapshot snapshot) {
        Theme under = theme.under(snapshot.sky().sunAltitude());
        Set<Layer> layers = model.layersProperty().get();
        int w = (int) Math.round(getWidth());
        int h = (int) Math.round(getHeight());
        if (view == null || view.width() != w || view.height() != h) {
            View fit =
                    View.fit(model.scenario().yard().size(), w, h, free, under).layers(layers);
            view = fitted || view == null && cached == null ? fit : fit.at(lastScale(), lastX(), lastY());
        }
        view = view.theme(under).layers(layers);
    }

    private double lastScale() {
        return cached.scale();
    }

    private double lastX() {
        return cached.centreX();
    }

    private double lastY() {
        return cached.centreY();
    }

    private Marks markings() {
        Marks m = Marks.NONE.select(model.selectedProperty().get()).hover(hovered);
        YardModel.Hand hand = model.handProperty().get();
        return hand == null ? m : m.drag(new Marks.Drag(hand.kind(), hand.spot(), hand.fits()));
    }

    /** Orders new ground and canopy pictures where the view is another one. */
    private void still(View now) {
        View plain =
                now.marks(Marks.NONE).seconds(0).layers(Set.of()).labels(false).in("en", now.units());
        if (plain.equals(asked)) {
            return;
        }
        asked = plain;
        artist.execute(() -> {
            if (!plain.equals(asked)) {
                return;
            }
            Pixels below = draw(plain, true);
            Pixels above = draw(plain, false);
            Platform.runLater(() -> {
                cached = plain;
                ground.setImage(CanvasSurface.image(below));
                top.setImage(CanvasSurface.image(above));
            });
        });
    }

    private Pixels draw(View of, boolean below) {
        Java2DSurface surface = new Java2DSurface(of.width(), of.height());
        if (below) {
            YardPainter.ground(surface, shapes, of);
        } else {
            YardPainter.top(surface, shapes, of);
        }
        return YardPicture.pixels(surface.image());
    }

    private void placeNodes(View now) {
        nodes.keySet().removeIf(id -> {
            boolean gone = model.setUp().sensor(id).isEmpty();
            if (gone) {
                sensors.getChildren().remove(nodes.get(id));
            }
            return gone;
        });
        for (Placement placement : model.setUp().sensors()) {
            SensorNode node = nodes.computeIfAbsent(placement.id(), id -> {
                SensorNode made = new SensorNode(model, words, placement, this);
                sensors.getChildren().add(made);
                return made;
            });
            node.at(now, model.site().siting().place(placement));
        }
    }

    /** The place on the yard under a point of the scene. */
    Point yardAt(double sceneX, double sceneY) {
        var local = sceneToLocal(sceneX, sceneY);
        return view == null ? new Point(0, 0) : view.yard(local.getX(), local.getY());
    }

    /** Whether a point of the scene lies over the yard's drawing. */
    boolean covers(double sceneX, double sceneY) {
        var local = sceneToLocal(sceneX, sceneY);
        return contains(local);
    }

    private void pressed(MouseEvent e) {
        requestFocus();
        pressed = view == null ? null : new Point(view.centreX(), view.centreY());
        pressedX = e.getX();
        pressedY = e.getY();
        if (model.handProperty().get() != null && e.getButton() == MouseButton.PRIMARY) {
            carryHandTo(e.getX(), e.getY());
            model.place();
            pressed = null;
        }
    }

    private void dragged(MouseEvent e) {
        if (pressed != null && view != null) {
            fitted = false;
            double dx = (e.getX() - pressedX) / view.scale();
            double dy = (e.getY() - pressedY) / view.scale();
            view = view.at(view.scale(), pressed.x() - dx, pressed.y() + dy);
        }
    }

    private void released(MouseEvent e) {
        boolean still = Math.abs(e.getX() - pressedX) < 4 && Math.abs(e.getY() - pressedY) < 4;
        if (pressed != null && still && view != null) {
            HitTest.Hit hit = HitTest.at(shapes, model.setUp(), view, e.getX(), e.getY());
            model.selectedProperty().set(hit.kind() == HitTest.Kind.SENSOR ? hit.id() : null);
        }
        pressed = null;
    }

    private void moved(MouseEvent e) {
        if (view == null) {
            return;
        }
        if (model.handProperty().get() != null) {
            carryHandTo(e.getX(), e.getY());
            return;
        }
        HitTest.Hit hit = HitTest.at(shapes, model.setUp(), view, e.getX(), e.getY());
        hover(hit);
    }

    private void carryHandTo(double x, double y) {
        YardModel.Hand hand = model.handProperty().get();
        model.carry(hand.kind(), hand.moving(), view.yard(x, y));
    }

    private void hover(HitTest.Hit hit) {
        hovered = hit == null ? null : hit.id();
        tooltip.setText(hit == null ? "" : things.say(hit));
    }

    private void scrolled(ScrollEvent e) {
        zoom(e.getDeltaY() > 0 ? ZOOM : 1 / ZOOM, e.getX(), e.getY());
        e.consume();
    }

    private void zoom(double factor, double x, double y) {
        if (view == null) {
            return;
        }
        fitted = false;
        double whole = View.fit(model.scenario().yard().size(), view.width(), view.height(), free, theme)
                .scale();
        double scale = Math.max(0.6 * whole, Math.min(CLOSEST, view.scale() * factor));
        Point under = view.yard(x, y);
        View next = view.at(scale, view.centreX(), view.centreY());
        Point now = next.yard(x, y);
        view = next.at(scale, next.centreX() + under.x() - now.x(), next.centreY() + under.y() - now.y());
    }

    /** Shows the whole yard. */
    void fit() {
        fitted = true;
        view = null;
    }

    void zoomBy(boolean closer) {
        zoom(closer ? ZOOM : 1 / ZOOM, getWidth() / 2, getHeight() / 2);
    }

    private void key(KeyEvent e) {
        YardModel.Hand hand = model.handProperty().get();
        double carried = e.isShiftDown() ? YardModel.FINE_STEP : YardModel.STEP;
        double step = hand != null ? carried : e.isShiftDown() ? 4 * NUDGE : NUDGE;
        switch (e.getCode()) {
            case LEFT -> nudge(hand, -step, 0);
            case RIGHT -> nudge(hand, step, 0);
            case UP -> nudge(hand, 0, step);
            case DOWN -> nudge(hand, 0, -step);
            case ENTER -> model.place();
            case ESCAPE -> model.drop();
            case PLUS, ADD, EQUALS -> zoomBy(true);
            case MINUS, SUBTRACT -> zoomBy(false);
            case DIGIT0, NUMPAD0 -> fit();
            default -> {
                return;
            }
        }
        e.consume();
    }

    private void nudge(YardModel.Hand hand, double east, double north) {
        if (hand != null) {
            model.nudge(east, north);
        } else if (view != null) {
            fitted = false;
            view = view.at(view.scale(), view.centreX() + 4 * east, view.centreY() + 4 * north);
        }
    }

    /** The focusable node of a sensor, once drawn. */
    SensorNode node(String id) {
        return Objects.requireNonNull(nodes.get(id), id);
    }

    void dispose() {
        artist.shutdownNow();
        placing.dispose();
    }
}
