package provingyard.ui;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.picture.MiniPlot;
import provingyard.picture.Theme;
import provingyard.quantity.Show;
import provingyard.scenario.SensorKind;
import provingyard.season.Past;
import provingyard.setup.Placement;

/** What a setting would have done in the days lived, live while it is moved: a sentence, and a small plot of the days. */
final class WouldPlot extends VBox {

    private final Words words;
    private final Label title = new Label();
    private final Label caption = new Label();
    private final Canvas canvas = new Canvas(10, MiniPlot.HEIGHT);
    private final Pane frame = new Pane(canvas);
    private Theme theme = Theme.LIGHT;
    private Past past;
    private Placement placement;
    private long lived;

    WouldPlot(Words words) {
        this.words = words;
        setId("would");
        getStyleClass().add("would");
        title.setId("would-title");
        title.getStyleClass().add("strong");
        for (Label label : new Label[] {title, caption}) {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
        }
        caption.getStyleClass().addAll("small", "ink2");
        frame.setMinHeight(MiniPlot.HEIGHT);
        frame.setPrefHeight(MiniPlot.HEIGHT);
        frame.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        canvas.widthProperty().bind(frame.widthProperty());
        frame.managedProperty().bind(frame.visibleProperty());
        frame.widthProperty().addListener(o -> draw());
        getChildren().addAll(title, caption, frame);
    }

    void theme(Theme next) {
        theme = next;
        draw();
    }

    /** Shows what a placement would have done in the past; null while that is looked up. */
    void show(Past known, Placement set, long minutesLived) {
        past = known;
        placement = set;
        lived = minutesLived;
        draw();
    }

    private void draw() {
        canvas.getGraphicsContext2D().clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        boolean none = past == null || past.days() == 0;
        frame.setVisible(!none);
        if (placement == null) {
            return;
        }
        if (none) {
            title.setText(words.say("would.title"));
            caption.setText(words.say(past == null && lived >= 1440 ? "would.looking" : "would.none"));
            return;
        }
        Past.Would would = past.would(placement);
        SensorKind kind = placement.kind();
        title.setText(
                words.say(kind == SensorKind.SOIL ? "would.wet" : "would.tripped", would.daysTripped(), would.days()));
        caption.setText(words.say("would.caption." + kind.name()));
        frame.setAccessibleText(title.getText());
        plot(would);
    }

    private void plot(Past.Would would) {
        SensorKind kind = placement.kind();
        Show show = Readouts.of(kind);
        DateTimeFormatter day = DateTimeFormatter.ofPattern("d MMM", Locale.forLanguageTag(words.language()));
        String limit = words.display().text(show, would.limit());
        MiniPlot plot = new MiniPlot(
                would.extreme(),
                would.tripped(),
                would.limit(),
                kind == SensorKind.FREEZE || kind == SensorKind.SOIL,
                kind == SensorKind.RAIN ? words.say("would.trips", limit) : limit,
                would.days() > 1 ? day.format(would.first()) : "",
                words.say("would.yesterday"));
        GraphicsContext g = canvas.getGraphicsContext2D();
        if (canvas.getWidth() > 20) {
            plot.draw(new CanvasSurface(g), canvas.getWidth(), theme);
        }
    }
}
