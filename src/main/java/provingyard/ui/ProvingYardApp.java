package provingyard.ui;

import java.util.List;
import java.util.Locale;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import provingyard.learner.LearnerStore;
import provingyard.learner.Look;
import provingyard.scenario.DataFolder;
import provingyard.scenario.Scenario;

/** The window. */
public final class ProvingYardApp extends Application {

    private Shell shell;

    /** Opens the window and returns when it is closed. */
    public static void open(String... args) {
        launch(ProvingYardApp.class, args);
    }

    @Override
    public void start(Stage stage) {
        Locale locale = Locale.getDefault();
        LearnerStore store = new LearnerStore(DataFolder.find());
        LearnerBook book = new LearnerBook(store, Look.first(locale.getLanguage(), locale.getCountry()));
        OwnSites.Found found = OwnSites.find();
        shell = new Shell(found.sites(), book, 1280, 720);
        Thread.setDefaultUncaughtExceptionHandler((thread, e) -> Platform.runLater(() -> shell.unforeseen(e)));
        stage.setTitle("Proving Yard");
        stage.setScene(shell.scene());
        stage.setOnCloseRequest(e -> {
            if (!shell.kept()) {
                // Only now would something be lost.
                e.consume();
                shell.askToLose(stage::hide);
            }
        });
        stage.setMinWidth(1000);
        stage.setMinHeight(640);
        stage.show();
        shell.tellOf(found.errors());
    }

    /** All sites that can be read, in their order. */
    static List<Scenario> sites() {
        return OwnSites.find().sites();
    }

    @Override
    public void stop() {
        shell.close();
    }
}
