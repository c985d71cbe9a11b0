package provingyard.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import provingyard.diagnosis.Hypotheses;
import provingyard.diagnosis.Hypothesis;
import provingyard.diagnosis.Hypothesis.Size;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.FaultPlan.Kind;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Plumbing.Fitting;
import provingyard.scenario.Scenario;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.world.electric.Wiring;
import provingyard.world.hydraulics.Waterworks;

/**
 * Everything that may be wrong on a site, with its weight before any test ({@link Rates}): mainlines in cells of at most
 * {@link #CELL} m and several sizes, all else by part. The first one is that nothing is wrong.
 */
final class Suspects {

    /** Longest cell of a mainline in m. */
    static final double CELL = 5;

    /** Repair class of nothing being wrong. */
    static final String NONE = "none";

    /** Repair class of water that runs on the house's side of the point of connection: a plumber's work. */
    static final String HOUSE = "houseRuns";

    /** What repair classes of mainlines begin with. */
    static final String MAIN = "main:";

    /** Sizes of faults (design): several where readings tell them apart, else one in the middle. */
    private static final double[] CLOGGED_LOSSES = {25, 75, 220};

    private static final double[] HALF_SHUT_LOSSES = {75, 220, 650};

    /** Share of a zone's flow whose loss somebody would notice (design). */
    private static final double NOTICED = 0.08;

    private static final double SUPPLY_LOST = 0.35;
    private static final double REGULATOR_LOST = 0.45;
    private static final double HEAD_ADDED = 1.5;
    private static final double NOZZLE_LOST = 0.6;
    private static final double SHORT_OHMS = 2;
    private static final double SPLICE_OHMS = 60;
    private static final double EXTRA_HOURS = 3;
    private static final double SEASONAL_TIMES = 1.8;
    private static final double FREEZE_WARM = 4;
    private static final double FACTOR_WRONG = 1.4;

    private final Scenario scenario;
    private final SetUp installed;
    private final Waterworks pipes;
    private final Wiring wiring;
    private final Rates rates;
    private final List<FaultPlan> faults = new ArrayList<>();
    private final List<Hypotheses.Weighted> weighted = new ArrayList<>();

    private Suspects(Scenario scenario, SetUp installed, Wiring wiring, Rates rates) {
        this.scenario = scenario;
        this.installed = installed;
        this.wiring = wiring;
        this.rates = rates;
        pipes = Waterworks.of(scenario);
        Hypothesis sound = new Hypothesis(NONE, "", Size.PLAIN, NONE);
        weighted.add(new Hypotheses.Weighted(sound, rates.none(), 1));
        mains();
        zones();
        fittings();
        supply();
        controller();
        sensors();
    }

    static Suspects of(Scenario scenario, SetUp installed, Wiring wiring, Rates rates) {
        return new Suspects(scenario, installed, wiring, rates);
    }

    /** The suspected faults; the fault of hypothesis h is number h - 1, hypothesis 0 has none. */
    List<FaultPlan> faults() {
        return List.copyOf(faults);
    }

    Hypotheses hypotheses() {
        return Hypotheses.of(weighted);
    }

