package provingyard.ui;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;
import provingyard.call.Call;
import provingyard.quantity.UnitSystem;
import provingyard.report.CallCsv;
import provingyard.report.CallPage;
import provingyard.report.Paper;

/** Saves a service call's debrief: as a page, for paper, and its tests as a table. */
final class CallDebriefSaving {

    /** What can be saved. */
    enum Kind {
        PAGE("call.html"),
        PAPER("call.pdf"),
        TESTS("tests.csv");

        private final String name;

        Kind(String name) {
            this.name = name;
        }
    }

    private final CallDebriefModel model;
    private final Words words;
    private final FileSaver files;

    CallDebriefSaving(CallDebriefModel model, Words words, Node over) {
        this.model = model;
        this.words = words;
        files = new FileSaver(words, model.call().site().scenario().title(), over);
    }

    /** One item for each kind. */
    List<MenuItem> menu() {
        return Arrays.stream(Kind.values()).map(this::item).toList();
    }

    private MenuItem item(Kind kind) {
        MenuItem item = new MenuItem();
        item.setId("save-" + kind.name());
        words.bind(item.textProperty(), "save." + kind.name());
        String id = model.call().site().scenario().id();
        item.setOnAction(e -> files.choose(words.say("save." + kind.name()), id + "-" + kind.name, content(kind)));
        return item;
    }

    void save(Kind kind, Path file) {
        files.save(file, content(kind));
    }

    /** What is written, as it stands and in the language and units of now. */
    private FileSaver.Content content(Kind kind) {
        CallDebriefModel.State state = model.stateProperty().get();
        Call call = model.call();
        String language = words.language();
        UnitSystem units = words.units().get();
        return () ->
                bytes(kind, new CallDebriefPage(call, state.review(), state.said(), language, units), language, units);
    }

    private static byte[] bytes(Kind kind, CallDebriefPage page, String language, UnitSystem units) throws IOException {
        return switch (kind) {
            case PAGE -> CallPage.of(page.story()).text().getBytes(StandardCharsets.UTF_8);
            case PAPER -> CallPage.pdf(page.story(), Paper.of(units));
            case TESTS -> CallCsv.of(page.lines(), language, units);
        };
    }
}
