package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import provingyard.scenario.FormPass.OnYard;
import provingyard.scenario.Problem.Code;

/** The yard's geometry: corners, cells, what lies on it. */
final class YardChecks {

    /** Most ground cells of a site. */
    static final int MOST_CELLS = 200_000;

    /** A corner may lie this far outside, in m: plans are measured on paper. */
    private static final double TOLERANCE = 0.01;

    private final JsonNode tree;
    private final FormPass pass;
    private final Findings findings;

    YardChecks(JsonNode tree, FormPass pass, Findings findings) {
        this.tree = tree;
        this.pass = pass;
        this.findings = findings;
    }

    void run() {
        JsonNode yard = tree.path("yard");
        double east = yard.at("/size/0").asDouble(Double.NaN);
        double north = yard.at("/size/1").asDouble(Double.NaN);
        double cell = yard.path("cell").asDouble(Double.NaN);
        double cells = Math.ceil(east / cell) * Math.ceil(north / cell);
        if (cells > MOST_CELLS) {
            findings.error(Code.GEO_CELLS, "/yard/cell", metres(cells), MOST_CELLS + "");
        }
        if (east < 1 || north < 1) {
            findings.error(Code.QTY_RANGE, "/yard/size", yard.path("size").toString(), "1 m", "1000 m");
        }
        for (OnYard point : pass.onYard()) {
            if (outside(point.x(), east) || outside(point.y(), north)) {
                findings.error(
                        Code.GEO_OUTSIDE,
                        point.pointer(),
                        metres(point.x()) + ", " + metres(point.y()),
                        metres(east),
                        metres(north));
            }
        }
        surfaces(yard);
        structures(yard);
    }

    private static boolean outside(double value, double size) {
        return value < -TOLERANCE || value > size + TOLERANCE;
    }

    private void surfaces(JsonNode yard) {
        String base = yard.path("base").asText();
        boolean known = yard.path("surfaces").findValuesAsText("id").contains(base);
        for (int i = 0; i < yard.path("surfaces").size(); i++) {
            JsonNode surface = yard.path("surfaces").path(i);
            String at = "/yard/surfaces/" + i;
            String id = surface.path("id").asText();
            int corners = surface.path("outline").size();
            if (id.equals(base)) {
                if (corners > 0) {
                    findings.error(Code.GEO_BASE, at + "/outline", id);
                }
            } else if (surface.path("outline").isArray() && corners < 3 && (known || corners > 0)) {
                // With a mistyped base the surface without outline is the one that was meant.
                findings.error(Code.GEO_CORNERS, at + "/outline", id, corners + "", "3");
            }
            cover(surface, at);
        }
    }

    private void cover(JsonNode surface, String at) {
        String kind = surface.path("kind").asText();
        boolean planted = kind.equals("turf") || kind.equals("bed");
        boolean paved = kind.equals("walk") || kind.equals("drive") || kind.equals("street");
        for (String needed :
                planted ? new String[] {"soil", "plant"} : paved ? new String[] {"paving"} : new String[0]) {
            if (surface.path(needed).isNull()) {
                findings.error(Code.REF_NEEDS, at, kind, needed);
            }
        }
        if (surface.path("footTraffic").size() == 1) {
            findings.error(Code.SCH_COUNT, at + "/footTraffic", "1", "2", "2");
        }
    }

    private void structures(JsonNode yard) {
        for (int i = 0; i < yard.path("structures").size(); i++) {
            JsonNode structure = yard.path("structures").path(i);
            String kind = structure.path("kind").asText();
            boolean closed = kind.equals("building") || kind.equals("canopy");
            int corners = structure.path("outline").size();
            if (closed && structure.path("outline").isArray() && corners < 3) {
                findings.error(
                        Code.GEO_CORNERS,
                        "/yard/structures/" + i + "/outline",
                        structure.path("id").asText(),
                        corners + "",
                        "3");
            }
        }
    }

    /** A length in metres for messages. */
    static String metres(double value) {
        return new BigDecimal(value)
                .setScale(2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
