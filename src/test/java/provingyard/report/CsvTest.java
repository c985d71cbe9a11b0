package provingyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.quantity.UnitSystem;
import provingyard.season.Ledger;
import provingyard.season.Season;
import provingyard.season.SeasonEvent;

class CsvTest {

    /** A cell, and whether it was quoted, that is: a text. */
    private record Read(String value, boolean text) {
        double number() {
            assertFalse(text, "a number is not quoted: " + value);
            return Double.parseDouble(value);
        }
    }

    /** Reads rows as RFC 4180 has them. */
    private static List<List<Read>> rows(byte[] file) {
        String all = new String(file, StandardCharsets.UTF_8);
        assertEquals('\uFEFF', all.charAt(0), "the mark by which spreadsheets know UTF-8");
        List<List<Read>> rows = new ArrayList<>();
        List<Read> row = new ArrayList<>();
        int at = 1;
        while (at < all.length()) {
            boolean quoted = all.charAt(at) == '"';
            StringBuilder cell = new StringBuilder();
            at += quoted ? 1 : 0;
            while (quoted ? !closes(all, at) : ",\r".indexOf(all.charAt(at)) < 0) {
                cell.append(all.charAt(at));
                at += quoted && all.charAt(at) == '"' ? 2 : 1;
            }
            at += quoted ? 1 : 0;
            row.add(new Read(cell.toString(), quoted));
            if (all.charAt(at) == ',') {
                at++;
                continue;
            }
            assertEquals("\r\n", all.substring(at, at + 2), "rows end with CR LF");
            at += 2;
            rows.add(row);
            row = new ArrayList<>();
        }
        assertTrue(row.isEmpty(), "the last row ends too");
        return rows;
    }

    private static boolean closes(String all, int at) {
        return all.charAt(at) == '"' && (at + 1 == all.length() || all.charAt(at + 1) != '"');
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=cmd()",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "\uFF1D1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF201"
            })
    void aTextThatWouldBeAFormulaGetsAnApostrophe(String sly) {
        List<List<Read>> rows = rows(new Csv().text(sly).end().bytes());
        assertEquals("'" + sly, rows.get(0).get(0).value());
    }

    @Test
    void otherTextsComeBackAsTheyWere() {
        List<String> texts =
                List.of("", "plain", "a,b", "say \"so\"", "two\r\nlines", "ñ m³ \u2212", "'quoted'", " =1");
        List<List<Read>> rows = rows(new Csv().texts(texts).end().bytes());
        assertEquals(texts, rows.get(0).stream().map(Read::value).toList());
    }

    @Test
    void numbersStayNumbers() {
        double[] values = {-1.5, 0, 1e-14, 123456789.25, 0.1 + 0.2, -0.0};
        Csv csv = new Csv();
        for (double v : values) {
            csv.number(v);
        }
        List<Read> row = rows(csv.number(Double.NaN).end().bytes()).get(0);
        for (int i = 0; i < values.length; i++) {
            assertEquals(values[i], row.get(i).number(), Math.abs(values[i]) * 1e-11);
        }
        assertEquals("-1.5", row.get(0).value());
        assertEquals("0", row.get(5).value());
        assertEquals("", row.get(6).value());
    }

    @ParameterizedTest
    @CsvSource({"en,METRIC", "es,US"})
    void theLedgersTermsAddUpInTheUnitsOfTheFile(String language, UnitSystem units) {
        List<List<Read>> rows = rows(LedgerCsv.of(LivedDebriefs.clinic(), language, units));
        PageWords words =
                new PageWords(LivedDebriefs.clinic().debrief().season().site().scenario(), language, units);
        String unit = units == UnitSystem.US ? "gal" : "m³";
        for (int column = 3; column < 6; column++) {
            double rest = 0;
            double supplied = 0;
            for (List<Read> row : rows) {
                if (row.get(0).value().equals(words.say("balance.irrigation"))
                        && row.get(2).value().equals(unit)) {
                    boolean in = row.get(1).value().equals(words.say("balance.supplied"));
                    supplied = in ? row.get(column).number() : supplied;
                    rest += in ? row.get(column).number() : -row.get(column).number();
                }
            }
            assertTrue(supplied > 0, "supplied " + supplied);
            assertEquals(0, rest / supplied, 1e-9, "column " + column);
        }
        Ledger.Irrigation own =
                LivedDebriefs.clinic().debrief().season().ledger().irrigation();
        double factor = units == UnitSystem.US ? 1 / 3.785411784e-3 : 1;
        List<Read> leaked = rows.stream()
                .filter(r -> r.get(0).value().equals(words.say("balance.irrigation"))
                        && r.get(1).value().equals(words.say("balance.leaked")))
                .findFirst()
                .orElseThrow();
        assertEquals(own.leaked() * factor, leaked.get(3).number(), 1e-6);
    }

    @Test
    void everyEventHasItsRowAndEveryRowAllColumns() {
        Season season = LivedDebriefs.clinicAsTheMark().debrief().season();
        List<List<Read>> rows = rows(EventsCsv.of(season, "en", UnitSystem.METRIC));
        assertEquals(season.events().size() + 1, rows.size());
        assertTrue(
                rows.get(0).stream().anyMatch(c -> c.value().equals("Flow (L/min)")),
                rows.get(0).toString());
        for (int i = 1; i < rows.size(); i++) {
            assertEquals(rows.get(0).size(), rows.get(i).size());
            assertEquals(season.events().get(i - 1).tick(), rows.get(i).get(0).number());
            assertFalse(rows.get(i).get(4).value().startsWith("[["), rows.get(i).toString());
        }
        List<Read> found = rows.stream()
                .filter(r -> r.get(3).value().equals("FAULT_FOUND"))
                .findFirst()
                .orElseThrow();
        SeasonEvent event = season.events().stream()
                .filter(e -> e.kind() == SeasonEvent.Kind.FAULT_FOUND)
                .findFirst()
                .orElseThrow();
        double minutes = event.values().get("after") / 60;
        assertTrue(minutes > 0);
        assertEquals(minutes, found.get(14).number(), 1e-9, "minutes until the break was found");
    }

    @Test
    void namesFromOutsideDoNoHarmInTheLedger() {
        for (String sly : List.of("=cmd()", LivedDebriefs.SLY, "@a\",=1\r\n=2")) {
            byte[] file = LedgerCsv.of(LivedDebriefs.told(LivedDebriefs.clinic(), sly), "en", UnitSystem.METRIC);
            List<List<Read>> rows = rows(file);
            for (List<Read> row : rows) {
                assertEquals(6, row.size(), row.toString());
                row.stream()
                        .filter(Read::text)
                        .forEach(c -> assertFalse(c.value().matches("(?s)[=+@\\-\t\r].*"), c.value()));
            }
            assertTrue(rows.stream().anyMatch(r -> r.get(3).value().endsWith(sly)), "the name is there");
        }
    }
}
