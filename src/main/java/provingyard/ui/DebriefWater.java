package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import provingyard.picture.Charts;
import provingyard.picture.Theme;
import provingyard.quantity.Show;
import provingyard.season.Ledger;
import provingyard.study.Debrief;

/** Where the water went: the clock alone, the trainee and the mark, kept for the plants and wasted. */
final class DebriefWater {

    private final Words words;
    private final Theme theme;
    private final double lettering;

    DebriefWater(Words words, Theme theme, double lettering) {
        this.words = words;
        this.theme = theme;
        this.lettering = lettering;
    }

    Node chart(Debrief debrief) {
        List<Charts.WaterRow> rows = new ArrayList<>();
        rows.add(row("result.clock", false, debrief.clock().ledger().irrigation()));
        rows.add(row("result.you", true, debrief.season().ledger().irrigation()));
        debrief.best()
                .ifPresent(b -> rows.add(row("result.mark", false, b.ledger().irrigation())));
        String spoken = String.join(
                "; ",
                rows.stream()
                        .map(r -> r.name() + ": " + words.say("debrief.kept") + " " + r.keptText() + ", "
                                + words.say("debrief.wasted") + " " + r.wastedText())
                        .toList());
        return new ChartPane(
                (s, w) -> Charts.water(
                        s, w, rows, words.say("debrief.kept"), words.say("debrief.wasted"), theme, words.language()),
                lettering,
                spoken);
    }

    private Charts.WaterRow row(String name, boolean own, Ledger.Irrigation i) {
        // Water still in the soil serves the plants later; a store that fell was used.
        double kept = i.used() + i.storeChange();
        return new Charts.WaterRow(
                words.say(name),
                own,
                Math.max(0, kept),
                words.display().text(Show.VOLUME, kept),
                new double[] {i.drift(), i.overspray(), i.runoff(), i.below(), i.leaked()},
                words.display().text(Show.VOLUME, i.wasted()));
    }
}
