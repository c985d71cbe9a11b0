package provingyard.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import provingyard.call.Call;
import provingyard.call.CallSite;
import provingyard.call.FieldTest;
import provingyard.call.Tool;
import provingyard.diagnosis.NumericPrediction;
import provingyard.diagnosis.Reading;
import provingyard.diagnosis.Trust;
import provingyard.picture.CallArt;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.text.Texts;

/** What tests, answers, places, faults and readings of a service call are called, in the language and units of now. */
final class CallWords {

    private static final String MAIN = "main:";

    /** Repair class of water that runs in the house. */
    private static final String HOUSE = "houseRuns";

    /** What stands between a number and its unit. */
    private static final String UNIT = "\u00a0";

    private static final double MINUTE = 60;
    private static final double THOUSAND = 1e3;

    /** Share from which rounding would say 100 %, and what is said instead. */
    private static final double ALMOST = 0.995;

    private static final double MOST = 0.99;

    /** Standard deviations on either side of what a sound system would read that count as expected. */
    private static final double BAND = 2;

    private final CallSite site;
    private final Words words;
    /** Stretches of mains by their class, numbered from 1 over the whole site. */
    private final Map<String, Integer> stretches = new LinkedHashMap<>();

    private final Map<String, Integer> parts = new LinkedHashMap<>();

    CallWords(CallSite site, Words words) {
        this.site = site;
        this.words = words;
        for (String each : site.hypotheses().classes()) {
            if (each.startsWith(MAIN)) {
                stretches.put(each, stretches.size() + 1);
                parts.merge(pipe(each), 1, Integer::sum);
            }
        }
    }

    private static String pipe(String mainClass) {
        return mainClass.substring(MAIN.length(), mainClass.lastIndexOf('/'));
    }

    private static int part(String mainClass) {
        return Integer.parseInt(mainClass.substring(mainClass.lastIndexOf('/') + 1));
    }

    /** Parts of mainlines with their probability. */
    List<CallArt.Part> mains(provingyard.diagnosis.Belief belief) {
        return stretches.keySet().stream()
                .map(c -> {
                    double of = parts.get(pipe(c));
                    return new CallArt.Part(pipe(c), (part(c) - 1) / of, part(c) / of, belief.ofClass(c));
                })
                .toList();
    }

    private Display display() {
        return words.display();
    }

    private Texts texts() {
        return Texts.of("call", words.language());
    }

    /** The number of a stretch of main, if a test is about one. */
    Optional<Integer> stretch(FieldTest test) {
        return Optional.ofNullable(stretches.get(test.target()));
    }

    /** A text about diagnosis, such as a hazard's rule or a line of the score. */
    String diagnosis(String key) {
        return Texts.of("diagnosis", words.language()).say(key);
    }

    String tool(Tool tool) {
        return texts().say("tool." + tool.name());
    }

    String name(FieldTest test) {
        return capital(texts().say("test." + kind(test) + ".name", target(test.target())));
    }

    String does(FieldTest test) {
        return texts().say("test." + kind(test) + ".does");
    }

    /** What its texts are called: what is nobody's repair but a plumber's has its own. */
    private static String kind(FieldTest test) {
        boolean told = test.kind().equals("repair") && test.target().equals(HOUSE);
        return told ? "tellOwner" : test.kind();
    }

