package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The check networks, solved by the reference engine (EPANET 2.3.5) and by ours. */
@Tag("unit")
class ReferenceNetworksTest {

    @ParameterizedTest(name = "{0}: the engine's constants, within 1e-6 m and 1e-9 m3/s")
    @ValueSource(strings = {"v01", "v02", "v03", "v04", "v05", "v06"})
    void agreesWithTheEngine(String id) {
        compare(id, Constants.REFERENCE_ENGINE, 1e-6, 1e-9, 0);
    }

    @ParameterizedTest(name = "{0}: textbook constants, within 0.02 m and 0.1 %")
    @ValueSource(strings = {"v01", "v02", "v03", "v04", "v05", "v06"})
    void agreesWithTextbookConstants(String id) {
        compare(id, Constants.TEXTBOOK, 0.02, 1e-9, 1e-3);
    }

    /**
     * Invented yards with a pump, a regulator, two check valves (one held shut), a loop and a break that leaves outlets
     * dry, solved by us with the engine. Its shut check valves leak some 1e-10 m3/s, which the tolerance allows for.
     */
    @ParameterizedTest(name = "{0}: the engine's constants, within 2e-6 m and 2e-9 m3/s")
    @ValueSource(strings = {"pump-regulator-break-hw", "regulator-break-dw", "pump-regulator-break-dw"})
    void agreesWithTheEngineOnOddParts(String name) {
        String network = ReferenceFiles.text("hydraulics/", name + ".network.json");
        JsonNode expected = ReferenceFiles.json("hydraulics/", name + ".expected.json");
        NetworkState state = solved(network, Constants.REFERENCE_ENGINE);
        assertTrue(state.massImbalance() <= 1e-10);
        compare(state, expected, 2e-6, 2e-9, 0);
    }

    private static void compare(String id, Constants constants, double headM, double flowM3s, double flowShare) {
        NetworkState state = solved(ReferenceFiles.text(id + ".network.json"), constants);
        assertTrue(state.massImbalance() <= 1e-12, "mass imbalance " + state.massImbalance());
        compare(state, ReferenceFiles.json(id + ".expected.json"), headM, flowM3s, flowShare);
    }

    private static NetworkState solved(String text, Constants constants) {
        var reading = NeutralNetworkFile.read(text, constants);
        assertEquals(List.of(), reading.problems());
        NetworkState state = reading.network().newState();
        assertEquals(SolveStatus.CONVERGED, new NetworkSolver(reading.network()).solve(state), state.problem());
        assertNull(state.problem());
        return state;
    }

    private static void compare(NetworkState state, JsonNode expected, double headM, double flowM3s, double flowShare) {
        Network net = state.network();
        expected.get("heads_m").fields().forEachRemaining(e -> {
            int node = net.node(e.getKey());
            if (e.getValue().isNull()) {
                assertTrue(state.isIsolated(node) && Double.isNaN(state.head(node)), e.getKey());
            } else {
                assertEquals(e.getValue().doubleValue(), state.head(node), headM, "head of " + e.getKey());
            }
        });
        expected.get("flows_m3_s").fields().forEachRemaining(e -> {
            double q = e.getValue().doubleValue();
            assertEquals(q, state.flow(net.link(e.getKey())), flowM3s + flowShare * Math.abs(q), "flow " + e.getKey());
        });
        JsonNode outlets = expected.path("outlets_m3_s");
        outlets.fields().forEachRemaining(e -> {
            double q = e.getValue().doubleValue();
            assertEquals(q, state.outletFlow(net.outlet(e.getKey())), flowM3s + flowShare * q, "outlet " + e.getKey());
        });
    }

    @ParameterizedTest(name = "{0}: the written solution has the format's fields")
    @ValueSource(strings = {"v05"})
    void writesTheNeutralFormat(String id) throws Exception {
        Network net = NeutralNetworkFile.read(ReferenceFiles.text(id + ".network.json"), Constants.REFERENCE_ENGINE)
                .network();
        NetworkState state = net.newState();
        new NetworkSolver(net).solve(state);
        JsonNode written = new ObjectMapper().readTree(NeutralNetworkFile.write(state));
        JsonNode expected = ReferenceFiles.json(id + ".expected.json");
        for (String field : List.of("heads_m", "flows_m3_s", "outlets_m3_s", "states")) {
            assertEquals(expected.get(field).size(), written.get(field).size(), "entries of " + field);
        }
        assertEquals(expected.get("isolated_nodes"), written.get("isolated_nodes"));
        assertTrue(written.get("heads_m").get("Z2").isNull());
    }
}
