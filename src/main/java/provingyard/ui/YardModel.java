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
import provingyard.numeric.Deterministic;
import provingyard.picture.Layer;
import provingyard.scenario.Kit;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.season.Proof;
import provingyard.season.Proofs;
import provingyard.season.Proving;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.season.Siting;
import provingyard.season.Snapshot;
import provingyard.setup.Cost;
import provingyard.setup.History;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * A site being tuned: the set-up with its undo, what is selected and in hand, and the season's player. No control is
 * known here, so it is tested without a window.
 */
public final class YardModel implements AutoCloseable {

    /** m by which an arrow key moves a sensor. */
    static final double STEP = 0.5;

    /** The same with Shift. */
    static final double FINE_STEP = 0.1;

    /** m from a pipe within which a flow sensor in hand snaps to it. */
    private static final double SNAP = 1.5;

    /** From this level on, carrying shows what can be measured at the place, but no map of what is needed. */
    private static final int NO_MAP_FROM = 4;

    private static final double SEARCH_STEP = 0.5;

    /**
     * A sensor in the hand.
     *
     * @param moving id of the placed sensor that is moved, null for a new one
     * @param at where the hand is
     * @param spot where the sensor would stand: a flow sensor snaps to the pipe
     * @param whyNot key of the reason why it does not fit, null where it does
     */
    public record Hand(SensorKind kind, String moving, Point at, Point spot, boolean fits, String whyNot) {}

    private final Site site;
    private final NewPlacement boxes;
    private final SeasonPlayer player;
    private final List<Season.Night> nights;
    private final ReadOnlyObjectWrapper<History> draft = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<SeasonPlayer.Frame> frame = new ReadOnlyObjectWrapper<>();
    private SeasonPlayer.Frame taken;
    private final StringProperty selected = new SimpleStringProperty();
    private final ObjectProperty<Hand> hand = new SimpleObjectProperty<>();
    private final ObjectProperty<Speed> speed = new SimpleObjectProperty<>(Speed.SIX_HUNDRED);
    private final ObjectProperty<Set<Layer>> layers =
            new SimpleObjectProperty<>(EnumSet.of(Layer.PIPES, Layer.SPRAY, Layer.WETNESS));
    private final BooleanProperty playing = new SimpleBooleanProperty();
    private final ObjectProperty<Proofs> proofs = new SimpleObjectProperty<>(Proofs.NONE);

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

    /** What was proven so far; which of it still holds, the set-up of now decides. */
    public ObjectProperty<Proofs> proofsProperty() {
        return proofs;
    }

    /** Ids of the sensors that were not proven under their settings of now. */
    public List<String> unproven() {
        return proofs.get().unproven(setUp());
    }

    /** Tests a sensor under the set-up of now; the answer comes on the player's thread. */
    public void prove(String sensor, Proof.Test test, Consumer<Proof> told) {
        SetUp asked = setUp();
        player.ask(season -> Proving.run(season, asked, sensor, test), told);
    }

    /** Keeps what a test came to, as made under the set-up of now. */
    public void keep(Proof proof) {
        proofs.set(proofs.get().with(proof, setUp()));
    }

    /** Takes the player's newest frame; called once a pulse by the window. */
    public void refresh() {
        SeasonPlayer.Frame newest = player.frame();
        if (newest != taken) {
            taken = newest;
            frame.set(newest);
            playing.set(newest.playing());
        }
    }

    /** Shows another moment of the yard, lived elsewhere, until the player makes a new frame. */
    void show(Snapshot moment) {
        frame.set(frame.get().showing(moment));
    }

    /** USD left of the budget. */
    public double budgetLeft() {
        return Cost.of(setUp(), scenario().kit()).left();
    }

    /** Whether one more of a kind may be placed, by kit, locks and budget. */
    public boolean mayPlace(SensorKind kind) {
        return whyNoMore(kind) == null;
    }

    /** Key of the reason why no more of a kind may be placed, null where one may. */
    public String whyNoMore(SensorKind kind) {
        Kit.Item item = scenario().kit().item(kind);
        if (item == null || scenario().locks().sensors().contains(kind)) {
            return "kit.lock.lesson";
        }
        if (locked()) {
            return "kit.lock.season";
        }
        if (setUp().of(kind).size() >= item.most()) {
            return "kit.lock.number";
        }
        return budgetLeft() >= item.price() ? null : "kit.lock.budget";
    }

    /** Whether the plan may show what a sensor in hand needs. */
    public boolean showsNeeds() {
        return scenario().level() < NO_MAP_FROM;
    }

    /** Whether this is one of the first sites, which show only what matters there. */
    public boolean firstSteps() {
        return scenario().level() <= 1;
    }

    /** Whether the set-up may not be touched now. */
    public boolean locked() {
        return scenario().locks().midSeason()
                && frame.get() != null
                && frame.get().lived() > 0
                && !frame.get().practice();
    }

