package provingyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.score.Loss;
import provingyard.sensor.FlowBody;
import provingyard.sensor.RainSensor;
import provingyard.setup.FlowWatch;
import provingyard.world.ground.GroundSettings;
import provingyard.world.hydraulics.Constants;
import provingyard.world.hydraulics.SolverSettings;

/** The model document agrees with the code: numbers with constants, names with the screen. */
class ModelDocumentTest {

    private static final Path DOCUMENT = Path.of("shared", "model.md");
    private static final String TEXT = read(DOCUMENT).replaceAll("\\s+", " ");

    private static final String GROUND = "world.ground.";
    private static final String WEATHER = "world.weather.";

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    static Stream<String> timeSteps() {
        return Stream.of(
                "rain and standing water | every " + of(GROUND + "Ground", "RAIN_BEAT") + " minutes",
                "every " + of(GROUND + "Ground", "WET_BEAT") + " minutes within " + of(GROUND + "Ground", "DRY_BEAT")
                        + " minutes of water, every " + of(GROUND + "Ground", "DRY_BEAT") + " minutes otherwise",
                "pavement | every " + of(GROUND + "Pavement", "BEAT")
                        + " minutes; wet pavement each minute while some of" + " it is colder than "
                        + of(GROUND + "Pavement", "COLD") + " °C",
                "iced walks | looked at every " + of("season.IceLog", "BEAT") + " minutes",
                "soil moisture probe | read every " + of("sensor.SoilSensor", "EVERY") + " minutes");
    }

    static Stream<String> water() {
        SolverSettings solver = SolverSettings.DEFAULT;
        return Stream.of(
                "h = " + plain(Constants.TEXTBOOK.hazen()) + " L q^" + plain(Constants.HAZEN_FLOW_EXPONENT) + " / (C^"
                        + plain(Constants.HAZEN_FLOW_EXPONENT) + " d^" + plain(Constants.HAZEN_DIAMETER_EXPONENT) + ")",
                "laminar below Reynolds " + of("world.hydraulics.Friction", "LAMINAR_REYNOLDS") + ", a cubic between "
                        + of("world.hydraulics.Friction", "LAMINAR_REYNOLDS") + " and "
                        + of("world.hydraulics.Friction", "TURBULENT_REYNOLDS"),
                "less than 1e" + (int) Math.round(Math.log10(solver.relativeFlowChange())) + " of their sum",
                "within " + solver.maxIterations() + " rounds",
                "orifices with a coefficient of " + of("world.hydraulics.PlumbingNetwork", "ORIFICE"),
                "passing at " + of("world.hydraulics.PlumbingNetwork", "LEAK_REFERENCE_M") + " m of pressure",
                "wind in whole m/s up to " + of(GROUND + "Sprinklers", "FASTEST") + " and sixteen directions");
    }

    static Stream<String> weather() {
        return Stream.of(
                "the high " + of(WEATHER + "TemperatureCurve", "HIGH_LAG", 1.0 / 60) + " h after noon",
                "the low " + of(WEATHER + "TemperatureCurve", "LOW_LAG", -1.0 / 60) + " h before sunrise",
                "a night coefficient of " + of(WEATHER + "TemperatureCurve", "NIGHT_COEFFICIENT"),
                "wind of at most " + of(WEATHER + "EventLayer", "CALM") + " m/s at 2 m",
                "blocks of " + of(WEATHER + "DateChoice", "BLOCK_DAYS") + " days of the record, at most "
                        + of(WEATHER + "DateChoice", "SHIFT_DAYS") + " days from the calendar",
                "rays along " + of("world.yard.SkyDome", "BEARINGS") + " bearings",
                "the air at " + of(WEATHER + "LocalClimate", "LOWEST") + " m is "
                        + of(WEATHER + "LocalClimate", "INVERSION") + " K colder than at "
                        + of(WEATHER + "LocalClimate", "SCREEN") + " m",
                "half of it left at a wind of " + of(WEATHER + "LocalClimate", "CALM") + " m/s",
                "fade to a third within " + of(WEATHER + "LocalClimate", "WALL_REACH") + " m",
                "a time constant of " + plain(-1 / (60 * Math.log(number(WEATHER + "StoredHeat", "KEPT_IN_A_MINUTE"))))
                        + " h");
    }

    static Stream<String> ground() {
        return Stream.of(
                "Ks stays under " + of(GROUND + "RootZone", "DYING") + " for " + of(GROUND + "RootZone", "DAYS_TO_DIE")
                        + " days die",
                "evaporates " + of(GROUND + "RootZone", "BARE") + " of what plants drew",
                "over after " + of(GROUND + "WettingFronts", "EVENT_ENDS", 1.0 / 60) + " h without water",
                "up to " + of(GROUND + "RootZone", "HELD", 1000) + " mm on level ground",
                of(GROUND + "RootZone", "HOLLOW", 1000) + " mm in a full hollow",
                "in cells of " + of(GROUND + "PavementSlab", "SLAB_CELL", 1000) + " mm on "
                        + of(GROUND + "PavementSlab", "SOIL_DEPTH") + " m of soil",
                "with " + of(GROUND + "Pavement", "DEEP_LAG_MINUTES", 1.0 / 1440) + " days' lag",
                of(GROUND + "Freezing", "FUSION", 1e-3) + " kJ/kg",
                "Irrigation arrives at " + plain(GroundSettings.usual(0).supply()) + " °C",
                "at least " + of(GROUND + "Ground", "ICED", 1000)
                        + " mm of ice from irrigation (the twin's ice is taken" + " off) on at least "
                        + of("season.IceLog", "LEAST_AREA") + " m² of one walk");
    }