    /** A short word that tells a test from others at the same place. */
    String brief(FieldTest test) {
        return texts().say("test." + kind(test) + ".brief");
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** Name of a kind of fault. */
    String fault(String kind) {
        return texts().say("fault." + kind);
    }

    /** What a repair class is, with its place. */
    String finding(String repairClass) {
        String kind = CallThought.kind(repairClass);
        return repairClass.equals(kind) ? fault(kind) : words.say("call.faultAt", fault(kind), place(repairClass));
    }

    /** The place of a repair class alone. */
    String place(String repairClass) {
        String kind = CallThought.kind(repairClass);
        return repairClass.equals(kind)
                ? words.say("call.anywhere")
                : capital(
                        repairClass.startsWith(MAIN)
                                ? target(repairClass)
                                : target(repairClass.substring(kind.length() + 1)));
    }

    /** What a test is about. */
    String target(String id) {
        if (id.isEmpty()) {
            return "";
        }
        if (stretches.containsKey(id)) {
            return words.say("call.stretch", stretches.get(id));
        }
        if (parts.containsKey(id)) {
            return stretches(List.of(MAIN + id + "/1", MAIN + id + "/" + parts.get(id)));
        }
        if (id.equals(site.start().standing())) {
            return words.say("call.controller");
        }
        int kind = id.indexOf(':');
        return kind > 0 ? target(id.substring(kind + 1)) : part(fitting(id), id);
    }

    /** Neighbouring stretches of a main, by the numbers that the site has them under. */
    String stretches(List<String> classes) {
        int first = classes.stream().mapToInt(stretches::get).min().orElseThrow();
        int last = classes.stream().mapToInt(stretches::get).max().orElseThrow();
        return first == last ? words.say("call.stretch", first) : words.say("call.stretches", first, last);
    }

    private String part(Optional<Fitting> fitting, String id) {
        if (fitting.isPresent()) {
            return name(fitting.get());
        }
        for (SensorKind each : SensorKind.values()) {
            if (each.name().equalsIgnoreCase(id)) {
                return words.say("kind." + each.name());
            }
        }
        boolean supply = site.scenario().plumbing().supply().junction().equals(id);
        return supply ? words.say("call.supply") : id;
    }

    private Optional<Fitting> fitting(String id) {
        return fittings().stream().filter(f -> f.id().equals(id)).findFirst();
    }

    private List<Fitting> fittings() {
        return site.scenario().plumbing().fittings();
    }

    private String name(Fitting fitting) {
        if (fitting.label() != null) {
            return words.say(fitting.label());
        }
        List<Fitting> alike =
                fittings().stream().filter(f -> f.kind() == fitting.kind()).toList();
        boolean lettered = fitting.kind() == FittingKind.ISOLATION_VALVE || alike.size() > 1;
        if (fitting.kind() == FittingKind.ISOLATION_VALVE) {
            return words.say("call.valve", letter(alike.indexOf(fitting)));
        }
        String name = words.say("call.fitting." + fitting.kind().name());
        return lettered ? name + " " + letter(alike.indexOf(fitting)) : name;
    }

    private static String letter(int index) {
        return String.valueOf((char) ('A' + index % 26));
    }

    /** Isolation valves by the letters that the texts call them, with their places. */
    Map<String, Point> valves() {
        Map<String, Point> valves = new LinkedHashMap<>();
        fittings().stream()
                .filter(f -> f.kind() == FittingKind.ISOLATION_VALVE && f.label() == null)
                .forEach(f -> valves.put(letter(valves.size()), site.place(f.id())));
        return valves;
    }

    /** A whole number of minutes. */
    String minutes(double minutes) {
        return words.say("call.min", display().plain(Math.max(1, Math.rint(minutes)), 0));
    }

    /** Litres as volume in the user's units. */
    String litres(double litres) {
        return display().text(Show.VOLUME, litres / THOUSAND);
    }

    /** L/min as flow in the user's units. */
    String flow(double litresAMinute) {
        return display().text(Show.FLOW, litresAMinute / THOUSAND / MINUTE);
    }

    /** A share in whole per cent; what is not quite certain is not called so. */
    String percent(double share) {
        if (share > ALMOST && share < 1) {
            return words.say("call.over", display().text(Show.FRACTION, MOST));
        }
        return display().text(Show.FRACTION, Math.rint(share * 100) / 100);
    }

    /** What a note read, with its unit; empty where nothing was read. */
    String reading(Call.Note note) {
        if (note.reading() instanceof Reading.Shown shown
                && note.test().measure() instanceof FieldTest.Measure.Number number) {
            return value(number.quantity(), shown.value());
        }
        if (note.reading() instanceof Reading.Seen seen
                && note.test().measure() instanceof FieldTest.Measure.Answers answers) {
            return texts().say("answer." + answers.keys().get(seen.category()));
        }
        return "";
    }

    /** A measured value with its unit. */
    String value(FieldTest.Quantity quantity, double value) {
        return switch (quantity) {
            case FLOW -> display().text(Show.FLOW, value);
            case PRESSURE -> display().text(Show.PRESSURE, value);
            case PRESSURE_RATE -> words.say("call.aMinute", display().text(Show.PRESSURE, value * MINUTE));
            case OHMS -> ohms(value);
            case VOLTS -> plain(value, 1, "V");
            case AMPERES -> plain(value, 2, "A");
            case METRES -> display().text(Show.LENGTH, value);
            case KELVIN -> display().text(Show.TEMPERATURE_DIFFERENCE, value);
            case SHARE -> display().text(Show.FRACTION, value);
        };
    }

    private String ohms(double value) {
        if (value >= THOUSAND * THOUSAND) {
            return plain(value / THOUSAND / THOUSAND, 1, "MΩ");
        }
        return value >= THOUSAND ? plain(value / THOUSAND, 1, "kΩ") : plain(value, value < 100 ? 1 : 0, "Ω");
    }

    private String plain(double value, int decimals, String unit) {
        return display().plain(value, decimals) + UNIT + unit;
    }

    /**
     * A number that was read, and what a sound system would have shown, in SI.
     *
     * @param from lower end of the expected band
     * @param to its upper end
     */
    record Scale(FieldTest.Quantity quantity, double value, double from, double to) {

        boolean fits() {
            return value >= from && value <= to;
        }
    }

    /** A note's number with its expected band; empty for answers in words. */
    static Optional<Scale> scale(Call.Note note) {
        if (note.reading() instanceof Reading.Shown shown
                && note.prediction() instanceof NumericPrediction numeric
                && note.test().measure() instanceof FieldTest.Measure.Number number) {
            double mean = numeric.mean(0);
            double around = BAND * numeric.sigma(0, Trust.USUAL);
            double from = mean >= 0 ? Math.max(0, mean - around) : mean - around;
            return Optional.of(new Scale(number.quantity(), shown.value(), from, mean + around));
        }
        return Optional.empty();
    }

    /** What a sound system reads, in words. */
    String band(Scale scale) {
        String from = value(scale.quantity(), scale.from());
        String to = value(scale.quantity(), scale.to());
        int unit = from.lastIndexOf(UNIT);
        // One unit is enough where both have the same.
        boolean same = unit >= 0 && to.endsWith(from.substring(unit));
        return words.say("call.sound", same ? from.substring(0, unit) : from, to);
    }

    /** What a test taught, in a sentence or two. */
    String thought(CallThought thought) {
        if (thought.isEmpty()) {
            return words.say("call.toldNothing");
        }
        String out = String.join(
                ", ",
                thought.ruledOut().stream()
                        .map(this::fault)
                        .map(CallWords::small)
                        .toList());
        String left = String.join("; ", thought.left().stream().map(this::left).toList());
        return thought.ruledOut().isEmpty() ? words.say("call.left", left) : words.say("call.outAndLeft", out, left);
    }

    private String left(CallThought.Left left) {
        String share = percent(left.share());
        return left.places() > 1
                ? words.say("call.leftIn", small(fault(left.kind())), share, left.places())
                : words.say("call.leftOne", small(fault(left.kind())), share);
    }

    private static String small(String text) {
        return text.isEmpty() ? text : Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }
}
