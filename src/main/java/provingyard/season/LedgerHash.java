package provingyard.season;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** A fingerprint of all that a season came to: equal when and only when ledger, leaks and events are equal. */
final class LedgerHash {

    private final MessageDigest digest;

    private LedgerHash() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Hexadecimal SHA-256 of the bits of every number and the text of every event, in a fixed order. */
    static String of(Outcome outcome, List<SeasonEvent> events) {
        LedgerHash hash = new LedgerHash();
        hash.number(outcome.days());
        hash.ledger(outcome.ledger());
        Outcome.Leaks leaks = outcome.leaks();
        hash.number(leaks.happened());
        hash.number(leaks.found());
        hash.number(leaks.late());
        hash.number(leaks.falseAlarms());
        hash.number(outcome.spent());
        for (SeasonEvent event : events) {
            hash.number(event.tick());
            hash.text(event.kind().name());
            hash.text(event.subject());
            event.values().forEach((name, value) -> {
                hash.text(name);
                hash.number(value);
            });
        }
        return HexFormat.of().formatHex(hash.digest.digest());
    }

    private void ledger(Ledger ledger) {
        Ledger.Water w = ledger.water();
        numbers(w.supplied(), w.rain(), w.evapotranspiration(), w.drift(), w.walkEvaporation());
        numbers(w.runoff(), w.below(), w.offSite(), w.leaked(), w.storeChange());
        Ledger.Irrigation i = ledger.irrigation();
        numbers(i.supplied(), i.used(), i.drift(), i.overspray(), i.runoff(), i.below(), i.leaked(), i.storeChange());
        numbers(
                ledger.ice().areaHours(),
                ledger.ice().areaHoursInTraffic(),
                ledger.ice().mornings());
        numbers(
                ledger.plants().dryAreaDays(),
                ledger.plants().deadArea(),
                ledger.plants().refill());
    }

    private void numbers(double... values) {
        for (double value : values) {
            number(value);
        }
    }

    private void number(double value) {
        digest.update(ByteBuffer.allocate(Double.BYTES).putDouble(value).array());
    }

    private void text(String value) {
        digest.update(value.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }
}
