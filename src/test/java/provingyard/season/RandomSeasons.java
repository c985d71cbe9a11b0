package provingyard.season;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Small complete sites drawn from a seed: ground of all kinds, up to three zones of heads and drip, every kind of fault,
 * sensor and weather. Lengths in m; everything drawn on the yard lies on multiples of half a metre, so that no middle of
 * a cell lies on an outline.
 */
final class RandomSeasons {

    private static final double CELL = 0.5;

    private static final List<String> SOILS = List.of("sand", "sandy-loam", "loam", "silt-loam", "clay-loam", "clay");
    private static final List<String> PLANTS = List.of("cool-season-turf", "warm-season-turf", "shrubs", "perennials");
    private static final List<String> PAVINGS = List.of("concrete", "asphalt", "pavers");
    private static final List<String> PAVED = List.of("walk", "drive", "street");
    private static final List<String> NOZZLES = List.of("spray-8", "spray-10", "rotary-20", "strip-4x15", "bubbler");
    private static final List<String> ACTIONS = List.of("none", "skip", "pause", "shut");

    private final Random random;
    private final int nx;
    private final int ny;
    private final double east;
    private final double north;
    private final int days;
    private final List<String> zones = new ArrayList<>();
    private final List<String> heads = new ArrayList<>();
    private final ObjectNode root;

    private RandomSeasons(long seed) {
        random = new Random(seed);
        nx = 8 + random.nextInt(17);
        ny = 8 + random.nextInt(17);
        east = nx * CELL;
        north = ny * CELL;
        days = 1 + random.nextInt(2) + random.nextInt(5) / 4;
        root = SeasonDocument.tree(frame(seed));
    }

    /** The site of a seed. */
    static SeasonDocument draw(long seed) {
        RandomSeasons drawn = new RandomSeasons(seed);
        drawn.fill();
        return new SeasonDocument(drawn.root);
    }

    private String frame(long seed) {
        String text = """
                {'format': '1.0', 'id': 'random', 'title': {'en': 'R', 'es': 'R'}, 'subtitle': {'en': 'R', 'es': 'R'},
                 'work': 'tune', 'level': 1,
                 'lesson': {'about': ['rain'], 'goal': {'en': 'g', 'es': 'g'}, 'brief': {'en': 'b', 'es': 'b'},
                   'onTheRealYard': {'en': 'q', 'es': 'q'}, 'objectives': [], 'mastery': {'score': 80, 'need': 1, 'ofLast': 2}},
                 'place': {'name': {'en': 'N', 'es': 'N'}, 'latitude': '%s deg', 'longitude': '-75 deg', 'elevation': '50 m', 'utcOffset': '-5 h'},
                 'season': {'from': '2013-%02d-%02d', 'days': %d, 'seed': %d, 'soilAtStart': '%s %%', 'repairAfter': '6 h'},
                 'weather': {},
                 'yard': {'size': ['%s m', '%s m'], 'cell': '0.5 m', 'base': 'base', 'surfaces': [], 'structures': [],
                   'trees': [], 'vents': [], 'hollows': [], 'furnishings': []},
                 'plumbing': {'friction': '%s', 'supply': {}, 'junctions': [], 'pipes': [], 'fittings': [], 'heads': [], 'drips': []},
                 'schedule': {'zones': [], 'days': [], 'every': 1, 'starts': ['05:00'], 'seasonal': '100 %%',
                   'allowed': {'days': ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'], 'windows': []}},
                 'kit': {'budget': '9000 USD', 'rain': {'price': '60 USD', 'most': 2}, 'wind': {'price': '90 USD', 'most': 2},
                   'freeze': {'price': '70 USD', 'most': 2}, 'flow': {'price': '380 USD', 'most': 2}, 'soil': {'price': '120 USD', 'most': 2}},
                 'faults': [], 'locks': {},
                 'costs': {'water': '18 USD/kgal', 'icedWalk': '40 USD/m2h', 'missedLeak': '250 USD', 'lateLeak': '100 USD',
                   'lateAfter': '12 h', 'falseAlarm': '35 USD', 'dryPlant': '0.6 USD/m2d', 'stressAllowed': '85 %%',
                   'deadPlant': '12 USD/m2', 'sensorLife': '7 years', 'leastGap': '2 USD'},
                 'setUps': {'careless': {'sensors': [], 'interlocks': []}, 'textbook': {}},
                 'remarks': []}
                """;
        return String.format(
                Locale.ROOT,
                text,
                number(between(25, 55)),
                1 + random.nextInt(12),
                1 + random.nextInt(28),
                days,
                seed & 0xffff,
                number(between(20, 100)),
                number(east),
                number(north),
                random.nextInt(4) == 0 ? "darcyWeisbach" : "hazenWilliams");
    }

