package provingyard.ui;

import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.event.EventHandler;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import provingyard.picture.Backdrop;
import provingyard.picture.HitTest;
import provingyard.picture.Java2DSurface;
import provingyard.picture.Layer;
import provingyard.picture.Marks;
import provingyard.picture.Path;
import provingyard.picture.Theme;
import provingyard.picture.Tone;
import provingyard.picture.View;
import provingyard.picture.YardPainter;
import provingyard.picture.YardShapes;
import provingyard.scenario.Point;
import provingyard.season.Snapshot;
import provingyard.setup.Placement;

/**
 * The drawn yard: pictures of ground and canopies made off the window's thread, canvases for what moves and for marks, a
 * focusable node on every sensor, and a plate that names what is pointed at. Pan by dragging, zoom with the wheel or +
 * and −, fit with 0, layers with Shift and 1 to 6.
 */
final class YardPane extends Pane {

    private static final double ZOOM = 1.15;
    private static final double CLOSEST = 120;
    private static final double NUDGE = 0.25;

    /** Longest step of moving water in s, after which a slow window does not jump. */
    private static final double LONGEST_STEP = 0.1;

    private static final double NANOS = 1e9;

    private final YardModel model;
    private final Words words;
    private final YardShapes shapes;
    private final LivePicture plan = new LivePicture();
    private final LivePicture marks = new LivePicture();
    private final Pane sensors = new Pane();
    private final ThingPlate plate = new ThingPlate();
    private final BooleanProperty still = new SimpleBooleanProperty(this, "still");
    private final Map<String, SensorNode> nodes = new LinkedHashMap<>();
    private final YardArtist artist;
    private final ThingWords things;
    private final PlacingLayer placing;
    private final List<HitTest.Hit> tour;
    private final EventHandler<KeyEvent> layerKeys = this::layerKey;

    private List<Placement> ghosts = List.of();
    private Theme theme = Theme.LIGHT;
    private double lettering = 1;
    private final Region ring = new Region();
    private View.Free free = View.Free.ALL;
    private View view;
    private View last;
    private YardArtist.Made shown;
    private BufferedImage names;
    private boolean fitted = true;
    private YardArtist.Order ordered;
    private double density = 1;
    private List<Object> sized;
    private List<Object> drawnPlan;
    private List<Object> drawnNames;
    private List<Object> drawnMarks;
    private List<Object> saidOf;
    private Point pressed;
    private double pressedX;
    private double pressedY;
    private HitTest.Hit hovered;
    private HitTest.Hit pinned;
    private Point pointer = new Point(0, 0);
    private double seconds;
    private long before;
    private double laidWidth;
    private double laidHeight;

    YardPane(YardModel model, Words words) {
        this.model = model;
        this.words = words;
        shapes = YardShapes.of(model.scenario());
        things = new ThingWords(model, words);
        placing = new PlacingLayer(model, words, shapes);
        tour = HitTest.things(shapes);
        artist = new YardArtist(model, shapes, this::show);
        setId("yard");
        setFocusTraversable(true);
        getStyleClass().add("yard-canvas");
        sensors.setPickOnBounds(false);
        ring.getStyleClass().add("focus-ring");
        ring.setMouseTransparent(true);
        ring.setManaged(false);
        ring.visibleProperty().bind(focusedProperty());
        getChildren().addAll(plan.node(), marks.node(), sensors, placing.over(), plate, ring);
        Rectangle edge = new Rectangle();
        edge.widthProperty().bind(widthProperty());
        edge.heightProperty().bind(heightProperty());
        setClip(edge);
        setOnMousePressed(this::pressed);
        setOnMouseDragged(this::dragged);
        setOnMouseReleased(this::released);
        setOnMouseMoved(this::moved);
        setOnMouseExited(e -> hovered = null);
        setOnScroll(this::scrolled);
        setOnKeyPressed(this::key);
        sceneProperty().addListener((o, old, scene) -> {
            if (old != null) {
                old.removeEventHandler(KeyEvent.KEY_PRESSED, layerKeys);
            }
            if (scene != null) {
                scene.addEventHandler(KeyEvent.KEY_PRESSED, layerKeys);
            }
        });
        model.selectedProperty().addListener((o, old, id) -> {
            if (id != null) {
                pin(null);
            }
        });
        words.follow(this, () -> pin(pinned));
        model.handProperty().addListener(o -> pin(pinned));
        pin(null);
    }

    /** Whether moving things stand still even while time runs. */
    BooleanProperty stillProperty() {
        return still;
    }

    /** Changes the look; {@code size} is that of the plan's texts beside the theme's. */
    void look(Theme next, double size) {
        theme = next;
        lettering = size;
        view = null;
    }

    /** The mark's sensors, shown beside the trainee's. */
    void ghosts(List<Placement> next) {
        ghosts = next;
    }

    /** Shows sensors that nobody may move. */
    void onlyLook() {
        sensors.setDisable(true);
        sensors.setMouseTransparent(true);
    }

    /** Lays a picture of the pane's size over the ground and canopies, under heads, fittings and sensors. */
    void layUnderMarks(javafx.scene.Node picture) {
        getChildren().add(getChildren().indexOf(marks.node()), picture);
    }

