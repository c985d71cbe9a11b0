package provingyard.ui;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import provingyard.picture.Pixels;
import provingyard.picture.Theme;
import provingyard.picture.YardPicture;
import provingyard.scenario.Scenario;

/** The opening screen: the sites in rising order as cards, and the chosen one's brief at the side. */
final class RouteSheet extends BorderPane {

    private static final int CARD_WIDTH = 220;
    private static final int CARD_HEIGHT = 128;
    private static final int SIDE_WIDTH = 260;
    private static final int SIDE_HEIGHT = 164;

    private final Words words;
    private final Shell shell;
    private final List<Scenario> sites;
    private final FlowPane cards = new FlowPane(24, 24);
    private final VBox side = new VBox();
    private final ExecutorService artist = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "cards");
        thread.setDaemon(true);
        return thread;
    });
    private Theme theme = Theme.LIGHT;
    private Scenario chosen;

    RouteSheet(List<Scenario> sites, Words words, Shell shell) {
        this.sites = sites;
        this.words = words;
        this.shell = shell;
        setId("route-sheet");
        chosen = sites.isEmpty() ? null : sites.get(0);
        Label title = new Label();
        words.bind(title.textProperty(), "route.title");
        title.getStyleClass().add("page-title");
        Label count = new Label();
        words.bind(count.textProperty(), "route.count", sites.size());
        count.getStyleClass().add("ink2");
        HBox head = new HBox(14, title, count);
        head.setAlignment(Pos.BASELINE_LEFT);
        VBox list = new VBox(18, head, cards);
        list.setStyle("-fx-padding: 24 28 24 28;");
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        side.getStyleClass().add("side");
        setLeft(side);
        setCenter(scroll);
        words.follow(this, this::fill);
        fill();
    }

    void theme(Theme next) {
        theme = next;
        fill();
    }

    private void fill() {
        cards.getChildren().clear();
        for (int i = 0; i < sites.size(); i++) {
            cards.getChildren().add(card(i + 1, sites.get(i)));
        }
        fillSide();
    }

    private Node card(int number, Scenario site) {
        StackPane picture = picture(site, CARD_WIDTH, CARD_HEIGHT);
        Label stop = new Label(Integer.toString(number));
        StackPane badge = new StackPane(stop);
        badge.getStyleClass().add("stop-number");
        StackPane.setAlignment(badge, Pos.TOP_LEFT);
        StackPane top = new StackPane(picture, badge);
        Label name = new Label(words.say(site.title()));
        name.getStyleClass().add("panel-title");
        Label about = new Label(words.say(site.subtitle()));
        about.setWrapText(true);
        about.getStyleClass().add("ink2");
        Label level = new Label(
                words.say("route.level", words.say("work." + site.work().name()), site.level()));
        level.getStyleClass().addAll("small", "ink2");
        VBox card = new VBox(6, top, name, about, level);
        card.setId("site-" + site.id());
        card.getStyleClass().add("site-card");
        if (site == chosen) {
            card.getStyleClass().add("chosen");
        }
        card.setPrefWidth(CARD_WIDTH + 16);
        card.setFocusTraversable(true);
        card.setAccessibleText(words.say("route.card", number, words.say(site.title()), words.say(site.subtitle())));
        card.setOnMouseClicked(e -> {
            choose(site);
            if (e.getClickCount() == 2) {
                shell.open(site);
            }
        });
        card.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                shell.open(site);
                e.consume();
            } else if (e.getCode() == KeyCode.SPACE) {
                choose(site);
                e.consume();
            }
        });
        return card;
    }

    private void choose(Scenario site) {
        if (site != chosen) {
            chosen = site;
            for (Node card : cards.getChildren()) {
                card.getStyleClass().remove("chosen");
                if (card.getId().equals("site-" + site.id())) {
                    card.getStyleClass().add("chosen");
                }
            }
            fillSide();
        }
    }

    private void fillSide() {
        side.getChildren().clear();
        Label brand = new Label("Proving Yard");
        brand.getStyleClass().add("page-title");
        side.getChildren().add(brand);
        if (chosen == null) {
            Label none = new Label(words.say("route.none"));
            none.setWrapText(true);
            side.getChildren().add(none);
            return;
        }
        Label name = new Label(words.say(chosen.title()));
        name.getStyleClass().add("section-title");
        Label brief = new Label(words.say(chosen.lesson().brief()));
        brief.setWrapText(true);
        Label goal = new Label(words.say("route.goal", words.say(chosen.lesson().goal())));
        goal.setWrapText(true);
        goal.getStyleClass().add("strong");
        Label days = new Label(words.say("route.days", chosen.season().days()));
        days.getStyleClass().add("ink2");
        Button start = new Button(words.say("route.start"));
        start.setId("start");
        start.setDefaultButton(true);
        start.getStyleClass().add("main");
        start.setGraphic(IconNode.of("play", 14));
        start.setMaxWidth(Double.MAX_VALUE);
        start.setMinHeight(40);
        start.setOnAction(e -> shell.open(chosen));
        VBox told = new VBox(8, name, brief, goal, days);
        ScrollPane scroll = new ScrollPane(told);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        MenuButton look = new MenuButton(words.say("top.menu"));
        look.setId("route-menu");
        look.getItems().setAll(shell.lookMenu());
        Button help = new Button(words.say("top.help"));
        help.setId("route-help");
        help.setOnAction(e -> shell.help());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        side.getChildren()
                .addAll(picture(chosen, SIDE_WIDTH, SIDE_HEIGHT), scroll, start, new HBox(8, look, gap, help));
    }

    /** A site's card picture; drawn off the window's thread. */
    private StackPane picture(Scenario site, int width, int height) {
        ImageView view = new ImageView();
        view.setFitWidth(width);
        view.setFitHeight(height);
        Rectangle clip = new Rectangle(width, height);
        clip.setArcWidth(16);
        clip.setArcHeight(16);
        view.setClip(clip);
        Theme now = theme;
        artist.execute(() -> {
            Pixels pixels = YardPicture.pixels(YardPicture.thumbnail(site, 2 * width, 2 * height, now));
            Platform.runLater(() -> view.setImage(CanvasSurface.image(pixels)));
        });
        StackPane box = new StackPane(view);
        box.setMinSize(width, height);
        box.setPrefSize(width, height);
        return box;
    }

    void dispose() {
        artist.shutdownNow();
    }
}
