package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.Map;

/** Holds two ledgers against each other, term by term. */
final class AlikeLedgers {

    private AlikeLedgers() {}

    /** Volumes in m3 by name, of both balances. */
    static Map<String, Double> volumes(Ledger ledger) {
        Map<String, Double> terms = new LinkedHashMap<>();
        Ledger.Water w = ledger.water();
        terms.put("supplied", w.supplied());
        terms.put("rain", w.rain());
        terms.put("evapotranspiration", w.evapotranspiration());
        terms.put("drift", w.drift());
        terms.put("walk evaporation", w.walkEvaporation());
        terms.put("runoff", w.runoff());
        terms.put("below", w.below());
        terms.put("off site", w.offSite());
        terms.put("leaked", w.leaked());
        terms.put("store", w.storeChange());
        Ledger.Irrigation i = ledger.irrigation();
        terms.put("used", i.used());
        terms.put("overspray", i.overspray());
        terms.put("irrigation's runoff", i.runoff());
        terms.put("irrigation's below", i.below());
        terms.put("irrigation's store", i.storeChange());
        terms.put("refill", ledger.plants().refill());
        return terms;
    }

    /** What was handled in m3: supplied and rain. */
    static double handled(Ledger ledger) {
        return ledger.water().supplied() + ledger.water().rain();
    }

    /**
     * Asserts that two seasons came to the same.
     *
     * @param tolerance share of the volume handled (of 1 m2 h of ice and 1 m2 d of dryness, where there is less)
     */
    static void assertAlike(Ledger expected, Ledger found, double tolerance, String what) {
        double handled = Math.max(1e-6, handled(expected));
        Map<String, Double> is = volumes(found);
        volumes(expected)
                .forEach((term, value) -> assertEquals(value, is.get(term), tolerance * handled, what + ": " + term));
        near(expected.ice().areaHours(), found.ice().areaHours(), tolerance, what + ": iced walk");
        near(expected.plants().dryAreaDays(), found.plants().dryAreaDays(), tolerance, what + ": dryness");
    }

    private static void near(double expected, double found, double tolerance, String what) {
        assertEquals(expected, found, tolerance * Math.max(1, expected), what);
    }
}
