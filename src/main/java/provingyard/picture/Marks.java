package provingyard.picture;

import java.util.List;
import java.util.Set;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;

/**
 * What the window lays over the plan for the trainee.
 *
 * @param selected id, or null
 * @param hovered id, or null
 * @param faulty ids of sensors known to be faulty
 * @param ghosts the mark's sensors: dashed, not filled
 * @param drag what is in hand, or null
 * @param sky the open sky around a sensor, or null
 * @param iced ids of walks that carried ice in a season; drawn on pictures of a whole season only
 */
public record Marks(
        String selected,
        String hovered,
        Set<String> faulty,
        List<Placement> ghosts,
        Drag drag,
        SkyRing sky,
        List<Note> notes,
        List<Pin> pins,
        List<String> iced) {

    public static final Marks NONE =
            new Marks(null, null, Set.of(), List.of(), null, null, List.of(), List.of(), List.of());

    public Marks {
        faulty = Set.copyOf(faulty);
        ghosts = List.copyOf(ghosts);
        notes = List.copyOf(notes);
        pins = List.copyOf(pins);
        iced = List.copyOf(iced);
    }

    /** A sensor being dragged, and whether it fits where it is. */
    public record Drag(SensorKind kind, Point at, boolean fits) {}

    /** Share of open sky by bearing (equal steps clockwise from north), 0 shut to 1 open, around a sensor. */
    public record SkyRing(String sensor, double[] open) {}

    /** What a note is about. */
    public enum Meaning {
        ALARM,
        ICE,
        WATER
    }

    /** A plate with a title and a line, its leader ending on the thing; dx, dy: the plate's corner from there in px. */
    public record Note(Point at, String title, String line, Meaning meaning, double dx, double dy) {}

    /** A numbered reading on the plan; its pill lies dx, dy px from the place. */
    public record Pin(Point at, int number, String text, double dx, double dy) {}

    public Marks select(String id) {
        return new Marks(id, hovered, faulty, ghosts, drag, sky, notes, pins, iced);
    }

    public Marks hover(String id) {
        return new Marks(selected, id, faulty, ghosts, drag, sky, notes, pins, iced);
    }

    public Marks faulty(Set<String> ids) {
        return new Marks(selected, hovered, ids, ghosts, drag, sky, notes, pins, iced);
    }

    public Marks ghosts(List<Placement> marks) {
        return new Marks(selected, hovered, faulty, marks, drag, sky, notes, pins, iced);
    }

    public Marks drag(Drag hand) {
        return new Marks(selected, hovered, faulty, ghosts, hand, sky, notes, pins, iced);
    }

    public Marks sky(SkyRing ring) {
        return new Marks(selected, hovered, faulty, ghosts, drag, ring, notes, pins, iced);
    }

    public Marks notes(List<Note> plates) {
        return new Marks(selected, hovered, faulty, ghosts, drag, sky, plates, pins, iced);
    }

    public Marks iced(List<String> walks) {
        return new Marks(selected, hovered, faulty, ghosts, drag, sky, notes, pins, walks);
    }

    public Marks pins(List<Pin> readings) {
        return new Marks(selected, hovered, faulty, ghosts, drag, sky, notes, readings, iced);
    }
}
