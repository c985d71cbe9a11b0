package provingyard.ui;

import java.util.Random;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Polygon;
import provingyard.scenario.Scenario;
import provingyard.scenario.Work;

/** A stop on the route sheet: its picture on torn paper, its number, name, kind of work, level and how far one came. */
final class SiteCard extends VBox {

    /** Height of the picture to its width. */
    static final double SHAPE = 0.56;

    private static final double TEAR = 1.6;
    private static final double STEP = 11;
    private static final double PAPER = 4;

    private final RouteModel.Stop stop;
    private final StackPane paper = new StackPane();
    private final ImageView view = new ImageView();
    private final Polygon sheet = new Polygon();
    private final Polygon clip = new Polygon();
    private double drawn;

    SiteCard(RouteModel.Stop stop, Words words) {
        this.stop = stop;
        Scenario site = stop.site();
        setId("site-" + site.id());
        getStyleClass().add("site-card");
        setFocusTraversable(true);
        sheet.getStyleClass().add("torn-paper");
        view.setClip(clip);
        view.setPreserveRatio(false);
        paper.getChildren().addAll(sheet, view);
        Label number = new Label(Integer.toString(stop.number()));
        StackPane badge = new StackPane(number);
        badge.getStyleClass().add("stop-number");
        if (stop.state() == RouteModel.State.LIVED || stop.best() != null) {
            badge.getStyleClass().add("lived");
        }
        StackPane.setAlignment(badge, Pos.TOP_LEFT);
        Region ring = new Region();
        ring.getStyleClass().add("card-ring");
        ring.setMouseTransparent(true);
        StackPane top = new StackPane(paper, ring, badge);
        Label name = new Label(words.say(site.title()));
        name.getStyleClass().add("panel-title");
        name.setWrapText(true);
        Label about = new Label(words.say(site.subtitle()));
        about.setWrapText(true);
        about.getStyleClass().add("ink2");
        VBox texts = new VBox(name, about);
        texts.setStyle("-fx-padding: 0.2em 0 0.3em 0.3em;");
        HBox state = state(words);
        state.setStyle("-fx-padding: 0 0 0 0.3em;");
        getChildren().addAll(top, texts, state);
        setAccessibleText(words.say(
                "route.card", stop.number(), words.say(site.title()), words.say(site.subtitle()), told(words)));
    }

    RouteModel.Stop stop() {
        return stop;
    }

    /** All that the card's last line shows, in words. */
    private String told(Words words) {
        Scenario site = stop.site();
        String level = words.say("route.level", words.say("work." + site.work().name()), site.level());
        return level + ". " + progress(stop, words);
    }

    /** How far one came, in words. */
    static String progress(RouteModel.Stop stop, Words words) {
        return switch (stop.state()) {
            case NEW -> words.say("route.notStarted");
            case UNDER_WAY ->
                stop.kept() ? words.say("route.dayOf", stop.day(), stop.days()) : words.say("route.underWay");
            case LIVED -> stop.best() == null ? words.say("route.lived") : words.say("route.best", stop.best());
        };
    }

    private HBox state(Words words) {
        boolean call = stop.site().work() == Work.SERVICE_CALL;
        Label work = new Label(words.say(call ? "route.call" : "route.tune"));
        work.getStyleClass().addAll("small", "strong", "ink2");
        work.setGraphic(IconNode.of(call ? "crew" : "flag", 14));
        work.setMinWidth(Region.USE_PREF_SIZE);
        HBox line = new HBox(8, work, levels(stop.site().level()));
        line.setAlignment(Pos.CENTER_LEFT);
        switch (stop.state()) {
            case NEW -> line.getChildren().add(small(words.say("route.notStarted"), "ink2"));
            case UNDER_WAY -> {
                if (stop.kept()) {
                    line.getChildren().add(grow(new ScoreBar((stop.day() - 1) / (double) stop.days(), true)));
                }
                String far = stop.kept() ? words.say("route.day", stop.day()) : words.say("route.underWay");
                line.getChildren().add(small(far, "strong", "accent-text"));
            }
            case LIVED -> {
                if (stop.best() == null) {
                    line.getChildren().add(small(words.say("route.lived"), "ink2"));
                } else {
                    Label best = small(Integer.toString(stop.best()), "strong");
                    line.getChildren().addAll(grow(new ScoreBar(stop.best() / 100.0, false)), best);
                }
            }
        }
        return line;
    }

    private static Label small(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().add("small");
        label.getStyleClass().addAll(styles);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    private static Region grow(Region bar) {
        HBox.setHgrow(bar, Priority.ALWAYS);
        return bar;
    }

    /** Five bars of rising height, as many of them full as the level. */
    static HBox levels(int level) {
        HBox box = new HBox(2);
        box.setAlignment(Pos.BOTTOM_LEFT);
        box.getStyleClass().add("levels");
        for (int i = 1; i <= 5; i++) {
            Region bar = new Region();
            bar.getStyleClass().add(i <= level ? "level-full" : "level-empty");
            bar.setStyle("-fx-pref-width: 0.36em; -fx-min-width: 0.36em; -fx-pref-height: " + (0.3 + 0.14 * i)
                    + "em; -fx-max-height: " + (0.3 + 0.14 * i) + "em;");
            box.getChildren().add(bar);
        }
        box.setMinWidth(Region.USE_PREF_SIZE);
        return box;
    }

    void chosen(boolean chosen) {
        getStyleClass().remove("chosen");
        if (chosen) {
            getStyleClass().add("chosen");
        }
    }

    /** Gives the card its width; the picture is drawn where it is another one. */
    void wide(double width, SitePictures pictures) {
        if (width == drawn) {
            return;
        }
        drawn = width;
        double height = Math.round(width * SHAPE);
        setPrefWidth(width);
        setMinWidth(width);
        setMaxWidth(width);
        paper.setMinSize(width, height);
        paper.setPrefSize(width, height);
        paper.setMaxSize(width, height);
        long seed = stop.site().id().hashCode();
        tear(sheet, width, height, 0, new Random(seed));
        tear(clip, width - 2 * PAPER, height - 2 * PAPER, 0.6, new Random(seed));
        view.setFitWidth(width - 2 * PAPER);
        view.setFitHeight(height - 2 * PAPER);
        pictures.draw(stop.site(), (int) view.getFitWidth(), (int) view.getFitHeight(), view);
    }

    /** An outline with torn edges; the same seed tears the same way. */
    private static void tear(Polygon outline, double w, double h, double inset, Random dice) {
        outline.getPoints().clear();
        walk(outline, 0, 0, w, 0, inset, dice);
        walk(outline, w, 0, w, h, inset, dice);
        walk(outline, w, h, 0, h, inset, dice);
        walk(outline, 0, h, 0, 0, inset, dice);
    }

    private static void walk(Polygon outline, double x1, double y1, double x2, double y2, double inset, Random dice) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        int steps = (int) Math.max(2, length / STEP);
        double nx = -(y2 - y1) / length;
        double ny = (x2 - x1) / length;
        for (int i = 0; i < steps; i++) {
            double t = i / (double) steps;
            double in = inset + TEAR * (1 + dice.nextDouble() * 1.2);
            outline.getPoints().addAll(x1 + t * (x2 - x1) + nx * in, y1 + t * (y2 - y1) + ny * in);
        }
    }
}
