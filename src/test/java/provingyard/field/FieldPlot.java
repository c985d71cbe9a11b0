package provingyard.field;

import java.time.LocalDate;
import provingyard.scenario.Point;
import provingyard.scenario.ScenarioReader;
import provingyard.season.Site;

/**
 * A turf plot like those of the trials: 3.6 m by 3.6 m on sand under open sky, a quarter-circle spray head in each corner,
 * and as much unwatered turf beside it, on which the rain sensor stands. Some 39 mm/h fall on the plot in calm air.
 */
final class FieldPlot {

    /** Zone of the plot's four heads. */
    static final String ZONE = "zone-1";

    /** The soil under it. */
    static final String SOIL = "sand";

    /** Middle of the plot. */
    static final Point MIDDLE = new Point(1.8, 1.8);

    /** Place of the rain sensor, out of the spray. */
    static final Point BESIDE = new Point(1.8, 7);

    /** Area of the plot in m2. */
    static final double AREA = 3.6 * 3.6;

    private static final String DOCUMENT = """
            {
              "format": "1.0", "id": "field-plot", "work": "tune", "level": 1,
              "title": {"en": "Field plot", "es": "Parcela"},
              "subtitle": {"en": "Field plot", "es": "Parcela"},
              "lesson": {
                "about": ["rain"],
                "goal": {"en": "None.", "es": "Ninguna."},
                "brief": {"en": "None.", "es": "Ninguna."},
                "onTheRealYard": {"en": "None.", "es": "Ninguna."}
              },
              "place": {
                "name": {"en": "Field plot", "es": "Parcela"}, "latitude": "29.6 deg", "longitude": "-82.4 deg",
                "elevation": "40 m", "utcOffset": "-5 h"
              },
              "season": {"from": "%s", "days": %d, "seed": 1, "soilAtStart": "80 %%"},
              "weather": {
                "source": {
                  "kind": "generated", "file": "field/climates.json", "location": "%s",
                  "dewPointBelowMinimum": "0 °C", "windRose": [1, 1, 1, 1, 1, 1, 1, 1], "windMeasuredAt": "10 m"
                }
              },
              "yard": {
                "size": ["3.6 m", "7.2 m"], "cell": "1.2 m", "base": "turf",
                "surfaces": [
                  {"id": "turf", "kind": "turf", "soil": "sand", "plant": "warm-season-turf", "outline": []}
                ]
              },
              "plumbing": {
                "supply": {"kind": "fixed", "junction": "tap", "pressure": "32 psi"},
                "junctions": [
                  {"id": "tap", "at": ["0.1 m", "1.8 m"]},
                  {"id": "first", "at": ["0.1 m", "0.1 m"]},
                  {"id": "last", "at": ["0.1 m", "3.5 m"]}
                ],
                "pipes": [
                  {"id": "riser", "from": "tap", "to": "first", "size": "1 in", "make": "pvc-sch40"},
                  {
                    "id": "ring", "from": "first", "to": "last", "size": "1 in", "make": "pvc-sch40",
                    "via": [["3.5 m", "0.1 m"], ["3.5 m", "3.5 m"]]
                  }
                ],
                "fittings": [
                  {"id": "zone-1", "kind": "zoneValve", "on": "riser", "along": "0.5 m", "size": "1 in"}
                ],
                "heads": [
                  {"id": "south-west", "zone": "zone-1", "at": ["0.1 m", "0.1 m"], "nozzle": "spray-12",
                    "from": "0 deg", "sweep": "90 deg"},
                  {"id": "south-east", "zone": "zone-1", "at": ["3.5 m", "0.1 m"], "nozzle": "spray-12",
                    "from": "270 deg", "sweep": "90 deg"},
                  {"id": "north-east", "zone": "zone-1", "at": ["3.5 m", "3.5 m"], "nozzle": "spray-12",
                    "from": "180 deg", "sweep": "90 deg"},
                  {"id": "north-west", "zone": "zone-1", "at": ["0.1 m", "3.5 m"], "nozzle": "spray-12",
                    "from": "90 deg", "sweep": "90 deg"}
                ]
              },
              "schedule": {"zones": [{"zone": "zone-1", "runs": "10 min"}], "every": 2, "starts": ["05:00"]},
              "kit": {
                "budget": "500 USD", "rain": {"price": "40 USD", "most": 3}, "soil": {"price": "150 USD", "most": 1}
              }
            }
            """;

    private FieldPlot() {}

    /** The plot under a climate of {@code field/climates.json}, from a day on. */
    static Site under(String climate, LocalDate from, int days) {
        return Site.of(ScenarioReader.read("field-plot.json", document(climate, from, days))
                .orThrow());
    }

    /** Its document. */
    static String document(String climate, LocalDate from, int days) {
        return DOCUMENT.formatted(from, days, climate);
    }
}