    private void fill() {
        weather();
        ground();
        obstacles();
        plumbing();
        for (int z = 1; z <= 1 + random.nextInt(3); z++) {
            zone(z);
        }
        add("/schedule/starts", "'%s'", time());
        faults();
        setUp();
    }

    private void weather() {
        String drawn = random.nextInt(4) == 0
                ? "{'kind': 'generated', 'file': 'weather-soil/generator-parameters.json',"
                        + " 'location': 'Seattle', 'windMeasuredAt': '10 m'}"
                : null;
        ObjectNode weather = (ObjectNode) root.get("weather");
        weather.set("source", SeasonDocument.tree(drawn == null ? scripted() : drawn));
        weather.putArray("events");
        if (chance(0.5)) {
            add(
                    "/weather/events",
                    "{'kind': 'storm', 'day': %d, 'at': '%s', 'depth': '%s mm', 'lasts': '%d min'}",
                    day(),
                    time(),
                    number(between(2, 40)),
                    10 + random.nextInt(110));
        }
        if (chance(0.4)) {
            add(
                    "/weather/events",
                    "{'kind': 'clearCalmNight', 'day': %d, 'low': '%s °C'}",
                    day(),
                    number(between(-8, 3)));
        }
        if (chance(0.4)) {
            add(
                    "/weather/events",
                    "{'kind': 'wind', 'day': %d, 'at': '%s', 'speed': '%s m/s', 'from': '%d deg', 'lasts': '5 h'}",
                    day(),
                    time(),
                    number(between(3, 12)),
                    random.nextInt(360));
        }
        if (chance(0.2)) {
            add("/weather/events", "{'kind': 'dry', 'day': %d, 'lasts': '20 h'}", day());
        }
    }

    private String scripted() {
        StringBuilder listed = new StringBuilder();
        for (int d = 0; d < days; d++) {
            double low = between(-6, 22);
            listed.append(listed.length() == 0 ? "" : ", ")
                    .append(text(
                            "{'high': '%s °C', 'low': '%s °C', 'rain': '%s mm', 'rainAt': '%s', 'rainLasts': '%d min', 'sunshine': '%s %%', 'wind': '%s m/s'}",
                            number(low + between(1, 14)),
                            number(low),
                            number(chance(0.5) ? between(0, 30) : 0),
                            time(),
                            30 + random.nextInt(300),
                            number(between(0, 100)),
                            number(between(0, 7))));
        }
        return "{'kind': 'scripted', 'dewPointBelowMinimum': '1 K', 'windRose': [1, 2, 1, 1, 3, 1, 1, 2],"
                + " 'windMeasuredAt': '2 m', 'days': [" + listed + "]}";
    }

    private void ground() {
        surface("base", chance(0.6), "");
        for (int i = 0; i < random.nextInt(4); i++) {
            surface("part-" + i, chance(0.6), box(3 + random.nextInt(8), 3 + random.nextInt(8)));
        }
        surface("path", false, box(2 + random.nextInt(4), 4 + random.nextInt(8)));
        for (int i = 0; i < random.nextInt(3); i++) {
            add(
                    "/yard/hollows",
                    "{'id': 'hollow-%d', 'at': %s, 'reach': '%s m', 'colder': '%s K', 'wetter': '%s %%'}",
                    i,
                    point(),
                    number(between(0.6, 4)),
                    number(between(0, 3)),
                    number(between(0, 100)));
        }
    }

