package provingyard.ui;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.call.ReadingRow;
import provingyard.call.ReviewedTest;
import provingyard.diagnosis.Reading;
import provingyard.picture.Path;
import provingyard.picture.Pen;
import provingyard.picture.Surface;
import provingyard.picture.Theme;
import provingyard.picture.Tone;

/** What a reading says: each leading suspect with what it would have given, whether that fits, belief before and after. */
final class CallDebriefRows {

    /** A band that reaches further than this times the reading is cut, with an arrow. */
    private static final double REACH = 3;

    private static final double BAND = 12;
    private static final double EDGE = 8;

    /** px between what is drawn and the next column. */
    private static final double GAP = 10;

    private final CallDebriefWords sayings;
    private final List<String> truth;
    private final Theme theme;

    CallDebriefRows(CallDebriefWords sayings, List<String> truth, Theme theme) {
        this.sayings = sayings;
        this.truth = truth;
        this.theme = theme;
    }

    /** Title, sentences and table of a test. */
    VBox of(ReviewedTest test) {
        String name = sayings.name(test.note().test());
        String reading = sayings.reading(test);
        Label title = new Label(
                reading.isEmpty()
                        ? sayings.say("review.explain.plain", test.number(), name)
                        : sayings.say("review.explain.title", test.number(), name, reading));
        title.setId("call-debrief-explained");
        title.getStyleClass().add("section-title");
        title.setWrapText(true);
        title.setMinHeight(Region.USE_PREF_SIZE);
        Label said = new Label(sayings.explained(test));
        said.setId("call-debrief-said");
        said.getStyleClass().add("ink2");
        said.setWrapText(true);
        said.setMinHeight(Region.USE_PREF_SIZE);
        VBox box = new VBox(6, title, said);
        if (!test.rows().isEmpty()) {
            box.getChildren().add(table(test));
        }
        return box;
    }

