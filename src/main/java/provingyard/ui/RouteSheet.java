package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.picture.Theme;
import provingyard.scenario.Scenario;
import provingyard.scenario.Work;

/** The opening screen: the sites in rising order along a road, and the chosen one's brief at the side. */
final class RouteSheet extends BorderPane {

    private final Words words;
    private final Shell shell;
    private final List<Scenario> sites;
    private final SitePictures pictures = new SitePictures();
    private final RoadPane road = new RoadPane(pictures);
    private final RouteSide side;
    private final DrillRow drill;
    private final VBox page = new VBox();
    private final Label count = new Label();
    private final HBox filters = new HBox();
    private final javafx.beans.InvalidationListener refill = o -> fill();
    private List<SiteCard> cards = List.of();
    private RouteModel.Filter filter = RouteModel.Filter.ALL;
    private RouteModel model;
    private String chosen;

    RouteSheet(List<Scenario> sites, Words words, Shell shell) {
        this.sites = sites;
        this.words = words;
        this.shell = shell;
        setId("route-sheet");
        getStyleClass().add("route-sheet");
        setMinSize(0, 0);
        side = new RouteSide(words, shell, pictures);
        Label title = new Label();
        words.bind(title.textProperty(), "route.title");
        title.getStyleClass().add("page-title");
        title.setMinWidth(Region.USE_PREF_SIZE);
        count.getStyleClass().add("ink2");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(14, title, count, gap, filters);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("route-head");
        drill = new DrillRow(shell::drill);
        VBox.setMargin(drill, new javafx.geometry.Insets(0, 28, 0, 28));
        boolean drills = sites.stream().anyMatch(s -> s.work() == Work.SERVICE_CALL);
        drill.setVisible(drills);
        drill.setManaged(drills);
        page.getChildren().addAll(head, drill, road);
        page.getStyleClass().add("route-page");
        ScrollPane scroll = new ScrollPane(page);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        setLeft(side);
        setCenter(scroll);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        model = RouteModel.of(sites, shell.book().current());
        chosen = model.next(shell.book().current()).map(s -> s.site().id()).orElse(null);
        words.follow(this, this::fill);
        shell.book().currentProperty().addListener(refill);
        shell.textSize().addListener(refill);
        fill();
    }

    void theme(Theme next) {
        pictures.theme(next);
        fill();
    }

    private void fill() {
        javafx.scene.Node owner = getScene() == null ? null : getScene().getFocusOwner();
        String held = owner == null ? null : owner.getId();
        model = RouteModel.of(sites, shell.book().current());
        count.setText(words.say("route.count", model.done(), sites.size()));
        fillFilters();
        drill.show(shell.book().current().drill(), words);
        List<SiteCard> next = new ArrayList<>();
        for (RouteModel.Stop stop : model.stops()) {
            if (filter.test(stop)) {
                next.add(card(stop));
            }
        }
        cards = next;
        road.em(shell.em());
        road.show(cards, legend(), driven());
        mark();
        // What had the focus was made anew.
        javafx.scene.Node again = held == null ? null : lookup("#" + held);
        if (again != null && again != owner) {
            again.requestFocus();
        }
    }

    /** How far the road was driven among the stops shown: to the first that was not lived yet. */
    private int driven() {
        int at = 0;
        while (at < cards.size() && cards.get(at).stop().state() == RouteModel.State.LIVED) {
            at++;
        }
        return Math.min(at, cards.size() - 1);
    }

    private void fillFilters() {
        boolean calls = model.count(RouteModel.Filter.CALLS) > 0;
        filters.getChildren().clear();
        if (!calls) {
            // With one kind of work there is nothing to choose.
            return;
        }
        List<Segments.Choice<RouteModel.Filter>> choices = new ArrayList<>();
        for (RouteModel.Filter each : RouteModel.Filter.values()) {
            String icon = each == RouteModel.Filter.ALL ? null : each == RouteModel.Filter.TUNE ? "flag" : "crew";
            choices.add(new Segments.Choice<>(
                    each, each.name(), words.live("route.filter." + each.name(), model.count(each)), icon));
        }
        filters.getChildren().add(new Segments<>("route-filter", choices, filter, next -> {
            filter = next;
            fillCards();
        }));
    }

