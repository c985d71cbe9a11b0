package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.scenario.Point;
import provingyard.scenario.ScenarioWriter;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * The same site, told in another way, lives the same season. The seeds are fixed: a site on which the last bit decides,
 * say, whether a sensor trips may rightly differ, and must not come up by chance.
 */
class InvarianceTest {

    /** Flows are solved to 1e-8, and sums in another order differ in their last bits. */
    private static final double SAME = 1e-6;

    static LongStream sites() {
        return LongStream.range(0, 20).map(i -> 7919 * i + 1);
    }

    private static Ledger lived(SeasonDocument document) {
        return document.lived().ledger();
    }

    /** Names decide nothing: not one bit. */
    @ParameterizedTest
    @MethodSource("sites")
    void renamedIdsChangeNoBit(long seed) {
        SeasonDocument plain = RandomSeasons.draw(seed);
        SeasonDocument renamed = Rewritten.renamed(plain);
        assertEquals(lived(plain), lived(renamed));
        assertTrue(!plain.root().get("plumbing").equals(renamed.root().get("plumbing")));
    }

    /** The order of lists decides nothing, where it is not itself the message (painting, layers of weather, turns). */
    @ParameterizedTest
    @MethodSource("sites")
    void reorderedListsComeToTheSame(long seed) {
        SeasonDocument plain = RandomSeasons.draw(seed);
        AlikeLedgers.assertAlike(lived(plain), lived(Rewritten.reordered(plain, seed)), SAME, "reordered");
    }

    @ParameterizedTest
    @MethodSource("sites")
    void usUnitsComeToTheSame(long seed) {
        SeasonDocument metric = RandomSeasons.draw(seed);
        SeasonDocument us = Rewritten.inUsUnits(metric);
        assertTrue(us.root().toString().contains("gpm") || us.root().toString().contains(" ft"));
        AlikeLedgers.assertAlike(lived(metric), lived(us), SAME, "in US units");
    }

    /** A file in US units and what the program writes of it, which is metric, are the same to the bit. */
    @ParameterizedTest
    @MethodSource("sites")
    void whatIsWrittenAgainLivesTheSameBits(long seed) {
        SeasonDocument us = Rewritten.inUsUnits(RandomSeasons.draw(seed));
        String written = ScenarioWriter.write(us.scenario());
        SeasonDocument again = SeasonDocument.of(written);
        assertEquals(lived(us), lived(again));
    }

    /**
     * East and west exchanged on open ground: the sun's height is the same, and its bearing shades nothing. The wind
     * blows from one side all the time, so that it can be mirrored too: a drawn wind would draw the same side again.
     */
    @ParameterizedTest
    @MethodSource("sites")
    void mirroredYardComesToTheSame(long seed) {
        SeasonDocument plain = inSteadyWind(withoutCasters(RandomSeasons.draw(seed)));
        AlikeLedgers.assertAlike(lived(plain), lived(Rewritten.mirrored(plain)), SAME, "mirrored");
    }

    /** What casts shade is mirrored with the yard: each cell sees as much sky, and gets as much rain, as its image. */
    @ParameterizedTest
    @MethodSource("sites")
    void mirroredCastersLeaveAsMuchSky(long seed) {
        SeasonDocument plain = RandomSeasons.draw(seed);
        var yard = Site.of(plain.scenario()).yard();
        var image = Site.of(Rewritten.mirrored(plain).scenario()).yard();
        for (int c = 0; c < yard.cells(); c++) {
            int mirrored = c / yard.nx() * yard.nx() + yard.nx() - 1 - c % yard.nx();
            assertEquals(yard.skyView(c), image.skyView(mirrored), 1e-9);
            assertEquals(yard.rainShare(c), image.rainShare(mirrored), 1e-9);
            assertEquals(yard.hollow(c), image.hollow(mirrored), 1e-9);
        }
    }

    /**
     * A site on level ground somewhere on a wide street, and elsewhere on it. Level, because heights are fitted to the
     * falls of all surfaces at once, so that a slope's run-off feels how far the yard's edge is; without casters, because
     * the street's shaded cells lie elsewhere under them.
     */
    @ParameterizedTest
    @MethodSource("sites")
    void shiftedOriginComesToTheSame(long seed) {
        SeasonDocument plain = onAWideStreet(levelled(withoutCasters(RandomSeasons.draw(seed))));
        Ledger here = lived(Rewritten.shifted(plain, 5, 5));
        AlikeLedgers.assertAlike(here, lived(Rewritten.shifted(plain, 6, 7.5)), SAME, "shifted");
    }

    /** Heights over another datum. */
    @ParameterizedTest
    @MethodSource("sites")
    void anotherDatumComesToTheSame(long seed) {
        SeasonDocument plain = RandomSeasons.draw(seed);
        SeasonDocument raised = plain.copy();
        for (JsonNode junction : raised.list("/plumbing/junctions")) {
            double z = Rewritten.metres(junction.get("elevation")) + 12.5;
            ((ObjectNode) junction).put("elevation", z + " m");
        }
        AlikeLedgers.assertAlike(lived(plain), lived(raised), SAME, "raised");
    }