    private GridPane table(ReviewedTest test) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("call-debrief-rows");
        grid.getColumnConstraints()
                .setAll(share(31, HPos.LEFT), share(27, HPos.LEFT), share(13, HPos.LEFT), share(29, HPos.RIGHT));
        grid.addRow(
                0,
                head("review.explain.if"),
                would(test),
                head("review.explain.reading"),
                right(head("review.explain.belief")));
        Scale scale = Scale.of(test);
        for (int i = 0; i < test.rows().size(); i++) {
            ReadingRow row = test.rows().get(i);
            Region line = new Hairline();
            grid.add(line, 0, 2 * i + 1, 4, 1);
            grid.addRow(2 * i + 2, name(row), band(test, row, scale), fits(row.fits()), belief(row));
        }
        return grid;
    }

    private static ColumnConstraints share(double percent, HPos align) {
        ColumnConstraints column = new ColumnConstraints();
        column.setPercentWidth(percent);
        column.setHalignment(align);
        column.setFillWidth(true);
        return column;
    }

    private Label head(String key) {
        return head(key, new Object[0]);
    }

    private Label head(String key, Object... values) {
        Label label = new Label(sayings.say(key, values));
        label.getStyleClass().addAll("small", "ink2");
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private static Label right(Label label) {
        label.setMaxWidth(Double.MAX_VALUE);
        label.setAlignment(Pos.CENTER_RIGHT);
        label.setStyle("-fx-text-alignment: right;");
        return label;
    }

    private Label would(ReviewedTest test) {
        if (test.note().reading() instanceof Reading.Seen seen) {
            return head("review.explain.answer", sayings.answer(test.note().test(), seen.category()));
        }
        Scale scale = Scale.of(test);
        ReadingRow.Band drawn = new ReadingRow.Band(scale.low(), scale.high());
        return head("review.explain.would", sayings.span(test.note().test(), drawn));
    }

    private Node name(ReadingRow row) {
        Label label = new Label(sayings.suspect(row.classes()));
        label.getStyleClass().addAll("strong", "call-debrief-name");
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        if (row.classes().stream().anyMatch(truth::contains)) {
            IconNode sign = IconNode.of("cross", 14);
            sign.getStyleClass().add("call-debrief-truth");
            label.setGraphic(sign);
            label.setAccessibleText(label.getText() + ", " + sayings.say("review.plan.truth"));
        }
        return label;
    }

    private HBox fits(boolean fits) {
        Label label = new Label(sayings.say(fits ? "review.explain.fits" : "review.explain.no"));
        label.getStyleClass().addAll("strong", fits ? "good" : "alarm");
        IconNode icon = IconNode.of(fits ? "ok" : "cross", 12);
        icon.getStyleClass().add(fits ? "sign-good" : "call-debrief-no");
        label.setGraphic(icon);
        label.setMinWidth(Region.USE_PREF_SIZE);
        HBox box = new HBox(label);
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    private HBox belief(ReadingRow row) {
        Label before = new Label(sayings.percent(row.before()));
        before.getStyleClass().add("ink2");
        Label after = new Label(sayings.percent(row.after()));
        after.getStyleClass().add("call-debrief-after");
        IconNode arrow = IconNode.of("fwd", 11);
        arrow.getStyleClass().add("quiet-ink");
        for (Label label : List.of(before, after)) {
            label.setMinWidth(Region.USE_PREF_SIZE);
        }
        HBox box = new HBox(6, before, arrow, after);
        box.setAlignment(Pos.CENTER_RIGHT);
        return box;
    }

    /**
     * What is drawn from left to right, SI.
     *
     * @param reading what was read
     */
    private record Scale(double low, double high, double reading) {

        static Scale of(ReviewedTest test) {
            if (!(test.note().reading() instanceof Reading.Shown shown)) {
                return new Scale(0, 1, 0);
            }
            double low = shown.value();
            double high = shown.value();
            for (ReadingRow row : test.rows()) {
                for (ReadingRow.Band band : row.bands()) {
                    low = Math.min(low, band.low());
                    high = Math.max(high, band.high());
                }
            }
            double most = REACH * Math.abs(shown.value());
            if (most > 0) {
                high = Math.min(high, Math.max(most, shown.value()));
            }
            return new Scale(low, high > low ? high : low + 1e-12, shown.value());
        }

        double x(double value, double width) {
            double share = (value - low) / (high - low);
            return EDGE + (width - 2 * EDGE) * Math.max(0, Math.min(1, share));
        }
    }

    private Region band(ReviewedTest test, ReadingRow row, Scale scale) {
        if (test.note().reading() instanceof Reading.Seen seen) {
            return odds(row, seen.category());
        }
        return new Drawing((s, w, h) -> {
            double y = h / 2;
            s.stroke(Path.segment(EDGE, y, w - GAP - EDGE, y), Pen.of(theme.at(Tone.HAIRLINE), 1.4));
            for (ReadingRow.Band band : row.bands()) {
                draw(s, band, row.fits(), scale, w - GAP, y);
            }
            double x = scale.x(scale.reading(), w - GAP);
            s.stroke(Path.segment(x, 0, x, h), Pen.of(theme.at(Tone.INK), 2));
            s.fill(Path.svg("M0 -4L4 0L0 4L-4 0Z").mapped(1, 1, x, y), theme.at(Tone.INK));
        });
    }

    private void draw(Surface s, ReadingRow.Band band, boolean fits, Scale scale, double w, double y) {
        boolean cut = band.high() > scale.high() * (1 + 1e-9);
        if (band.low() > scale.high()) {
            arrow(s, w, y);
            return;
        }
        double from = scale.x(band.low(), w);
        double to = Math.max(from + 6, scale.x(band.high(), w));
        Path box = Path.rounded(from, y - BAND / 2, to - from, BAND, 2);
        s.fill(box, theme.at(fits ? Tone.GOOD_SOFT : Tone.SHEET));
        s.stroke(box, Pen.of(theme.at(fits ? Tone.GOOD : Tone.INK_2), 1.6));
        if (cut) {
            arrow(s, w, y);
        }
    }

    private void arrow(Surface s, double w, double y) {
        s.stroke(
                Path.polyline(List.of(
                        new provingyard.scenario.Point(w - 8, y - 5),
                        new provingyard.scenario.Point(w - 2, y),
                        new provingyard.scenario.Point(w - 8, y + 5))),
                Pen.of(theme.at(Tone.INK_2), 1.6));
    }

    private Region odds(ReadingRow row, int seen) {
        double p = row.odds().get(seen);
        Drawing bar = new Drawing((s, w, h) -> {
            double y = h / 2;
            s.fill(Path.rounded(0, y - BAND / 2, w, BAND, 3), theme.at(Tone.SUNK));
            Tone tone = row.fits() ? Tone.GOOD : Tone.INK_2;
            s.fill(Path.rounded(0, y - BAND / 2, Math.max(2, w * p), BAND, 3), theme.at(tone));
        });
        Label label = new Label(sayings.percent(p));
        label.getStyleClass().add("small");
        label.setMinWidth(Region.USE_PREF_SIZE);
        HBox box = new HBox(8, bar, label);
        HBox.setHgrow(bar, Priority.ALWAYS);
        box.setAlignment(Pos.CENTER_LEFT);
        box.setStyle("-fx-padding: 0 14 0 0;");
        return box;
    }

    /** A small drawing as large as its place. */
    private static final class Drawing extends Region {

        private interface Painter {
            void paint(Surface s, double width, double height);
        }

        private final Canvas canvas = new Canvas();
        private final Painter painter;

        private Drawing(Painter painter) {
            this.painter = painter;
            getChildren().add(canvas);
            setMinSize(0, 30);
            setPrefHeight(30);
            setMaxHeight(Double.MAX_VALUE);
        }

        @Override
        protected void layoutChildren() {
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
            var g = canvas.getGraphicsContext2D();
            g.clearRect(0, 0, getWidth(), getHeight());
            painter.paint(new CanvasSurface(g), getWidth(), getHeight());
        }
    }
}
