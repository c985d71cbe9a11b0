package provingyard.picture;

import java.util.List;
import java.util.Objects;
import provingyard.scenario.Point;
import provingyard.season.Snapshot;
import provingyard.setup.SetUp;

/**
 * Draws the yard, from below upwards, in four steps of which the first and third stay the same while only time runs:
 * {@link #ground}, {@link #live}, {@link #top}, {@link #marks}. Keeps nothing: the same input draws the same picture.
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
     * Wetness, pipes, water in the air, cold, film and ice, leaks, lamp light: below the canopies.
     *
     * @param snapshot null before a season is lived: pipes and resting throws only
     */
    public static void live(Surface s, YardShapes shapes, View view, Snapshot snapshot) {
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
            wet.leaks(s);
        }
        if (view.shows(Layer.SHELTER) && view.shelter() != null) {
            new WetArt(shapes, view, snapshot).shelter(s, view.shelter());
        }
        if (view.shows(Layer.PIPES)) {
            new PipeArt(shapes, view, live).pipes(s);
        }
        if (view.shows(Layer.SPRAY)) {
            new SprayArt(shapes, view, live).draw(s);
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
        return view.theme() == Theme.NIGHT && below;
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

    /** Heads, fittings, names, sensors, notes, scale bar, north and wind: over everything. */
    public static void marks(Surface s, YardShapes shapes, View view, SetUp setUp, Snapshot snapshot) {
        Live live = new Live(shapes, snapshot);
        PipeArt pipes = new PipeArt(shapes, view, live);
        if (view.shows(Layer.PIPES) || view.shows(Layer.SPRAY)) {
            pipes.heads(s);
        }
        if (view.shows(Layer.PIPES)) {
            pipes.fittings(s);
        }
        if (snapshot != null && view.shows(Layer.COLD)) {
            List<Point> sensors = setUp.sensors().stream()
                    .map(p -> SensorArt.place(shapes, p))
                    .filter(Objects::nonNull)
                    .toList();
            new ColdArt(shapes, view, snapshot).values(s, sensors);
        }
        if (view.labels()) {
            new LabelArt(shapes, view).draw(s, setUp, snapshot);
        }
        new SensorArt(shapes, view, live).draw(s, setUp);
        new NoteArt(view).draw(s);
    }

    /** All four steps. */
    public static void all(Surface s, YardShapes shapes, View view, SetUp setUp, Snapshot snapshot) {
        ground(s, shapes, view);
        live(s, shapes, view, snapshot);
        top(s, shapes, view);
        marks(s, shapes, view, setUp, snapshot);
    }
}
