package provingyard.world.hydraulics;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.scenario.Catalogue;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;

/**
 * The document's plumbing as nodes and links: every pipe is cut where something sits on it (a fitting, a head's tap, a
 * possible leak), and each zone's laterals are known by a walk downstream of its valve.
 */
final class PlumbingGraph {

    /** A node with its place and elevation in m. */
    record Node(String id, Point at, double elevation) {}

    /** A pipe's part between two nodes; {@code losses} are minor loss coefficients on its own velocity head. */
    record Part(String pipe, String id, String from, String to, double start, double length, double losses) {}

    /** A fitting between two nodes. */
    record Device(Plumbing.Fitting fitting, String from, String to) {}

    /** What takes water at a node: a head, a drip line's share, or a possible leak. */
    record Tap(String id, String node) {}

    private record Stop(double along, String id, Plumbing.Fitting fitting) {}

    private static final double SAME_PLACE = 1e-3;

    private final Map<String, Node> nodes = new LinkedHashMap<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Device> devices = new ArrayList<>();
    private final List<Tap> taps = new ArrayList<>();
    private final Map<String, PipePath> paths = new LinkedHashMap<>();
    private final Map<String, Set<String>> laterals = new LinkedHashMap<>();
    private final Map<String, List<Stop>> stops = new LinkedHashMap<>();
    private final Scenario scenario;

    private PlumbingGraph(Scenario scenario) {
        this.scenario = scenario;
        Plumbing plumbing = scenario.plumbing();
        for (Plumbing.Junction j : plumbing.junctions()) {
            nodes.put(j.id(), new Node(j.id(), j.at(), j.elevation()));
        }
        for (Plumbing.Pipe pipe : plumbing.pipes()) {
            paths.put(
                    pipe.id(),
                    PipePath.of(
                            pipe,
                            nodes.get(pipe.from()).at(),
                            nodes.get(pipe.to()).at()));
            stops.put(pipe.id(), new ArrayList<>());
        }
        plumbing.fittings().forEach(f -> stops.get(f.on()).add(new Stop(f.along(), f.id(), f)));
        findLaterals();
        plumbing.heads().forEach(h -> tap(h.id(), h.zone(), h.at()));
        plumbing.drips().forEach(d -> tap(d.id(), d.zone(), middle(d.way())));
        for (int i = 0; i < scenario.faults().size(); i++) {
            FaultPlan fault = scenario.faults().get(i);
            if (leaks(fault)) {
                stops.get(leakPipe(fault)).add(new Stop(leakAlong(fault), leakId(i), null));
            }
        }
        plumbing.pipes().forEach(this::cut);
    }

    static PlumbingGraph of(Scenario scenario) {
        return new PlumbingGraph(scenario);
    }

    /** Whether a fault is an opening through which water leaves: in a pipe, or on the house's branch. */
    static boolean leaks(FaultPlan fault) {
        return switch (fault.kind()) {
            case MAINLINE_BREAK, MAINLINE_LEAK, LATERAL_BREAK, HOUSE_RUNS -> true;
            default -> false;
        };
    }

    /** The pipe of an opening: its own, or the one that the meter sits on, behind which the house's branch leaves. */
    String leakPipe(FaultPlan fault) {
        return fault.kind() == FaultPlan.Kind.HOUSE_RUNS ? fitting(fault.on()).on() : fault.on();
    }

    /** Its distance from that pipe's {@code from} end, m. */
    double leakAlong(FaultPlan fault) {
        return fault.kind() == FaultPlan.Kind.HOUSE_RUNS ? fitting(fault.on()).along() + 2 * SAME_PLACE : fault.along();
    }

