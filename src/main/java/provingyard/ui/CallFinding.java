package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** States the finding: what is wrong, where, and how sure one is. */
final class CallFinding extends VBox {

    /** Confidences that can be stated. */
    private static final List<Double> CONFIDENCES = List.of(0.5, 0.7, 0.9, 0.99);

    private static final double HUNDRED = 100;

    private final CallWords texts;
    private final List<String> classes;
    private final ListView<String> kinds = new ListView<>();
    private final ListView<String> places = new ListView<>();
    private final Button go = new Button();
    private double confidence;

    /** @param stated takes the repair class and the confidence */
    CallFinding(CallModel model, Words words, CallWords texts, BiConsumer<String, Double> stated, Runnable close) {
        super(12);
        this.texts = texts;
        classes = model.site().hypotheses().classes();
        setId("finding");
        getStyleClass().add("call-finding");
        Label title = label(words.say("call.finding.title"), "page-title");
        Label ask = label(words.say("call.finding.ask"), "ink2");
        list(kinds, "finding-kinds", texts::fault, words.say("call.finding.what"));
        list(places, "finding-places", texts::place, words.say("call.finding.where"));
        kinds.getItems()
                .setAll(classes.stream().map(CallThought::kind).distinct().toList());
        places.setPlaceholder(label(words.say("call.finding.first"), "ink2"));
        kinds.getSelectionModel().selectedItemProperty().addListener(o -> fillPlaces());
        places.getSelectionModel().selectedItemProperty().addListener(o -> check());
        HBox lists = new HBox(
                14, column(words.say("call.finding.what"), kinds), column(words.say("call.finding.where"), places));
        List<Segments.Choice<Double>> choices = new ArrayList<>();
        for (double each : CONFIDENCES) {
            choices.add(new Segments.Choice<>(
                    each,
                    String.valueOf(Math.round(each * HUNDRED)),
                    new SimpleStringProperty(texts.percent(each)),
                    null));
        }
        Segments<Double> sure = new Segments<>("finding-sure", choices, 0.0, next -> {
            confidence = next;
            check();
        });
        sure.getChildren().get(0).setFocusTraversable(true);
        Label how = label(words.say("call.finding.sure"), "strong");
        how.setMinWidth(Region.USE_PREF_SIZE);
        Button cancel = new Button(words.say("call.cancel"));
        cancel.setId("finding-cancel");
        cancel.setMinWidth(Region.USE_PREF_SIZE);
        cancel.getStyleClass().add("tall");
        cancel.setOnAction(e -> close.run());
        go.setText(words.say("call.finding.go"));
        go.setId("finding-go");
        go.setMinWidth(Region.USE_PREF_SIZE);
        go.getStyleClass().addAll("main", "tall");
        go.setOnAction(e -> {
            String chosen = places.getSelectionModel().getSelectedItem();
            close.run();
            stated.accept(chosen, confidence);
        });
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox foot = new HBox(12, how, sure, gap, cancel, go);
        foot.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(title, ask, lists, foot);
        // A list would keep this key for itself.
        addEventFilter(javafx.scene.input.KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == javafx.scene.input.KeyCode.ESCAPE) {
                close.run();
                e.consume();
            }
        });
        check();
    }

    private static Label label(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private static VBox column(String name, ListView<String> list) {
        Label head = label(name, "strong");
        head.setLabelFor(list);
        VBox box = new VBox(6, head, list);
        HBox.setHgrow(box, Priority.ALWAYS);
        return box;
    }

    private static void list(
            ListView<String> list, String id, java.util.function.UnaryOperator<String> name, String said) {
        list.setId(id);
        list.setAccessibleText(said);
        list.setCellFactory(l -> new ListCell<>() {
            @Override
            protected void updateItem(String item, boolean empty) {
                super.updateItem(item, empty);
                setText(empty || item == null ? "" : name.apply(item));
            }
        });
    }

    private void fillPlaces() {
        String kind = kinds.getSelectionModel().getSelectedItem();
        places.getItems()
                .setAll(classes.stream()
                        .filter(c -> CallThought.kind(c).equals(kind))
                        .toList());
        if (places.getItems().size() == 1) {
            places.getSelectionModel().select(0);
        }
        check();
    }

    private void check() {
        go.setDisable(places.getSelectionModel().getSelectedItem() == null || confidence == 0);
    }
}
