package provingyard.ui;

import java.util.List;
import java.util.stream.DoubleStream;
import javafx.beans.property.IntegerProperty;
import javafx.geometry.Pos;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.call.ReviewedTest;
import provingyard.diagnosis.Step;
import provingyard.picture.Colour;
import provingyard.picture.FontRole;
import provingyard.picture.Icons;
import provingyard.picture.Path;
import provingyard.picture.Pen;
import provingyard.picture.Surface;
import provingyard.picture.TextStyle;
import provingyard.picture.Theme;
import provingyard.picture.Tone;

/** One bar for each test: outline the best bits there were in its minutes, filled those of the test, dot what came out. */
final class CallDebriefStrip extends Region {

    private static final double TALL = 118;
    private static final double AXIS = 26;

    /** px of a column beside a name: its sign and air. */
    private static final double BESIDE = 36;

    private static final double WIDEST = 120;

    /** What came out is drawn up to this times the best bits above and below 0, further off as an arrow with its number. */
    private static final double OVER = 1.6;

    private static final double UNDER = 0.6;

    private final CallDebriefWords sayings;
    private final List<ReviewedTest> tests;
    private final IntegerProperty at;
    private final Theme theme;
    private final double lettering;
    private final Canvas canvas = new Canvas();
    private final HBox columns = new HBox();
    private final double top;
    private final double bottom;

    CallDebriefStrip(
            CallDebriefWords sayings, List<ReviewedTest> tests, IntegerProperty at, Theme theme, double lettering) {
        this.sayings = sayings;
        this.tests = tests;
        this.at = at;
        this.theme = theme;
        this.lettering = lettering;
        double best = tests.stream().mapToDouble(ReviewedTest::best).max().orElse(1);
        double highest = realised().max().orElse(0);
        double lowest = realised().min().orElse(0);
        top = Math.max(0.5, Math.max(best, Math.min(highest, OVER * best)));
        bottom = Math.min(0, Math.max(lowest, -UNDER * best));
        canvas.setMouseTransparent(true);
        tests.forEach(t -> columns.getChildren().add(column(t)));
        getChildren().addAll(columns, canvas);
        setMinWidth(0);
        at.addListener((o, was, is) -> chosen());
        // Not while laying out: what is put into a button then is drawn a pulse late.
        widthProperty().addListener(o -> captions());
        chosen();
    }

    private DoubleStream realised() {
        return tests.stream().mapToDouble(t -> t.step().realised());
    }

    private ToggleButton column(ReviewedTest test) {
        ToggleButton button = new ToggleButton();
        button.setId("call-debrief-test-" + test.number());
        button.getStyleClass().add("call-debrief-column");
        button.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        button.setAccessibleText(accessible(test));
        button.setOnAction(e -> {
            at.set(test.number());
            chosen();
        });
        return button;
    }

    private String accessible(ReviewedTest test) {
        Step step = test.step();
        String name = sayings.name(test.note().test());
        String minutes = sayings.minutes(step.minutes());
        return test.judged()
                ? sayings.say(
                        "review.strip.accessible",
                        test.number(),
                        name,
                        minutes,
                        sayings.bits(step.gain()),
                        sayings.bits(test.best()),
                        sayings.bits(step.realised()))
                : sayings.say("review.strip.unjudged", test.number(), name, minutes);
    }

    private void chosen() {
        for (int i = 0; i < tests.size(); i++) {
            ((ToggleButton) columns.getChildren().get(i))
                    .setSelected(tests.get(i).number() == at.get());
        }
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.ceil(TALL + 46 * lettering);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        double height = getHeight();
        double each = each();
        columns.resizeRelocate(AXIS, 0, each * tests.size(), height);
        for (int i = 0; i < tests.size(); i++) {
            ToggleButton button = (ToggleButton) columns.getChildren().get(i);
            button.setMinSize(each, height);
            button.setPrefSize(each, height);
            button.setMaxSize(each, height);
        }
        columns.layout();
        canvas.setWidth(getWidth());
        canvas.setHeight(TALL);
        draw();
    }

    private double each() {
        return Math.floor(Math.min(WIDEST * lettering, (getWidth() - AXIS) / Math.max(1, tests.size())));
    }

    private void captions() {
        double each = each();
        for (int i = 0; i < tests.size(); i++) {
            ((ToggleButton) columns.getChildren().get(i))
                    .setGraphic(caption(tests.get(i), each, computePrefHeight(getWidth())));
        }
    }

