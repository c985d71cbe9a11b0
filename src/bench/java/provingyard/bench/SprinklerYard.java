package provingyard.bench;

import provingyard.world.hydraulics.Network;
import provingyard.world.hydraulics.NetworkBuilder;

/**
 * A sprinkler yard of a given size: meter and backflow preventer, a mainline with a zone valve every so often, two
 * laterals behind each valve with a head on every node.
 *
 * @param network the pipes; zone valves are the links {@code valve0}, {@code valve1} and so on
 * @param zones number of zones
 */
record SprinklerYard(Network network, int zones) {

    /** k of every head, m3/s at 1 m. */
    static final double HEAD_K = 1e-5;

    /** A yard of about so many nodes: 8 zones up to 120, else one for every 25; the mainline grows with them. */
    static SprinklerYard ofNodes(int nodes) {
        int zones = nodes <= 120 ? 8 : nodes / 25;
        double diameter = 0.12 * Math.max(1, Math.pow(nodes / 600.0, 0.38));
        int headsPerZone = nodes / zones - 2;
        NetworkBuilder yard = Network.builder()
                .source("town", 55)
                .node("metered", 0)
                .node("main0", 0)
                .valve("meter", "town", "metered", 0.1, 4, true)
                .device("backflow", "metered", "main0", new double[] {0, 0.01, 0.03}, new double[] {4, 5, 8}, true);
        for (int z = 0; z < zones; z++) {
            zone(yard, z, headsPerZone, diameter);
        }
        return new SprinklerYard(yard.build(), zones);
    }

    private static void zone(NetworkBuilder yard, int z, int heads, double mainline) {
        String main = "main" + (z + 1);
        String out = "out" + z;
        yard.node(main, 0.1 * z).node(out, 0.1 * z);
        yard.pipe("mainline" + z, "main" + z, main, 15, mainline, 150, 0.5, false, true);
        yard.valve("valve" + z, main, out, 0.04, 6, true);
        for (int lateral = 0; lateral < 2; lateral++) {
            String last = out;
            for (int h = lateral; h < heads; h += 2) {
                String node = "head" + z + "." + h;
                yard.node(node, 0.1 * z + 0.02 * h);
                yard.pipe("lateral" + z + "." + h, last, node, 4.5, 0.032, 150, 0.3, false, true);
                yard.outlet("nozzle" + z + "." + h, node, HEAD_K, 0.5);
                last = node;
            }
        }
    }

    /** Index of a zone's valve. */
    int valve(int zone) {
        return network.link("valve" + zone);
    }
}
