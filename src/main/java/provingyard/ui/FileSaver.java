package provingyard.ui;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.stage.FileChooser;
import provingyard.scenario.Text;

/** Writes what is saved off the window's thread, and says when it is done or why it is not. */
final class FileSaver {

    /** What is written, made when it is. */
    interface Content {
        byte[] bytes() throws IOException;
    }

    private final Words words;
    private final Text title;
    private final Node over;

    /**
     * Saves files.
     *
     * @param title what notices are about
     * @param over the node over which files are chosen and notices shown
     */
    FileSaver(Words words, Text title, Node over) {
        this.words = words;
        this.title = title;
        this.over = over;
    }

    /** Lets a file be chosen and writes it; {@code kind} is what it is called, {@code name} has an ending. */
    void choose(String kind, String name, Content content) {
        FileChooser chooser = new FileChooser();
        String ending = name.substring(name.lastIndexOf('.'));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(kind, "*" + ending));
        chooser.setInitialFileName(name);
        File file = chooser.showSaveDialog(over.getScene().getWindow());
        if (file != null) {
            save(file.toPath(), content);
        }
    }

    void save(Path file, Content content) {
        Thread thread = new Thread(
                () -> {
                    String said = written(file, content);
                    Platform.runLater(() -> say(said));
                },
                "save");
        thread.setDaemon(true);
        thread.start();
    }

    private String written(Path file, Content content) {
        try {
            Files.write(file, content.bytes());
            return words.say("save.done", file.toAbsolutePath());
        } catch (IOException e) {
            return words.say("save.failed", file.toAbsolutePath(), String.valueOf(e.getMessage()));
        }
    }

    void say(String text) {
        Notice.show(over.getScene(), words.say(title), text);
    }
}
