package provingyard.call;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Sites;

/**
 * How common faults are and how large the suspected ones are thought to be; {@code shared/reference/fault-rates.json}
 * (common practice, no source).
 *
 * @param none weight of nothing being wrong
 * @param perItem weight by kind, per item; {@code mainline} per {@link #MAIN_METRES} of pipe, shared by the sizes
 * @param mainlineOpenings mm2 of the three sizes of mainline leaks
 * @param mainlineExponents leak exponents of the three
 */
record Rates(
        double none,
        Map<String, Double> perItem,
        List<String> mainlineOpenings,
        List<Double> mainlineExponents,
        String lateralOpening,
        String weepOpening) {

    /** Metres of mainline that the weight of a mainline leak is for. */
    static final double MAIN_METRES = 30;

    private static final double SQUARE_MILLIMETRE = 1e-6;

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

    double of(FaultPlan.Kind kind) {
        return perItem.get(name(kind));
    }

    double mainline() {
        return perItem.get("mainline");
    }

    static double area(String squareMillimetres) {
        return Double.parseDouble(squareMillimetres.replace("mm2", "").trim()) * SQUARE_MILLIMETRE;
    }

    /** A kind's name as in files. */
    static String name(FaultPlan.Kind kind) {
        StringBuilder name = new StringBuilder();
        for (String word : kind.name().toLowerCase(java.util.Locale.ROOT).split("_")) {
            name.append(name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return name.toString();
    }
}
