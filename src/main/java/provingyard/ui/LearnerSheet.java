package provingyard.ui;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import provingyard.learner.Learner;

/** Who learns here: sit down, come new, take another name, go. */
final class LearnerSheet extends VBox {

    private final Words words;
    private final Shell shell;
    private final Runnable close;
    private final VBox list = new VBox(4);
    private String renaming;

    LearnerSheet(Words words, Shell shell, Runnable close) {
        super(12);
        this.words = words;
        this.shell = shell;
        this.close = close;
        setId("learners");
        getStyleClass().add("learners");
        Label title = new Label(words.say("learner.title"));
        title.getStyleClass().add("page-title");
        Label what = new Label(words.say("learner.about", shell.book().all().size()));
        what.setWrapText(true);
        what.getStyleClass().add("ink2");
        what.setMinHeight(Region.USE_PREF_SIZE);
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        Button shut = new Button(words.say("sheet.close"));
        shut.setId("learners-close");
        shut.setOnAction(e -> close.run());
        shut.setMinWidth(Region.USE_PREF_SIZE);
        getChildren().addAll(title, what, scroll, new Hairline(), newcomer(shut));
        fill();
    }

    private HBox newcomer(Button shut) {
        TextField name = field("learner-new", "");
        name.setPromptText(words.say("learner.name"));
        name.setAccessibleText(words.say("learner.name"));
        HBox.setHgrow(name, Priority.ALWAYS);
        Button add = new Button(words.say("learner.add"));
        add.setId("learner-add");
        add.setMinWidth(Region.USE_PREF_SIZE);
        add.disableProperty().bind(name.textProperty().map(String::isBlank));
        Runnable join = () -> {
            if (!name.getText().isBlank()) {
                shell.add(name.getText());
                close.run();
            }
        };
        add.setOnAction(e -> join.run());
        name.setOnAction(e -> join.run());
        HBox row = new HBox(8, name, add, shut);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private static TextField field(String id, String text) {
        TextField field = new TextField(text);
        field.setId(id);
        field.setTextFormatter(
                new TextFormatter<String>(c -> c.getControlNewText().length() <= Learner.LONGEST_NAME ? c : null));
        return field;
    }

    private void fill() {
        list.getChildren().clear();
        for (Learner learner : shell.book().all()) {
            list.getChildren().add(learner.id().equals(renaming) ? rename(learner) : row(learner));
        }
    }

    private HBox row(Learner learner) {
        boolean here = learner.id().equals(shell.book().current().id());
        String called = shell.learnerName(learner);
        StackPane sign = new StackPane(IconNode.of(here ? "ok" : "seat", 18));
        sign.getStyleClass().add("kit-icon");
        Label name = new Label(called);
        name.getStyleClass().add("strong");
        Label done = new Label(words.say("learner.done", shell.done(learner)));
        done.getStyleClass().addAll("small", "ink2");
        VBox texts = new VBox(name, done);
        texts.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(texts, Priority.ALWAYS);
        Button sit = new Button(words.say(here ? "learner.here" : "learner.switch"));
        sit.setId("learner-sit-" + learner.id());
        sit.setMinWidth(Region.USE_PREF_SIZE);
        sit.setDisable(here);
        sit.setOnAction(e -> {
            shell.sit(learner.id());
            close.run();
        });
        Button rename = small("learner-rename-" + learner.id(), "board", "learner.rename", called);
        rename.setOnAction(e -> {
            renaming = learner.id();
            fill();
            lookup("#learner-name").requestFocus();
        });
        Button remove = small("learner-remove-" + learner.id(), "cross", "learner.remove", called);
        remove.setOnAction(e -> Notice.ask(
                getScene(),
                words.say("learner.remove", called),
                words.say("learner.removeAsk", called, shell.done(learner)),
                words.say("learner.removeYes"),
                words.say("learner.removeNo"),
                () -> {
                    shell.removeLearner(learner.id());
                    fill();
                }));
        HBox row = new HBox(10, sign, texts, sit, rename, remove);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("learner-row");
        if (here) {
            row.getStyleClass().add("here");
        }
        return row;
    }

    private Node rename(Learner learner) {
        TextField field = field("learner-name", learner.name());
        field.setPromptText(words.say("learner.name"));
        field.setAccessibleText(words.say("learner.name"));
        HBox.setHgrow(field, Priority.ALWAYS);
        Button keep = new Button(words.say("learner.keepName"));
        keep.setId("learner-keep-name");
        keep.setMinWidth(Region.USE_PREF_SIZE);
        Runnable name = () -> {
            if (!field.getText().isBlank()) {
                shell.rename(learner.id(), field.getText());
            }
            renaming = null;
            fill();
        };
        keep.setOnAction(e -> name.run());
        field.setOnAction(e -> name.run());
        HBox row = new HBox(10, field, keep);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("learner-row");
        return row;
    }

    private Button small(String id, String icon, String key, String name) {
        Button button = new Button();
        button.setId(id);
        button.setGraphic(IconNode.of(icon, 15));
        button.getStyleClass().add("quiet");
        button.setTooltip(new javafx.scene.control.Tooltip(words.say(key, name)));
        button.setAccessibleText(words.say(key, name));
        return button;
    }
}
