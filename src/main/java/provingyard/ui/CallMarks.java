package provingyard.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import provingyard.call.Call;
import provingyard.call.FieldTest;
import provingyard.picture.CallArt;
import provingyard.picture.View;
import provingyard.picture.YardShapes;
import provingyard.scenario.Point;

/** What lies over the yard: where the tool in hand can be used, where readings were taken, and where it may still be. */
final class CallMarks extends Pane {

    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    /** px of a mark, of the chosen one, and of marks that stand close together. */
    private static final double SIZE = 28;

    private static final double CHOSEN_SIZE = 38;
    private static final double SMALL = 22;
    private static final int MANY = 12;

    /** Least distance between two marks by their size: neither hides the other's sign. */
    private static final double APART = 0.95;

    /** px from a sensor's place up to the middle of its disc. */
    private static final double DISC = 24;

    /** Letters of a pin's text before it is cut. */
    private static final int LONGEST = 22;

    private final CallModel model;
    private final CallWords texts;
    private final YardShapes shapes;
    private final List<Point> sensors;
    private final Runnable toCard;
    private final LivePicture shade = new LivePicture();
    private final LivePicture picture = new LivePicture();
    private final Pane nodes = new Pane();
    private final Map<CallModel.Mark, Button> buttons = new LinkedHashMap<>();
    private List<Object> drawn;
    private View placed;

    /**
     * Marks.
     *
     * @param sensors places of sensors on the plan, which nothing is written over
     * @param toCard gives the keys to the card
     */
    CallMarks(CallModel model, Words words, CallWords texts, List<Point> sensors, Runnable toCard) {
        this.sensors = sensors;
        this.model = model;
        this.texts = texts;
        this.toCard = toCard;
        shapes = YardShapes.of(model.site().scenario());
        setPickOnBounds(false);
        nodes.setPickOnBounds(false);
        getChildren().addAll(picture.node(), nodes);
        model.toolProperty().addListener(o -> fill());
        model.chosenProperty().addListener(o -> choose());
        model.nowProperty().addListener(o -> fill());
        model.busyProperty()
                .addListener(o -> nodes.setDisable(model.busyProperty().get()));
        words.follow(this, () -> {
            drawn = null;
            say();
        });
        nodes.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        fill();
    }

    private void fill() {
        List<CallModel.Mark> next = model.marks();
        if (next.equals(List.copyOf(buttons.keySet()))) {
            say();
            return;
        }
        buttons.clear();
        nodes.getChildren().clear();
        for (CallModel.Mark mark : next) {
            Button button = new Button();
            button.setId("mark-" + mark.tests().get(0));
            button.getStyleClass().add("call-mark");
            button.setTooltip(new Tooltip());
            button.setOnAction(e -> {
                model.choose(mark.tests().get(0));
                toCard.run();
            });
            buttons.put(mark, button);
            nodes.getChildren().add(button);
        }
        placed = null;
        say();
        choose();
    }

    private void say() {
        buttons.forEach((mark, button) -> {
            List<String> names = new ArrayList<>();
            for (String id : mark.tests()) {
                CallModel.Offer offer = model.nowProperty().get().offers().get(id);
                names.add(texts.name(offer.test()) + ", " + texts.minutes(offer.minutes()));
            }
            button.setAccessibleText(String.join("; ", names));
            button.getTooltip().setText(String.join("\n", names));
        });
    }

    private void choose() {
        buttons.forEach((mark, button) -> {
            boolean is = isChosen(mark);
            button.pseudoClassStateChanged(CHOSEN, is);
            FieldTest test = model.site().test(mark.tests().get(0)).orElseThrow();
            // Stretches of main go by their number, here as in the notes and in the finding.
            Optional<Integer> stretch = texts.stretch(test);
            button.setText(stretch.map(String::valueOf).orElse(""));
            button.setGraphic(stretch.isPresent() ? null : IconNode.of(CallSigns.icon(test.tool()), is ? 20 : 15));
            if (is) {
                button.toFront();
            }
        });
        placed = null;
        drawn = null;
    }

    private boolean isChosen(CallModel.Mark mark) {
        String chosen = model.chosenProperty().get();
        return chosen != null && mark.tests().contains(chosen);
    }

    private double size() {
        return buttons.size() > MANY ? SMALL : SIZE;
    }

