package provingyard.diagnosis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import provingyard.diagnosis.Action.Kind;
import provingyard.diagnosis.Action.Latent;
import provingyard.diagnosis.Action.Leg;
import provingyard.diagnosis.Action.Risk;
import provingyard.diagnosis.Hypothesis.Size;
import provingyard.numeric.RandomStreams;

/**
 * A mainline of eight segments of 10 m in a chain, with isolation valves after the second, fourth and sixth, and six
 * zones; 40 hypotheses, 36 tests, and digging. Readings follow from simple formulas, so that the diagnosis is tested
 * without a simulator.
 */
final class ToyLine implements Premises {

    static final int SEGMENTS = 8;
    static final int ZONES = 6;
    static final String HOUSE = "house";

    private static final int[] ZONE_AT = {2, 3, 4, 5, 7, 8};
    private static final double SEGMENT_LENGTH = 10;
    private static final double WALKING = 40;
    private static final Map<Size, Double> LEAK = Map.of(Size.SMALL, 4.0, Size.MEDIUM, 15.0, Size.LARGE, 60.0);

    private static final Instrument METER = new Instrument(0.5, 0.02, 0.1, 0, 300);
    private static final Instrument LONG_WATCH = new Instrument(0.05, 0.02, 0.01, 0, 300);
    private static final Instrument FLOW = new Instrument(0.5, 0.03, 0.1, 0, 300);
    private static final Instrument GAUGE = new Instrument(10, 0, 10, 0, 1000);
    private static final Instrument OHMS = new Instrument(2, 0.02, 1, 0, 200);

    private final Hypotheses hypotheses;
    private final List<Action> actions = new ArrayList<>();
    private final Map<String, Prediction> predictions = new HashMap<>();

    ToyLine() {
        this(w -> w);
    }

    /** The line in the eyes of somebody with other priors. */
    ToyLine(UnaryOperator<Hypotheses.Weighted> prior) {
        hypotheses = Hypotheses.of(faults()).reweighted(prior);
        addTest("meter", 3, HOUSE, METER, 0, this::leak);
        addTest("meter-long", 15, HOUSE, LONG_WATCH, 0, this::leak);
        IntStream.rangeClosed(1, 3).forEach(this::addSplit);
        IntStream.rangeClosed(1, ZONES).forEach(j -> addFlow(j));
        addZoneWalk();
        IntStream.rangeClosed(1, SEGMENTS).forEach(i -> addLook(i));
        IntStream.rangeClosed(1, SEGMENTS).forEach(i -> addListen(i));
        IntStream.rangeClosed(1, ZONES).forEach(j -> addOhms(j));
        addTest("static", 4, HOUSE, GAUGE, 5, h -> 400 - leak(h) - (is(h, "lowSupply") ? 100 : 0));
        addLog();
        IntStream.rangeClosed(1, SEGMENTS).forEach(i -> addDig(i));
    }

    private static List<Hypotheses.Weighted> faults() {
        List<Hypotheses.Weighted> all = new ArrayList<>();
        // The complaint is a high bill: leaks in the mainline are ten times as likely as their base rate, others less.
        all.add(weighted("none", "", Size.PLAIN, 3 * 0.5));
        for (int i = 1; i <= SEGMENTS; i++) {
            for (Size size : List.of(Size.SMALL, Size.MEDIUM, Size.LARGE)) {
                all.add(weighted("mainline", "s" + i, size, 10 * SEGMENT_LENGTH / 30 / 3));
            }
        }
        for (int j = 1; j <= ZONES; j++) {
            all.add(weighted("lateral", "z" + j, Size.PLAIN, 1.5));
        }
        for (int j = 1; j <= ZONES; j++) {
            all.add(weighted("solenoid", "z" + j, Size.PLAIN, 0.3));
        }
        all.add(weighted("filter", "", Size.PLAIN, 1.5 * 0.3));
        all.add(weighted("lowSupply", "", Size.PLAIN, 0.7 * 0.3));
        all.add(weighted("programme", "", Size.PLAIN, 4 * 0.5));
        return all;
    }

    private static Hypotheses.Weighted weighted(String kind, String place, Size size, double rate) {
        return new Hypotheses.Weighted(new Hypothesis(kind, place, size, kind + place), rate, 1);
    }

    private static boolean is(Hypothesis h, String kind) {
        return h.kind().equals(kind);
    }

    private static boolean is(Hypothesis h, String kind, int zone) {
        return is(h, kind) && h.place().equals("z" + zone);
    }

