package provingyard.field;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import provingyard.scenario.Point;
import provingyard.scenario.ScenarioReader;
import provingyard.season.Site;
import provingyard.setup.Mount;
import provingyard.setup.Placement;

/**
 * A home like those of a trial in Pinellas County: the {@link FieldPlot} as its lawn, north of it open lawn, an evergreen
 * tree and a house with an eave of 0.6 m. Which homes make up the trial, {@link HomeMix} says.
 *
 * @param ground soil and roots
 * @param daysAWeek on which its clock starts
 * @param minutesAWeek of its clock all year, about 0.7 mm each
 * @param hang where its rain sensor hangs
 * @param card when it follows a run-time card
 */
record FieldHome(Ground ground, int daysAWeek, int minutesAWeek, Hang hang, Card card) {

    /**
     * What roots live in.
     *
     * @param soil of the catalogue
     * @param inches that they reach
     */
    record Ground(String soil, int inches) {

        String text() {
            return soil.replace('-', ' ') + " " + inches + " in";
        }
    }

    /** Where a rain sensor hangs. */
    enum Hang {
        OPEN("in the open"),
        EAVE("under an eave"),
        TREE("in a tree"),
        SPRAY("in the spray"),
        /** Anywhere: its element does not move any more. */
        DEAD("dead");

        private final String text;

        Hang(String text) {
            this.text = text;
        }

        String text() {
            return text;
        }
    }

    /** How long a home follows the run-time card that it was given. */
    enum Card {
        BOTH_YEARS("followed in both years"),
        FIRST_YEAR("in year 1 only"),
        NEVER("never");

        private final String text;

        Card(String text) {
            this.text = text;
        }

        String text() {
            return text;
        }
    }

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String YARD = """
            {
              "size": ["3.6 m", "18 m"], "cell": "1.2 m", "base": "turf",
              "surfaces": [{"id": "turf", "kind": "turf", "soil": "%s", "plant": "home-turf", "outline": []}],
              "structures": [
                {
                  "id": "house", "kind": "building", "height": "2.8 m", "eave": "0.6 m", "heated": true,
                  "outline": [["0 m", "14.4 m"], ["3.6 m", "14.4 m"], ["3.6 m", "18 m"], ["0 m", "18 m"]]
                }
              ],
              "trees": [{"id": "oak", "at": ["1.8 m", "10.2 m"], "canopy": "3 m", "height": "5 m", "evergreen": true}]
            }
            """;

    /** Warm-season turf of the catalogue with roots of another depth. */
    private static final String CATALOGUE = """
            {
              "plants": [
                {
                  "id": "home-turf", "name": {"en": "Turf", "es": "Césped"}, "coefficient": "0.85", "roots": "%d in",
                  "depletion": "50 %%", "height": "2 in"
                }
              ]
            }
            """;

    /** The yard of homes on a ground, for a year. */
    static Site site(Ground ground) {
        try {
            ObjectNode document =
                    (ObjectNode) JSON.readTree(FieldPlot.document("normal", LocalDate.of(2007, 1, 1), 365));
            document.set("yard", JSON.readTree(YARD.formatted(ground.soil())));
            document.set("catalogue", JSON.readTree(CATALOGUE.formatted(ground.inches())));
            return Site.of(
                    ScenarioReader.read("field-home.json", document.toString()).orThrow());
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    /** Its rain sensor of 6 mm with the vent half open, if it works. */
    Placement.Rain rainSensor(String id) {
        return switch (hang) {
            case OPEN -> sensor(id, new Point(1.8, 6), Mount.POST, 2);
            case EAVE -> sensor(id, new Point(1.8, 14.1), Mount.WALL, 2.4);
            case TREE -> sensor(id, new Point(1.8, 10.2), Mount.BRANCH, 2);
            case SPRAY -> sensor(id, FieldPlot.MIDDLE, Mount.POST, 2);
            case DEAD -> throw new IllegalStateException("a dead sensor shows nothing wherever it hangs");
        };
    }

    private static Placement.Rain sensor(String id, Point at, Mount mount, double height) {
        return new Placement.Rain(id, at, mount, height, 0.00635, 0.5);
    }
}
