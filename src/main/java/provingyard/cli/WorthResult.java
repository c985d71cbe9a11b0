package provingyard.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.scenario.Scenario;
import provingyard.study.WholeWorth;
import provingyard.study.Worth;
import provingyard.study.WorthStudy;
import provingyard.text.Texts;

/** What each kind of sensor is worth, as text for people and as one JSON object in SI units and USD. */
record WorthResult(Scenario scenario, String setUpName, WorthStudy.Result found) {

    /** What a row of three numbers is about. */
    private record Measure(String name, Show show, Worth.Span span) {}

    String json() {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        WholeWorth all = found.whole();
        root.put("site", scenario.id());
        root.put("setUp", setUpName);
        root.put("draws", all.draws());
        root.put("firstDraw", WorthStudy.FIRST_DRAW);
        root.put("seasonsAYear", all.seasonsAYear());
        ArrayNode kinds = root.putArray("kinds");
        for (Worth worth : found.kinds()) {
            ObjectNode node = kinds.addObject();
            node.put("kind", worth.kind().name());
            node.put("placed", worth.placed());
            put(node, worth.price(), worth.water(), worth.ice(), worth.money());
            put(node, worth.moneyAYear(), worth.paybackYears());
        }
        ObjectNode node = root.putObject("whole");
        put(node, all.price(), all.water(), all.ice(), all.money());
        put(node, all.moneyAYear(), all.paybackYears());
        return root.toPrettyString();
    }

    private static void put(ObjectNode node, double price, Worth.Span water, Worth.Span ice, Worth.Span money) {
        node.put("price", price);
        put(node.putObject("water"), water);
        put(node.putObject("ice"), ice);
        put(node.putObject("money"), money);
    }

    private static void put(ObjectNode node, Worth.Span span) {
        node.put("mean", span.mean()).put("low", span.low()).put("high", span.high());
    }

    /** What never pays for itself has no number of years. */
    private static void put(ObjectNode node, double moneyAYear, double paybackYears) {
        node.put("moneyAYear", moneyAYear);
        node.put("paybackYears", Double.isInfinite(paybackYears) ? null : (Double) paybackYears);
    }

    String text(Texts texts, Display display) {
        WholeWorth all = found.whole();
        List<String> lines = new ArrayList<>();
        lines.add(texts.say("worth.title", scenario.title().in(texts.language())));
        lines.add(SharesResult.setUp(texts, setUpName));
        lines.add(texts.say(
                "worth.basis",
                Integer.toString(all.draws()),
                Integer.toString(WorthStudy.FIRST_DRAW),
                Integer.toString(WorthStudy.FIRST_DRAW + all.draws() - 1),
                display.plain(all.seasonsAYear(), 1)));
        Columns table = new Columns();
        table.row("", texts.say("worth.mean"), texts.say("worth.low"), texts.say("worth.high"));
        found.kinds().forEach(w -> rows(table, measures(texts, w.water(), w.ice(), w.money()), display));
        rows(table, measures(texts, all.water(), all.ice(), all.money()), display);
        List<String> numbers = table.lines();
        int at = 1;
        for (Worth worth : found.kinds()) {
            lines.add("");
            lines.add(head(worth, texts, display));
            lines.add(numbers.get(0));
            lines.addAll(numbers.subList(at, at + 3));
            at += 3;
        }
        lines.add("");
        lines.add(head(all, texts, display));
        lines.add(numbers.get(0));
        lines.addAll(numbers.subList(at, at + 3));
        lines.add("");
        lines.add(texts.say("worth.note"));
        return String.join(System.lineSeparator(), lines);
    }

    private static List<Measure> measures(Texts texts, Worth.Span water, Worth.Span ice, Worth.Span money) {
        return List.of(
                new Measure(texts.say("worth.water"), Show.VOLUME, water),
                new Measure(texts.say("worth.ice"), Show.ICE, ice),
                new Measure(texts.say("worth.money"), Show.MONEY, money));
    }

    private static void rows(Columns table, List<Measure> measures, Display display) {
        for (Measure m : measures) {
            table.row(
                    "  " + m.name(),
                    display.text(m.show(), m.span().mean()),
                    display.text(m.show(), m.span().low()),
                    display.text(m.show(), m.span().high()));
        }
    }

    private static String head(Worth worth, Texts texts, Display display) {
        return texts.say(
                worth.placed() ? "worth.placed" : "worth.added",
                texts.say("choice." + worth.kind().name()),
                display.text(Show.MONEY, worth.price()),
                display.text(Show.MONEY, worth.moneyAYear()),
                payback(worth.paybackYears(), texts, display));
    }

    private static String head(WholeWorth all, Texts texts, Display display) {
        return texts.say(
                "worth.whole",
                display.text(Show.MONEY, all.price()),
                display.text(Show.MONEY, all.moneyAYear()),
                payback(all.paybackYears(), texts, display));
    }

    private static String payback(double years, Texts texts, Display display) {
        return Double.isInfinite(years)
                ? texts.say("worth.neverPays")
                : texts.say("worth.pays", display.plain(years, 1));
    }
}
