package provingyard.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import provingyard.picture.NightPlot;
import provingyard.picture.Theme;
import provingyard.quantity.Show;
import provingyard.scenario.SensorKind;
import provingyard.scenario.YardPlan;
import provingyard.season.Chronicle;
import provingyard.setup.Placement;
import provingyard.study.Debrief;

/** Iced walks: night by night, with that night's temperatures, what the freeze sensor read and when zones ran. */
final class DebriefIce {

    private static final double FREEZING = 0;

    private final Words words;
    private final Theme theme;
    private final double lettering;
    private final MomentSayings sayings;

    DebriefIce(Words words, Theme theme, double lettering, MomentSayings sayings) {
        this.words = words;
        this.theme = theme;
        this.lettering = lettering;
        this.sayings = sayings;
    }

    /** The section; empty where no walk iced while people walked. */
    Optional<Node> section(Debrief debrief) {
        List<Chronicle.IcedWalk> nights = new ArrayList<>(debrief.chronicle().iced());
        nights.removeIf(n -> n.inTraffic() <= 0);
        if (nights.isEmpty()) {
            return Optional.empty();
        }
        nights.sort(Comparator.comparingDouble((Chronicle.IcedWalk n) -> -n.inTraffic()));
        ComboBox<String> choice = new ComboBox<>();
        choice.setId("ice-nights");
        nights.forEach(n -> choice.getItems().add(name(n, debrief)));
        choice.getSelectionModel().select(0);
        choice.setAccessibleText(words.say("ice.nights"));
        VBox box = new VBox(8, choice, plot(nights.get(0), debrief), key());
        choice.getSelectionModel()
                .selectedIndexProperty()
                .addListener((o, was, is) -> box.getChildren().set(1, plot(nights.get(is.intValue()), debrief)));
        return Optional.of(box);
    }

    private Label key() {
        Label key = new Label(words.say("ice.key"));
        key.getStyleClass().addAll("small", "ink2");
        key.setWrapText(true);
        key.setMinHeight(Region.USE_PREF_SIZE);
        return key;
    }

    private String name(Chronicle.IcedWalk night, Debrief debrief) {
        return words.say(
                "ice.night",
                sayings.day(night.from()),
                walk(night.walk(), debrief),
                words.display().text(Show.ICE, night.inTraffic()));
    }

    private String walk(String id, Debrief debrief) {
        for (YardPlan.Surface surface :
                debrief.season().site().scenario().yard().surfaces()) {
            if (surface.id().equals(id) && surface.label() != null) {
                return words.say(surface.label());
            }
        }
        return id;
    }

    private Node plot(Chronicle.IcedWalk night, Debrief debrief) {
        Chronicle chronicle = debrief.chronicle();
        int step = Chronicle.TEMPERATURE_STEP;
        int steps = night.air().length;
        List<NightPlot.Line> lines = new ArrayList<>();
        lines.add(new NightPlot.Line(words.say("ice.air"), night.air(), NightPlot.Kind.AIR));
        lines.add(new NightPlot.Line(words.say("ice.paving"), night.paving(), NightPlot.Kind.PAVING));
        double limit = Double.NaN;
        for (Placement placement : debrief.season().setUp().of(SensorKind.FREEZE)) {
            Chronicle.Sensed sensed = chronicle.sensor(placement.id());
            if (sensed != null && Double.isNaN(limit)) {
                limit = ((Placement.Freeze) placement).below();
                lines.add(new NightPlot.Line(
                        words.say("sensor.FREEZE"), shown(sensed, night.start(), steps), NightPlot.Kind.SENSOR));
            }
        }
        List<double[]> runs = new ArrayList<>();
        for (Chronicle.Run run : chronicle.runs()) {
            double from = (run.from() - night.start()) / (double) step;
            double until = (run.until() - night.start()) / (double) step;
            if (until > 0 && from < steps - 1) {
                runs.add(new double[] {from, until});
            }
        }
        double[] iced = {
            Math.max(0, (night.from() - night.start()) / (double) step),
            Math.min(steps - 1, (night.until() - night.start()) / (double) step)
        };
        NightPlot plot = new NightPlot(lines, limit, iced, runs, texts(night, steps, limit));
        return new ChartPane((s, w) -> plot.draw(s, w, theme), lettering, name(night, debrief));
    }

    private NightPlot.Words texts(Chronicle.IcedWalk night, int steps, double limit) {
        return new NightPlot.Words(
                words.display().text(Show.TEMPERATURE, FREEZING),
                Double.isNaN(limit) ? "" : words.display().text(Show.TEMPERATURE, limit),
                words.say("ice.iced"),
                words.say("ice.runs"),
                sayings.clock(night.start()),
                sayings.clock(night.start() + (long) (steps - 1) * Chronicle.TEMPERATURE_STEP));
    }

    private static float[] shown(Chronicle.Sensed sensed, long start, int steps) {
        float[] values = new float[steps];
        for (int i = 0; i < steps; i++) {
            values[i] = (float) sensed.seenAt(start + (long) i * Chronicle.TEMPERATURE_STEP);
        }
        return values;
    }
}