    private void surface(String id, boolean planted, String outline) {
        String cover = planted
                ? text(
                        "'kind': '%s', 'soil': '%s', 'plant': '%s', 'compacted': '%s %%'",
                        chance(0.5) ? "turf" : "bed", pick(SOILS), pick(PLANTS), number(between(10, 100)))
                : text("'kind': '%s', 'paving': '%s'", id.equals("path") ? "walk" : pick(PAVED), pick(PAVINGS));
        add(
                "/yard/surfaces",
                "{'id': '%s', %s, 'slope': {'grade': '%s %%', 'toward': '%d deg'}, 'outline': [%s]}",
                id,
                cover,
                number(chance(0.2) ? 0 : between(0, 12)),
                random.nextInt(360),
                outline);
    }

    private void obstacles() {
        if (chance(0.5)) {
            add(
                    "/yard/structures",
                    "{'id': 'house', 'kind': '%s', 'height': '%s m', 'eave': '%s m', 'heated': %s, 'outline': [%s]}",
                    chance(0.8) ? "building" : "canopy",
                    number(between(2, 5)),
                    number(between(0, 0.8)),
                    chance(0.5),
                    box(4, 3));
        }
        for (int i = 0; i < random.nextInt(3); i++) {
            add(
                    "/yard/trees",
                    "{'id': 'tree-%d', 'at': %s, 'canopy': '%s m', 'height': '%s m', 'evergreen': %s}",
                    i,
                    point(),
                    number(between(1, 4)),
                    number(between(2, 8)),
                    chance(0.5));
        }
        if (chance(0.3)) {
            add("/yard/vents", "{'id': 'vent', 'at': %s, 'adds': '4 K', 'reach': '2 m'}", point());
        }
    }

    private void plumbing() {
        String supply =
                switch (random.nextInt(3)) {
                    case 0 -> text("'kind': 'fixed', 'pressure': '%s kPa'", number(between(150, 600)));
                    case 1 ->
                        text(
                                "'kind': 'curve', 'pressure': '%s kPa', 'points': [{'flow': '40 L/min', 'pressure': '140 kPa'}]",
                                number(between(200, 600)));
                    default ->
                        "'kind': 'pump', 'points': [{'flow': '0 L/min', 'pressure': '420 kPa'},"
                                + " {'flow': '50 L/min', 'pressure': '350 kPa'}, {'flow': '100 L/min', 'pressure': '150 kPa'}]";
                };
        ((ObjectNode) root.get("plumbing"))
                .set("supply", SeasonDocument.tree("{'junction': 'source', " + supply + "}"));
        junction("source", 0.2, 0.2);
        junction("tee-0", 0.2, 2.2);
        pipe("main-0", "source", "tee-0", "1 in");
        fitting("meter", "meter", "main-0", 0.2, "");
        fitting("backflow", "backflowPreventer", "main-0", 0.5, ", 'opensAt': '15 kPa'");
        if (chance(0.7)) {
            fitting(
                    "master",
                    "masterValve",
                    "main-0",
                    0.8,
                    text(", 'normally': '%s'", chance(0.5) ? "open" : "closed"));
        }
    }

