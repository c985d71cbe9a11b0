package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Application;
import javafx.stage.Stage;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;

/** The window. */
public final class ProvingYardApp extends Application {

    private Shell shell;

    /** Opens the window and returns when it is closed. */
    public static void open(String... args) {
        launch(ProvingYardApp.class, args);
    }

    @Override
    public void start(Stage stage) {
        shell = new Shell(sites(), 1280, 720);
        stage.setTitle("Proving Yard");
        stage.setScene(shell.scene());
        stage.setMinWidth(1000);
        stage.setMinHeight(640);
        stage.show();
    }

    /** All sites that can be read, in their order. */
    static List<Scenario> sites() {
        List<Scenario> sites = new ArrayList<>();
        for (Sites.Site site : Sites.list()) {
            Read<Scenario> read = Sites.open(site.id());
            if (read.value() != null) {
                sites.add(read.value());
            }
        }
        return sites;
    }

    @Override
    public void stop() {
        shell.close();
    }
}