    /** Middles of a pipe's cells, m from its {@code from} end. */
    List<Double> cells(String pipe) {
        double length = pipes.path(pipe).length();
        int count = (int) Math.max(1, Math.ceil(length / CELL));
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            middles.add(length * (i + 0.5) / count);
        }
        return middles;
    }

    /** Repair class of a place on a mainline. */
    String cellClass(String pipe, double along) {
        double length = pipes.path(pipe).length();
        int count = cells(pipe).size();
        int cell = (int) Math.max(0, Math.min(count - 1, Math.floor(along / length * count)));
        return cellClass(pipe, cell);
    }

    private static String cellClass(String pipe, int cell) {
        return MAIN + pipe + "/" + (cell + 1);
    }

    /** The pipe of a mainline's repair class. */
    static String pipeOf(String cellClass) {
        return cellClass.substring(MAIN.length(), cellClass.lastIndexOf('/'));
    }

    /** Repair class of any fault on this site. */
    String repairClass(FaultPlan fault) {
        return switch (fault.kind()) {
            case MAINLINE_BREAK, MAINLINE_LEAK -> cellClass(fault.on(), fault.along());
            case LATERAL_BREAK -> "lateral:" + zoneOfPipe(fault.on());
            case HOUSE_RUNS -> HOUSE;
            case HEAD_BROKEN, NOZZLE_CLOGGED -> Rates.name(fault.kind()) + ":" + zoneOfHead(fault.on());
            default -> Rates.name(fault.kind()) + ":" + fault.on();
        };
    }

    private String zoneOfPipe(String pipe) {
        return pipes.laterals().entrySet().stream()
                .filter(e -> e.getValue().contains(pipe))
                .map(java.util.Map.Entry::getKey)
                .findFirst()
                .orElse(pipe);
    }

    private String zoneOfHead(String head) {
        return scenario.plumbing().heads().stream()
                .filter(h -> h.id().equals(head))
                .map(Plumbing.Head::zone)
                .findFirst()
                .orElse(head);
    }

    private void mains() {
        int sizes = rates.mainlineOpenings().size();
        for (String pipe : pipes.mainline()) {
            List<Double> cells = cells(pipe);
            double each = rates.mainline() * pipes.path(pipe).length() / Rates.MAIN_METRES / cells.size() / sizes;
            for (double along : cells) {
                for (int s = 0; s < sizes; s++) {
                    double opening = Rates.area(rates.mainlineOpenings().get(s));
                    double exponent = rates.mainlineExponents().get(s);
                    Size size = Size.values()[1 + 3 * s / sizes];
                    Kind kind = size == Size.LARGE ? Kind.MAINLINE_BREAK : Kind.MAINLINE_LEAK;
                    add(new FaultPlan(kind, pipe, along, opening, exponent, 0, null, 0), size, each);
                }
            }
        }
    }

    private void zones() {
        List<String> zones = pipes.zones();
        for (String zone : zones) {
            String pipe = longest(zone);
            double middle = pipes.path(pipe).length() / 2;
            double opening = Rates.area(rates.lateralOpening());
            add(new FaultPlan(Kind.LATERAL_BREAK, pipe, middle, opening, 0.5, 0, null, 0));
            List<Plumbing.Head> heads = scenario.plumbing().heads().stream()
                    .filter(h -> h.zone().equals(zone))
                    .toList();
            if (!heads.isEmpty()) {
                String head = heads.get(heads.size() / 2).id();
                on(Kind.HEAD_BROKEN, head, HEAD_ADDED);
                on(Kind.NOZZLE_CLOGGED, head, NOZZLE_LOST);
            }
            add(new FaultPlan(Kind.VALVE_WEEPS, zone, 0, Rates.area(rates.weepOpening()), 0.5, 0, null, 0));
            on(Kind.VALVE_STUCK_OPEN, zone, 0);
            on(Kind.VALVE_STUCK_SHUT, zone, 0);
            on(Kind.COIL_OPEN, zone, 0);
            on(Kind.COIL_SHORTED, zone, SHORT_OHMS);
            add(new FaultPlan(Kind.WIRE_CUT, zone, wiring.length(zone) / 2, 0, 0.5, 0, null, 0));
            on(Kind.SPLICE_BAD, zone, SPLICE_OHMS);
            on(Kind.OUTPUT_DEAD, zone, 0);
            if (zones.size() > 1) {
                on(Kind.ZONES_ON_ONE_OUTPUT, zone, 0);
            }
        }
        for (int b = 0; b + 1 < wiring.boxes().size(); b++) {
            on(Kind.COMMON_CUT, Wires.valveIn(wiring, wiring.boxes().get(b).id()), 0);
        }
    }

    private String longest(String zone) {
        return pipes.laterals().get(zone).stream()
                .max(java.util.Comparator.comparingDouble(p -> pipes.path(p).length()))
                .orElseThrow();
    }

    private void fittings() {
        for (Fitting fitting : scenario.plumbing().fittings()) {
            switch (fitting.kind()) {
                case MASTER_VALVE -> {
                    on(Kind.MASTER_STUCK_OPEN, fitting.id(), 0);
                    on(Kind.MASTER_STUCK_SHUT, fitting.id(), 0);
                }
                case ISOLATION_VALVE -> throttled(Kind.VALVE_PARTLY_SHUT, fitting.id(), HALF_SHUT_LOSSES);
                case FILTER -> throttled(Kind.FILTER_CLOGGED, fitting.id(), CLOGGED_LOSSES);
                case REGULATOR -> on(Kind.REGULATOR_LOW, fitting.id(), REGULATOR_LOST);
                default -> {
                    // Meters, check valves and zone valves have their own or none.
                }
            }
        }
    }

    /** Sizes of a narrowed fitting, those that somebody would notice. */
    private void throttled(Kind kind, String fitting, double[] losses) {
        for (int i = 0; i < losses.length; i++) {
            FaultPlan fault = new FaultPlan(kind, fitting, 0, 0, 0.5, losses[i], null, 0);
            if (isNoticed(fault)) {
                add(fault, Size.values()[i + 1], rates.of(kind) / losses.length);
            }
        }
    }

    /**
     * Whether anybody would call it a fault: it takes from some zone at least {@link #NOTICED} of its flow. On a ring, or in
     * a main with much to spare, a half shut valve does nothing that could be found.
     */
    private boolean isNoticed(FaultPlan fault) {
        Waterworks with = Waterworks.of(scenario.with(scenario.catalogue(), scenario.yard(), List.of(fault)));
        int zones = with.zones().size();
        for (int z = 0; z < zones; z++) {
            boolean[] open = new boolean[zones];
            open[z] = true;
            if (with.flows(open, true, 1).supply()
                    < (1 - NOTICED) * with.flows(open, true, 0).supply()) {
                return true;
            }
        }
        return false;
    }

    private void supply() {
        on(Kind.SUPPLY_LOW, scenario.plumbing().supply().junction(), SUPPLY_LOST);
        if (scenario.call().house()) {
            scenario.plumbing().fittings().stream()
                    .filter(f -> f.kind() == Plumbing.FittingKind.METER)
                    .limit(1)
                    .forEach(f -> add(new FaultPlan(
                            Kind.HOUSE_RUNS, f.id(), 0, Rates.area(rates.houseOpening()), 0.5, 0, null, 0)));
        }
    }

    private void controller() {
        on(Kind.TRANSFORMER_DEAD, "controller", 0);
        on(Kind.EXTRA_START, "controller", EXTRA_HOURS);
        on(Kind.SEASONAL_WRONG, "controller", SEASONAL_TIMES);
    }

    private void sensors() {
        for (SensorKind kind : SensorKind.values()) {
            List<Placement> placed = installed.of(kind);
            if (placed.isEmpty()) {
                continue;
            }
            String name = kind.name().toLowerCase(Locale.ROOT);
            switch (kind) {
                case RAIN -> {
                    on(Kind.RAIN_STUCK, name, 0);
                    on(Kind.RAIN_STUCK_DRY, name, 0);
                }
                case WIND -> on(Kind.WIND_SEIZED, name, 0);
                case FREEZE -> on(Kind.FREEZE_READS_WARM, name, FREEZE_WARM);
                case FLOW -> {
                    on(Kind.FLOW_JAMMED, name, 0);
                    on(Kind.FLOW_FACTOR_WRONG, name, FACTOR_WRONG);
                }
                case SOIL -> on(Kind.SOIL_VOID, name, 0);
            }
        }
    }

    private void on(Kind kind, String place, double amount) {
        add(new FaultPlan(kind, place, 0, 0, 0.5, amount, null, 0));
    }

    private void add(FaultPlan fault) {
        add(fault, Size.PLAIN, rates.of(fault.kind()));
    }

    private void add(FaultPlan fault, Size size, double weight) {
        faults.add(fault);
        Hypothesis hypothesis = new Hypothesis(Rates.name(fault.kind()), fault.on(), size, repairClass(fault));
        weighted.add(new Hypotheses.Weighted(hypothesis, weight, 1));
    }
}
