package provingyard.world.electric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Laws that hold in any circuit of resistors, coils and sources, tried on random ones. */
class CircuitPropertyTest {

    private record Part(String id, String from, String to, Complex ohms, Complex volts) {}

    /** A ladder that joins all nodes, and chords; values over five powers of ten, as wires and coils have. */
    private static List<Part> parts(long seed, boolean reactive) {
        Random random = new Random(seed);
        int nodes = 2 + random.nextInt(12);
        int chords = random.nextInt(nodes + 1);
        List<Part> parts = new ArrayList<>();
        for (int i = 1; i < nodes + chords; i++) {
            int to = i < nodes ? i : random.nextInt(nodes);
            int from = i < nodes ? random.nextInt(i) : random.nextInt(nodes);
            if (from != to) {
                double r = Math.pow(10, -2 + 5 * random.nextDouble());
                double x = reactive ? r * 4 * random.nextDouble() : 0;
                Complex volts = random.nextInt(3) > 0
                        ? Complex.ZERO
                        : new Complex(30 * random.nextDouble(), reactive ? 30 * random.nextDouble() : 0);
                parts.add(new Part("p" + i, "n" + from, "n" + to, new Complex(r, x), volts));
            }
        }
        return parts;
    }

    private static Circuit circuit(List<Part> parts) {
        Circuit c = new Circuit();
        parts.forEach(p -> c.join(p.id(), p.from(), p.to(), p.ohms(), p.volts()));
        return c;
    }

    private static double amount(Circuit.Solution s, List<Part> parts) {
        return parts.stream().mapToDouble(p -> s.amps(p.id()).size()).sum();
    }

    /** All sources' volts. */
    private static double volts(List<Part> parts) {
        return parts.stream().mapToDouble(p -> p.volts().size()).sum();
    }

    /** A that rounding of a node's volts makes in the smallest impedance. */
    private static double rounding(List<Part> parts) {
        double least = parts.stream().mapToDouble(p -> p.ohms().size()).min().orElse(1);
        return 1e-14 * volts(parts) / least;
    }

    @Property(tries = 200)
    void sourcesGiveWhatImpedancesTake(@ForAll long seed) {
        List<Part> parts = parts(seed, true);
        Circuit.Solution s = circuit(parts).solve();
        double apparent = parts.stream()
                .mapToDouble(p -> p.volts().size() * s.amps(p.id()).size())
                .sum();
        assertEquals(0, s.given().minus(s.taken()).size(), 1e-9 * apparent + rounding(parts) * volts(parts));
        assertTrue(s.taken().re() >= 0);
    }

    @Property(tries = 200)
    void noCurrentIsLeftOverAtANode(@ForAll long seed) {
        List<Part> parts = parts(seed, true);
        Circuit.Solution s = circuit(parts).solve();
        assertEquals(0, s.leftOver(), 1e-11 * amount(s, parts) + rounding(parts));
    }

    @Property(tries = 200)
    void sourcesSuperpose(@ForAll long seed) {
        List<Part> all = parts(seed, true);
        Circuit.Solution together = circuit(all).solve();
        for (Part watched : all) {
            Complex sum = Complex.ZERO;
            for (Part source : all) {
                List<Part> alone = all.stream()
                        .map(p -> new Part(p.id(), p.from(), p.to(), p.ohms(), p == source ? p.volts() : Complex.ZERO))
                        .toList();
                sum = sum.plus(circuit(alone).solve().amps(watched.id()));
            }
            Complex found = together.amps(watched.id());
            assertEquals(0, found.minus(sum).size(), 1e-9 * amount(together, all) + rounding(all) * all.size());
        }
    }

    @Property(tries = 200)
    void whatHasNoSourceTakesPowerAndNeverGives(@ForAll long seed) {
        List<Part> passive = parts(seed, true).stream()
                .map(p -> new Part(p.id(), p.from(), p.to(), p.ohms(), Complex.ZERO))
                .toList();
        Complex seen = seen(passive);
        assertTrue(seen.re() > 0 && seen.im() >= -1e-9 * seen.size(), seen::toString);
    }

    @Property(tries = 200)
    void anotherResistorNeverRaisesResistance(@ForAll long seed) {
        List<Part> passive = new ArrayList<>(parts(seed, false).stream()
                .map(p -> new Part(p.id(), p.from(), p.to(), p.ohms(), Complex.ZERO))
                .toList());
        double before = seen(passive).re();
        Random random = new Random(~seed);
        passive.add(
                new Part("more", "n0", "n" + random.nextInt(2), Complex.real(1 + random.nextDouble()), Complex.ZERO));
        assertTrue(seen(passive).re() <= before * (1 + 1e-9));
    }

    /** Impedance between the first two nodes. */
    private static Complex seen(List<Part> passive) {
        Circuit c = circuit(passive);
        c.join("probe", "n0", "n1", Complex.real(50), Complex.real(1));
        Circuit.Solution s = c.solve();
        return s.volts("n1", "n0").over(s.amps("probe"));
    }

    @Property(tries = 200)
    void namesAndOrderDoNotMatter(@ForAll long seed) {
        List<Part> parts = parts(seed, true);
        Circuit.Solution s = circuit(parts).solve();
        List<Part> shuffled = new ArrayList<>(parts);
        Collections.shuffle(shuffled, new Random(seed));
        Circuit.Solution other = circuit(shuffled).solve();
        for (Part p : parts) {
            double gap = s.amps(p.id()).minus(other.amps(p.id())).size();
            assertEquals(0, gap, 1e-9 * amount(s, parts) + rounding(parts));
        }
    }

    @Property(tries = 100)
    void wiringsBalanceWhateverIsOnAndBroken(@ForAll long seed) {
        Random random = new Random(seed);
        Wiring wiring = Wirings.row();
        for (int i = 0; i < 3; i++) {
            wiring = fault(random).in(wiring);
        }
        Conditions conditions = Conditions.everywhere(-10 + 50 * random.nextDouble(), random.nextDouble());
        String[] on = {"1", "2", "3", "4", "MV"};
        Panel panel = Panel.running(Arrays.copyOf(on, random.nextInt(6)));
        LiveReadings live = LiveReadings.of(wiring, conditions, panel);
        double apparent = 27 * live.supplied();
        double possible = 27 * 27 / 3.0;
        assertEquals(0, live.given().minus(live.taken()).size(), 1e-9 * apparent + 1e-12 * possible);
        if (live.fuse() != LiveReadings.Fuse.HOLDS) {
            assertEquals(0, live.supplied());
            assertTrue(live.drawn().isEmpty());
        }
    }

    private static ElectricFault fault(Random random) {
        String valve = "v" + (1 + random.nextInt(4));
        double share = 0.02 + 0.96 * random.nextDouble();
        return switch (random.nextInt(8)) {
            case 0 -> new ElectricFault.CoilOpen(valve);
            case 1 -> new ElectricFault.ShortedTurns(valve, share);
            case 2 -> new ElectricFault.CoilShort(valve, 10 * share);
            case 3 -> new ElectricFault.WireCut(valve, new Cut(20 * share, 1000));
            case 4 -> new ElectricFault.CommonCut(new Cut(80 * share, 1000));
            case 5 -> new ElectricFault.Touching(new WireShort("v4", "v3", 60 * share, share));
            case 6 -> new ElectricFault.BadSplice(valve, new Splice(share, 1000 * share, 3000));
            default -> new ElectricFault.BadCommonSplice("b" + valve.charAt(1), new Splice(share, 500, 3000));
        };
    }
}
