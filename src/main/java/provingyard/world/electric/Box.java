package provingyard.world.electric;

import provingyard.scenario.Point;

/**
 * A valve box on the wires' route.
 *
 * @param id its name
 * @param at where it is
 * @param metres from the controller along the route in m, above 0
 * @param common joint of the common wire, where coils and the way onward meet
 */
public record Box(String id, Point at, double metres, Splice common) {

    public Box {
        Conditions.above(metres, "metres");
    }

    Box with(Splice joint) {
        return new Box(id, at, metres, joint);
    }
}
