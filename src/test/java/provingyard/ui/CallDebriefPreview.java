package provingyard.ui;

import java.util.List;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import provingyard.call.Call;
import provingyard.call.LivedCalls;
import provingyard.picture.FontRole;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;

/**
 * The debriefs of a good, a lucky and an unsafe call in a window, for looking at. F2 language, F3 units, F4 theme, F6
 * size of the window, F7 next call, F8 size of texts.
 */
public final class CallDebriefPreview {

    private final Words words = new Words();
    private final StackPane root = new StackPane();
    private final Scene scene = new Scene(root, 1280, 720);
    private final Stage stage;
    private CallDebriefScreen screen;
    private Theme theme = Theme.LIGHT;
    private double em = Shell.EM;
    private int call = -1;

    private CallDebriefPreview(Stage stage) {
        this.stage = stage;
        words.units().set(UnitSystem.US);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        stage.setScene(scene);
        next();
        stage.show();
    }

    public static void main(String[] arguments) {
        Application.launch(Window.class, arguments);
    }

    /** The window. */
    public static final class Window extends Application {
        @Override
        public void start(Stage stage) {
            for (FontRole role : FontRole.values()) {
                CanvasSurface.font(role, 14);
            }
            new CallDebriefPreview(stage);
        }
    }

    private void key(KeyEvent e) {
        switch (e.getCode()) {
            case F2 -> words.speak(words.language().equals("en") ? "es" : "en");
            case F3 -> words.units().set(words.units().get() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US);
            case F4 -> theme = theme == Theme.LIGHT ? Theme.DARK : Theme.LIGHT;
            case F6 -> size(scene.getWidth() < 1500 ? 1920 : 1280, scene.getWidth() < 1500 ? 1080 : 720);
            case F7 -> next();
            case F8 -> em = em == Shell.EM ? 1.5 * Shell.EM : Shell.EM;
            default -> {
                return;
            }
        }
        look();
        e.consume();
    }

    private void size(double width, double height) {
        stage.setX(0);
        stage.setY(0);
        stage.setWidth(width);
        stage.setHeight(height);
    }

    private void next() {
        call = (call + 1) % 3;
        if (screen != null) {
            screen.dispose();
        }
        Call lived = List.<java.util.function.Supplier<Call>>of(LivedCalls::good, LivedCalls::lucky, LivedCalls::unsafe)
                .get(call)
                .get();
        screen = new CallDebriefScreen(lived, false, words, Throwable::printStackTrace, acts());
        root.getChildren().setAll(screen);
        look();
    }

    private void look() {
        scene.getStylesheets().setAll(ThemeSheet.all(theme, em));
        screen.look(theme, em);
    }

    private CallDebriefScreen.Acts acts() {
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
