package provingyard.ui;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.picture.PlacingArt;
import provingyard.picture.Surface;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.picture.YardShapes;
import provingyard.quantity.Show;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.season.Needs;
import provingyard.season.Siting;
import provingyard.setup.Placement;

/**
 * What the yard shows while a sensor is in hand: the map of what its kind needs (not on the harder levels), the sky ring of
 * a rain sensor, whether it fits in words at the pointer, and a legend with the keys. It also rings the sky of a selected
 * rain sensor. Maps are worked out off the window's thread.
 */
final class PlacingLayer {

    private static final double SWATCH_WIDTH = 26;
    private static final double SWATCH_HEIGHT = 14;
    private static final double WIDEST = 250;
    private static final double BESIDE = 26;
    private static final double ABOVE = 22;

    private final YardModel model;
    private final Words words;
    private final YardShapes shapes;
    private final SiteFacts facts;
    private final Canvas ring = new Canvas();
    private final Pane over = new Pane();
    private final StackPane sign = new StackPane();
    private final Label verdict = new Label();
    private final Label line = new Label();
    private final VBox plate = new VBox(verdict, line);
    private final HBox pointer = new HBox(sign, plate);
    private final VBox legend = new VBox();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "placing");
        thread.setDaemon(true);
        return thread;
    });
    private SensorKind asked;
    private Needs needs;
    private RingDrawn ringDrawn;
    private LegendShown legendShown;

    private record RingDrawn(View view, Object of, String language) {}

    private record LegendShown(SensorKind kind, boolean map, View plain) {}

    PlacingLayer(YardModel model, Words words, YardShapes shapes) {
        this.model = model;
        this.words = words;
        this.shapes = shapes;
        facts = new SiteFacts(model, words);
        pointer.setId("hand-words");
        pointer.getStyleClass().addAll("sheet", "hand-words");
        pointer.setAlignment(Pos.CENTER_LEFT);
        verdict.getStyleClass().add("strong");
        line.getStyleClass().addAll("small", "ink2");
        legend.setId("hand-legend");
        legend.getStyleClass().addAll("sheet", "hand-legend");
        for (Label label : new Label[] {verdict, line}) {
            label.setWrapText(true);
            label.setMaxWidth(WIDEST);
            label.setMinHeight(Region.USE_PREF_SIZE);
        }
        over.getChildren().addAll(ring, legend, pointer);
        over.setMouseTransparent(true);
        // Words that change must not lay the yard out anew, which would make it forget its view for a pulse.
        over.setManaged(false);
        pointer.setManaged(false);
        legend.setManaged(false);
    }

    /** What lies over everything. */
    Node over() {
        return over;
    }

    void resize(double width, double height) {
        ring.setWidth(width);
        ring.setHeight(height);
        over.resize(width, height);
    }

    /** The words at the pointer, for those who cannot see them; empty when nothing is in hand. */
    String spoken() {
        YardModel.Hand hand = model.handProperty().get();
        return hand == null ? "" : verdict(hand) + ". " + facts.atHand(hand);
    }

    /** Draws what changed; called once a pulse. */
    void pulse(View view) {
        YardModel.Hand hand = model.handProperty().get();
        View plain = view.marks(provingyard.picture.Marks.NONE).seconds(0);
        ask(hand);
        drawRing(plain, hand);
        showLegend(plain, hand);
        showPointer(view, hand);
    }

    private void ask(YardModel.Hand hand) {
        SensorKind kind = hand == null || !model.showsNeeds() ? null : hand.kind();
        if (kind == asked) {
            return;
        }
        asked = kind;
        needs = null;
        if (kind != null) {
            worker.execute(() -> {
                Needs found = model.site().siting().needs(kind);
                Platform.runLater(() -> needs = kind == asked ? found : needs);
            });
        }
    }

    /** The map shown now, to know when it changes; empty where there is none. */
    Object mapped() {
        return needs == null || model.handProperty().get() == null ? "" : needs;
    }

    /** Draws the map over the ground, below the canopies. */
    void paintMap(Surface s, View view) {
        if (mapped() instanceof Needs shown) {
            PlacingArt.map(s, shapes, view, shown);
        }
    }

    private void drawRing(View plain, YardModel.Hand hand) {
        Placement selected = selectedRain();
        Object of = hand != null ? hand : selected;
        RingDrawn next = new RingDrawn(plain, of, words.language());
        if (next.equals(ringDrawn)) {
            return;
        }
        ringDrawn = next;
        ring.setVisible(of != null);
        ring.getGraphicsContext2D().clearRect(0, 0, ring.getWidth(), ring.getHeight());
        boolean carried = hand != null && hand.kind() == SensorKind.RAIN && hand.fits() && model.showsNeeds();
        if (carried) {
            sky(plain, hand.spot(), NewPlacement.height(SensorKind.RAIN));
        } else if (hand == null && selected instanceof Placement.Rain r) {
            sky(plain, r.at(), r.height());
        }
    }

    private Placement selectedRain() {
        String id = model.selectedProperty().get();
        return id == null
                ? null
                : model.setUp()
                        .sensor(id)
                        .filter(p -> p.kind() == SensorKind.RAIN)
                        .orElse(null);
    }

    private void sky(View plain, Point at, double height) {
        Siting.Facts here = model.site().siting().facts(at, height);
        PlacingArt.skyRing(new CanvasSurface(ring.getGraphicsContext2D()), plain, at, here.openSky());
    }

    private String verdict(YardModel.Hand hand) {
        return words.say(hand.fits() ? "hand.fits" : hand.whyNot());
    }

    private void showPointer(View view, YardModel.Hand hand) {
        pointer.setVisible(hand != null);
        if (hand == null) {
            return;
        }
        verdict.setText(verdict(hand));
        verdict.getStyleClass().removeAll("good", "alarm");
        verdict.getStyleClass().add(hand.fits() ? "good" : "alarm");
        sign.getChildren().setAll(IconNode.of(hand.fits() ? "ok" : "cross", 16));
        sign.getStyleClass().setAll("hand-sign", hand.fits() ? "fits" : "fits-not");
        line.setText(hand.fits() ? facts.atHand(hand) : "");
        line.setManaged(hand.fits());
        pointer.applyCss();
        pointer.autosize();
        double x = view.x(hand.spot().x()) + BESIDE;
        double end = view.width() - view.free().right();
        if (x + pointer.getWidth() > end) {
            x = view.x(hand.spot().x()) - BESIDE - pointer.getWidth();
        }
        double y = view.y(hand.spot().y()) - ABOVE - pointer.getHeight() / 2;
        double low = Math.max(4, view.height() - view.free().bottom() - pointer.getHeight());
        pointer.relocate(Math.max(view.free().left(), Math.round(x)), Math.max(4, Math.min(low, Math.round(y))));
    }

    private void showLegend(View plain, YardModel.Hand hand) {
        legend.setVisible(hand != null);
        if (hand == null) {
            legendShown = null;
            return;
        }
        LegendShown next = new LegendShown(hand.kind(), needs != null, plain);
        if (!next.equals(legendShown)) {
            legendShown = next;
            fillLegend(hand.kind(), plain.theme());
        }
        double left = plain.free().left();
        double room = plain.width() - left - plain.free().right();
        legend.setMaxWidth(room);
        legend.applyCss();
        legend.autosize();
        legend.relocate(
                Math.round(left + (room - legend.getWidth()) / 2), plain.free().top());
    }

    private String length(double metres) {
        return words.display().text(Show.LENGTH, metres);
    }

    private void fillLegend(SensorKind kind, Theme theme) {
        legend.getChildren().clear();
        Label keys = new Label(words.say("hand.keys", length(YardModel.STEP), length(YardModel.FINE_STEP)));
        keys.getStyleClass().addAll("small", "ink2");
        if (needs != null) {
            HBox marks = new HBox();
            marks.getStyleClass().add("legend-marks");
            marks.setAlignment(Pos.CENTER_LEFT);
            Label title = new Label(words.say("hand.need." + kind.name()));
            title.getStyleClass().add("strong");
            marks.getChildren().add(title);
            for (PlacingArt.Mark mark : PlacingArt.marks(needs)) {
                Canvas swatch = new Canvas(SWATCH_WIDTH, SWATCH_HEIGHT);
                PlacingArt.swatch(
                        new CanvasSurface(swatch.getGraphicsContext2D()), mark, SWATCH_WIDTH, SWATCH_HEIGHT, theme);
                Label name = new Label(words.say("need." + mark.name()), swatch);
                name.getStyleClass().add("small");
                marks.getChildren().add(name);
            }
            legend.getChildren().add(marks);
        }
        legend.getChildren().add(keys);
    }

    void dispose() {
        worker.shutdownNow();
    }
}