    /** What is seen now, with texts as the plan's; null before the first pulse. */
    View view() {
        return view == null
                ? null
                : view.lettering(lettering).in(words.language(), words.units().get());
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
        if (w == laidWidth && h == laidHeight) {
            return;
        }
        laidWidth = w;
        laidHeight = h;
        sensors.resizeRelocate(0, 0, w, h);
        ring.resizeRelocate(0, 0, w, h);
        placing.resize(w, h);
        view = null;
    }

    /** Gives the overlays the pane's size at the window's scale, once for each. */
    private void size(double pixels) {
        List<Object> next = List.of(getWidth(), getHeight(), pixels);
        if (next.equals(sized)) {
            return;
        }
        sized = next;
        density = pixels;
        for (LivePicture overlay : List.of(plan, marks)) {
            overlay.size(getWidth(), getHeight(), pixels);
        }
        drawnPlan = null;
        drawnNames = null;
        drawnMarks = null;
    }

    private double windowScale() {
        return getScene() == null || getScene().getWindow() == null
                ? 1
                : Math.max(1, getScene().getWindow().getRenderScaleX());
    }

    /** Draws what changed; called once a pulse. */
    void pulse(boolean running) {
        if (getWidth() < 2 || getHeight() < 2 || model.frameProperty().get() == null) {
            return;
        }
        Snapshot snapshot = model.frameProperty().get().snapshot();
        size(windowScale());
        look();
        step(running && !still.get());
        String chosen = pinned != null ? pinned.id() : model.selectedProperty().get();
        View still = view.lettering(lettering)
                .in(words.language(), words.units().get())
                .marks(Marks.NONE.select(chosen));
        order(still, snapshot);
        View now = still.theme(theme.under(snapshot.sky().sunAltitude()));
        drawPlan(now.seconds(seconds).blurred(blurred(running)), snapshot);
        drawNames(now);
        drawMarks(now.marks(markings(chosen)), snapshot);
        placing.pulse(now.marks(markings(chosen)));
        say(snapshot);
    }

    private boolean blurred(boolean running) {
        return running && model.speedProperty().get().minutesPerSecond() > Speed.SIXTY.minutesPerSecond();
    }

    /** Whether the picture shows all that was asked of it so far. */
    boolean isDrawn() {
        return shown != null && artist.idle();
    }

    private void step(boolean moving) {
        long now = System.nanoTime();
        if (moving) {
            seconds += Math.min(LONGEST_STEP, (now - before) / NANOS);
        }
        before = now;
    }

    private void look() {
        Set<Layer> layers = model.layersProperty().get();
        int w = (int) Math.round(getWidth());
        int h = (int) Math.round(getHeight());
        if (view == null || view.width() != w || view.height() != h) {
            View fit = View.fit(model.scenario().yard().size(), w, h, free, theme);
            view = fitted || last == null ? fit : fit.at(last.scale(), last.centreX(), last.centreY());
        }
        view = view.layers(layers);
        last = view;
    }

    /** Orders new pictures of ground and canopies where view, minute or layers are others. */
    private void order(View still, Snapshot snapshot) {
        YardArtist.Order next = new YardArtist.Order(still, density, model.setUp(), snapshot);
        if (!next.equals(ordered)) {
            ordered = next;
            artist.draw(next);
        }
    }

    private void show(YardArtist.Made made) {
        shown = made;
    }

    /** Lays everything up to rain and wind together: what stands still as it was made last, what moves as it is now. */
    private void drawPlan(View now, Snapshot snapshot) {
        if (shown == null) {
            return;
        }
        List<Object> key = List.of(now, snapshot, shown, placing.mapped());
        if (key.equals(drawnPlan)) {
            return;
        }
        drawnPlan = key;
        YardArtist.Made made = shown;
        boolean same = made.density() == density
                && plan.fits(made.ground().width(), made.ground().height())
                && made.plan().at(view.scale(), view.centreX(), view.centreY()).equals(made.plan());
        if (same) {
            plan.draw(made.ground().premultiplied(), s -> over(s, made, now, snapshot));
        } else {
            plan.draw(s -> {
                s.fill(
                        Path.rectangle(0, 0, getWidth(), getHeight()),
                        now.theme().at(Tone.OFF_SITE));
                put(s, made, made.ground());
                over(s, made, now, snapshot);
            });
        }
    }

    private void over(Java2DSurface s, YardArtist.Made made, View now, Snapshot snapshot) {
        YardPainter.moving(s, shapes, now, snapshot);
        placing.paintMap(s, now);
        put(s, made, made.top());
        YardPainter.air(s, now, snapshot);
    }

    /** Lays a picture where it belongs in the view of now, which it may be a moment behind. */
    private void put(Java2DSurface s, YardArtist.Made made, Backdrop.Picture picture) {
        View of = made.plan();
        if (of.at(view.scale(), view.centreX(), view.centreY()).equals(of)
                && of.width() == view.width()
                && of.height() == view.height()
                && made.density() == density) {
            s.put(picture.image());
            return;
        }
        double k = view.scale() / of.scale();
        Point corner = of.yard(0, 0);
        s.put(picture.image(), view.x(corner.x()), view.y(corner.y()), of.width() * k, of.height() * k);
    }