    private static int segment(Hypothesis h) {
        return is(h, "mainline") ? Integer.parseInt(h.place().substring(1)) : 0;
    }

    private double leak(Hypothesis h) {
        return is(h, "mainline") ? LEAK.get(h.size()) : 0;
    }

    private List<Leg> openUpTo(int segment) {
        List<Leg> legs = new ArrayList<>();
        for (int k = 1; k <= 3; k++) {
            if (2 * k < segment) {
                legs.add(new Leg("s" + 2 * k, 1, Map.of("iso" + k, "open")));
            }
        }
        return legs;
    }

    private void addTest(
            String id,
            double minutes,
            String place,
            Instrument instrument,
            double supply,
            ToDoubleFunction<Hypothesis> mean) {
        List<Leg> legs = openUpTo(SEGMENTS + 1);
        legs.add(new Leg(place, minutes, Map.of()));
        addNumber(id, Kind.TEST, legs, instrument, supply, mean);
    }

    private void addNumber(
            String id,
            Kind kind,
            List<Leg> legs,
            Instrument instrument,
            double supply,
            ToDoubleFunction<Hypothesis> mean) {
        actions.add(new Action(id, kind, legs, Map.of(), null, null, Set.of()));
        double[] means = IntStream.range(0, hypotheses.size())
                .mapToDouble(h -> mean.applyAsDouble(hypotheses.get(h)))
                .toArray();
        predictions.put(id, new NumericPrediction(means, instrument, supply));
    }

    private interface Row {
        double[] of(Hypothesis h);
    }

    private void addCategories(Action action, Row row) {
        actions.add(action);
        double[][] rows = IntStream.range(0, hypotheses.size())
                .mapToObj(h -> row.of(hypotheses.get(h)))
                .toArray(double[][]::new);
        predictions.put(action.id(), new CategoryPrediction(rows));
    }

    private void addSplit(int k) {
        List<Leg> legs = openUpTo(2 * k);
        legs.add(new Leg("s" + 2 * k, 2, Map.of("iso" + k, "shut")));
        legs.add(new Leg(HOUSE, 3, Map.of()));
        addNumber("split-" + k, Kind.SPLIT, legs, METER, 0, h -> segment(h) <= 2 * k ? leak(h) : 0);
    }

    private void addFlow(int j) {
        List<Leg> legs = openUpTo(ZONE_AT[j - 1]);
        legs.add(new Leg(HOUSE, 4, Map.of()));
        addNumber("flow-" + j, Kind.TEST, legs, FLOW, 0.5, h -> leak(h) + zoneFlow(h, j));
    }

    private double zoneFlow(Hypothesis h, int j) {
        double plain = 40 - 2 * j;
        double share = is(h, "filter") ? 0.7 : is(h, "lowSupply") ? 0.85 : 1 - leak(h) / 200;
        return is(h, "solenoid", j) ? 0 : plain * (is(h, "lateral", j) ? 1.5 : share);
    }

    private static Action once(String id, double minutes, String place, Latent latent) {
        return new Action(id, Kind.TEST, List.of(new Leg(place, minutes, Map.of())), Map.of(), latent, null, Set.of());
    }

    private void addZoneWalk() {
        // Good, weak everywhere, a wet spot.
        addCategories(
                once("walk-zones", 12, "s" + SEGMENTS, new Latent("zones", List.of("soil"))),
                h -> is(h, "lateral")
                        ? new double[] {0.10, 0.10, 0.80}
                        : is(h, "filter") || is(h, "lowSupply") || h.size() == Size.LARGE
                                ? new double[] {0.30, 0.65, 0.05}
                                : new double[] {0.90, 0.06, 0.04});
    }

    private void addLook(int i) {
        // Dry, damp, ponding.
        Map<Size, double[]> shows = Map.of(
                Size.SMALL, new double[] {0.80, 0.17, 0.03},
                Size.MEDIUM, new double[] {0.50, 0.30, 0.20},
                Size.LARGE, new double[] {0.20, 0.20, 0.60});
        addCategories(
                once("look-" + i, 3, "s" + i, new Latent("s" + i, List.of("soil"))),
                h -> segment(h) == i ? shows.get(h.size()) : new double[] {0.93, 0.06, 0.01});
    }

