package provingyard.picture;

import java.util.List;

/** What a shape is filled with: one colour, or a radial gradient. */
public sealed interface Paint permits Colour, Paint.Radial {

    /** A stop of a gradient: place 0 to 1, and colour. */
    record Stop(double at, Colour colour) {}

    /** A gradient from a centre outward, in the surface's current units; beyond the radius the last colour goes on. */
    record Radial(double x, double y, double radius, List<Stop> stops) implements Paint {
        public Radial {
            stops = List.copyOf(stops);
        }
    }
}
