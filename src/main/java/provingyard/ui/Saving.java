package provingyard.ui;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;
import provingyard.quantity.UnitSystem;
import provingyard.report.DebriefPage;
import provingyard.report.EventsCsv;
import provingyard.report.LedgerCsv;
import provingyard.report.OwnerPage;
import provingyard.report.Paper;
import provingyard.report.Reports;
import provingyard.report.Story;
import provingyard.study.Debrief;

/** Saves a debrief: as a page, for paper, for the property's owner, and its books as tables. */
final class Saving {

    /** What can be saved. */
    enum Kind {
        PAGE("html", "debrief"),
        PAPER("pdf", "debrief"),
        OWNER("pdf", "owner"),
        LEDGER("csv", "ledger"),
        EVENTS("csv", "events");

        private final String ending;
        private final String name;

        Kind(String ending, String name) {
            this.ending = ending;
            this.name = name;
        }
    }

    private final YardModel model;
    private final Words words;
    private final Supplier<Debrief> debrief;
    private final FileSaver files;

    /**
     * Saving of a debrief.
     *
     * @param debrief as far as it came; null before there is one
     * @param over the node over which files are chosen and notices shown
     */
    Saving(YardModel model, Words words, Supplier<Debrief> debrief, Node over) {
        this.model = model;
        this.words = words;
        this.debrief = debrief;
        files = new FileSaver(words, model.scenario().title(), over);
    }

    /** One item for each kind. */
    List<MenuItem> menu() {
        return Arrays.stream(Kind.values()).map(this::item).toList();
    }

    private MenuItem item(Kind kind) {
        MenuItem item = new MenuItem();
        item.setId("save-" + kind.name());
        words.bind(item.textProperty(), "save." + kind.name());
        item.setOnAction(e -> choose(kind));
        return item;
    }

    private void choose(Kind kind) {
        if (!ready(kind)) {
            return;
        }
        String name = model.scenario().id() + "-" + kind.name + "." + kind.ending;
        files.choose(words.say("save." + kind.name()), name, content(kind));
    }

    /** Whether there is something to be saved; says so where not. */
    private boolean ready(Kind kind) {
        Debrief now = debrief.get();
        boolean known = now != null && (kind != Kind.OWNER || OwnerPage.tells(now));
        if (!known) {
            files.say(words.say("save.notYet"));
        }
        return known;
    }

    /** Writes a file off the window's thread, and says when it is done or why it is not. */
    void save(Kind kind, Path file) {
        if (ready(kind)) {
            files.save(file, content(kind));
        }
    }

    /** What is written, as it stands and in the language and units of now. */
    private FileSaver.Content content(Kind kind) {
        Debrief now = debrief.get();
        String language = words.language();
        UnitSystem units = words.units().get();
        return () -> bytes(kind, new Story(now, ""), language, units);
    }

    private static byte[] bytes(Kind kind, Story story, String language, UnitSystem units) throws IOException {
        return switch (kind) {
            case PAGE -> DebriefPage.of(story, language, units).text().getBytes(StandardCharsets.UTF_8);
            case PAPER -> Reports.pdf(story, language, units);
            case OWNER -> OwnerPage.pdf(story.debrief(), language, units, Paper.of(units));
            case LEDGER -> LedgerCsv.of(story, language, units);
            case EVENTS -> EventsCsv.of(story.debrief().season(), language, units);
        };
    }
}
