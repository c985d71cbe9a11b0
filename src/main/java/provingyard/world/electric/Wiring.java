package provingyard.world.electric;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;

/**
 * All of a controller's low-voltage side: what is there and how it is joined. A fault is another wiring, see {@link
 * ElectricFault}.
 *
 * <p>All wires lie in one route from the controller past the boxes in order; distances are along it. The circuit floats:
 * its only way to earth, beside leaks, is {@code earthOhms}.
 *
 * @param boxes in the order along the route
 * @param wires one for each valve
 * @param earthOhms from the common terminal to earth in ohm; infinite where it is not earthed
 */
public record Wiring(
        Transformer transformer,
        SensorLoop sensor,
        List<Output> outputs,
        CommonWire common,
        List<Box> boxes,
        List<ZoneWire> wires,
        List<WireShort> shorts,
        double earthOhms) {

    /** The common, as a wire's name and as a terminal. */
    public static final String COMMON = "COM";

    /** Refuses names that are there twice or unknown, and boxes out of order, with {@link IllegalArgumentException}. */
    public Wiring {
        outputs = List.copyOf(outputs);
        boxes = List.copyOf(boxes);
        wires = List.copyOf(wires);
        shorts = List.copyOf(shorts);
        Set<String> terminals = new HashSet<>();
        outputs.forEach(o -> check(terminals.add(o.terminal()), "Terminal " + o.terminal() + " is there twice"));
        Set<String> places = new HashSet<>();
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            check(places.add(box.id()), "Box " + box.id() + " is there twice");
            check(i == 0 || box.metres() > boxes.get(i - 1).metres(), "Box " + box.id() + " is out of order");
        }
        Set<String> valves = new HashSet<>();
        for (ZoneWire wire : wires) {
            check(valves.add(wire.valve()), "Valve " + wire.valve() + " is there twice");
            check(terminals.contains(wire.terminal()), "Terminal " + wire.terminal() + " is unknown");
            check(places.contains(wire.box()), "Box " + wire.box() + " is unknown");
        }
    }

    private static void check(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }

    /**
     * A usual wiring for a plan that says nothing of wires: the controller at the place of a building's wall that is
     * nearest to the point of connection (there itself without a building), boxes at the valves in the order of their
     * distance, 18 AWG for each valve and 14 AWG for the common (all common practice, no source).
     */
    public static Wiring usual(Scenario scenario) {
        return UsualWiring.of(scenario, UsualWiring.controller(scenario));
    }

    /** The same with the controller at a given place. */
    public static Wiring usual(Scenario scenario, Point controller) {
        return UsualWiring.of(scenario, controller);
    }

    /** Where the usual wiring's controller hangs. */
    public static Point controllerOf(Scenario scenario) {
        return UsualWiring.controller(scenario);
    }

    /** The wire of a valve. */
    public ZoneWire wire(String valve) {
        return one(wires, valve, ZoneWire::valve);
    }

    /** A box by its id. */
    public Box box(String id) {
        return one(boxes, id, Box::id);
    }

    /** Length of a wire along the route in m: of a valve or of {@link #COMMON}. */
    public double length(String wire) {
        if (wire.equals(COMMON)) {
            return boxes.isEmpty() ? 0 : boxes.get(boxes.size() - 1).metres();
        }
        return box(wire(wire).box()).metres();
    }

    private static <T> T one(List<T> all, String id, Function<T, String> name) {
        return all.stream()
                .filter(t -> name.apply(t).equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(id + " is not part of this wiring"));
    }

    private static <T> List<T> replaced(List<T> all, String id, Function<T, String> name, UnaryOperator<T> change) {
        one(all, id, name);
        List<T> changed = new ArrayList<>();
        all.forEach(t -> changed.add(name.apply(t).equals(id) ? change.apply(t) : t));
        return changed;
    }

    Wiring with(Transformer other) {
        return new Wiring(other, sensor, outputs, common, boxes, wires, shorts, earthOhms);
    }

    Wiring with(SensorLoop other) {
        return new Wiring(transformer, other, outputs, common, boxes, wires, shorts, earthOhms);
    }

    Wiring with(CommonWire other) {
        return new Wiring(transformer, sensor, outputs, other, boxes, wires, shorts, earthOhms);
    }

    Wiring with(WireShort another) {
        List<WireShort> all = new ArrayList<>(shorts);
        all.add(another);
        return new Wiring(transformer, sensor, outputs, common, boxes, wires, all, earthOhms);
    }

    Wiring output(String terminal, UnaryOperator<Output> change) {
        List<Output> changed = replaced(outputs, terminal, Output::terminal, change);
        return new Wiring(transformer, sensor, changed, common, boxes, wires, shorts, earthOhms);
    }

    Wiring box(String id, UnaryOperator<Box> change) {
        List<Box> changed = replaced(boxes, id, Box::id, change);
        return new Wiring(transformer, sensor, outputs, common, changed, wires, shorts, earthOhms);
    }

    Wiring wire(String valve, UnaryOperator<ZoneWire> change) {
        List<ZoneWire> changed = replaced(wires, valve, ZoneWire::valve, change);
        return new Wiring(transformer, sensor, outputs, common, boxes, changed, shorts, earthOhms);
    }

    /** A valve's wire put on another terminal: how an output is told from a field wire. */
    public Wiring moved(String valve, String terminal) {
        return wire(valve, w -> w.on(terminal));
    }

    /** The wiring after outputs were on: a fuse that could not stand them is blown. */
    public Wiring after(Conditions conditions, Panel panel) {
        boolean blows = LiveReadings.of(this, conditions, panel).fuse() == LiveReadings.Fuse.OPENS;
        boolean stays = transformer.protection() == Transformer.Protection.FUSE;
        return blows && stays ? with(transformer.asBlown(true)) : this;
    }

    /** The wiring with a new fuse. */
    public Wiring withNewFuse() {
        return with(transformer.asBlown(false));
    }
}
