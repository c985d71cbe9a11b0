package provingyard.world.hydraulics;

import java.util.List;
import java.util.Map;

/**
 * What flows in the plumbing under one configuration; immutable. Flows in m3/s, pressures in Pa (NaN where a place is cut
 * off). Order of heads, drip lines, zones and faults as in the document.
 *
 * @param heads flow of each head
 * @param headPressures pressure at each head
 * @param drips flow of each drip line
 * @param faults flow that each fault loses: leaks and breaks; for a valve that is stuck open or weeps, what its zone takes
 *     beyond what the controller asked for
 * @param zones flow through each zone valve
 * @param zonePressures pressure behind each zone valve
 * @param parts flow of each pipe's parts in order, positive from the pipe's {@code from} end
 * @param leaked flow of all leaks and breaks together, and of what runs in a house
 * @param supply flow through the point of connection: the sum of all that leaves
 * @param problem why the solver has no answer; null when it has
 */
public record WaterFlows(
        double[] heads,
        double[] headPressures,
        double[] drips,
        double[] faults,
        double[] zones,
        double[] zonePressures,
        Map<String, List<PartFlow>> parts,
        double leaked,
        double supply,
        String problem) {

    /** Flow of a pipe's part that begins {@code start} m from the pipe's {@code from} end. */
    public record PartFlow(double start, double flow, double pressure) {}

    /** m3/s that a fault loses. */
    public double lost(int fault) {
        return faults[fault];
    }

    /** Flow in a pipe at a distance from its {@code from} end, m3/s. */
    public double at(String pipe, double along) {
        return part(pipe, along).flow();
    }

    /** Pressure in a pipe at the first node up the way from a distance, Pa. */
    public double pressureAt(String pipe, double along) {
        return part(pipe, along).pressure();
    }

    private PartFlow part(String pipe, double along) {
        List<PartFlow> all = parts.get(pipe);
        PartFlow best = all.get(0);
        for (PartFlow part : all) {
            if (part.start() <= along) {
                best = part;
            }
        }
        return best;
    }
}
