package provingyard.picture;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import provingyard.scenario.Catalogue.Nozzle;
import provingyard.scenario.Catalogue.Throw;
import provingyard.scenario.Plumbing.Head;
import provingyard.season.Snapshot;

/** Answers what the painters ask of a snapshot by id; without a snapshot nothing runs. */
final class Live {

    /** Throw assumed where neither head nor catalogue gives one, m. */
    private static final double SOME_RADIUS = 4;

    private final Snapshot snapshot;
    private final Map<String, Snapshot.Head> heads = new LinkedHashMap<>();
    private final Map<String, Snapshot.Sensor> sensors = new LinkedHashMap<>();
    private final Set<String> open = new HashSet<>();
    private final Map<String, Nozzle> nozzles = new LinkedHashMap<>();

    Live(YardShapes shapes, Snapshot snapshot) {
        this.snapshot = snapshot;
        if (shapes.scenario().catalogue() != null) {
            shapes.scenario().catalogue().nozzles().forEach(n -> nozzles.put(n.id(), n));
        }
        if (snapshot != null) {
            snapshot.heads().forEach(h -> heads.put(h.id(), h));
            snapshot.sensors().forEach(s -> sensors.put(s.id(), s));
            snapshot.zones().stream().filter(Snapshot.Zone::open).forEach(z -> open.add(z.id()));
        }
    }

    /** The snapshot, or null. */
    Snapshot snapshot() {
        return snapshot;
    }

    boolean open(String zone) {
        return zone != null && open.contains(zone);
    }

    boolean spraying(Head h) {
        Snapshot.Head live = heads.get(h.id());
        return live != null && live.spraying();
    }

    /** A sensor's display, or null. */
    Snapshot.Sensor sensor(String id) {
        return sensors.get(id);
    }

    boolean rotor(Head h) {
        Nozzle n = nozzles.get(h.nozzle());
        return n != null && n.throwing() == Throw.ROTOR;
    }

    /** How a head throws now, m; a resting head as it would in still air. */
    Jet jet(Head h) {
        Snapshot.Head live = heads.get(h.id());
        double set = h.radius() != null ? h.radius() : nozzles.containsKey(h.nozzle())
                ? nozzles.get(h.nozzle()).radius()
                : SOME_RADIUS;
        if (live == null || !live.spraying()) {
            return new Jet(h, set, 0, 0);
        }
        double radius = finite(live.radius(), set);
        return new Jet(h, radius > 0 ? radius : set, finite(live.driftX(), 0), finite(live.driftY(), 0));
    }

    private static double finite(double value, double otherwise) {
        return Double.isFinite(value) ? value : otherwise;
    }
}
