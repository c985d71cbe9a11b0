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
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.season.Needs;
import provingyard.season.Siting;
import provingyard.setup.Mount;
import provingyard.setup.Placement;

/** What a trainee could measure where a sensor stands or is carried, as rows of the inspector and as a line at the hand. */
final class SiteFacts {

    /** Inner diameters of straight pipe that a flow sensor needs, as the season's siting questions count them. */
    private static final int BEFORE = 10;

    private static final int BEHIND = 5;

    /**
     * One fact.
     *
     * @param name its key
     * @param good whether it is as it should be; null where it is only a measure
     */
    record Fact(String icon, String name, String value, Boolean good) {}

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

    /** The facts of a placement's place. */
    List<Fact> of(Placement placement) {
        Siting siting = model.site().siting();
        if (placement instanceof Placement.Flow f) {
            return flow(siting, f);
        }
        if (placement instanceof Placement.Soil s) {
            return soil(siting, s);
        }
        Point at = siting.place(placement);
        double height = siting.heightOf(placement);
        Siting.Facts facts = siting.facts(at, height);
        return switch (placement.kind()) {
            case RAIN ->
                List.of(
                        share("sky", "fact.skyView", facts.skyView()),
                        share("drop", "fact.rainShare", facts.rainShare()),
                        spray(facts),
                        sun(siting, at, height));
            case WIND ->
                List.of(share("wind", "fact.shelter", facts.shelter()), share("sky", "fact.skyView", facts.skyView()));
            default ->
                List.of(
                        heat(facts),
                        share("sky", "fact.skyView", facts.skyView()),
                        sun(siting, at, height),
                        share("wind", "fact.shelter", facts.shelter()));
        };
    }

    private Fact share(String icon, String key, double value) {
        return new Fact(icon, key, words.display().text(Show.FRACTION, value), null);
    }

    private Fact measure(String icon, String key, Show show, double value) {
        return new Fact(icon, key, words.display().text(show, value), null);
    }

    private Fact spray(Siting.Facts facts) {
        String value = words.say(facts.sprayReach() ? "fact.sprayYes" : "fact.sprayNo");
        return new Fact("spray", "fact.spray", value, !facts.sprayReach());
    }

    private Fact sun(Siting siting, Point at, double height) {
        String hours = words.display().text(Show.DURATION, 3600 * siting.sunHours(at, height));
        return new Fact("sun", "fact.sun", words.say("fact.aDay", hours), null);
    }

    private Fact heat(Siting.Facts facts) {
        String value = Double.isFinite(facts.toHeat())
                ? words.display().text(Show.LENGTH, facts.toHeat())
                : words.say("fact.noHeat");
        return new Fact("sun", "fact.toHeat", value, null);
    }

    private List<Fact> flow(Siting siting, Placement.Flow f) {
        Siting.OnPipe on = new Siting.OnPipe(f.on(), f.along());
        double[] straight = siting.straight(on);
        double bore = siting.innerDiameter(f.on());
        List<Fact> facts = new ArrayList<>();
        facts.add(straight("fwd", "fact.straightUp", straight[0], bore, BEFORE));
        facts.add(straight("back", "fact.straightDown", straight[1], bore, BEHIND));
        facts.add(measure("gauge", "fact.innerDiameter", Show.DEPTH, bore));
        facts.add(measure("flow", "fact.cannotSee", Show.FLOW, siting.cannotSeeBelow(f.size())));
        return facts;
    }

    private Fact straight(String icon, String key, double length, double bore, int needed) {
        String value =
                words.say("fact.straight", words.display().text(Show.LENGTH, length), (int) (length / bore), needed);
        return new Fact(icon, key, value, length >= needed * bore);
    }

    private List<Fact> soil(Siting siting, Placement.Soil s) {
        String soil = model.scenario().catalogue().soils().stream()
                .filter(of -> of.id().equals(s.soil()))
                .map(of -> words.say(of.name()))
                .findFirst()
                .orElse(s.soil());
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("soil", "fact.soil", soil, null));
        facts.addAll(spoken(siting.spoken(s.at())));
        facts.add(share("drop", "fact.fieldCapacity", siting.fieldCapacity(s.at())));
        facts.add(share("probe", "fact.refill", siting.volumeShare(s.at(), 0.5)));
        return facts;
    }

    private List<Fact> spoken(Needs.Spoken spoken) {
        if (spoken == null) {
            return List.of(new Fact("spray", "fact.zoneWater", words.say("fact.noZone"), false));
        }
        return List.of(share("spray", "fact.zoneWater", spoken.water()), share("sky", "fact.zoneSky", spoken.sky()));
    }

    /** The one line that matters most where a kind is carried. */
    String atHand(YardModel.Hand hand) {
        Siting siting = model.site().siting();
        Point at = hand.spot();
        if (hand.kind() == SensorKind.FLOW) {
            Siting.OnPipe on = siting.nearestPipe(at);
            double[] straight = siting.straight(on);
            double bore = siting.innerDiameter(on.pipe());
            return words.say(
                    "hand.flow", (int) (straight[0] / bore), BEFORE, (int) (straight[1] / bore), BEHIND, pipeSize(on));
        }
        if (hand.kind() == SensorKind.SOIL) {
            Needs.Spoken spoken = siting.spoken(at);
            return spoken == null
                    ? words.say("fact.noZone")
                    : words.say("hand.soil", percent(spoken.water()), percent(spoken.sky()));
        }
        Siting.Facts facts = siting.facts(at, NewPlacement.height(hand.kind()));
        return switch (hand.kind()) {
            case RAIN ->
                words.say(
                        facts.sprayReach() ? "hand.rainSprayed" : "hand.rain",
                        percent(facts.skyView()),
                        percent(facts.rainShare()));
            case WIND -> words.say("hand.wind", percent(facts.shelter()));
            default -> words.say("hand.freeze", heat(facts).value(), percent(facts.skyView()));
        };
    }

    private String pipeSize(Siting.OnPipe on) {
        return model.scenario().plumbing().pipes().stream()
                .filter(p -> p.id().equals(on.pipe()))
                .mapToDouble(Plumbing.Pipe::size)
                .mapToObj(size -> words.display().text(Show.DEPTH, size))
                .findFirst()
                .orElse("");
    }

    private String percent(double share) {
        return words.display().text(Show.FRACTION, share);
    }

    /** The facts of a placement's place as rows. */
    List<Node> rows(Placement placement) {
        return of(placement).stream().map(this::row).toList();
    }

    private Node row(Fact fact) {
        Label shown = new Label(fact.value());
        shown.getStyleClass().add("strong");
        shown.setMinWidth(Region.USE_PREF_SIZE);
        if (fact.good() != null) {
            shown.getStyleClass().add(fact.good() ? "good" : "caution-ink");
            shown.setGraphic(IconNode.of(fact.good() ? "ok" : "caution", 14));
        }
        return row(fact.icon(), words.say(fact.name()), shown);
    }

    /** A row with an icon, a name and something at its right. */
    static HBox row(String icon, String name, Region right) {
        IconNode sign = IconNode.of(icon, 16);
        sign.getStyleClass().add("quiet-ink");
        Label text = new Label(name);
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        text.setMinWidth(40);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox row = new HBox(sign, text, right);
        row.getStyleClass().add("fact-row");
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }
}