    private void drawNames(View now) {
        List<Object> key = List.of(now, model.setUp());
        if (!key.equals(drawnNames)) {
            drawnNames = key;
            drawnMarks = null;
            int w = (int) Math.ceil(getWidth() * density);
            int h = (int) Math.ceil(getHeight() * density);
            Java2DSurface s = new Java2DSurface(w, h);
            s.scale(density, density);
            YardPainter.names(s, shapes, now, model.setUp());
            names = s.image();
        }
    }

    private void drawMarks(View now, Snapshot snapshot) {
        List<Object> key = List.of(now, model.setUp(), snapshot);
        if (!key.equals(drawnMarks)) {
            drawnMarks = key;
            marks.draw(s -> {
                s.put(names);
                YardPainter.marks(s, shapes, now, model.setUp(), snapshot);
            });
            placeNodes(now);
        }
    }

    private void say(Snapshot snapshot) {
        HitTest.Hit about = pinned != null ? pinned : model.handProperty().get() == null ? hovered : null;
        if (about == null) {
            plate.setVisible(false);
            saidOf = null;
            return;
        }
        List<Object> key = List.of(
                about, snapshot, model.setUp(), words.language(), words.units().get());
        if (!key.equals(saidOf)) {
            saidOf = key;
            plate.say(things.say(about));
        }
        boolean held = pinned != null;
        plate.beside(
                held ? view.x(about.at().x()) : pointer.x(),
                held ? view.y(about.at().y()) : pointer.y(),
                free.left(),
                0,
                getWidth() - free.right() + 12,
                getHeight());
    }

    private Marks markings(String chosen) {
        Marks m = Marks.NONE.ghosts(ghosts).select(chosen).hover(hovered == null ? null : hovered.id());
        YardModel.Hand hand = model.handProperty().get();
        return hand == null ? m : m.drag(new Marks.Drag(hand.kind(), hand.spot(), hand.fits()));
    }

    /** Keeps a thing's plate open, or lets go of it. */
    private void pin(HitTest.Hit thing) {
        pinned = thing;
        plate.getStyleClass().remove("pinned");
        String what = words.say("yard.accessible");
        if (thing != null) {
            plate.getStyleClass().add("pinned");
            what = things.say(thing).whole() + ". " + what;
        }
        setAccessibleText(model.handProperty().get() != null ? placing.spoken() : what);
    }

    /** What the plate says now. */
    ThingPlate plate() {
        return plate;
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
            boolean sensor = hit.kind() == HitTest.Kind.SENSOR;
            model.selectedProperty().set(sensor ? hit.id() : null);
            pin(sensor || hit.kind() == HitTest.Kind.OFF_SITE ? null : hit);
        }
        pressed = null;
    }

    private void moved(MouseEvent e) {
        if (view == null) {
            return;
        }
        pointer = new Point(e.getX(), e.getY());
        if (model.handProperty().get() != null) {
            carryHandTo(e.getX(), e.getY());
            return;
        }
        HitTest.Hit hit = HitTest.at(shapes, model.setUp(), view, e.getX(), e.getY());
        hovered = hit.kind() == HitTest.Kind.OFF_SITE ? null : hit;
    }

    private void carryHandTo(double x, double y) {
        YardModel.Hand hand = model.handProperty().get();
        model.carry(hand.kind(), hand.moving(), view.yard(x, y));
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
            case ESCAPE -> letGo(hand);
            case PAGE_DOWN -> visit(1);
            case PAGE_UP -> visit(-1);
            case PLUS, ADD, EQUALS -> zoomBy(true);
            case MINUS, SUBTRACT -> zoomBy(false);
            case DIGIT0, NUMPAD0 -> fit();
            default -> {
                return;
            }
        }
        e.consume();
    }

    /** Esc: first what is in hand, then the pinned plate, then the selection. */
    private void letGo(YardModel.Hand hand) {
        if (hand != null) {
            model.drop();
        } else if (pinned != null) {
            pin(null);
        } else {
            model.selectedProperty().set(null);
        }
    }

    /** Names the next or the last thing of the yard. */
    private void visit(int step) {
        int at = pinned == null ? (step > 0 ? -1 : 0) : tour.indexOf(pinned);
        model.selectedProperty().set(null);
        pin(tour.get(Math.floorMod(at + step, tour.size())));
    }

    private void layerKey(KeyEvent e) {
        boolean typing = e.getTarget() instanceof TextInputControl;
        int digit = e.getCode().isDigitKey() ? e.getCode().getCode() % 16 - 1 : -1;
        Layer[] layers = Layer.values();
        if (!typing
                && e.isShiftDown()
                && !e.isShortcutDown()
                && !e.isAltDown()
                && digit >= 0
                && digit < layers.length) {
            model.toggle(layers[digit]);
            e.consume();
        }
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
        artist.close();
    }
}
