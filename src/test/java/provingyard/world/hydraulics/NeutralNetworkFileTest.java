package provingyard.world.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("unit")
class NeutralNetworkFileTest {

    private static NeutralNetworkFile.Reading read(String json) {
        return NeutralNetworkFile.read(json.replace('\'', '"'), Constants.TEXTBOOK);
    }

    @Test
    void allProblemsAreReportedWithTheirPlace() {
        var reading =
                read("{'friction':'XX','nodes':[{'id':'A'},{'id':'B','elevation_m':1},{'id':'B','elevation_m':1}],"
                        + "'sources':[{'id':'S','head_m':'40'}],"
                        + "'links':[{'id':'P','type':'pipe','from':'S','to':'A','length_m':-2,'diameter_m':0.02,'hw_c':150},"
                        + "{'id':'P2','type':'hose','from':'B','to':'B'},"
                        + "{'id':'V','type':'valve','from':'B','to':'Q','diameter_m':0.02,'minor_k':1,'status':'ajar'}],"
                        + "'outlets':[{'id':'O','node':'X','k':1e-5,'n':0.5}]}");
        assertNull(reading.network());
        List<String> lines = reading.problems().stream().map(Problem::toString).toList();
        assertEquals(
                List.of(
                        "/friction: 'XX', allowed: HW or DW",
                        "/nodes/0/elevation_m: missing, allowed: a number",
                        "/sources/0/head_m: \"40\", allowed: a number",
                        "/links/1/type: 'hose', allowed: pipe, valve, prv, pump or device",
                        "/links/2/status: 'ajar', allowed: open or closed",
                        "/nodes/2: a second node or source 'B', allowed: unique ids",
                        "/links/0: length -2.0, allowed: above 0",
                        "/outlets/0: unknown node 'X', allowed: an id from the nodes or sources"),
                lines);
    }

    @Test
    void brokenTextIsAProblemToo() {
        assertTrue(read("{'friction':").problems().get(0).place().startsWith("line 1"));
        assertEquals(1, read("[]").problems().size());
        assertEquals(1, read("").problems().size());
        assertEquals(1, read("{'friction':'HW','friction':'HW'}").problems().size());
        assertEquals(4, read("{}").problems().size());
    }

    @Test
    void statesAreNamedByKind() throws Exception {
        var reading = read("{'friction':'DW','kinematic_viscosity_m2_s':1.1386e-6,"
                + "'nodes':[{'id':'A','elevation_m':0},{'id':'B','elevation_m':0},{'id':'C','elevation_m':0},"
                + "{'id':'D','elevation_m':0},{'id':'X','elevation_m':0}],"
                + "'sources':[{'id':'S','head_m':10}],"
                + "'links':[{'id':'U','type':'pump','from':'S','to':'A','curve_m3s_m':[[0,40],[0.001,30],[0.002,10]]},"
                + "{'id':'P','type':'pipe','from':'A','to':'B','length_m':10,'diameter_m':0.03,'roughness_mm':0.0015,"
                + "'minor_k':0,'check':true,'status':'open'},"
                + "{'id':'R','type':'prv','from':'B','to':'C','diameter_m':0.03,'minor_k':1,'setting_m':15},"
                + "{'id':'F','type':'device','from':'C','to':'D','curve_m3s_m':[[0,1],[0.001,2]]},"
                + "{'id':'V','type':'valve','from':'D','to':'X','diameter_m':0.03,'minor_k':1,'status':'closed'}],"
                + "'outlets':[{'id':'O','node':'D','k':1e-4,'n':0.5}]}");
        assertEquals(List.of(), reading.problems());
        NetworkState s = reading.network().newState();
        assertEquals(SolveStatus.CONVERGED, new NetworkSolver(reading.network()).solve(s));
        JsonNode out = new ObjectMapper().readTree(NeutralNetworkFile.write(s));
        assertEquals(
                "{\"U\":\"running\",\"P\":\"open\",\"R\":\"active\",\"F\":\"open\"}",
                out.get("states").toString());
        assertEquals("[\"X\"]", out.get("isolated_nodes").toString());
        assertTrue(out.get("heads_m").get("X").isNull());
        assertEquals(15, out.get("heads_m").get("C").doubleValue(), 1e-9);
        assertEquals(10, out.get("heads_m").get("S").doubleValue());
    }
}