    private void fillCards() {
        cards = model.stops().stream().filter(filter).map(this::card).toList();
        road.show(cards, legend(), driven());
        if (cards.stream().noneMatch(c -> c.stop().site().id().equals(chosen)) && !cards.isEmpty()) {
            chosen = cards.get(0).stop().site().id();
        }
        mark();
    }

    private SiteCard card(RouteModel.Stop stop) {
        SiteCard card = new SiteCard(stop, words);
        String id = stop.site().id();
        card.focusedProperty().addListener((o, was, is) -> {
            if (is) {
                choose(id);
            }
        });
        card.setOnMouseClicked(e -> {
            card.requestFocus();
            if (e.getClickCount() == 2) {
                shell.open(stop.site());
            }
        });
        return card;
    }

    private void key(KeyEvent e) {
        if (e.getCode() == KeyCode.D && !e.isShortcutDown() && !e.isAltDown() && drill.isVisible()) {
            shell.drill();
            e.consume();
            return;
        }
        SiteCard at =
                cards.stream().filter(javafx.scene.Node::isFocused).findFirst().orElse(null);
        if (at == null) {
            return;
        }
        SiteCard to =
                switch (e.getCode()) {
                    case LEFT -> road.beside(at, -1, 0);
                    case RIGHT -> road.beside(at, 1, 0);
                    case UP -> road.beside(at, 0, -1);
                    case DOWN -> road.beside(at, 0, 1);
                    default -> null;
                };
        if (to != null) {
            to.requestFocus();
            show(to);
            e.consume();
        } else if (e.getCode() == KeyCode.ENTER) {
            shell.open(at.stop().site());
            e.consume();
        }
    }

    /** Scrolls so that a card can be seen. */
    private void show(SiteCard card) {
        ScrollPane scroll = (ScrollPane) getCenter();
        double room = page.getHeight() - scroll.getViewportBounds().getHeight();
        if (room > 0) {
            double middle = road.getLayoutY() + card.getLayoutY() + card.getHeight() / 2;
            double to = (middle - scroll.getViewportBounds().getHeight() / 2) / room;
            scroll.setVvalue(Math.max(0, Math.min(1, to)));
        }
    }

    private void choose(String id) {
        if (!id.equals(chosen)) {
            chosen = id;
            mark();
        }
    }

    private void mark() {
        cards.forEach(c -> c.chosen(c.stop().site().id().equals(chosen)));
        String next = model.next(shell.book().current()).map(s -> s.site().id()).orElse("");
        side.show(chosen == null ? null : model.at(chosen).orElse(null), next.equals(chosen));
    }

    /** Puts the focus on the chosen stop. */
    void focusChosen() {
        cards.stream()
                .filter(c -> c.stop().site().id().equals(chosen))
                .findFirst()
                .ifPresent(javafx.scene.Node::requestFocus);
    }

    private VBox legend() {
        Label title = new Label(words.say("route.legend"));
        title.getStyleClass().addAll("small", "strong", "ink2");
        ScoreBar bar = new ScoreBar(0.76, false);
        Label low = new Label(words.say("route.legendLow"));
        Label high = new Label(words.say("route.legendHigh"));
        low.getStyleClass().addAll("small", "ink2");
        high.getStyleClass().addAll("small", "ink2");
        low.setMinWidth(Region.USE_PREF_SIZE);
        high.setMinWidth(Region.USE_PREF_SIZE);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Label any = new Label(words.say("route.legendAny"));
        any.setWrapText(true);
        any.getStyleClass().addAll("small", "ink3");
        any.setMinHeight(Region.USE_PREF_SIZE);
        VBox box = new VBox(8, title, bar, new HBox(10, low, gap, high), any);
        box.getStyleClass().add("route-legend");
        return box;
    }

    void dispose() {
        shell.book().currentProperty().removeListener(refill);
        shell.textSize().removeListener(refill);
        pictures.dispose();
    }
}