    private void zone(int z) {
        String valve = "zone-" + z;
        double x = 0.3 + (east - 0.6) * z / 4;
        junction("tee-" + z, x, 0.4);
        junction("end-" + z, x, north - 0.4);
        pipe("main-" + z, "tee-" + (z - 1), "tee-" + z, "1 in");
        pipe("lateral-" + z, "tee-" + z, "end-" + z, "3/4 in");
        fitting(valve, "zoneValve", "lateral-" + z, 0.2, "");
        boolean drip = chance(0.25);
        if (drip) {
            fitting("regulator-" + z, "regulator", "lateral-" + z, 0.4, ", 'setting': '200 kPa'");
            add(
                    "/plumbing/drips",
                    "{'id': 'drip-%d', 'zone': '%s', 'way': [%s, %s], 'emitters': %d, 'nozzle': '%s'}",
                    z,
                    valve,
                    point(),
                    point(),
                    4 + random.nextInt(20),
                    chance(0.5) ? "drip-2" : "drip-2-plain");
        }
        for (int h = 0; h < (drip ? random.nextInt(2) : 1 + random.nextInt(3)); h++) {
            String id = "head-" + z + h;
            add(
                    "/plumbing/heads",
                    "{'id': '%s', 'zone': '%s', 'at': %s, 'nozzle': '%s', 'from': '%d deg', 'sweep': '%d deg'}",
                    id,
                    valve,
                    point(),
                    pick(NOZZLES),
                    random.nextInt(360),
                    90 * (1 + random.nextInt(4)));
            heads.add(id);
        }
        add(
                "/schedule/zones",
                chance(0.3)
                        ? "{'zone': '%s', 'runs': '%d min', 'cycle': '4 min', 'soak': '10 min'}"
                        : "{'zone': '%s', 'runs': '%d min'}",
                valve,
                3 + random.nextInt(25));
        zones.add(valve);
    }

    private void faults() {
        if (chance(0.25)) {
            add(
                    "/faults",
                    "{'kind': 'mainlineBreak', 'on': 'main-0', 'along': '1.5 m', 'opening': '%s mm2', 'leakExponent': 0.5, %s}",
                    number(between(50, 400)),
                    when());
        }
        if (chance(0.25)) {
            add(
                    "/faults",
                    "{'kind': 'mainlineLeak', 'on': 'main-1', 'along': '0.5 m', 'opening': '%s mm2', 'leakExponent': %s, %s}",
                    number(between(0.5, 10)),
                    number(between(0.5, 1.5)),
                    when());
        }
        if (chance(0.25)) {
            add(
                    "/faults",
                    "{'kind': 'lateralBreak', 'on': 'lateral-1', 'along': '1 m', 'opening': '%s mm2', 'leakExponent': 0.5, %s}",
                    number(between(5, 100)),
                    when());
        }
        if (chance(0.25)) {
            add("/faults", "{'kind': 'valveStuckOpen', 'on': '%s', %s}", pick(zones), when());
        }
        if (chance(0.25)) {
            add(
                    "/faults",
                    "{'kind': 'valveWeeps', 'on': '%s', 'opening': '%s mm2', %s}",
                    pick(zones),
                    number(between(0.2, 4)),
                    when());
        }
        if (chance(0.15)) {
            add("/faults", "{'kind': 'valveStuckShut', 'on': '%s', %s}", pick(zones), when());
        }
        if (chance(0.25) && !heads.isEmpty()) {
            add(
                    "/faults",
                    "{'kind': '%s', 'on': '%s', 'amount': %s, %s}",
                    chance(0.5) ? "headBroken" : "nozzleClogged",
                    pick(heads),
                    number(between(0.1, 1)),
                    when());
        }
        for (String kind :
                List.of("rainStuck on rain", "freezeReadsWarm on freeze", "windSeized on wind", "flowJammed on flow")) {
            if (chance(0.08)) {
                String[] said = kind.split(" on ");
                add("/faults", "{'kind': '%s', 'on': '%s', 'amount': 2, %s}", said[0], said[1], when());
            }
        }
    }

