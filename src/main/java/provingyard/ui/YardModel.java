package provingyard.ui;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import provingyard.picture.Layer;
import provingyard.scenario.Kit;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.Cost;
import provingyard.setup.History;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * A site being tuned: the set-up with its undo, what is selected and in hand, and the season's player. No control is
 * known here, so it is tested without a window.
 */
public final class YardModel implements AutoCloseable {

    /** A sensor in the hand: where it would go, and whether it fits there. */
    public record Hand(SensorKind kind, String moving, Point at, boolean fits, String whyNot) {}

    private final Site site;
    private final NewPlacement boxes;
    private final SeasonPlayer player;
    private final List<Season.Night> nights;
    private final ReadOnlyObjectWrapper<History> draft = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<SeasonPlayer.Frame> frame = new ReadOnlyObjectWrapper<>();
    private final StringProperty selected = new SimpleStringProperty();
    private final ObjectProperty<Hand> hand = new SimpleObjectProperty<>();
    private final ObjectProperty<Speed> speed = new SimpleObjectProperty<>(Speed.SIX_HUNDRED);
    private final ObjectProperty<Set<Layer>> layers =
            new SimpleObjectProperty<>(EnumSet.of(Layer.PIPES, Layer.SPRAY, Layer.WETNESS));
    private final BooleanProperty playing = new SimpleBooleanProperty();

    /** Opens a site with an empty set-up. */
    public YardModel(Site site, Consumer<Throwable> onFailure) {
        this(SeasonReplay.fresh(site), onFailure);
    }

    /** Goes on with a season that was lived before. */
    YardModel(SeasonReplay.Lived begun, Consumer<Throwable> onFailure) {
        site = begun.season().site();
        boxes = new NewPlacement(site.scenario(), site.siting());
        draft.set(History.of(begun.season().setUp()));
        nights = begun.season().nights();
        player = new SeasonPlayer(begun, onFailure);
        refresh();
    }

    public Site site() {
        return site;
    }

    public Scenario scenario() {
        return site.scenario();
    }

    /** Nights that touch the season. */
    public List<Season.Night> nights() {
        return nights;
    }

    public SeasonPlayer player() {
        return player;
    }

    /** The set-up as it stands. */
    public SetUp setUp() {
        return draft.get().draft();
    }

    public ReadOnlyObjectProperty<History> draftProperty() {
        return draft.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<SeasonPlayer.Frame> frameProperty() {
        return frame.getReadOnlyProperty();
    }

    public StringProperty selectedProperty() {
        return selected;
    }

    public ObjectProperty<Hand> handProperty() {
        return hand;
    }

    public ObjectProperty<Speed> speedProperty() {
        return speed;
    }

    public ObjectProperty<Set<Layer>> layersProperty() {
        return layers;
    }

    public BooleanProperty playingProperty() {
        return playing;
    }

    /** Takes the player's newest frame; called once a pulse by the window. */
    public void refresh() {
        SeasonPlayer.Frame newest = player.frame();
        if (newest != frame.get()) {
            frame.set(newest);
            playing.set(newest.playing());
        }
    }

    /** USD left of the budget. */
    public double budgetLeft() {
        return Cost.of(setUp(), scenario().kit()).left();
    }

    /** Whether one more of a kind may be placed, by kit, locks and budget. */
    public boolean mayPlace(SensorKind kind) {
        Kit.Item item = scenario().kit().item(kind);
        return item != null
                && !scenario().locks().sensors().contains(kind)
                && !locked()
                && setUp().of(kind).size() < item.most()
                && budgetLeft() >= item.price();
    }

    /** Whether the set-up may not be touched now. */
    public boolean locked() {
        return scenario().locks().midSeason()
                && frame.get() != null
                && frame.get().lived() > 0;
    }

    /** Takes a new sensor in hand, in the middle of the yard, or south of it where it does not fit there. */
    public void takeInHand(SensorKind kind) {
        if (mayPlace(kind)) {
            Point size = scenario().yard().size();
            double y = size.y() / 2;
            while (y > 0 && whyNot(kind, new Point(size.x() / 2, y)) != null) {
                y -= 0.5;
            }
            carry(kind, null, new Point(size.x() / 2, y));
        }
    }

    /** Moves what is in hand. */
    public void carry(SensorKind kind, String moving, Point to) {
        Point size = scenario().yard().size();
        Point inside = new Point(Math.max(0, Math.min(size.x(), to.x())), Math.max(0, Math.min(size.y(), to.y())));
        String whyNot = whyNot(kind, inside);
        hand.set(new Hand(kind, moving, inside, whyNot == null, whyNot));
    }

    private String whyNot(SensorKind kind, Point at) {
        if (kind == SensorKind.SOIL && !site.siting().planted(at)) {
            return "hand.soilNeedsPlants";
        }
        boolean above = kind == SensorKind.RAIN || kind == SensorKind.WIND || kind == SensorKind.FREEZE;
        return above && site.siting().indoors(at) ? "hand.indoors" : null;
    }

    /** Lays down what is in hand; nothing happens where it does not fit. */
    public void place() {
        Hand now = hand.get();
        if (now == null || !now.fits()) {
            return;
        }
        hand.set(null);
        if (now.moving() != null) {
            Placement placement = setUp().sensor(now.moving()).orElseThrow();
            decide("step.move", setUp().with(boxes.moved(placement, now.at())), now.moving());
            return;
        }
        SetUp next = boxes.placed(setUp(), now.kind(), now.at());
        String id = next.sensors().get(next.sensors().size() - 1).id();
        decide("step.place", next, id);
        selected.set(id);
    }

    /** Puts what is in hand back. */
    public void drop() {
        hand.set(null);
    }

    /** Takes a sensor away. */
    public void remove(String id) {
        if (setUp().sensor(id).isPresent() && !locked()) {
            if (id.equals(selected.get())) {
                selected.set(null);
            }
            SetUp next = setUp().without(id);
            if (id.equals(next.flowWatch().sensor())) {
                next = next.with(FlowWatches.watching(next.flowWatch(), null));
            }
            decide("step.remove", next, id);
        }
    }

    /** Makes a decision: a new set-up, from this minute on. */
    public void decide(String step, SetUp next, String... names) {
        if (next.equals(setUp()) || locked()) {
            return;
        }
        draft.set(draft.get().then(next, step, names));
        player.change(next);
    }

    public void undo() {
        if (draft.get().undoable().isPresent() && !locked()) {
            draft.set(draft.get().undo());
            settle();
        }
    }

    public void redo() {
        if (draft.get().redoable().isPresent() && !locked()) {
            draft.set(draft.get().redo());
            settle();
        }
    }

    private void settle() {
        if (selected.get() != null && setUp().sensor(selected.get()).isEmpty()) {
            selected.set(null);
        }
        player.change(setUp());
    }

    /** Plays or pauses. */
    public void togglePlay() {
        if (playing.get()) {
            player.pause();
        } else {
            player.play(speed.get().minutesPerSecond());
        }
    }

    /** Another speed; time that runs goes on at it. */
    public void speed(Speed next) {
        speed.set(next);
        if (playing.get()) {
            player.play(next.minutesPerSecond());
        }
    }

    /** Shows or hides a layer. */
    public void toggle(Layer layer) {
        EnumSet<Layer> next = EnumSet.noneOf(Layer.class);
        next.addAll(layers.get());
        if (!next.remove(layer)) {
            next.add(layer);
        }
        layers.set(next);
    }

    @Override
    public void close() {
        player.close();
    }
}