    private Plumbing.Fitting fitting(String id) {
        return scenario.plumbing().fittings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The tap's name of the scenario's i-th fault. */
    static String leakId(int fault) {
        return "leak-" + fault;
    }

    Iterable<Node> nodes() {
        return nodes.values();
    }

    List<Part> parts() {
        return parts;
    }

    List<Device> devices() {
        return devices;
    }

    List<Tap> taps() {
        return taps;
    }

    /** The way of each pipe by its id. */
    Map<String, PipePath> paths() {
        return paths;
    }

    /** Pipe ids of each zone's laterals, by the zone valve's id. */
    Map<String, Set<String>> laterals() {
        return laterals;
    }

    Catalogue.PipeMake make(Plumbing.Pipe pipe) {
        return scenario.catalogue().pipes().stream()
                .filter(m -> m.id().equals(pipe.make()))
                .findFirst()
                .orElseThrow();
    }

    /** The size of a make that is nearest to a nominal size. */
    static Catalogue.PipeSize size(Catalogue.PipeMake make, double nominal) {
        return make.sizes().stream()
                .min(Comparator.comparingDouble(s -> Math.abs(s.nominal() - nominal)))
                .orElseThrow();
    }

    private static Point middle(List<Point> way) {
        return way.get(way.size() / 2);
    }

    /** A zone's laterals: its valve's own pipe and all pipes reached from that pipe's far end, away from the supply. */
    private void findLaterals() {
        Plumbing plumbing = scenario.plumbing();
        for (Plumbing.Fitting valve : plumbing.fittings()) {
            if (valve.kind() != Plumbing.FittingKind.ZONE_VALVE) {
                continue;
            }
            Plumbing.Pipe first = plumbing.pipes().stream()
                    .filter(p -> p.id().equals(valve.on()))
                    .findFirst()
                    .orElseThrow();
            Set<String> found = new LinkedHashSet<>(List.of(first.id()));
            Deque<String> ends = new ArrayDeque<>(List.of(first.to()));
            Set<String> seen = new LinkedHashSet<>(List.of(first.from(), first.to()));
            while (!ends.isEmpty()) {
                String end = ends.poll();
                for (Plumbing.Pipe pipe : plumbing.pipes()) {
                    boolean touches = pipe.from().equals(end) || pipe.to().equals(end);
                    if (touches && found.add(pipe.id())) {
                        String other = pipe.from().equals(end) ? pipe.to() : pipe.from();
                        if (seen.add(other)) {
                            ends.add(other);
                        }
                    }
                }
            }
            laterals.put(valve.id(), found);
        }
    }

    /** Where a head or drip line of a zone takes its water: the nearest point of the zone's laterals past the valve. */
    private void tap(String id, String zone, Point at) {
        String best = null;
        PipePath.Nearest nearest = new PipePath.Nearest(Double.POSITIVE_INFINITY, 0);
        for (String pipe : laterals.get(zone)) {
            PipePath.Nearest here = paths.get(pipe).nearest(at);
            if (here.distance() < nearest.distance()) {
                nearest = here;
                best = pipe;
            }
        }
        double along = nearest.along();
        for (Stop stop : stops.get(best)) {
            if (stop.fitting() != null && along <= stop.along() + SAME_PLACE) {
                along = Math.min(paths.get(best).length(), stop.along() + 2 * SAME_PLACE);
            }
        }
        stops.get(best).add(new Stop(along, id, null));
    }

    private void cut(Plumbing.Pipe pipe) {
        PipePath path = paths.get(pipe.id());
        List<Stop> along = stops.get(pipe.id());
        along.sort(Comparator.comparingDouble(Stop::along).thenComparing(s -> s.fitting() == null));
        String here = pipe.from();
        double start = 0;
        double losses = pipe.losses();
        int count = 0;
        for (Stop stop : along) {
            double to = Math.max(0, Math.min(stop.along(), path.length()));
            boolean atStart = to - start <= SAME_PLACE;
            boolean atEnd = path.length() - to <= SAME_PLACE;
            if (stop.fitting() != null) {
                if (!atStart) {
                    here = part(pipe, here, between(pipe, path, to, count), start, to, losses, count++);
                    losses = 0;
                    start = to;
                }
                String beyond = between(pipe, path, to, count++);
                devices.add(new Device(stop.fitting(), here, beyond));
                here = beyond;
            } else if (atEnd) {
                taps.add(new Tap(stop.id(), pipe.to()));
            } else {
                if (!atStart) {
                    here = part(pipe, here, between(pipe, path, to, count), start, to, losses, count++);
                    losses = 0;
                    start = to;
                }
                taps.add(new Tap(stop.id(), here));
            }
        }
        // A last part closes the pipe even where a fitting sits at its very end.
        part(pipe, here, pipe.to(), start, Math.max(path.length(), start + SAME_PLACE), losses, count);
    }

    private String part(
            Plumbing.Pipe pipe, String from, String to, double start, double end, double losses, int count) {
        parts.add(new Part(pipe.id(), pipe.id() + "#" + count, from, to, start, end - start, losses));
        return to;
    }

    private String between(Plumbing.Pipe pipe, PipePath path, double along, int count) {
        double share = path.length() > 0 ? along / path.length() : 0;
        double low = nodes.get(pipe.from()).elevation();
        double high = nodes.get(pipe.to()).elevation();
        String id = pipe.id() + "@" + count;
        nodes.put(id, new Node(id, path.pointAt(along), low + share * (high - low)));
        return id;
    }
}
