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
import provingyard.report.IcedNight;
import provingyard.scenario.YardPlan;
import provingyard.season.Chronicle;
import provingyard.study.Debrief;
import provingyard.text.Texts;

/** Iced walks: night by night, with that night's temperatures, what the freeze sensor read and when zones ran. */
final class DebriefIce {

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
        Texts texts = Texts.of("ui", words.language());
        NightPlot plot = IcedNight.of(debrief.season(), debrief.chronicle(), night, texts, words.display());
        return new ChartPane((s, w) -> plot.draw(s, w, theme), lettering, name(night, debrief));
    }
}
