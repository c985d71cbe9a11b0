package provingyard.ui;

import java.util.List;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import provingyard.quantity.Show;
import provingyard.season.Chronicle;
import provingyard.study.Debrief;

/** Leaks of the season: when each began, how long it ran until it was found, and what it lost. */
final class DebriefLeaks {

    private static final double MINUTE = 60;

    private final Words words;
    private final MomentSayings sayings;

    DebriefLeaks(Words words, MomentSayings sayings) {
        this.words = words;
        this.sayings = sayings;
    }

    /** The table; empty where nothing leaked. */
    Optional<Node> section(Debrief debrief) {
        List<Chronicle.Leak> leaks = debrief.chronicle().leaks().stream()
                .filter(l -> l.firstLost() != Chronicle.NEVER)
                .toList();
        if (leaks.isEmpty()) {
            return Optional.empty();
        }
        GridPane grid = new GridPane();
        grid.setId("leaks");
        grid.getStyleClass().add("share-grid");
        ColumnConstraints what = new ColumnConstraints();
        what.setHgrow(Priority.ALWAYS);
        ColumnConstraints number = new ColumnConstraints();
        number.setHalignment(HPos.RIGHT);
        grid.getColumnConstraints().addAll(what, new ColumnConstraints(), new ColumnConstraints(), number);
        head(grid, 1, "leaks.began");
        head(grid, 2, "leaks.found");
        head(grid, 3, "leaks.lost");
        int line = 1;
        for (Chronicle.Leak leak : leaks) {
            grid.add(new Hairline(), 0, line++, 4, 1);
            Label name = label(words.say("leak." + leak.kind().name()), "strong");
            name.setWrapText(true);
            grid.add(name, 0, line);
            grid.add(label(sayings.day(leak.firstLost()) + " " + sayings.clock(leak.firstLost()), "ink2"), 1, line);
            grid.add(label(found(leak), leak.found() == Chronicle.NEVER ? "share-lost-text" : "ink2"), 2, line);
            grid.add(label(words.display().text(Show.VOLUME, leak.volume()), "strong"), 3, line++);
        }
        return Optional.of(grid);
    }

    private String found(Chronicle.Leak leak) {
        if (leak.found() != Chronicle.NEVER) {
            return words.say("leaks.after", duration(leak.found() - leak.firstLost()));
        }
        return leak.ended() != Chronicle.NEVER
                ? words.say("leaks.seen", duration(leak.ended() - leak.firstLost()))
                : words.say("leaks.never");
    }

    private String duration(long minutes) {
        return words.display().text(Show.DURATION, minutes * MINUTE);
    }

    private void head(GridPane grid, int column, String key) {
        Label label = label(words.say(key), "ink2");
        label.getStyleClass().add("small");
        grid.add(label, column, 0);
    }

    private static Label label(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }
}
