package provingyard.world.electric;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.scenario.YardPlan.Structure;
import provingyard.scenario.YardPlan.StructureKind;

/**
 * A usual wiring derived from a plan. All its numbers are common practice, no source: a transformer of the 24 V class with
 * 27 V without load, 24 V and a fuse at 1 A, 60 Hz; valves within 1 m of each other share a box; the route goes from box to
 * box in the order of their distance from the controller and is a tenth longer than straight lines; 18 AWG multi-strand
 * cable, 14 AWG common, sealed joints; a sensor's loop of 10 m (healthy, it stands
 * for a bridge as well, where there is no sensor); not earthed. A pump that the controller would start is not in the
 * plan, so it has no output.
 */
final class UsualWiring {

    private static final Transformer TRANSFORMER =
            new Transformer(27, 3, 60, 1, Transformer.Protection.FUSE, false, false);
    private static final SensorLoop SENSOR = new SensorLoop(10, 18, 0.1, SensorLoop.State.HEALTHY);
    private static final double OUTPUT_OHMS = 0.2;
    private static final int VALVE_GAUGE = 18;
    private static final int COMMON_GAUGE = 14;
    private static final double SHARED_BOX_METRES = 1;
    private static final double DETOUR = 1.1;
    /** From the controller's terminals to the ground. */
    private static final double DROP_METRES = 1.5;

    private UsualWiring() {}

    private record Valve(Fitting fitting, Point at) {}

    /** The place of a building's wall nearest to the point of connection, or that point where there is no building. */
    static Point controller(Scenario scenario) {
        Point supply =
                junction(scenario.plumbing(), scenario.plumbing().supply().junction());
        Point best = supply;
        double least = Double.POSITIVE_INFINITY;
        for (Structure structure : scenario.yard().structures()) {
            List<Point> corners = structure.outline();
            for (int i = 0; structure.kind() == StructureKind.BUILDING && i < corners.size(); i++) {
                Point here = nearest(supply, corners.get(i), corners.get((i + 1) % corners.size()));
                if (here.distance(supply) < least) {
                    least = here.distance(supply);
                    best = here;
                }
            }
        }
        return best;
    }

    private static Point nearest(Point p, Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double square = dx * dx + dy * dy;
        double t = square > 0 ? ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square : 0;
        t = Math.max(0, Math.min(1, t));
        return new Point(a.x() + t * dx, a.y() + t * dy);
    }

    static Wiring of(Scenario scenario, Point controller) {
        List<Valve> valves = valves(scenario.plumbing());
        List<Box> boxes = boxes(valves, controller);
        List<Output> outputs = new ArrayList<>();
        List<ZoneWire> wires = new ArrayList<>();
        int zone = 0;
        for (Valve valve : valves) {
            boolean master = valve.fitting().kind() == FittingKind.MASTER_VALVE;
            String terminal = master ? Output.MASTER : String.valueOf(++zone);
            if (outputs.stream().noneMatch(o -> o.terminal().equals(terminal))) {
                outputs.add(new Output(terminal, OUTPUT_OHMS, false));
            }
            wires.add(new ZoneWire(
                    valve.fitting().id(),
                    terminal,
                    nearestBox(boxes, valve.at()).id(),
                    VALVE_GAUGE,
                    List.of(),
                    Splice.SOUND,
                    Coil.USUAL));
        }
        CommonWire common = new CommonWire(COMMON_GAUGE, List.of());
        return new Wiring(TRANSFORMER, SENSOR, outputs, common, boxes, wires, List.of(), Double.POSITIVE_INFINITY);
    }

    /** Zone valves and master valves in the document's order. */
    private static List<Valve> valves(Plumbing plumbing) {
        List<Valve> valves = new ArrayList<>();
        for (Fitting fitting : plumbing.fittings()) {
            if (fitting.kind() == FittingKind.ZONE_VALVE || fitting.kind() == FittingKind.MASTER_VALVE) {
                valves.add(new Valve(fitting, place(plumbing, fitting)));
            }
        }
        return valves;
    }

    private static List<Box> boxes(List<Valve> valves, Point controller) {
        List<Point> places = new ArrayList<>();
        List<Point> byDistance = new ArrayList<>(valves.stream().map(Valve::at).toList());
        byDistance.sort(Comparator.comparingDouble(controller::distance));
        for (Point at : byDistance) {
            if (places.stream().noneMatch(p -> p.distance(at) <= SHARED_BOX_METRES)) {
                places.add(at);
            }
        }
        List<Box> boxes = new ArrayList<>();
        Point from = controller;
        double metres = DROP_METRES;
        for (Point at : places) {
            metres += DETOUR * from.distance(at);
            boxes.add(new Box("box-" + (boxes.size() + 1), at, metres, Splice.SOUND));
            from = at;
        }
        return boxes;
    }

    private static Box nearestBox(List<Box> boxes, Point at) {
        return boxes.stream()
                .min(Comparator.comparingDouble(b -> b.at().distance(at)))
                .orElseThrow();
    }

    private static Point place(Plumbing plumbing, Fitting fitting) {
        Plumbing.Pipe pipe = plumbing.pipes().stream()
                .filter(p -> p.id().equals(fitting.on()))
                .findFirst()
                .orElseThrow();
        List<Point> way = new ArrayList<>();
        way.add(junction(plumbing, pipe.from()));
        way.addAll(pipe.via());
        way.add(junction(plumbing, pipe.to()));
        double drawn = 0;
        for (int i = 1; i < way.size(); i++) {
            drawn += way.get(i - 1).distance(way.get(i));
        }
        double scale = pipe.length() == null ? 1 : drawn / pipe.length();
        return along(way, fitting.along() * scale);
    }

    /** The place so many m along a way as drawn, its end where the way is shorter. */
    private static Point along(List<Point> way, double metres) {
        double left = metres;
        for (int i = 1; i < way.size(); i++) {
            Point a = way.get(i - 1);
            Point b = way.get(i);
            double length = a.distance(b);
            if (left <= length && length > 0) {
                double share = left / length;
                return new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
            }
            left -= length;
        }
        return way.get(way.size() - 1);
    }

    private static Point junction(Plumbing plumbing, String id) {
        return plumbing.junctions().stream()
                .filter(j -> j.id().equals(id))
                .findFirst()
                .orElseThrow()
                .at();
    }
}
