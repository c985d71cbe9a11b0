package provingyard.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.scenario.Scenario;
import provingyard.study.Amounts;
import provingyard.study.Shares;
import provingyard.text.Texts;

/** What each choice cost, as text for people and as one JSON object in SI units and USD. */
record SharesResult(Scenario scenario, String setUpName, Shares shares) {

    String json() {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("site", scenario.id());
        root.put("setUp", setUpName);
        for (Shares.Share share : shares.shares()) {
            put(
                    root.withArray("shares")
                            .addObject()
                            .put("choice", share.choice().name()),
                    share.cost());
        }
        put(root.putObject("gap"), shares.gap());
        return root.toPrettyString();
    }

    private static void put(ObjectNode node, Amounts amounts) {
        node.put("water", amounts.water());
        node.put("ice", amounts.ice());
        node.put("leaks", amounts.leaks());
        node.put("plants", amounts.plants());
        node.put("sensors", amounts.sensors());
        node.put("money", amounts.money());
    }

    String text(Texts texts, Display display) {
        Columns table = new Columns();
        table.row(
                "",
                texts.say("shares.water"),
                texts.say("shares.ice"),
                texts.say("shares.leaks"),
                texts.say("shares.plants"),
                texts.say("shares.sensors"),
                texts.say("shares.money"));
        for (Shares.Share share : shares.shares()) {
            row(table, texts.say("choice." + share.choice().name()), share.cost(), display);
        }
        row(table, texts.say("shares.gap"), shares.gap(), display);
        String title = texts.say("shares.title", scenario.title().in(texts.language()));
        return String.join(
                System.lineSeparator(),
                title,
                setUp(texts, setUpName),
                "",
                String.join(System.lineSeparator(), table.lines()),
                "",
                texts.say("shares.note"));
    }

    /** The line that names the set-up. */
    static String setUp(Texts texts, String name) {
        return name == null ? texts.say("run.setup.clock") : texts.say("run.setup.named", name);
    }

    private static void row(Columns table, String name, Amounts cost, Display display) {
        table.row(
                name,
                display.text(Show.VOLUME, cost.water()),
                display.text(Show.ICE, cost.ice()),
                display.text(Show.MONEY, cost.leaks()),
                display.text(Show.MONEY, cost.plants()),
                display.text(Show.MONEY, cost.sensors()),
                display.text(Show.MONEY, cost.money()));
    }
}