    /** Whether a change now would overwrite a season that was lived to its end: it is tried as practice instead. */
    private boolean looksBackFromTheEnd() {
        SeasonPlayer.Frame now = frame.get();
        return now != null && now.over() && !now.practice() && now.snapshot().tick() < now.lived();
    }

    /** Tries the season otherwise from the minute shown, beginning with the set-up that was in force then. */
    public void practise() {
        draft.set(draft.get().then(frame.get().setUp(), "step.practise"));
        selected.set(null);
        player.practise();
    }

    /** Ends practice: the own season is back, with the set-up that it ended with. */
    public void backToOwn(SetUp setUp) {
        draft.set(draft.get().then(setUp, "step.backToOwn"));
        selected.set(null);
        player.backToOwn();
    }

    /** Begins the season again under the set-up as it stands. */
    public void restart() {
        player.restart(setUp());
    }

    /** Key of the reason why the schedule may not be changed, null where it may. */
    public String whyNoSchedule() {
        if (scenario().locks().schedule()) {
            return "schedule.lock.lesson";
        }
        return locked() ? "kit.lock.season" : null;
    }

    /** Takes a new sensor in hand, at the place nearest to the yard's middle where it fits. */
    public void takeInHand(SensorKind kind) {
        if (mayPlace(kind)) {
            Point size = scenario().yard().size();
            carry(kind, null, nearestFit(kind, new Point(size.x() / 2, size.y() / 2)));
        }
    }

    private Point nearestFit(SensorKind kind, Point middle) {
        double most = Math.max(middle.x(), middle.y());
        for (double r = 0; r <= most; r += SEARCH_STEP) {
            int turns = Math.max(1, (int) (8 * r));
            for (int i = 0; i < turns; i++) {
                double a = 2 * Math.PI * i / turns;
                Point at = new Point(middle.x() + r * Deterministic.sin(a), middle.y() - r * Deterministic.cos(a));
                if (inside(at).equals(at) && whyNot(kind, spot(kind, at)) == null) {
                    return at;
                }
            }
        }
        return middle;
    }

    /** Moves what is in hand. */
    public void carry(SensorKind kind, String moving, Point to) {
        Point at = inside(to);
        Point spot = spot(kind, at);
        String whyNot = whyNot(kind, spot);
        hand.set(new Hand(kind, moving, at, spot, whyNot == null, whyNot));
    }

    /** Moves what is in hand by so many m. */
    public void nudge(double east, double north) {
        Hand now = hand.get();
        if (now != null) {
            carry(
                    now.kind(),
                    now.moving(),
                    new Point(now.at().x() + east, now.at().y() + north));
        }
    }

    private Point inside(Point to) {
        Point size = scenario().yard().size();
        return new Point(Math.max(0, Math.min(size.x(), to.x())), Math.max(0, Math.min(size.y(), to.y())));
    }

    private Point spot(SensorKind kind, Point at) {
        if (kind != SensorKind.FLOW) {
            return at;
        }
        Siting.OnPipe on = site.siting().nearestPipe(at);
        Point pipe = on == null ? at : site.siting().pointOn(on);
        return pipe.distance(at) <= SNAP ? pipe : at;
    }

    private String whyNot(SensorKind kind, Point at) {
        if (kind == SensorKind.SOIL && !site.siting().planted(at)) {
            return "hand.soilNeedsPlants";
        }
        if (kind == SensorKind.FLOW && !onPipe(at)) {
            return "hand.flowNeedsPipe";
        }
        boolean above = kind == SensorKind.RAIN || kind == SensorKind.WIND || kind == SensorKind.FREEZE;
        return above && site.siting().indoors(at) ? "hand.indoors" : null;
    }

    private boolean onPipe(Point at) {
        Siting.OnPipe on = site.siting().nearestPipe(at);
        return on != null && site.siting().pointOn(on).distance(at) < 1e-6;
    }

    /** Moves a placed sensor; what does not fit there stays. Returns the key of the reason, null where it moved. */
    public String moveTo(String id, Point to) {
        Placement placement = setUp().sensor(id).orElseThrow();
        Point at = inside(to);
        Point spot = spot(placement.kind(), at);
        String whyNot = whyNot(placement.kind(), spot);
        if (whyNot == null) {
            decide("step.move", setUp().with(boxes.moved(placement, spot)), id);
        }
        return whyNot;
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
            decide("step.move", setUp().with(boxes.moved(placement, now.spot())), now.moving());
            return;
        }
        SetUp next = boxes.placed(setUp(), now.kind(), now.spot());
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
        if (looksBackFromTheEnd()) {
            player.practise();
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
        if (looksBackFromTheEnd()) {
            player.practise();
        }
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