    private void addListen(int i) {
        // Silent, faint, loud.
        addCategories(once("listen-" + i, 4, "s" + i, new Latent("ear" + i, List.of())), h -> {
            int away = is(h, "mainline") ? Math.abs(segment(h) - i) : SEGMENTS;
            return away == 0
                    ? new double[] {0.08, 0.22, 0.70}
                    : away == 1 ? new double[] {0.45, 0.45, 0.10} : new double[] {0.90, 0.09, 0.01};
        });
    }

    private void addOhms(int j) {
        addNumber(
                "ohms-" + j,
                Kind.TEST,
                List.of(new Leg(HOUSE, 2, Map.of())),
                OHMS,
                0,
                h -> is(h, "solenoid", j) ? 250 : 30);
    }

    private void addLog() {
        addCategories(
                once("log", 4, HOUSE, new Latent("log", List.of())),
                h -> is(h, "programme") ? new double[] {0.02, 0.98} : new double[] {0.99, 0.01});
    }

    private void addDig(int i) {
        addCategories(
                new Action(
                        "dig-" + i,
                        Kind.DIG,
                        List.of(new Leg(HOUSE, 2, Map.of("marks", "shown")), new Leg("s" + i, 40, Map.of())),
                        Map.of(),
                        new Latent("trench" + i, List.of()),
                        "mainlines" + i,
                        Set.of(Risk.DIGS)),
                h -> segment(h) == i ? new double[] {0.001, 0.999} : new double[] {0.999, 0.001});
    }

    @Override
    public Hypotheses hypotheses() {
        return hypotheses;
    }

    @Override
    public SiteState start() {
        return SiteState.at(HOUSE, Map.of("iso1", "open", "iso2", "open", "iso3", "open"));
    }

    @Override
    public List<Action> actions() {
        return actions;
    }

    @Override
    public double walk(String from, String to) {
        return Math.abs(metres(from) - metres(to)) / WALKING;
    }

    private static double metres(String place) {
        return place.equals(HOUSE) ? 0 : SEGMENT_LENGTH * Integer.parseInt(place.substring(1));
    }

    @Override
    public Prediction predict(Action action, SiteState state) {
        return predictions.get(action.id());
    }

    /** What nature answers if one hypothesis is true; looks that nature answers once have one answer. */
    ServiceRun.Reader nature(int truth, long seed) {
        RandomStreams streams = new RandomStreams(seed);
        return (action, state, n) -> {
            Prediction prediction = predictions.get(action.id());
            if (prediction == null) {
                return null;
            }
            String name = action.latentKey(state).orElse(action.id() + "#" + n);
            return draw(prediction, truth, streams.key(name));
        };
    }

    private static Reading draw(Prediction prediction, int truth, long key) {
        boolean odd = RandomStreams.uniform(key, 0) < Trust.USUAL.outliers();
        double u = RandomStreams.uniform(key, 1);
        if (prediction instanceof NumericPrediction numeric) {
            Instrument instrument = numeric.instrument();
            double value = odd
                    ? instrument.low() + u * instrument.range()
                    : numeric.mean(truth) + numeric.sigma(truth, Trust.USUAL) * RandomStreams.gaussian(key, 2);
            return new Reading.Shown(instrument.shown(value));
        }
        CategoryPrediction table = (CategoryPrediction) prediction;
        if (odd) {
            return new Reading.Seen((int) (u * table.categories()));
        }
        int category = 0;
        double sum = table.probability(truth, 0);
        while (u >= sum && category < table.categories() - 1) {
            sum += table.probability(truth, ++category);
        }
        return new Reading.Seen(category);
    }

    /** A truth drawn from the prior. */
    int truth(long seed) {
        double u = RandomStreams.uniform(new RandomStreams(seed).key("truth"), 0);
        int h = 0;
        double sum = hypotheses.prior(0);
        while (u >= sum && h < hypotheses.size() - 1) {
            sum += hypotheses.prior(++h);
        }
        return h;
    }

    /** How near the truth a statement is: the next segment counts half. */
    Declaration.Hit hit(int truth, String declared) {
        Hypothesis fault = hypotheses.get(truth);
        if (fault.repairClass().equals(declared)) {
            return Declaration.Hit.RIGHT;
        }
        boolean next =
                Stream.of(segment(fault) - 1, segment(fault) + 1).anyMatch(i -> declared.equals("mainlines" + i));
        return segment(fault) > 0 && next ? Declaration.Hit.NEAR : Declaration.Hit.WRONG;
    }

    List<String> ids(String start) {
        return actions.stream()
                .map(Action::id)
                .filter(id -> id.startsWith(start))
                .toList();
    }
}
