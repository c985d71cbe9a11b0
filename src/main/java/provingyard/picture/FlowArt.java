package provingyard.picture;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Plumbing.Pipe;
import provingyard.scenario.Point;
import provingyard.season.Snapshot;

/** Which way the water flows: chevrons along every pipe that carries some; they move while time runs. Metres, north up. */
final class FlowArt {

    /** Flow in m3/s below which nothing is drawn. */
    private static final double SOME = 1e-6;

    /** From chevron to chevron, px. */
    private static final double STEP = 30;

    private final YardShapes shapes;
    private final View view;
    private final Map<String, Double> flows = new LinkedHashMap<>();

    FlowArt(YardShapes shapes, View view, Snapshot snapshot) {
        this.shapes = shapes;
        this.view = view;
        List<Pipe> pipes = shapes.scenario().plumbing().pipes();
        for (int i = 0; i < pipes.size() && i < snapshot.links().length; i++) {
            double flow = snapshot.links()[i];
            if (Double.isFinite(flow) && Math.abs(flow) > SOME) {
                flows.put(pipes.get(i).id(), flow);
            }
        }
    }

    void draw(Surface s) {
        Path chevrons = chevrons();
        if (chevrons.isEmpty()) {
            return;
        }
        double px = view.px();
        Theme theme = view.theme();
        s.stroke(chevrons, Pen.of(theme.at(Tone.HALO).fade(0.85), 3.4 * px).round());
        s.stroke(chevrons, Pen.of(theme.at(Tone.SPRAY_EDGE), 1.7 * px).round());
    }

    /** All of them as one path. */
    Path chevrons() {
        Path.Builder b = Path.builder();
        for (PipeMap.Run run : shapes.pipes().runs()) {
            Double flow = flows.get(run.pipe());
            if (flow != null) {
                run(b, run.way(), flow);
            }
        }
        return b.build();
    }

    private void run(Path.Builder b, List<Point> way, double flow) {
        double px = view.px();
        double length = Polygons.length(way);
        double step = STEP * px;
        double speed = 14 + 26 * Math.min(1.6, Math.sqrt(Math.abs(flow) * 1000));
        double ahead = view.seconds() * speed / STEP;
        double first = step * (flow > 0 ? ahead - Math.floor(ahead) : Math.ceil(ahead) - ahead);
        for (double at = first; at < length; at += step) {
            if (at > 4 * px && at < length - 4 * px) {
                chevron(b, way, at, flow > 0 ? px : -px);
            }
        }
    }

    private static void chevron(Path.Builder b, List<Point> way, double at, double px) {
        Point p = Polygons.along(way, at);
        Point q = Polygons.along(way, at + 0.5 * px);
        double l = Deterministic.hypot(q.x() - p.x(), q.y() - p.y());
        if (l < 1e-9) {
            return;
        }
        double k = Math.abs(px) / l;
        double ux = (q.x() - p.x()) * k;
        double uy = (q.y() - p.y()) * k;
        b.moveTo(p.x() - 1.8 * ux - 3.6 * uy, p.y() - 1.8 * uy + 3.6 * ux);
        b.lineTo(p.x() + 1.8 * ux, p.y() + 1.8 * uy);
        b.lineTo(p.x() - 1.8 * ux + 3.6 * uy, p.y() - 1.8 * uy - 3.6 * ux);
    }
}