    /**
     * A pipe of length L is replaced by two beside each other, each of L 2^1.852: by Hazen and Williams each loses with
     * half the flow what the one loses with all of it.
     */
    @ParameterizedTest
    @MethodSource("sites")
    void twoParallelPipesStandForOne(long seed) {
        SeasonDocument one = withFeeder(RandomSeasons.draw(seed), 1, 8);
        SeasonDocument two = withFeeder(RandomSeasons.draw(seed), 2, 8 * Math.pow(2, 1.852));
        SeasonDocument narrower = withFeeder(RandomSeasons.draw(seed), 1, 40);
        Ledger expected = lived(one);
        AlikeLedgers.assertAlike(expected, lived(two), SAME, "two pipes");
        boolean waters = expected.water().supplied() > expected.water().leaked();
        assertTrue(
                !waters
                        || lived(narrower).water().supplied()
                                != expected.water().supplied(),
                "the pipe matters");
    }

    /**
     * Cells of 1, 0.5 and 0.25 m: where on the ground the water lands, how it runs off and what freezes is told more
     * finely, and changes less with each step. Shares of the volume handled, as their mean over the sites.
     */
    @Test
    void finerCellsConverge() {
        Map<String, double[]> shares = new TreeMap<>();
        double[] steps = new double[2];
        long[] seeds = sites().toArray();
        for (long seed : seeds) {
            SeasonDocument plain = onWholeMetres(RandomSeasons.draw(seed));
            List<Ledger> byCell = Stream.of("1 m", "0.5 m", "0.25 m")
                    .map(cell -> lived(withCells(plain, cell)))
                    .toList();
            for (int i = 0; i < byCell.size(); i++) {
                Ledger ledger = byCell.get(i);
                double handled = Math.max(1e-6, AlikeLedgers.handled(ledger));
                int at = i;
                AlikeLedgers.volumes(ledger)
                        .forEach((term, volume) -> shares.computeIfAbsent(term, t -> new double[3])[at] +=
                                volume / handled / seeds.length);
            }
            steps[0] += difference(byCell.get(0), byCell.get(1)) / seeds.length;
            steps[1] += difference(byCell.get(1), byCell.get(2)) / seeds.length;
        }
        assertTrue(steps[1] < 0.7 * steps[0], "mean change of all terms " + Arrays.toString(steps));
        shares.forEach((term, by) -> assertEquals(by[1], by[2], 0.01, term + " " + Arrays.toString(by)));
    }

    private static SeasonDocument withCells(SeasonDocument plain, String side) {
        SeasonDocument out = plain.copy();
        out.part("/yard").put("cell", side);
        return out;
    }

    /** Yards that cells of 1 m fill. */
    private static SeasonDocument onWholeMetres(SeasonDocument plain) {
        SeasonDocument out = plain.copy();
        ArrayNode size = out.list("/yard/size");
        for (int i = 0; i < 2; i++) {
            size.set(i, new TextNode(Math.ceil(Rewritten.metres(size.get(i))) + " m"));
        }
        return out;
    }

    /** Sum of the terms' differences as a share of the volume handled. */
    private static double difference(Ledger one, Ledger other) {
        Map<String, Double> found = AlikeLedgers.volumes(other);
        double sum = 0;
        for (Map.Entry<String, Double> term : AlikeLedgers.volumes(one).entrySet()) {
            sum += Math.abs(term.getValue() - found.get(term.getKey()));
        }
        return sum / Math.max(1e-6, AlikeLedgers.handled(one));
    }

    /** One more sensor that does nothing: weather and what the others show stay the same to the bit. */
    @ParameterizedTest
    @MethodSource("sites")
    void anotherSensorChangesNeitherWeatherNorTheOthers(long seed) {
        SeasonDocument document = RandomSeasons.draw(seed);
        Site site = Site.of(document.scenario());
        SetUp few = document.setUp(site.scenario());
        SetUp more = first(few, new Placement.Freeze("added-1", point(site), Mount.POST, 2, 3, 5))
                .with(new Placement.Soil("added-2", point(site), 0.1, "loam", 0.1, 0.3));
        Season with = Season.begin(site, more);
        Season without = Season.begin(site, few);
        while (!without.over()) {
            with.advance();
            without.advance();
            if (without.tick() % 31 == 0) {
                Snapshot a = with.snapshot();
                Snapshot b = without.snapshot();
                assertEquals(b.sky(), a.sky());
                assertEquals(
                        b.sensors(),
                        a.sensors().stream()
                                .filter(s -> !s.id().startsWith("added"))
                                .toList());
            }
        }
        assertEquals(without.ledger(), with.ledger());
    }

