package provingyard.picture;

import java.util.List;
import java.util.Objects;
import provingyard.scenario.Point;
import provingyard.season.Snapshot;
import provingyard.setup.SetUp;

/**
 * Draws the yard, from below upwards, in steps that change at their own pace: {@link #ground}, {@link #minute}, {@link
 * #moving}, {@link #top}, {@link #air}, {@link #names}, {@link #marks}. Keeps nothing: the same input draws the same
 * picture.
 */
public final class YardPainter {

    /** Sun altitude in degrees under which lamps are lit. */
    private static final double DUSK = -2;

    private YardPainter() {}

    /** Off-site, street, lawn, beds, paving, drawn shadows, shrubs, cars: opaque; cache it per view and theme. */
    public static void ground(Surface s, YardShapes shapes, View view) {
        new GroundArt(shapes, view).draw(s);
        s.save();
        view.toMetres(s);
        new ShadowArt(shapes, view).convention(s);
        new FurnishingArt(shapes, view).draw(s);
        s.restore();
    }

    /**
     * What one minute shows below the canopies and does not move within it: wetness, shade, film and ice, leak stains,
     * shelter, pipes, throws and landing water, cold air, lamp light. Cache it per view, theme and snapshot.
     *
     * @param snapshot null before a season is lived: pipes and resting throws only
     */
    public static void minute(Surface s, YardShapes shapes, View view, Snapshot snapshot) {
        Live live = new Live(shapes, snapshot);
        s.save();
        view.toMetres(s);
        if (snapshot != null) {
            WetArt wet = new WetArt(shapes, view, snapshot);
            if (view.shows(Layer.WETNESS)) {
                wet.wetness(s);
            }
            if (view.shows(Layer.SHADE)) {
                new ShadowArt(shapes, view)
                        .shade(s, snapshot.sky().sunAltitude(), snapshot.sky().sunBearing());
            }
            wet.paving(s);
            new LeakArt(view, snapshot).stains(s);
        }
        if (view.shows(Layer.SHELTER) && view.shelter() != null) {
            new WetArt(shapes, view, snapshot).shelter(s, view.shelter());
        }
        if (view.shows(Layer.PIPES)) {
            new PipeArt(shapes, view, live).pipes(s);
        }
        if (view.shows(Layer.SPRAY)) {
            new SprayArt(shapes, view, live).standing(s);
        }
        if (snapshot != null && view.shows(Layer.COLD)) {
            new ColdArt(shapes, view, snapshot).lines(s);
        }
        if (dusk(view, snapshot)) {
            new FurnishingArt(shapes, view).lampLight(s);
        }
        s.restore();
    }

    private static boolean dusk(View view, Snapshot snapshot) {
        boolean below = snapshot == null || snapshot.sky().sunAltitude() < DUSK;
        return view.theme().isNight() && below;
    }

    /** What moves below the canopies while time runs: flow in pipes, drops, streams, water welling up. */
    public static void moving(Surface s, YardShapes shapes, View view, Snapshot snapshot) {
        if (snapshot == null) {
            return;
        }
        Live live = new Live(shapes, snapshot);
        s.save();
        view.toMetres(s);
        if (view.shows(Layer.PIPES)) {
            new FlowArt(shapes, view, snapshot).draw(s);
        }
        new LeakArt(view, snapshot).bubbles(s);
        if (view.shows(Layer.SPRAY)) {
            new SprayArt(shapes, view, live).moving(s);
        }
        s.restore();
    }

    /** Tree canopies and roofs on a transparent ground; cache it per view and theme. */
    public static void top(Surface s, YardShapes shapes, View view) {
        s.save();
        view.toMetres(s);
        new CanopyArt(shapes, view).draw(s);
        new RoofArt(shapes, view).draw(s);
        new FurnishingArt(shapes, view).vents(s);
        s.restore();
    }

    /** Whether {@link #air} would draw anything. */
    public static boolean isAirSeen(Snapshot snapshot) {
        return AirArt.drops(snapshot.sky().rainRate())
                        + AirArt.wisps(snapshot.sky().wind())
                > 0;
    }

    /** Rain and wind over roofs and canopies. px. */
    public static void air(Surface s, View view, Snapshot snapshot) {
        if (snapshot != null && snapshot.sky() != null) {
            new AirArt(view, snapshot.sky()).draw(s);
        }
    }

    /** Names on the plan, scale bar and north: they stay while view, set-up and selection do. */
    public static void names(Surface s, YardShapes shapes, View view, SetUp setUp) {
        if (view.labels()) {
            new LabelArt(shapes, view).draw(s, setUp);
        }
    }

    /** Values of cold air on their lines, clear of sensors. px. */
    public static void coldValues(Surface s, YardShapes shapes, View view, SetUp setUp, Snapshot snapshot) {
        if (snapshot != null && view.shows(Layer.COLD)) {
            List<Point> sensors = setUp.sensors().stream()
                    .map(p -> SensorArt.place(shapes, p))
                    .filter(Objects::nonNull)
                    .toList();
            new ColdArt(shapes, view, snapshot).values(s, sensors);
        }
    }

    /** Heads, fittings, weather, sensors and notes: over everything. */
    public static void marks(Surface s, YardShapes shapes, View view, SetUp setUp, Snapshot snapshot) {
        Live live = new Live(shapes, snapshot);
        PipeArt pipes = new PipeArt(shapes, view, live);
        if (view.shows(Layer.PIPES) || view.shows(Layer.SPRAY)) {
            pipes.heads(s);
        }
        if (view.shows(Layer.PIPES)) {
            pipes.fittings(s);
        }
        if (view.labels() && snapshot != null && snapshot.sky() != null) {
            new LabelArt(shapes, view).weather(s, snapshot.sky());
        }
        new SensorArt(shapes, view, live).draw(s, setUp);
        new NoteArt(view).draw(s);
    }

    /** All between ground and canopies. */
    public static void live(Surface s, YardShapes shapes, View view, Snapshot snapshot) {
        minute(s, shapes, view, snapshot);
        moving(s, shapes, view, snapshot);
    }
}
