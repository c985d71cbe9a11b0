package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import provingyard.quantity.Show;
import provingyard.season.Siting;
import provingyard.setup.Mount;
import provingyard.setup.Placement;

/** What a trainee could measure where a sensor stands, as rows of the inspector. */
final class SiteFacts {

    private final YardModel model;
    private final Words words;

    SiteFacts(YardModel model, Words words) {
        this.model = model;
        this.words = words;
    }

    /** How and how high it is mounted, in words. */
    String place(Placement placement) {
        if (placement instanceof Placement.Rain r) {
            return mounted(r.mount(), r.height());
        }
        if (placement instanceof Placement.Wind w) {
            return mounted(w.mount(), w.height());
        }
        if (placement instanceof Placement.Freeze f) {
            return mounted(f.mount(), f.height());
        }
        if (placement instanceof Placement.Soil s) {
            return words.say("place.soil", words.display().text(Show.SHORT_LENGTH, s.depth()));
        }
        return words.say("place.flow", ((Placement.Flow) placement).on());
    }

    private String mounted(Mount mount, double height) {
        return words.say(
                "place.mounted",
                words.say("mount." + mount.name()),
                words.display().text(Show.LENGTH, height));
    }

    List<Node> rows(Placement placement) {
        List<Node> rows = new ArrayList<>();
        Siting siting = model.site().siting();
        if (placement instanceof Placement.Flow f) {
            double[] straight = siting.straight(new Siting.OnPipe(f.on(), f.along()));
            rows.add(row("gauge", "fact.innerDiameter", Show.DEPTH, siting.innerDiameter(f.on())));
            rows.add(row("fwd", "fact.straightUp", Show.LENGTH, straight[0]));
            rows.add(row("back", "fact.straightDown", Show.LENGTH, straight[1]));
            rows.add(row("flow", "fact.cannotSee", Show.FLOW, siting.cannotSeeBelow(f.size())));
            return rows;
        }
        if (placement instanceof Placement.Soil s) {
            String soil = model.scenario().catalogue().soils().stream()
                    .filter(of -> of.id().equals(s.soil()))
                    .map(of -> words.say(of.name()))
                    .findFirst()
                    .orElse(s.soil());
            rows.add(text("soil", "fact.soil", soil));
            rows.add(row("drop", "fact.fieldCapacity", Show.FRACTION, siting.fieldCapacity(s.at())));
            rows.add(row("probe", "fact.refill", Show.FRACTION, siting.volumeShare(s.at(), 0.5)));
            return rows;
        }
        Siting.Facts facts = siting.facts(siting.place(placement), siting.heightOf(placement));
        rows.add(row("sky", "fact.skyView", Show.FRACTION, facts.skyView()));
        rows.add(row("drop", "fact.rainShare", Show.FRACTION, facts.rainShare()));
        rows.add(text("spray", "fact.spray", words.say(facts.sprayReach() ? "fact.sprayYes" : "fact.sprayNo")));
        rows.add(row("wind", "fact.shelter", Show.FRACTION, facts.shelter()));
        if (Double.isFinite(facts.toHeat())) {
            rows.add(row("sun", "fact.toHeat", Show.LENGTH, facts.toHeat()));
        }
        return rows;
    }

    private Node row(String icon, String key, Show show, double value) {
        return text(icon, key, words.display().text(show, value));
    }

    private Node text(String icon, String key, String value) {
        IconNode sign = IconNode.of(icon, 16);
        sign.getStyleClass().add("quiet-ink");
        Label name = new Label(words.say(key));
        name.setWrapText(true);
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        Label shown = new Label(value);
        shown.getStyleClass().add("strong");
        shown.setMinWidth(Region.USE_PREF_SIZE);
        HBox row = new HBox(10, sign, name, shown);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }
}