    /** The added sensor comes first, so that a shared sequence of chance would be seen. */
    private static SetUp first(SetUp setUp, Placement placement) {
        List<Placement> all = new ArrayList<>(List.of(placement));
        all.addAll(setUp.sensors());
        return new SetUp(all, setUp.interlocks(), setUp.flowWatch(), setUp.schedule());
    }

    private static Point point(Site site) {
        var size = site.scenario().yard().size();
        return new Point(size.x() / 2, size.y() / 2);
    }

    private static SeasonDocument withoutCasters(SeasonDocument plain) {
        SeasonDocument out = plain.copy();
        List.of("structures", "trees", "vents")
                .forEach(list -> out.list("/yard/" + list).removeAll());
        return out;
    }

    private static SeasonDocument inSteadyWind(SeasonDocument plain) {
        SeasonDocument out = plain.copy();
        ArrayNode events = out.list("/weather/events");
        for (int i = events.size() - 1; i >= 0; i--) {
            if (events.get(i).get("kind").asText().equals("wind")) {
                events.remove(i);
            }
        }
        events.add(SeasonDocument.tree(
                "{'kind': 'wind', 'day': 1, 'at': '00:00', 'speed': '3 m/s', 'from': '250 deg', 'lasts': '96 h'}"));
        return out;
    }

    private static SeasonDocument levelled(SeasonDocument plain) {
        SeasonDocument out = plain.copy();
        for (JsonNode surface : out.list("/yard/surfaces")) {
            ((ObjectNode) surface.get("slope")).put("grade", "0 %");
        }
        out.list("/yard/hollows").removeAll();
        return out;
    }

    /** The site, with heads of short throw, in a street that is twelve metres longer and wider. */
    private static SeasonDocument onAWideStreet(SeasonDocument plain) {
        SeasonDocument out = plain.copy();
        double east = Rewritten.metres(out.list("/yard/size").get(0));
        double north = Rewritten.metres(out.list("/yard/size").get(1));
        for (JsonNode head : out.list("/plumbing/heads")) {
            ((ObjectNode) head).put("nozzle", "spray-8");
        }
        String outline = String.format(
                Locale.ROOT,
                "{'outline': [['0 m', '0 m'], ['%s m', '0 m'], ['%s m', '%s m'], ['0 m', '%s m']]}",
                east,
                east,
                north,
                north);
        ((ObjectNode) out.list("/yard/surfaces").get(0)).setAll(SeasonDocument.tree(outline));
        out.list("/yard/surfaces")
                .add(SeasonDocument.tree("{'id': 'around', 'kind': 'street', 'paving': 'asphalt', 'outline': []}"));
        out.part("/yard").put("base", "around");
        out.list("/yard/size").removeAll().add(east + 12 + " m").add(north + 12 + " m");
        return out;
    }

    /** Zone 1 fed through pipes beside each other of a length in m; its heads tap the lateral behind them. */
    private static SeasonDocument withFeeder(SeasonDocument plain, int beside, double length) {
        SeasonDocument out = plain.copy();
        out.part("/plumbing").put("friction", "hazenWilliams");
        out.list("/plumbing/junctions")
                .add(SeasonDocument.tree("{'id': 'fork', 'at': ['0.1 m', '0.1 m'], 'elevation': '0 m'}"));
        out.list("/plumbing/junctions")
                .add(SeasonDocument.tree("{'id': 'join', 'at': ['0.3 m', '0.1 m'], 'elevation': '0 m'}"));
        ArrayNode pipes = out.list("/plumbing/pipes");
        for (JsonNode pipe : pipes) {
            if (pipe.get("id").asText().equals("lateral-1")) {
                ((ObjectNode) pipe).put("from", "join");
            }
        }
        pipes.add(
                SeasonDocument.tree(
                        "{'id': 'feeder', 'from': 'tee-1', 'to': 'fork', 'size': '1 in', 'make': 'pvc-class-200', 'losses': 1}"));
        for (int i = 0; i < beside; i++) {
            pipes.add(SeasonDocument.tree(String.format(
                    Locale.ROOT,
                    "{'id': 'beside-%d', 'from': 'fork', 'to': 'join', 'size': '3/4 in', 'make': 'pvc-class-200', 'length': '%s m'}",
                    i,
                    length)));
        }
        for (JsonNode fitting : out.list("/plumbing/fittings")) {
            if (fitting.get("on").asText().equals("lateral-1")) {
                ((ObjectNode) fitting).put("on", "feeder");
            }
        }
        String middle = Rewritten.metres(out.list("/yard/size").get(1)) / 2 + " m";
        out.list("/plumbing/heads").forEach(head -> northward((ArrayNode) head.get("at"), middle));
        out.list("/plumbing/drips").forEach(line -> line.get("way").forEach(at -> northward((ArrayNode) at, middle)));
        return out;
    }

    private static void northward(ArrayNode point, String north) {
        point.remove(1);
        point.add(north);
    }
}
