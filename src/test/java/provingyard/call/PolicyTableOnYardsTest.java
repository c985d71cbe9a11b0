package provingyard.call;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Declaration;
import provingyard.diagnosis.ServiceRun;

/**
 * Ways of going about a call on yards of different plumbing, over faults drawn from the prior: the score puts them in a
 * teacher's order, and what the best way states is right as often as it says.
 */
@Tag("calls")
class PolicyTableOnYardsTest {

    private static final int CASES = Integer.getInteger("calls.cases", 40);
    private static final double CALIBRATION_GAP = 0.03;
    private static final Path TABLE = Path.of("target/policy-table.md");
    private static final List<String> LINES = new ArrayList<>();

    /** Means over all cases. */
    private record Row(
            double minutes,
            double tests,
            double redundant,
            double share,
            double probability,
            double right,
            double score) {}

    static Stream<String> yards() {
        return DrawnCases.yards();
    }

    @ParameterizedTest
    @MethodSource("yards")
    void theScorePutsWaysInATeachersOrder(String id) {
        CallSite site = DrawnCases.site(id);
        List<Deal> deals = DrawnCases.drawn(site, CASES);
        Map<Case, Judge.Reference> references = new LinkedHashMap<>();
        deals.forEach(d -> references.computeIfAbsent(d.wrong(), k -> Judge.reference(site, d)));
        Map<String, Row> table = new LinkedHashMap<>();
        for (String way : Ways.at(site, 0).names()) {
            table.put(way, row(site, way, deals, references));
            tell(id, way, table.get(way));
        }
        Row best = table.get("best");
        assertAll(
                id,
                () -> assertTrue(best.score() >= 85, "best " + best.score()),
                () -> below(table, "half-random", best.score() - 5),
                () -> below(table, "early", best.score() - 10),
                () -> below(table, "fixed-list", best.score() - 10),
                () -> below(table, "as-shown", best.score() - 15),
                () -> below(table, "random", best.score() - 25),
                () -> below(table, "dig-everywhere", best.score() - 25),
                () -> assertTrue(
                        Math.abs(best.probability() - best.right())
                                < CALIBRATION_GAP + DrawnCases.chance(best.right(), CASES),
                        "says " + best.probability() + ", is right " + best.right()));
    }

    private static void below(Map<String, Row> table, String way, double most) {
        assertTrue(table.get(way).score() <= most, way + " " + table.get(way).score() + ", most " + most);
    }

    private static Row row(CallSite site, String way, List<Deal> deals, Map<Case, Judge.Reference> references) {
        double[] sums = new double[7];
        for (Deal deal : deals) {
            ServiceRun run = Judge.play(
                    site, deal, Ways.at(site, deal.number()).named(way).orElseThrow(), deal.number());
            Declaration.Hit hit = Judge.hit(site, deal, run.declared());
            double says = run.declaredProbability();
            Declaration stated = new Declaration(run.declared(), says, hit, says);
            double reference = references.get(deal.wrong()).minutes();
            CaseScore score = CaseScore.of(run.steps(), stated, reference, CaseScore.Water.NONE);
            double[] values = {
                run.testMinutes(),
                score.tests(),
                score.redundant(),
                score.informationShare(),
                says,
                hit == Declaration.Hit.RIGHT ? 1 : 0,
                score.total()
            };
            for (int i = 0; i < sums.length; i++) {
                sums[i] += values[i] / deals.size();
            }
        }
        return new Row(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5], sums[6]);
    }

    private static void tell(String id, String way, Row row) {
        String line = String.format(
                Locale.ROOT,
                "| %s | %s | %.0f | %.1f | %.1f | %.2f | %.2f | %.2f | %.0f |",
                id,
                way,
                row.minutes(),
                row.tests(),
                row.redundant(),
                row.share(),
                row.probability(),
                row.right(),
                row.score());
        LINES.add(line);
        // A whole table takes long: what is known is told at once.
        System.out.println(line);
    }

    @AfterAll
    static void write() throws IOException {
        List<String> lines = new ArrayList<>(List.of(
                CASES + " faults a yard, drawn from the prior.",
                "",
                "| yard | way | minutes | tests | redundant | information share | P stated | right | score |",
                "| --- | --- | --- | --- | --- | --- | --- | --- | --- |"));
        lines.addAll(LINES);
        Files.createDirectories(TABLE.getParent());
        Files.write(TABLE, lines);
    }
}
