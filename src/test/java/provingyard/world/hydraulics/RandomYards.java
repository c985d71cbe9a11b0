package provingyard.world.hydraulics;

import org.apache.commons.rng.UniformRandomProvider;
import provingyard.numeric.RandomStreams;

/** Random yards for tests: a main with or without loops, zone valves, laterals with outlets, sometimes odd parts. */
final class RandomYards {

    private final UniformRandomProvider random;
    private final NetworkBuilder builder;
    private int links;

    private RandomYards(long seed, Constants constants) {
        random = new RandomStreams(seed).sequence("yard");
        builder = Network.builder(constants);
    }

    /** What a random yard has. */
    record Parts(boolean loops, boolean oddParts, boolean anyExponent, boolean darcy) {}

    /** A yard of 2 to 8 zones of 2 to 12 outlets; link {@code meter} carries all flow. */
    static Network yard(long seed, Parts parts) {
        return new RandomYards(seed, Constants.TEXTBOOK).make(parts);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private void pipe(String from, String to, double length, double diameter, boolean check, boolean darcy) {
        String id = "p" + links++;
        if (darcy) {
            builder.darcyPipe(id, from, to, length, diameter, 1.5e-6, 1.1386e-6, between(0, 2), check, true);
        } else {
            builder.pipe(id, from, to, length, diameter, between(100, 150), between(0, 2), check, true);
        }
    }

    private Network make(Parts parts) {
        if (random.nextDouble() < 0.5) {
            builder.source("S", between(2, 62));
        } else {
            double head = between(15, 62);
            builder.supply("S", 0, head, between(0.5e-3, 3e-3), head * between(0.3, 0.95));
        }
        builder.node("a", between(-1, 1)).node("b", between(-1, 1)).node("m0", between(-1, 1));
        builder.valve("meter", "S", "a", 0.026645, between(0, 8), true);
        double odd = parts.oddParts ? random.nextDouble() : 1;
        if (odd < 0.25) {
            builder.prv("x", "a", "b", 0.03, between(0, 5), between(5, 45), true);
        } else if (odd < 0.45) {
            builder.pump("x", "a", "b", new double[] {0, 1e-3, 2e-3}, new double[] {30, 25, 12}, true);
        } else if (odd < 0.7) {
            builder.device("x", "a", "b", new double[] {0, 5e-4, 1.5e-3, 3e-3}, new double[] {5, 6, 6, 9}, true);
        } else {
            builder.pipe("x", "a", "b", 5, 0.03, 150, 2, odd < 0.9, true);
        }
        pipe("b", "m0", between(2, 30), 0.035, false, parts.darcy);
        int zones = 2 + random.nextInt(7);
        for (int z = 0; z < zones; z++) {
            zone(z, parts);
        }
        if (parts.loops) {
            for (int i = 0; i < 1 + zones / 3; i++) {
                int from = random.nextInt(zones + 1);
                int to = random.nextInt(zones + 1);
                if (from != to) {
                    pipe("m" + from, "m" + to, between(5, 40), 0.03, random.nextDouble() < 0.3, parts.darcy);
                }
            }
        }
        return builder.build();
    }

    private void zone(int z, Parts parts) {
        String main = "m" + (z + 1);
        builder.node(main, between(-3, 3));
        pipe("m" + (parts.loops ? random.nextInt(z + 1) : z), main, between(3, 30), 0.04, false, parts.darcy);
        String last = "z" + z;
        builder.node(last, between(-3, 3));
        if (parts.oddParts && random.nextDouble() < 0.2) {
            builder.prv("v" + z, main, last, 0.026, between(0, 9), between(3, 40), true);
        } else {
            builder.valve("v" + z, main, last, 0.026, between(0, 9), true);
        }
        int heads = 2 + random.nextInt(11);
        for (int h = 0; h < heads; h++) {
            String node = "z" + z + "_" + h;
            builder.node(node, between(-4, 4));
            pipe(last, node, between(0.5, 9), between(0.012, 0.03), false, parts.darcy);
            builder.outlet("o" + z + "_" + h, node, between(5e-6, 8e-5), exponent(parts));
            last = random.nextDouble() < 0.8 ? node : last;
        }
    }

    private double exponent(Parts parts) {
        double pick = parts.anyExponent ? random.nextDouble() : 1;
        if (pick < 0.15) {
            return 0.05;
        }
        if (pick < 0.3) {
            return 0.1;
        }
        return pick < 0.6 ? between(0.05, 1.5) : 0.5;
    }
}