    private Region caption(ReviewedTest test, double width, double height) {
        IconNode icon = CallDebriefSigns.of(test.note().test());
        boolean named = widest() <= width;
        Label name = new Label(named ? sayings.brief(test.note().test()) : "", icon);
        name.getStyleClass().addAll("strong", "small");
        name.setMaxWidth(width - 8);
        name.setGraphicTextGap(5);
        name.setAlignment(Pos.CENTER);
        if (!named) {
            name.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        }
        String alone = test.number() + ", " + sayings.wholeMinutes(test.step().minutes());
        Label below = new Label(named ? below(test) : alone);
        below.getStyleClass().addAll("small", "ink2");
        VBox box = new VBox(2, name, below);
        box.setAlignment(Pos.BOTTOM_CENTER);
        box.setMinSize(width - 4, height - 8);
        box.setMaxSize(width - 4, height - 8);
        return box;
    }

    /** px of the widest caption: where a column has less, signs and numbers stand alone. */
    private double widest() {
        Surface s = new CanvasSurface(canvas.getGraphicsContext2D());
        double size = 12 * lettering;
        double widest = 0;
        for (ReviewedTest test : tests) {
            double name = s.textWidth(sayings.brief(test.note().test()), FontRole.STRONG, size) + BESIDE;
            double below = s.textWidth(below(test), FontRole.TEXT, size) + BESIDE / 3;
            widest = Math.max(widest, Math.max(name, below));
        }
        return widest;
    }

    private String below(ReviewedTest test) {
        return sayings.say(
                "review.strip.test",
                test.number(),
                sayings.wholeMinutes(test.step().minutes()));
    }

    private double y(double bits) {
        double room = TALL - 14;
        return 8 + room * (top - bits) / (top - bottom);
    }

    private void draw() {
        var g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        Surface s = new CanvasSurface(g);
        double each = each();
        double right = AXIS + each * tests.size();
        double step = top - bottom > 4 ? 2 : top - bottom > 1.2 ? 1 : 0.5;
        for (double b = Math.ceil(bottom / step) * step; b <= top; b += step) {
            if (b != 0) {
                s.stroke(Path.segment(AXIS, y(b), right, y(b)), Pen.of(theme.at(Tone.HAIRLINE), 1));
            }
            TextStyle number =
                    TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK_2)).end();
            s.text(sayings.bits(b), AXIS - 6, y(b) + 4, number);
        }
        for (int i = 0; i < tests.size(); i++) {
            bar(s, tests.get(i), AXIS + (i + 0.5) * each, Math.min(42, each * 0.42));
        }
        s.stroke(Path.segment(AXIS, y(0), right, y(0)), Pen.of(theme.at(Tone.INK), 1.6));
    }

    private void bar(Surface s, ReviewedTest test, double x, double width) {
        Step step = test.step();
        Colour ink = theme.at(Tone.INK);
        if (!step.breaches().isEmpty()) {
            Icons.get("alarm").draw(s, x, y(0) - 14, 18, theme.at(Tone.ALARM));
        }
        if (!test.judged()) {
            return;
        }
        double left = x - width / 2 - 5;
        double best = test.best();
        s.fill(Path.rectangle(left, y(best), width, y(0) - y(best)), theme.at(Tone.SHEET));
        s.fill(Path.rectangle(left, y(step.gain()), width, y(0) - y(step.gain())), theme.at(Tone.BELIEF));
        s.stroke(
                Path.rectangle(left, y(best), width, y(0) - y(best)),
                Pen.of(ink, 1.8).sharp());
        if (!step.breaches().isEmpty()) {
            Icons.get("alarm").draw(s, left + width / 2, sign(step, best), 18, theme.at(Tone.ALARM));
        } else if (test.better().isPresent() && step.share() < 0.5) {
            Icons.get("caution").draw(s, left + width / 2, sign(step, best), 15, theme.at(Tone.CAUTION));
        }
        cameOut(s, step.realised(), left + width + 9);
    }

    private void cameOut(Surface s, double bits, double x) {
        Colour ink = theme.at(Tone.INK);
        double y = y(Math.max(bottom, Math.min(top, bits)));
        if (bits <= top + 1e-9 && bits >= bottom - 1e-9) {
            s.fill(Path.circle(x, y, 4.6), theme.at(Tone.SHEET));
            s.stroke(Path.circle(x, y, 4.6), Pen.of(ink, 2));
            return;
        }
        int up = bits > top ? -1 : 1;
        s.fill(Path.svg("M-5 0H5L0 " + 7 * up + "Z").mapped(1, 1, x, y - 2 * up), ink);
        s.text(sayings.bits(bits), x + 8, y + 4, TextStyle.of(FontRole.STRONG, 12, ink));
    }

    /** Above the filled part, within the outline where there is room. */
    private double sign(Step step, double best) {
        return Math.max(y(best) + 11, Math.min(y(step.gain()) - 11, y(0) - 11));
    }
}
