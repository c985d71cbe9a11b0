package provingyard.ui;

import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Scenario;
import provingyard.scenario.Work;

/** The route sheet's side: the brand, the chosen stop's brief with what can be done there, the learner and the settings. */
final class RouteSide extends VBox {

    private static final double WIDTH_EM = 22;
    private static final double PADDING = 22;
    private static final double SHAPE = 0.52;
    /** Greatest share of the window's width, however large the texts. */
    private static final double WIDEST = 0.42;
    /** Lines of text in the window's height under which there is no room for a picture, and from which there is for all. */
    private static final double FEW_LINES = 27;

    private static final double ENOUGH_LINES = 47;

    private final Words words;
    private final Shell shell;
    private final SitePictures pictures;
    private final ImageView view = new ImageView();
    private final VBox head = new VBox(4);
    private final VBox told = new VBox(4);
    private final StackPane picture = new StackPane(view);
    private final VBox acts = new VBox(8);
    private final VBox foot = new VBox(10);

    RouteSide(Words words, Shell shell, SitePictures pictures) {
        this.words = words;
        this.shell = shell;
        this.pictures = pictures;
        getStyleClass().add("side");
        Label name = new Label("Proving Yard");
        name.getStyleClass().add("brand");
        HBox brand = new HBox(12, new BrandSign(38), name);
        brand.setAlignment(Pos.CENTER_LEFT);
        ScrollPane scroll = new ScrollPane(told);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinHeight(0);
        scroll.setFocusTraversable(false);
        // A scroll pane does not ask for its content's height by itself.
        told.heightProperty().addListener(o -> scroll.setPrefHeight(told.getHeight() + 2));
        Region gap = new Region();
        VBox.setVgrow(gap, Priority.ALWAYS);
        picture.setMinHeight(Region.USE_PREF_SIZE);
        head.setMinHeight(Region.USE_PREF_SIZE);
        acts.setMinHeight(Region.USE_PREF_SIZE);
        foot.setMinHeight(Region.USE_PREF_SIZE);
        // Quiet buttons' padding goes into the margin, so that their words stand under the others.
        VBox.setMargin(foot, new Insets(0, -8, 0, -8));
        getChildren().addAll(brand, picture, head, scroll, acts, gap, foot);
    }

    /** Shows a stop; null where there is none. */
    void show(RouteModel.Stop stop, boolean next) {
        double width = Math.round(
                Math.min(WIDTH_EM * shell.em(), WIDEST * shell.scene().getWidth()));
        setMinWidth(width);
        setPrefWidth(width);
        setMaxWidth(width);
        head.getChildren().clear();
        told.getChildren().clear();
        acts.getChildren().clear();
        foot.getChildren().setAll(learner(), look());
        if (stop == null) {
            Label none = wrapped(words.say("route.none"), "ink2");
            told.getChildren().add(none);
            return;
        }
        picture(stop.site(), width - 2 * PADDING);
        tell(stop, next);
        act(stop);
    }

    private void picture(Scenario site, double width) {
        double lines = shell.scene().getHeight() / shell.em();
        double room = Math.max(0, Math.min(1, (lines - FEW_LINES) / (ENOUGH_LINES - FEW_LINES)));
        double height = Math.round(width * SHAPE * room);
        picture.setVisible(height > 0);
        picture.setManaged(height > 0);
        if (height <= 0) {
            return;
        }
        view.setFitWidth(width);
        view.setFitHeight(height);
        Rectangle clip = new Rectangle(width, height);
        clip.setArcWidth(16);
        clip.setArcHeight(16);
        view.setClip(clip);
        pictures.draw(site, (int) width, (int) height, view);
    }

    private void tell(RouteModel.Stop stop, boolean next) {
        Scenario site = stop.site();
        Label which = new Label(next ? words.say("route.next") : words.say("route.stop", stop.number()));
        which.getStyleClass().addAll("small", "strong", next ? "accent-text" : "ink2");
        Label name = wrapped(words.say(site.title()), "side-title");
        Label brief = wrapped(words.say(site.lesson().brief()), "ink2");
        Label goal = wrapped(words.say("route.goal", words.say(site.lesson().goal())), "strong");
        Node tick = IconNode.of("ok", 15);
        HBox aim = new HBox(8, tick, goal);
        HBox.setHgrow(goal, Priority.ALWAYS);
        head.getChildren().addAll(which, name);
        told.getChildren().add(brief);
        // The goal is always seen, however long the brief is.
        acts.getChildren().add(aim);
        told.setStyle("-fx-padding: 0 8 0 0;");
    }

