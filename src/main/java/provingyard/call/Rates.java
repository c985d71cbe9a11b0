package provingyard.call;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import provingyard.quantity.Dimension;
import provingyard.quantity.Parsed;
import provingyard.quantity.Quantities;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Sites;

/**
 * How common faults are and how large the suspected ones are thought to be; {@code shared/reference/fault-rates.json}
 * (common practice, no source).
 *
 * @param none weight of nothing being wrong
 * @param perItem weight by kind, per item; {@code mainline} per {@link #MAIN_METRES} of pipe, shared by the sizes
 * @param mainlineOpenings openings of the sizes of mainline leaks, rising
 * @param mainlineExponents leak exponents of these
 * @param houseOpening what is open in a house where water runs: a toilet that fills for ever, a tap
 * @param mainlineSpread share of a mainline leak's or a narrowed fitting's effect by which other openings of the same size differ (standard deviation)
 * @param otherSpread the same for other faults that have a size
 */
record Rates(
        double none,
        Map<String, Double> perItem,
        List<String> mainlineOpenings,
        List<Double> mainlineExponents,
        String lateralOpening,
        String weepOpening,
        String houseOpening,
        double mainlineSpread,
        double otherSpread) {

    /** Metres of mainline that the weight of a mainline leak is for. */
    static final double MAIN_METRES = 30;

    /** As shipped. */
    static final Rates SHIPPED = read();

    private static Rates read() {
        ObjectMapper mapper = new ObjectMapper().disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);
        try (InputStream in = Sites.resource("shared/reference/fault-rates.json")) {
            return mapper.readValue(in, Rates.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same with other weights of kinds and of nothing being wrong. */
    Rates with(double noneOfAll, Map<String, Double> items) {
        return new Rates(
                noneOfAll,
                items,
                mainlineOpenings,
                mainlineExponents,
                lateralOpening,
                weepOpening,
                houseOpening,
                mainlineSpread,
                otherSpread);
    }

    double of(FaultPlan.Kind kind) {
        return perItem.get(name(kind));
    }

    double mainline() {
        return perItem.get("mainline");
    }

    /**
     * Share of a fault's effect on a quantity by which others of its kind and size differ; 0 for kinds without sizes. A cut
     * may be anywhere on its wire, but cuts wherever it is; a poor joint or a shorted coil has more or less ohms, but its
     * valve opens or does not.
     */
    double spread(FaultPlan.Kind kind, FieldTest.Quantity of) {
        return switch (kind) {
            case WIRE_CUT -> of == FieldTest.Quantity.METRES ? otherSpread : 0;
            case COIL_SHORTED, SPLICE_BAD ->
                switch (of) {
                    case OHMS, VOLTS, AMPERES -> otherSpread;
                    default -> 0;
                };
            case MAINLINE_BREAK, MAINLINE_LEAK, VALVE_PARTLY_SHUT, FILTER_CLOGGED -> mainlineSpread;
            case LATERAL_BREAK,
                    VALVE_WEEPS,
                    SUPPLY_LOW,
                    HOUSE_RUNS,
                    REGULATOR_LOW,
                    HEAD_BROKEN,
                    NOZZLE_CLOGGED,
                    FREEZE_READS_WARM,
                    FLOW_FACTOR_WRONG -> otherSpread;
            default -> 0;
        };
    }

    /** m2 of an opening as the file has it. */
    static double area(String opening) {
        if (Quantities.parse(Dimension.AREA, opening) instanceof Parsed.Value value) {
            return value.inner();
        }
        throw new IllegalStateException("fault-rates.json: \"" + opening + "\" is no area");
    }

    /** A kind's name as in files. */
    static String name(FaultPlan.Kind kind) {
        StringBuilder name = new StringBuilder();
        for (String word : kind.name().toLowerCase(Locale.ROOT).split("_")) {
            name.append(name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return name.toString();
    }
}