    private void setUp() {
        ObjectNode textbook = SeasonDocument.tree("{'sensors': [], 'interlocks': []}");
        ((ObjectNode) root.get("setUps")).set("textbook", textbook);
        sensor(
                "rain",
                text(
                        "'at': %s, 'mount': 'post', 'height': '2 m', 'trip': '%s mm', 'vent': '%s %%'",
                        point(), number(between(3, 12)), number(between(0, 100))),
                pick(ACTIONS));
        sensor(
                "wind",
                text(
                        "'at': %s, 'mount': 'post', 'height': '3 m', 'trip': '5 m/s', 'rearm': '4 m/s', 'averaging': '5 min', 'hold': '10 min'",
                        point()),
                pick(ACTIONS));
        sensor(
                "freeze",
                text(
                        "'at': %s, 'mount': 'post', 'height': '1.5 m', 'below': '%s °C', 'rearm': '6 °C'",
                        point(), number(between(0, 4))),
                pick(ACTIONS));
        sensor(
                "soil",
                text("'at': %s, 'depth': '0.1 m', 'soil': 'loam', 'dry': '18 %%', 'wet': '25 %%'", point()),
                pick(List.of("none", "block", "allow", "start")));
        if (sensor(
                "flow",
                "'on': 'main-0', 'along': '1.2 m', 'size': '1 in', 'pulses': '10 pulses/L', 'offset': '1 L/min'",
                null)) {
            textbook.set(
                    "flowWatch",
                    SeasonDocument.tree(text(
                            "{'sensor': 'flow-1', 'record': true, 'high': '115 %%', 'low': '60 %%', 'settling': '1 min', 'averaging': '1 min',"
                                    + " 'onZone': '%s', 'unscheduled': '4 L/min', 'unscheduledAfter': '10 min', 'onUnscheduled': '%s'}",
                            pick(List.of("alarm", "shutZone", "shutMaster")), pick(List.of("alarm", "shutMaster")))));
        }
    }

    private boolean sensor(String kind, String settings, String action) {
        boolean placed = chance(0.5);
        if (placed) {
            add("/setUps/textbook/sensors", "{'kind': '%s', 'id': '%s-1', %s}", kind, kind, settings);
            if (action != null) {
                add("/setUps/textbook/interlocks", "{'sensor': '%s-1', 'action': '%s'}", kind, action);
            }
        }
        return placed;
    }

    private void junction(String id, double x, double y) {
        add(
                "/plumbing/junctions",
                "{'id': '%s', 'at': ['%s m', '%s m'], 'elevation': '%s m'}",
                id,
                number(x),
                number(y),
                number(between(-1, 1)));
    }

    private void pipe(String id, String from, String to, String size) {
        add(
                "/plumbing/pipes",
                "{'id': '%s', 'from': '%s', 'to': '%s', 'size': '%s', 'make': 'pvc-class-200', 'losses': 1}",
                id,
                from,
                to,
                size);
    }

    private void fitting(String id, String kind, String on, double along, String more) {
        add(
                "/plumbing/fittings",
                "{'id': '%s', 'kind': '%s', 'on': '%s', 'along': '%s m', 'size': '1 in', 'losses': 6%s}",
                id,
                kind,
                on,
                number(along),
                more);
    }

    private void add(String list, String format, Object... values) {
        String item = text(format, values);
        ((ArrayNode) root.at(list))
                .add(SeasonDocument.tree("{'it': " + item + "}").get("it"));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    /** Corners of a box of so many cells at most, somewhere on the yard. */
    private String box(int across, int up) {
        int w = Math.min(across, nx);
        int h = Math.min(up, ny);
        double x = CELL * random.nextInt(nx - w + 1);
        double y = CELL * random.nextInt(ny - h + 1);
        double x2 = x + CELL * w;
        double y2 = y + CELL * h;
        return text(
                "['%s m', '%s m'], ['%s m', '%s m'], ['%s m', '%s m'], ['%s m', '%s m']",
                number(x), number(y), number(x2), number(y), number(x2), number(y2), number(x), number(y2));
    }

    private String point() {
        return text("['%s m', '%s m']", number(between(0.1, east - 0.1)), number(between(0.1, north - 0.1)));
    }

    private String when() {
        return text("'when': {'day': %d, 'at': '%s'}, 'rate': '1 per season'", day(), time());
    }

    private int day() {
        return 1 + random.nextInt(days);
    }

    private String time() {
        return text("%02d:%02d", random.nextInt(24), random.nextInt(60));
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private double between(double from, double to) {
        return from + random.nextDouble() * (to - from);
    }

    /** Two decimals, which every unit reads back exactly. */
    private static String number(double value) {
        return text("%.2f", value);
    }
}