    static Stream<String> sensors() {
        double inch = FlowBody.of(0.0254).cannotSeeBelow() * 60e3;
        double days = RainSensor.daysTripped(0.5, 0.002);
        return Stream.of(
                "to " + plain(RainSensor.CAPACITY) + " times its **Set point**",
                plain(RainSensor.drying(0)) + " to " + plain(RainSensor.drying(1)) + " times as fast by its vent",
                "until " + plain(RainSensor.REARM) + " of that",
                "at " + plain(RainSensor.MEDIAN_UNIT) + " of their set point in the middle, spread "
                        + of("sensor.RainSensor", "UNIT_SPREAD") + ", from " + of("sensor.RainSensor", "LEAST_UNIT")
                        + " to "
                        + of("sensor.RainSensor", "MOST_UNIT"),
                "Usual set points: "
                        + RainSensor.USUAL_SET_POINTS.stream()
                                .map(ModelDocumentTest::eighths)
                                .collect(Collectors.joining(", "))
                        + " in",
                "in full below " + of("season.SeasonSurroundings", "SPRAY_FULL") + " m, none above "
                        + of("season.SeasonSurroundings", "SPRAY_GONE") + " m",
                "Cups start at " + of("sensor.WindSensor", "THRESHOLD") + " m/s and follow within "
                        + of("sensor.WindSensor", "DISTANCE_CONSTANT") + " m of passing air",
                "**Trips at** " + of("sensor.WindSensor", "USUAL_TRIP") + " m/s",
                "**Re-arms under** " + of("sensor.WindSensor", "USUAL_REARM") + " m/s",
                "within " + of("sensor.FreezeSensor", "TIME_CONSTANT", 1.0 / 60) + " min in still air",
                "adds " + of("sensor.FreezeSensor", "SUN_WARMING") + " K for each W/m²",
                "differ by up to " + of("sensor.FreezeSensor", "UNIT_OFFSET") + " K",
                "**Trips below** " + of("sensor.FreezeSensor", "USUAL_BELOW") + " °C and **Re-arms at** "
                        + of("sensor.FreezeSensor", "USUAL_REARM") + " °C",
                "Blind under " + plain(FlowBody.LOWEST_VELOCITY) + " m/s: a 1 in body **Cannot see below** "
                        + rounded(inch, 2) + " L/min",
                "less than " + of("sensor.FlowSensor", "STRAIGHT_BEFORE")
                        + " diameters of straight pipe before it (up to "
                        + of("sensor.FlowSensor", "BIAS_BEFORE", 100) + " % off) or "
                        + of("sensor.FlowSensor", "STRAIGHT_BEHIND") + " behind it (up to "
                        + of("sensor.FlowSensor", "BIAS_BEHIND", 100) + " %)",
                "Water within " + of("sensor.SoilSensor", "SUPPORT") + " m",
                "holds for about " + rounded(days, 2) + " days where 2 mm a day could evaporate");
    }

    static Stream<String> control() {
        FlowWatch off = FlowWatch.OFF;
        return Stream.of(
                "waits for " + of("control.Controller", "LONGEST_HOLD", 1.0 / 60) + " hours",
                plain(100 * off.high()) + " % unless set",
                "**Settling time** (" + plain(off.settling()) + " s unless set)",
                "**Unscheduled flow over** " + plain(off.unscheduled() * 60e3) + " L/min for "
                        + plain(off.unscheduledAfter() / 60) + " minutes unless set",
                "A loss of " + of("season.LeakLog", "SEEN_FROM", 1000) + " L/s or more",
                "by people at " + of("season.LeakLog", "SEEN_AT", 1.0 / 60) + " in the morning, "
                        + of("season.LeakLog", "SEEN_AFTER", 1.0 / 60) + " hours after it began");
    }

    static Stream<String> mark() {
        return Stream.of(
                "over " + of("study.MarkSearch", "ALL_DRAWS") + " drawn seasons",
                "at most " + of("study.MarkSearch", "ROUNDS") + " rounds",
                "a grid of " + of("study.Candidates", "ACROSS") + " × " + of("study.Candidates", "UP"),
                "rain set points of "
                        + list(numbers("RAIN_TRIPS").stream()
                                .map(ModelDocumentTest::eighths)
                                .toList()) + " in with vents " + list("RAIN_VENTS", 100, 2) + " % open",
                "wind trips of " + list("WIND_TRIPS", 1, 2) + " m/s",
                "freeze trips of " + list("FREEZE_BELOW", 1, 2) + " °C",
                "high limits of " + list("FLOW_HIGH", 100, 3) + " %",
                "soil wet at " + list("SOIL_SHARES", 100, 2) + " % of the available water");
    }

