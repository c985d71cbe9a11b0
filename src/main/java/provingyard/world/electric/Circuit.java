package provingyard.world.electric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A linear circuit in steady state at one frequency, solved by nodal analysis.
 *
 * <p>Each branch from node a to node b holds an impedance Z (ohm) in series with a source E (V): Ohm's law gives its
 * current I = (Va - Vb + E) / Z in A from a to b (G. S. Ohm 1827). Kirchhoff's current law (G. R. Kirchhoff 1845), no
 * current is left over at any node, gives as many equations as unknown node voltages; his voltage law holds because
 * voltages belong to nodes. Direct current is the same with impedances and sources that have no imaginary part. A part
 * of the circuit without any connection to the others gets its own zero at its first node, since nothing fixes it.
 */
final class Circuit {

    private final Map<String, Integer> nodes = new LinkedHashMap<>();
    private final List<Branch> branches = new ArrayList<>();
    private final Map<String, Integer> byId = new LinkedHashMap<>();

    /** A branch between two nodes by number. */
    record Branch(String id, int from, int to, Complex ohms, Complex volts) {}

    /** Adds a branch without a source; ohms more than zero. */
    void join(String id, String from, String to, Complex ohms) {
        join(id, from, to, ohms, Complex.ZERO);
    }

    /** Adds a branch whose source drives current from its first node through it to its second. */
    void join(String id, String from, String to, Complex ohms, Complex volts) {
        if (!(ohms.size() > 0)) {
            throw new IllegalArgumentException("Branch " + id + " needs an impedance above zero");
        }
        if (byId.put(id, branches.size()) != null) {
            throw new IllegalArgumentException("Branch " + id + " is there twice");
        }
        branches.add(new Branch(id, node(from), node(to), ohms, volts));
    }

    private int node(String name) {
        return nodes.computeIfAbsent(name, n -> nodes.size());
    }

    /** Whether any way of branches joins two nodes. */
    boolean joined(String a, String b) {
        if (!nodes.containsKey(a) || !nodes.containsKey(b)) {
            return a.equals(b);
        }
        int[] part = parts();
        return part[nodes.get(a)] == part[nodes.get(b)];
    }

    /** For each node the first node of the part of the circuit that it belongs to. */
    private int[] parts() {
        int[] part = new int[nodes.size()];
        for (int i = 0; i < part.length; i++) {
            part[i] = i;
        }
        for (Branch b : branches) {
            int low = Math.min(root(part, b.from()), root(part, b.to()));
            part[root(part, b.from())] = low;
            part[root(part, b.to())] = low;
        }
        for (int i = 0; i < part.length; i++) {
            part[i] = root(part, i);
        }
        return part;
    }

    private static int root(int[] part, int node) {
        int at = node;
        while (part[at] != at) {
            at = part[at];
        }
        return at;
    }

    /** The circuit's voltages and currents. */
    Solution solve() {
        int[] part = parts();
        int[] row = new int[part.length];
        int unknown = 0;
        for (int i = 0; i < part.length; i++) {
            row[i] = part[i] == i ? -1 : unknown++;
        }
        ComplexMatrix matrix = new ComplexMatrix(unknown);
        for (Branch b : branches) {
            Complex admittance = Complex.real(1).over(b.ohms());
            Complex driven = b.volts().times(admittance);
            stamp(matrix, row[b.from()], row[b.to()], admittance, driven);
        }
        Complex[] solved = matrix.solve();
        List<Complex> volts = new ArrayList<>();
        for (int r : row) {
            volts.add(r < 0 ? Complex.ZERO : solved[r]);
        }
        return new Solution(volts);
    }

    private static void stamp(ComplexMatrix matrix, int from, int to, Complex admittance, Complex driven) {
        Complex minus = Complex.ZERO.minus(admittance);
        if (from >= 0) {
            matrix.add(from, from, admittance);
            matrix.addRight(from, Complex.ZERO.minus(driven));
        }
        if (to >= 0) {
            matrix.add(to, to, admittance);
            matrix.addRight(to, driven);
        }
        if (from >= 0 && to >= 0) {
            matrix.add(from, to, minus);
            matrix.add(to, from, minus);
        }
    }

    /** What the circuit does. */
    final class Solution {

        private final List<Complex> volts;

        private Solution(List<Complex> volts) {
            this.volts = volts;
        }

        /** Voltage in V of a node over another; means something only where a way joins them. */
        Complex volts(String node, String over) {
            return volts.get(nodes.get(node)).minus(volts.get(nodes.get(over)));
        }

        /** Current in A along a branch; none where there is no such branch. */
        Complex amps(String branch) {
            return byId.containsKey(branch) ? amps(branches.get(byId.get(branch))) : Complex.ZERO;
        }

        private Complex amps(Branch b) {
            return volts.get(b.from()).minus(volts.get(b.to())).plus(b.volts()).over(b.ohms());
        }

        /** Complex power in VA that all sources give, E times the conjugate of I. */
        Complex given() {
            Complex sum = Complex.ZERO;
            for (Branch b : branches) {
                sum = sum.plus(b.volts().times(amps(b).conjugate()));
            }
            return sum;
        }

        /** Complex power in VA that all impedances take, Z times the square of the size of I. */
        Complex taken() {
            Complex sum = Complex.ZERO;
            for (Branch b : branches) {
                double size = amps(b).size();
                sum = sum.plus(b.ohms().times(Complex.real(size * size)));
            }
            return sum;
        }

        /** Largest size of the current left over at any node, in A: what rounding leaves of Kirchhoff's current law. */
        double leftOver() {
            Complex[] sums = new Complex[volts.size()];
            Arrays.fill(sums, Complex.ZERO);
            for (Branch b : branches) {
                sums[b.from()] = sums[b.from()].minus(amps(b));
                sums[b.to()] = sums[b.to()].plus(amps(b));
            }
            double worst = 0;
            for (Complex sum : sums) {
                worst = Math.max(worst, sum.size());
            }
            return worst;
        }
    }
}
