package provingyard.world.hydraulics;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.FittingKind;

/**
 * A part of the plumbing that is cut off from all water, and how fast its pressure falls while something leaks.
 *
 * <p>What leaks out is what the wall takes back and what water and trapped air expand by, so
 *
 * <pre>
 * dp/dt = -q(p) / (V C(p))     C(p) = sum(V_i / (rho a_i^2)) / V + x p_at / (p_at + p)^2
 * q(p)  = sum over losses of q_0 (p/p_0)^n
 * </pre>
 *
 * with p gauge pressure (Pa), t time (s), V volume of the section (m3), C what a unit of volume gives per pressure (1/Pa), rho
 * density of water (kg/m3), a_i wave speed in pipe i (m/s), V_i its volume, x share of the volume that trapped air would
 * fill at the pressure of the atmosphere p_at (Pa), q_0 flow of a loss (m3/s) at its pressure p_0, n its exponent.
 *
 * <p>Sources: elasticity of water and wall together is rho a^2 (Joukowsky 1898; Wylie and Streeter, Fluid Transients; from
 * memory), see {@link Surge#waveSpeed}; air by Boyle's law at constant temperature; losses as in {@link Leak#flowRatio}. The
 * share of trapped air is common practice without a source: in rigid pipe alone pressure would be gone in seconds.
 *
 * <p>Water passes both ways through pipes, open valves, meters and filters. What comes from above a backflow preventer, a check
 * valve or a regulator is left out: little pipe lies there, and nothing passes up through them.
 */
public final class ClosedSection {

    /** Share of the volume that trapped air would fill at the pressure of the atmosphere (common practice, no source). */
    static final double AIR = 0.02;

    /** Pressure of the atmosphere at sea level, Pa (ISO 2533). */
    private static final double ATMOSPHERE = 101325;

    /** Pressure under which a gauge shows nothing, Pa (common practice, no source). */
    static final double GONE = 10e3;

    /** Shortest time that a person can tell with a watch, s (common practice, no source). */
    private static final double SHORTEST = 5;

    private static final double DENSITY = PlumbingNetwork.WEIGHT_N_M3 / Constants.GRAVITY_M_S2;
    private static final int STEPS = 400;

    /**
     * Something that loses water.
     *
     * @param flow m3/s at {@code pressure}
     * @param pressure Pa at its place while the section was not cut off yet, above 0
     * @param exponent n of q = k p^n
     * @param below Pa by which pressure at its place is above the gauge's while nothing flows: how far it lies below
     */
    public record Loss(double flow, double pressure, double exponent, double below) {}

    private final PlumbingGraph graph;
    private final Set<PlumbingGraph.Part> parts = new HashSet<>();
    private final SortedSet<String> boundary = new TreeSet<>();
    private final double volume;
    private final double elasticity;

    private ClosedSection(PlumbingGraph graph, Plumbing plumbing, PlumbingGraph.Part first, Set<String> shut) {
        this.graph = graph;
        walk(first, shut);
        double all = 0;
        double gives = 0;
        // In the graph's order, so that the sums keep their bits.
        for (PlumbingGraph.Part part : graph.parts()) {
            if (parts.contains(part)) {
                Plumbing.Pipe plan = plumbing.pipes().stream()
                        .filter(p -> p.id().equals(part.pipe()))
                        .findFirst()
                        .orElseThrow();
                Catalogue.PipeMake make = graph.make(plan);
                Catalogue.PipeSize size = PlumbingGraph.size(make, plan.size());
                double own = Math.PI / 4 * size.inner() * size.inner() * part.length();
                all += own;
                gives += own * elasticity(make, size);
            }
        }
        volume = all;
        elasticity = gives / all;
    }

    /**
     * The section around a place.
     *
     * @param shut fittings through which nothing passes; zone valves are shut anyway
     */
    static ClosedSection around(PlumbingGraph graph, Plumbing plumbing, String pipe, double along, Set<String> shut) {
        return new ClosedSection(graph, plumbing, part(graph, pipe, along), shut);
    }