    static Stream<String> moments() {
        return Stream.of(
                "freeze " + of("season.Guises", "FREEZE_HEIGHT") + " m over the coldest watered walk",
                "from " + of("study.DryRule", "BEFORE_DAYS") + " days before",
                "counts as wet from " + of("study.Blame", "WET_SHARE", 100) + " % of its available water",
                "less than " + of("study.Story", "LEAST_MONEY") + " USD is no moment");
    }

    @ParameterizedTest(name = "the document says: {0}")
    @MethodSource({"timeSteps", "water", "weather", "ground", "sensors", "control", "mark", "moments"})
    void saysWhatTheCodeDoes(String sentence) {
        assertTrue(TEXT.contains(sentence), "not in " + DOCUMENT + ": " + sentence);
    }

    @Test
    void boldWordsAreOnTheScreen() throws IOException {
        Set<String> screen = new TreeSet<>(texts().stringPropertyNames().stream()
                .map(key -> screenText(key))
                .toList());
        screen.add("bold");
        List<String> strange = new ArrayList<>();
        for (String word : bold()) {
            if (!screen.contains(word) && !startsAPoint(word)) {
                strange.add(word);
            }
        }
        assertEquals(List.of(), strange);
    }

    /** Bold words that begin a point of a list name its matter, not a thing on the screen. */
    private static boolean startsAPoint(String word) {
        return Pattern.compile("(?m)^- \\*\\*" + Pattern.quote(word).replace(" ", "\\E\\s+\\Q") + "\\*\\*")
                .matcher(read(DOCUMENT))
                .find();
    }

    @Test
    void everyLossAndSensorIsNamed() throws IOException {
        Set<String> bold = new TreeSet<>(bold());
        for (Loss.Kind kind : Loss.Kind.values()) {
            assertTrue(bold.contains(screenText("loss." + kind)), kind + " is not explained");
        }
        for (String key : texts().stringPropertyNames()) {
            if (key.matches("sensor\\.[A-Z]+|action\\..*|watch\\..*|layer\\..*")) {
                assertTrue(bold.contains(screenText(key)), key + " is not explained");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "DEVELOPERS.md"})
    void othersLeadToTheDocument(String from) {
        assertTrue(read(Path.of(from)).contains("(shared/model.md)"), from);
    }

    @Test
    void linksLeadSomewhere() {
        Matcher link = Pattern.compile("\\]\\(([^)]+)\\)").matcher(TEXT);
        int links = 0;
        while (link.find()) {
            assertTrue(Files.exists(DOCUMENT.resolveSibling(link.group(1))), link.group(1));
            links++;
        }
        assertTrue(links > 0);
    }

    private static List<String> bold() {
        List<String> words = new ArrayList<>();
        Matcher matcher = Pattern.compile("\\*\\*([^*]+)\\*\\*").matcher(TEXT);
        while (matcher.find()) {
            words.add(matcher.group(1));
        }
        return words;
    }

    private static Properties texts() throws IOException {
        Properties texts = new Properties();
        try (InputStream in = ModelDocumentTest.class.getResourceAsStream("/provingyard/text/ui_en.properties")) {
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        return texts;
    }

    private static String screenText(String key) {
        try {
            return texts().getProperty(key);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** A constant as the document writes it. */
    private static String of(String type, String field) {
        return of(type, field, 1);
    }

    private static String of(String type, String field, double scale) {
        return plain(number(type, field) * scale);
    }

    private static double number(String type, String field) {
        return ((Number) constant(type, field)).doubleValue();
    }

    private static Object constant(String type, String name) {
        try {
            Field field = Class.forName("provingyard." + type).getDeclaredField(name);
            field.setAccessible(true);
            return field.get(null);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(type + "." + name + " is cited by " + DOCUMENT, e);
        }
    }

    private static List<Double> numbers(String field) {
        Object array = constant("study.Candidates", field);
        return IntStream.range(0, Array.getLength(array))
                .mapToObj(i -> Array.getDouble(array, i))
                .toList();
    }

    private static String list(String field, double scale, int digits) {
        return list(numbers(field).stream().map(v -> rounded(v * scale, digits)).toList());
    }

    /** a, b and c. */
    private static String list(List<String> parts) {
        int last = parts.size() - 1;
        return String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }

    /** A number without noise of its last bits. */
    private static String plain(double value) {
        return rounded(value, 9);
    }

    private static String rounded(double value, int digits) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** A depth in m as a fraction of an inch. */
    private static String eighths(double depth) {
        int eighths = (int) Math.round(depth / 0.0254 * 8);
        assertEquals(eighths, depth / 0.0254 * 8, 1e-9);
        int common = eighths % 4 == 0 ? 4 : eighths % 2 == 0 ? 2 : 1;
        return eighths / common + "/" + 8 / common;
    }
}
