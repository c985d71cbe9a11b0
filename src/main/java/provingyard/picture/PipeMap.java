package provingyard.picture;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Plumbing.Head;
import provingyard.scenario.Plumbing.Junction;
import provingyard.scenario.Plumbing.Pipe;
import provingyard.scenario.Point;

/**
 * Where pipes lie on the plan and what each belongs to.
 *
 * @param ways every pipe's way by id, from its {@code from} end
 * @param runs pieces to draw, each the mainline's or a zone's
 * @param fittings every fitting's place by id
 * @param risers from the nearest lateral to each head that lies off it
 */
record PipeMap(Map<String, List<Point>> ways, List<Run> runs, Map<String, Place> fittings, List<Run> risers) {

    /** A piece of pipe: its way, pipe id, and zone id (null for the mainline). */
    record Run(List<Point> way, String pipe, String zone) {}

    /** A fitting's place and the direction of its pipe in degrees, from east toward north. */
    record Place(Fitting fitting, Point at, double direction) {}

    static PipeMap of(Plumbing plumbing) {
        Map<String, Junction> junctions = new LinkedHashMap<>();
        plumbing.junctions().forEach(j -> junctions.put(j.id(), j));
        Map<String, List<Point>> ways = new LinkedHashMap<>();
        for (Pipe p : plumbing.pipes()) {
            List<Point> way = way(p, junctions);
            if (way.size() > 1) {
                ways.put(p.id(), way);
            }
        }
        Map<String, Place> fittings = new LinkedHashMap<>();
        for (Fitting f : plumbing.fittings()) {
            List<Point> way = ways.get(f.on());
            if (way != null) {
                fittings.put(f.id(), place(f, way));
            }
        }
        List<Run> runs = runs(plumbing, ways);
        return new PipeMap(ways, runs, fittings, risers(plumbing.heads(), runs));
    }

    private static List<Point> way(Pipe p, Map<String, Junction> junctions) {
        List<Point> way = new ArrayList<>();
        if (junctions.containsKey(p.from())) {
            way.add(junctions.get(p.from()).at());
        }
        way.addAll(p.via());
        if (junctions.containsKey(p.to())) {
            way.add(junctions.get(p.to()).at());
        }
        return way;
    }

    private static Place place(Fitting f, List<Point> way) {
        Point at = Polygons.along(way, f.along());
        Point before = Polygons.along(way, f.along() - 0.05);
        Point after = Polygons.along(way, f.along() + 0.05);
        double direction = Math.toDegrees(
                provingyard.numeric.Deterministic.atan2(after.y() - before.y(), after.x() - before.x()));
        return new Place(f, at, direction);
    }

    /** Walks from the supply; beyond a zone valve all belongs to that zone. */
    private static List<Run> runs(Plumbing plumbing, Map<String, List<Point>> ways) {
        Map<String, Fitting> valves = new LinkedHashMap<>();
        plumbing.fittings().stream()
                .filter(f -> f.kind() == FittingKind.ZONE_VALVE)
                .forEach(f -> valves.put(f.on(), f));
        List<Run> runs = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        Map<String, String> zoneOf = new LinkedHashMap<>();
        Deque<String> next = new ArrayDeque<>();
        if (plumbing.supply() != null) {
            next.add(plumbing.supply().junction());
        }
        while (!next.isEmpty()) {
            String here = next.poll();
            for (Pipe p : plumbing.pipes()) {
                boolean forward = p.from().equals(here);
                if ((forward || p.to().equals(here)) && ways.containsKey(p.id()) && seen.add(p.id())) {
                    String zone = zoneOf.get(here);
                    String far = forward ? p.to() : p.from();
                    Fitting valve = valves.get(p.id());
                    if (valve == null) {
                        runs.add(new Run(ways.get(p.id()), p.id(), zone));
                    } else {
                        split(ways.get(p.id()), p.id(), valve, forward, runs);
                        zone = valve.id();
                    }
                    zoneOf.putIfAbsent(far, zone);
                    next.add(far);
                }
            }
        }
        for (Pipe p : plumbing.pipes()) {
            if (ways.containsKey(p.id()) && seen.add(p.id())) {
                runs.add(new Run(ways.get(p.id()), p.id(), null));
            }
        }
        return runs;
    }

    private static void split(List<Point> way, String pipe, Fitting valve, boolean forward, List<Run> runs) {
        double length = Polygons.length(way);
        double at = Math.max(0, Math.min(length, valve.along()));
        if (at > 0.01) {
            runs.add(new Run(Polygons.part(way, 0, at), pipe, forward ? null : valve.id()));
        }
        if (at < length - 0.01) {
            runs.add(new Run(Polygons.part(way, at, length), pipe, forward ? valve.id() : null));
        }
    }

    private static List<Run> risers(List<Head> heads, List<Run> runs) {
        List<Run> risers = new ArrayList<>();
        for (Head h : heads) {
            Point best = null;
            String pipe = null;
            for (Run r : runs) {
                if (h.zone().equals(r.zone())) {
                    for (int i = 1; i < r.way().size(); i++) {
                        Point q = Polygons.nearest(h.at().x(), h.at().y(), r.way().get(i - 1), r.way().get(i));
                        if (best == null || q.distance(h.at()) < best.distance(h.at()) - 1e-9) {
                            best = q;
                            pipe = r.pipe();
                        }
                    }
                }
            }
            if (best != null && best.distance(h.at()) > 0.1) {
                risers.add(new Run(List.of(best, h.at()), pipe, h.zone()));
            }
        }
        return risers;
    }
}