    private static Label wrapped(String text, String style) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }

    private void act(RouteModel.Stop stop) {
        acts.getChildren().add(progress(stop));
        boolean over = stop.state() == RouteModel.State.LIVED && stop.kept();
        boolean begun = stop.kept() || stop.state() == RouteModel.State.UNDER_WAY;
        String key = !begun ? "route.start" : over ? "route.look" : "route.goOn";
        Button start = new Button(words.say(key));
        start.setId("start");
        start.setDefaultButton(true);
        start.getStyleClass().addAll("main", "tall");
        start.setGraphic(IconNode.of(over ? "look" : "play", 14));
        start.setMaxWidth(Double.MAX_VALUE);
        start.setOnAction(e -> shell.open(stop.site()));
        HBox.setHgrow(start, Priority.ALWAYS);
        HBox row = new HBox(8, start);
        if (stop.kept()) {
            Button again = new Button(words.say("route.again"));
            again.setId("start-again");
            again.getStyleClass().add("tall");
            again.setMinWidth(Region.USE_PREF_SIZE);
            again.setOnAction(e -> again(stop, over));
            row.getChildren().add(again);
        }
        acts.getChildren().add(row);
    }

    /** A season under way would be lost by starting again, so that is asked. */
    private void again(RouteModel.Stop stop, boolean over) {
        if (over) {
            shell.startAgain(stop.site());
        } else {
            Notice.ask(
                    getScene(),
                    words.say("route.again"),
                    words.say("route.againAsk", stop.day()),
                    words.say("route.again"),
                    words.say("route.keep"),
                    () -> shell.startAgain(stop.site()));
        }
    }

    private HBox progress(RouteModel.Stop stop) {
        String text = SiteCard.progress(stop, words);
        if (stop.state() == RouteModel.State.UNDER_WAY && !stop.kept()) {
            text = words.say("route.callUnderWay");
        }
        if (stop.state() == RouteModel.State.NEW) {
            boolean call = stop.site().work() == Work.SERVICE_CALL;
            text = call ? words.say("route.newCall") : words.say("route.days", stop.days());
        }
        Label label = new Label(text);
        label.getStyleClass().addAll("small", "strong");
        label.setMinWidth(Region.USE_PREF_SIZE);
        HBox line = new HBox(12);
        line.setAlignment(Pos.CENTER_LEFT);
        boolean underWay = stop.state() == RouteModel.State.UNDER_WAY && stop.kept();
        if (underWay || stop.state() == RouteModel.State.LIVED && stop.best() != null) {
            double share = underWay ? (stop.day() - 1) / (double) stop.days() : stop.best() / 100.0;
            ScoreBar bar = new ScoreBar(share, underWay);
            HBox.setHgrow(bar, Priority.ALWAYS);
            line.getChildren().add(bar);
        }
        line.getChildren().add(label);
        return line;
    }

    private Node learner() {
        StackPane sign = new StackPane(IconNode.of("seat", 20));
        sign.getStyleClass().add("kit-icon");
        Label name = new Label(shell.learnerName(shell.book().current()));
        name.getStyleClass().add("strong");
        Label what = new Label(words.say("learner.change"));
        what.getStyleClass().addAll("small", "ink2");
        VBox texts = new VBox(name, what);
        texts.setAlignment(Pos.CENTER_LEFT);
        texts.setMinWidth(0);
        HBox.setHgrow(texts, Priority.ALWAYS);
        HBox row = new HBox(12, sign, texts, IconNode.of("fwd", 14));
        row.setAlignment(Pos.CENTER_LEFT);
        Button button = new Button();
        button.setId("learner");
        button.setGraphic(row);
        button.getStyleClass().addAll("quiet", "row");
        button.setMaxWidth(Double.MAX_VALUE);
        button.setContentDisplay(javafx.scene.control.ContentDisplay.GRAPHIC_ONLY);
        row.prefWidthProperty().bind(button.widthProperty().subtract(16));
        button.setAccessibleText(words.say("learner.accessible", name.getText()));
        button.setOnAction(e -> shell.learners());
        return button;
    }

    private Node look() {
        Button language = quiet("route-language", words.say("look.languageName"), null, "look.language");
        language.setOnAction(e -> shell.speak(words.language().equals("en") ? "es" : "en"));
        boolean us = words.units().get() == UnitSystem.US;
        Button units = quiet("route-units", words.say(us ? "look.us" : "look.metric"), null, "look.units");
        units.setOnAction(e -> words.units().set(us ? UnitSystem.METRIC : UnitSystem.US));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button settings = quiet("route-settings", "", "gear", "look.settings");
        settings.setOnAction(e -> shell.settings());
        Button help = quiet("route-help", "", "help", "keys.open");
        help.setOnAction(e -> shell.help());
        HBox row = new HBox(2, language, units, gap, settings, help);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private Button quiet(String id, String text, String icon, String tip) {
        Button button = new Button(text);
        button.setId(id);
        button.getStyleClass().add("quiet");
        button.setMinWidth(Region.USE_PREF_SIZE);
        if (icon != null) {
            button.setGraphic(IconNode.of(icon, 18));
        }
        button.setTooltip(new Tooltip(words.say(tip)));
        button.setAccessibleText(words.say(tip));
        return button;
    }
}