    /** Puts the keys on the chosen mark, else on the first one; false where there is none. */
    boolean focusMark() {
        Optional<Button> mark = buttons.entrySet().stream()
                .filter(e -> isChosen(e.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .or(() -> buttons.values().stream().findFirst());
        mark.ifPresent(Node::requestFocus);
        return mark.isPresent();
    }

    /** What is left, to be laid under the yard's own marks. */
    Node shade() {
        return shade.node();
    }

    /** Arrow keys go to the nearest mark in their direction. */
    private void key(KeyEvent e) {
        double dx = e.getCode() == KeyCode.LEFT ? -1 : e.getCode() == KeyCode.RIGHT ? 1 : 0;
        double dy = e.getCode() == KeyCode.UP ? -1 : e.getCode() == KeyCode.DOWN ? 1 : 0;
        if (dx == 0 && dy == 0 || !(e.getTarget() instanceof Button from)) {
            return;
        }
        buttons.values().stream()
                .filter(b -> b != from && along(from, b, dx, dy) > 1)
                .min(Comparator.comparingDouble(b -> along(from, b, dx, dy) + 2 * Math.abs(along(from, b, dy, dx))))
                .ifPresent(Node::requestFocus);
        e.consume();
    }

    private static double along(Button from, Button to, double dx, double dy) {
        double x =
                to.getBoundsInParent().getCenterX() - from.getBoundsInParent().getCenterX();
        double y =
                to.getBoundsInParent().getCenterY() - from.getBoundsInParent().getCenterY();
        return x * dx + y * dy;
    }

    /** Draws what changed, over the yard as it is seen now; called once a pulse. */
    void pulse(View view, double pixels) {
        if (view == null || getWidth() < 2 || getHeight() < 2) {
            return;
        }
        if (!view.equals(placed)) {
            placed = view;
            place(view);
        }
        CallModel.Now now = model.nowProperty().get();
        boolean belief = model.guided() && model.leftProperty().get();
        List<Object> key = List.of(
                view,
                pixels,
                now,
                belief,
                getWidth(),
                getHeight(),
                String.valueOf(model.toolProperty().get()));
        if (key.equals(drawn)) {
            return;
        }
        drawn = key;
        shade.size(getWidth(), getHeight(), pixels);
        shade.draw(s -> {
            if (belief) {
                CallArt.belief(s, shapes, view, texts.mains(now.belief()));
            }
        });
        picture.size(getWidth(), getHeight(), pixels);
        picture.draw(s -> {
            List<double[]> taken = new ArrayList<>(CallArt.valves(s, view, texts.valves()));
            taken.addAll(CallArt.boxes(view, busy(view)));
            if (belief) {
                CallArt.shares(s, shapes, view, texts.mains(now.belief()), taken, texts::percent);
            }
            CallArt.readings(s, view, readings(now), taken);
        });
    }

    /** Places of marks, and of sensors' discs, which stand above theirs. */
    private List<Point> busy(View view) {
        List<Point> busy = new ArrayList<>(places());
        for (Point sensor : sensors) {
            busy.add(sensor);
            busy.add(view.yard(view.x(sensor.x()), view.y(sensor.y()) - DISC));
        }
        return busy;
    }

    private List<Point> places() {
        return buttons.keySet().stream().map(CallModel.Mark::at).toList();
    }

    private List<CallArt.Reading> readings(CallModel.Now now) {
        Map<Point, CallArt.Reading> last = new LinkedHashMap<>();
        for (Call.Note note : now.notes()) {
            if (note.reading() != null && note.test().where() != null) {
                Point at = model.place(note.test());
                last.remove(at);
                last.put(at, new CallArt.Reading(at, note.number(), cut(texts.reading(note))));
            }
        }
        return List.copyOf(last.values());
    }

    private static String cut(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1).strip() + "…";
    }

    /** Where marks stand, px: at their places, those that lie on each other apart. */
    private Map<CallModel.Mark, double[]> spread(View view) {
        Map<CallModel.Mark, double[]> at = new LinkedHashMap<>();
        double least = APART * size();
        buttons.keySet().forEach(mark -> {
            double[] here = {view.x(mark.at().x()), view.y(mark.at().y())};
            for (double[] other : at.values()) {
                double dx = here[0] - other[0];
                double dy = here[1] - other[1];
                double far = Math.hypot(dx, dy);
                if (far < least) {
                    double push = (least - far) / 2;
                    double ux = far < 1 ? 1 : dx / far;
                    double uy = far < 1 ? 0 : dy / far;
                    here[0] += push * ux;
                    here[1] += push * uy;
                    other[0] -= push * ux;
                    other[1] -= push * uy;
                }
            }
            at.put(mark, here);
        });
        return at;
    }

    private void place(View view) {
        Map<CallModel.Mark, double[]> at = spread(view);
        buttons.forEach((mark, button) -> {
            double size = isChosen(mark) ? CHOSEN_SIZE : size();
            button.setMinSize(size, size);
            button.resize(size, size);
            button.setPrefSize(size, size);
            button.setMaxSize(size, size);
            button.relocate(Math.round(at.get(mark)[0] - size / 2), Math.round(at.get(mark)[1] - size / 2));
        });
    }

    @Override
    protected void layoutChildren() {
        nodes.resizeRelocate(0, 0, getWidth(), getHeight());
    }
}
