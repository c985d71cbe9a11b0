package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.scenario.Scenario;
import provingyard.scenario.Sites;
import provingyard.score.Loss;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/**
 * The ledgers of the shipped sites under their reference set-ups, as they were when last looked at. A line changes only
 * with a reason in the commit; the message of the failure is the new line.
 */
class GoldenLedgerTest {

    private static final Path FILE = Path.of("src/test/resources/provingyard/season/golden-ledgers.csv");

    static List<String> lines() throws IOException {
        return Files.readAllLines(FILE).stream().skip(1).toList();
    }

    @ParameterizedTest
    @MethodSource("lines")
    void isAsItWas(String line) {
        String[] values = line.split(",");
        assertEquals(line, lived(values[0], values[1]));
    }

    private static String lived(String id, String name) {
        Scenario scenario = Sites.open(id).orThrow();
        SetUp setUp =
                switch (name) {
                    case "clock" -> SetUp.CLOCK_ALONE;
                    case "careless" -> References.careless(scenario).orElseThrow();
                    case "textbook" -> References.textbook(scenario).orElseThrow();
                    default -> throw new IllegalArgumentException(name);
                };
        Season season = LivedSeasons.of(Site.of(scenario), setUp);
        Ledger ledger = season.ledger();
        return String.join(
                ",",
                id,
                name,
                number(ledger.irrigation().supplied()),
                number(ledger.irrigation().used()),
                number(ledger.irrigation().wasted()),
                number(ledger.ice().areaHours()),
                number(ledger.plants().dryAreaDays()),
                number(Loss.of(season).total()),
                season.ledgerHash());
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }
}
