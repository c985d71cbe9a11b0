package provingyard.ui;

import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import provingyard.call.Call;
import provingyard.call.LivedCalls;
import provingyard.picture.FontRole;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;

/** Opens the debrief of a lived call, for looking at: {@code good|lucky|unsafe [en|es] [light|dark] [width] [height] [em]}. */
public final class CallDebriefPreview extends Application {

    public static void main(String[] arguments) {
        launch(arguments);
    }

    static Call call(String name) {
        return switch (name) {
            case "lucky" -> LivedCalls.lucky();
            case "unsafe" -> LivedCalls.unsafe();
            default -> LivedCalls.good();
        };
    }

    @Override
    public void start(Stage stage) {
        var given = getParameters().getRaw();
        for (FontRole role : FontRole.values()) {
            CanvasSurface.font(role, 14);
        }
        Words words = new Words();
        words.speak(given.size() > 1 ? given.get(1) : "en");
        words.units().set(words.language().equals("es") ? UnitSystem.METRIC : UnitSystem.US);
        Theme theme = given.size() > 2 && given.get(2).equals("dark") ? Theme.DARK : Theme.LIGHT;
        double width = given.size() > 3 ? Double.parseDouble(given.get(3)) : 1280;
        double height = given.size() > 4 ? Double.parseDouble(given.get(4)) : 720;
        double em = given.size() > 5 ? Double.parseDouble(given.get(5)) : Shell.EM;
        StackPane root = new StackPane();
        Scene scene = new Scene(root, width, height);
        scene.getStylesheets().setAll(ThemeSheet.all(theme, em));
        CallDebriefScreen screen = new CallDebriefScreen(
                call(given.isEmpty() ? "good" : given.get(0)), false, words, Throwable::printStackTrace, acts(stage));
        screen.look(theme, em);
        root.getChildren().add(screen);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.F2) {
                words.speak(words.language().equals("en") ? "es" : "en");
            } else if (e.getCode() == KeyCode.F3) {
                words.units().set(words.units().get() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US);
            }
        });
        stage.setScene(scene);
        stage.show();
    }

    private static CallDebriefScreen.Acts acts(Stage stage) {
        return new CallDebriefScreen.Acts() {
            @Override
            public void back() {
                stage.close();
            }

            @Override
            public void fork(Call practice) {
                System.out.println("fork after " + practice.notes().size());
            }
        };
    }
}