    private static PlumbingGraph.Part part(PlumbingGraph graph, String pipe, double along) {
        PlumbingGraph.Part best = null;
        for (PlumbingGraph.Part part : graph.parts()) {
            if (part.pipe().equals(pipe) && (best == null || part.start() <= along)) {
                best = part;
            }
        }
        return best;
    }

    private static double elasticity(Catalogue.PipeMake make, Catalogue.PipeSize size) {
        double water = DENSITY * Surge.FREE_WAVE_SPEED_M_S * Surge.FREE_WAVE_SPEED_M_S;
        double ratio = (size.inner() + 2 * size.wall()) / size.wall();
        double speed = Surge.waveSpeed(ratio, water / make.modulus());
        return 1 / (DENSITY * speed * speed);
    }

    private void walk(PlumbingGraph.Part first, Set<String> shut) {
        Set<String> seen = new HashSet<>(List.of(first.from()));
        Deque<String> ends = new ArrayDeque<>(seen);
        while (!ends.isEmpty()) {
            String end = ends.poll();
            for (PlumbingGraph.Part part : graph.parts()) {
                if (part.from().equals(end) || part.to().equals(end)) {
                    parts.add(part);
                    reach(part.from().equals(end) ? part.to() : part.from(), seen, ends);
                }
            }
            for (PlumbingGraph.Device device : graph.devices()) {
                if (!device.from().equals(end) && !device.to().equals(end)) {
                    continue;
                }
                if (passes(device.fitting(), shut)) {
                    reach(device.from().equals(end) ? device.to() : device.from(), seen, ends);
                } else {
                    boundary.add(device.fitting().id());
                }
            }
        }
    }

    private static void reach(String node, Set<String> seen, Deque<String> ends) {
        if (seen.add(node)) {
            ends.add(node);
        }
    }

    /** Whether water passes a fitting both ways. */
    private static boolean passes(Plumbing.Fitting fitting, Set<String> shut) {
        FittingKind kind = fitting.kind();
        return !shut.contains(fitting.id())
                && (kind == FittingKind.METER
                        || kind == FittingKind.MASTER_VALVE
                        || kind == FittingKind.ISOLATION_VALVE
                        || kind == FittingKind.FILTER);
    }

    /** Whether a place lies in it. */
    public boolean holds(String pipe, double along) {
        return parts.contains(part(graph, pipe, along));
    }

    /** Fittings at its ends. */
    public SortedSet<String> boundary() {
        return Collections.unmodifiableSortedSet(boundary);
    }

    /** Volume of its pipes in m3. */
    public double volume() {
        return volume;
    }

    /** What a unit of its volume gives per pressure, 1/Pa: {@code C(p)}. */
    double gives(double pressure) {
        double absolute = ATMOSPHERE + pressure;
        return elasticity + AIR * ATMOSPHERE / (absolute * absolute);
    }

    /**
     * Mean fall of pressure in Pa/s over a watch, or until it is gone if that comes sooner.
     *
     * @param start Pa at the gauge when the section is cut off
     * @param losses what leaks in it
     * @param seconds the watch, s
     */
    public double fall(double start, List<Loss> losses, double seconds) {
        if (start <= GONE || losses.isEmpty()) {
            return 0;
        }
        double step = (start - GONE) / STEPS;
        double time = 0;
        for (int i = 0; i < STEPS; i++) {
            double pressure = start - (i + 0.5) * step;
            double flow = 0;
            for (Loss loss : losses) {
                flow += flow(loss, pressure + loss.below());
            }
            double takes = flow > 0 ? volume * gives(pressure) * step / flow : Double.POSITIVE_INFINITY;
            if (time + takes >= seconds) {
                return (i + (seconds - time) / takes) * step / seconds;
            }
            time += takes;
        }
        return (start - GONE) / Math.max(time, SHORTEST);
    }

    private static double flow(Loss loss, double pressure) {
        return pressure > 0 ? loss.flow() * Leak.flowRatio(loss.pressure(), pressure, loss.exponent()) : 0;
    }
}
