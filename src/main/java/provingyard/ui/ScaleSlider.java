package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.Region;
import provingyard.quantity.Display;
import provingyard.quantity.Parsed;
import provingyard.quantity.Show;

/** A slider over a scale: the usual range is a thicker band, numbers stand under their ticks, the unit after the last. */
final class ScaleSlider extends Region {

    private static final double THUMB = 18;
    private static final double TRACK = 5;
    private static final double BAND = 9;
    private static final double TICK = 4;
    private static final int KEY_STEPS = 20;
    private static final int TICKS = 5;

    private record Mark(double at, Region line, Label text) {}

    private final Setting setting;
    private final Words words;
    private final Slider slider = new Slider();
    private final Region track = new Region();
    private final Region usual = new Region();
    private final Region filled = new Region();
    private final List<Mark> marks = new ArrayList<>();
    private boolean showing;

    /**
     * A slider.
     *
     * @param onMove told of each value passed
     * @param onRelease told of the value at which it was let go
     */
    ScaleSlider(Setting setting, Words words, DoubleConsumer onMove, DoubleConsumer onRelease) {
        this.setting = setting;
        this.words = words;
        getStyleClass().add("scale");
        track.getStyleClass().add("scale-track");
        usual.getStyleClass().add("scale-usual");
        filled.getStyleClass().add("scale-filled");
        slider.setMin(setting.least());
        slider.setMax(setting.most());
        slider.setBlockIncrement((setting.most() - setting.least()) / KEY_STEPS);
        slider.accessibleTextProperty()
                .bind(Bindings.createStringBinding(
                        () -> words.say(setting.key()) + " " + words.display().text(setting.show(), slider.getValue()),
                        words.languageChanges(),
                        words.units(),
                        slider.valueProperty()));
        usual.setVisible(setting.usual() != null);
        getChildren().addAll(track, usual, filled, slider);
        for (Region r : List.of(track, usual, filled)) {
            r.setMouseTransparent(true);
        }
        slider.valueProperty().addListener((o, was, is) -> {
            requestLayout();
            if (!showing && slider.isValueChanging()) {
                onMove.accept(asRead(is.doubleValue()));
            } else if (!showing) {
                onRelease.accept(asRead(is.doubleValue()));
            }
        });
        slider.valueChangingProperty().addListener((o, was, is) -> {
            if (!is && !showing) {
                onRelease.accept(asRead(slider.getValue()));
            }
        });
        words.units().addListener(o -> marks());
        words.languageChanges().addListener(o -> marks());
        marks();
    }

    /** The slider itself. */
    Slider slider() {
        return slider;
    }

    /** Shows a value in the setting's inner unit. */
    void show(double inner, boolean editable) {
        showing = true;
        slider.setValue(inner);
        showing = false;
        slider.setDisable(!editable);
    }

    /** The value as it is shown, so that what is read is what is set. */
    private double asRead(double inner) {
        Display d = words.display();
        double read =
                d.read(setting.show(), d.text(setting.show(), inner)) instanceof Parsed.Value v ? v.inner() : inner;
        return Math.max(setting.least(), Math.min(setting.most(), read));
    }

    private void marks() {
        marks.forEach(m -> getChildren().removeAll(m.line(), m.text()));
        marks.clear();
        Display d = words.display();
        List<Double> ticks = ticks(d.shown(setting.show(), setting.least()), d.shown(setting.show(), setting.most()));
        for (double shown : ticks) {
            double inner = d.inner(setting.show(), shown);
            Region line = new Region();
            line.getStyleClass().add("scale-tick");
            Label text = new Label(written(inner, shown == ticks.get(ticks.size() - 1)));
            text.getStyleClass().addAll("small", "ink3");
            text.setMouseTransparent(true);
            line.setMouseTransparent(true);
            marks.add(new Mark(inner, line, text));
            getChildren().addAll(0, List.of(line, text));
        }
        requestLayout();
    }

    private String written(double inner, boolean last) {
        Display d = words.display();
        boolean time = setting.show() == Show.DURATION;
        return last || time ? d.text(setting.show(), inner) : d.number(setting.show(), inner);
    }

    /** Round numbers from end to end, about as many as there is room for; an end counts where it is round itself. */
    static List<Double> ticks(double least, double most) {
        double raw = (most - least) / TICKS;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double step = power * 10;
        for (double of : new double[] {5, 2.5, 2, 1}) {
            step = of * power >= raw - 1e-9 ? of * power : step;
        }
        List<Double> all = new ArrayList<>();
        for (long k = (long) Math.ceil(least / step - 1e-6); k * step <= most * (1 + 1e-9) + 1e-12; k++) {
            all.add(k * step);
        }
        return all;
    }

    private double x(double inner) {
        double share = (inner - setting.least()) / (setting.most() - setting.least());
        return THUMB / 2 + share * (getWidth() - THUMB);
    }

    @Override
    protected void layoutChildren() {
        double middle = THUMB / 2 + 1;
        slider.resizeRelocate(0, 0, getWidth(), THUMB + 2);
        band(track, setting.least(), setting.most(), middle, TRACK);
        if (setting.usual() != null) {
            double from = Math.max(setting.least(), setting.usual().from());
            double to = Math.min(setting.most(), setting.usual().to());
            band(usual, from, to, middle, BAND);
        }
        band(filled, setting.least(), slider.getValue(), middle, TRACK);
        double taken = -Double.MAX_VALUE;
        double end = getWidth();
        for (Mark m : marks) {
            double w = m.text().prefWidth(-1);
            double x = Math.max(0, Math.min(end - w, x(m.at()) - w / 2));
            boolean lastOne = m == marks.get(marks.size() - 1);
            boolean room = x > taken + 6 && (lastOne || x + w < end - lastWidth() - 6);
            m.text().setVisible(room);
            m.line().setVisible(room);
            m.text().resizeRelocate(x, THUMB + TICK, w, m.text().prefHeight(-1));
            m.line().resizeRelocate(x(m.at()) - 0.5, THUMB + 1, 1, TICK);
            taken = room ? x + w : taken;
        }
    }

    private double lastWidth() {
        return marks.get(marks.size() - 1).text().prefWidth(-1);
    }

    private void band(Region of, double from, double to, double middle, double height) {
        of.resizeRelocate(x(from), middle - height / 2, Math.max(0, x(to) - x(from)), height);
    }

    @Override
    protected double computePrefHeight(double width) {
        double text =
                marks.stream().mapToDouble(m -> m.text().prefHeight(-1)).max().orElse(0);
        return THUMB + TICK + text;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 200;
    }
}
