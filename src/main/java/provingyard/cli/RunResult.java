package provingyard.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.scenario.Scenario;
import provingyard.score.Loss;
import provingyard.season.Ledger;
import provingyard.season.Outcome;
import provingyard.season.Season;
import provingyard.study.Standing;
import provingyard.text.Texts;

/** What a season came to, as text for people and as one JSON object. */
record RunResult(Scenario scenario, long seed, int days, String setUpName, Season season, Standing standing) {

    String json() {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode root = mapper.createObjectNode();
        Outcome outcome = season.outcome();
        root.put("site", scenario.id());
        root.put("seed", seed);
        root.put("days", days);
        if (standing.score().points() != null) {
            root.put("score", standing.score().points());
        } else {
            root.putNull("score");
            root.put("scoreReason", standing.score().reason().name());
        }
        ObjectNode loss = root.putObject("loss");
        loss.put("clock", standing.clock().total());
        loss.put("trainee", standing.trainee().total());
        if (standing.mark().isPresent()) {
            loss.put("mark", standing.mark().get().total());
        } else {
            loss.putNull("mark");
        }
        water(root.putObject("water"), outcome.ledger().water());
        irrigation(root.putObject("irrigation"), outcome.ledger().irrigation());
        ObjectNode ice = root.putObject("ice");
        ice.put("areaHours", outcome.ledger().ice().areaHours());
        ice.put("mornings", outcome.ledger().ice().mornings());
        ObjectNode leaks = root.putObject("leaks");
        leaks.put("happened", outcome.leaks().happened());
        leaks.put("found", outcome.leaks().found());
        leaks.put("missed", outcome.leaks().missed());
        leaks.put("falseAlarms", outcome.leaks().falseAlarms());
        root.put("closure", outcome.ledger().water().closure());
        root.put("ledgerHash", season.ledgerHash());
        try {
            return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can be written", e);
        }
    }

    private static void water(ObjectNode node, Ledger.Water w) {
        node.put("supplied", w.supplied());
        node.put("rain", w.rain());
        node.put("evapotranspiration", w.evapotranspiration());
        node.put("drift", w.drift());
        node.put("walkEvaporation", w.walkEvaporation());
        node.put("runoff", w.runoff());
        node.put("below", w.below());
        node.put("offSite", w.offSite());
        node.put("leaked", w.leaked());
        node.put("storeChange", w.storeChange());
    }

    private static void irrigation(ObjectNode node, Ledger.Irrigation i) {
        node.put("supplied", i.supplied());
        node.put("used", i.used());
        node.put("drift", i.drift());
        node.put("overspray", i.overspray());
        node.put("runoff", i.runoff());
        node.put("below", i.below());
        node.put("leaked", i.leaked());
        node.put("storeChange", i.storeChange());
    }

    String text(Texts texts, Display display) {
        StringBuilder out = new StringBuilder();
        Outcome outcome = season.outcome();
        Ledger.Water w = outcome.ledger().water();
        Ledger.Irrigation i = outcome.ledger().irrigation();
        line(
                out,
                texts.say(
                        "run.title",
                        scenario.title().in(texts.language()),
                        Integer.toString(days),
                        scenario.season().from(),
                        Long.toString(seed)));
        line(out, setUpName == null ? texts.say("run.setup.clock") : texts.say("run.setup.named", setUpName));
        line(out, "");
        line(out, texts.say("ledger.title"));
        row(out, texts.say("ledger.supplied"), display.text(Show.VOLUME, w.supplied()));
        row(out, texts.say("ledger.rain"), display.text(Show.VOLUME, w.rain()));
        row(out, texts.say("ledger.evapotranspiration"), display.text(Show.VOLUME, w.evapotranspiration()));
        row(out, texts.say("ledger.drift"), display.text(Show.VOLUME, w.drift()));
        row(out, texts.say("ledger.walkEvaporation"), display.text(Show.VOLUME, w.walkEvaporation()));
        row(out, texts.say("ledger.runoff"), display.text(Show.VOLUME, w.runoff()));
        row(out, texts.say("ledger.below"), display.text(Show.VOLUME, w.below()));
        row(out, texts.say("ledger.offSite"), display.text(Show.VOLUME, w.offSite()));
        row(out, texts.say("ledger.leaked"), display.text(Show.VOLUME, w.leaked()));
        row(out, texts.say("ledger.storeChange"), display.text(Show.VOLUME, w.storeChange()));
        row(out, texts.say("ledger.closure"), String.format(java.util.Locale.ROOT, "%.1e", w.closure()));
        line(out, "");
        line(out, texts.say("irrigation.title"));
        row(out, texts.say("ledger.supplied"), display.text(Show.VOLUME, i.supplied()));
        row(out, texts.say("irrigation.used"), display.text(Show.VOLUME, i.used()));
        row(out, texts.say("ledger.drift"), display.text(Show.VOLUME, i.drift()));
        row(out, texts.say("irrigation.overspray"), display.text(Show.VOLUME, i.overspray()));
        row(out, texts.say("ledger.runoff"), display.text(Show.VOLUME, i.runoff()));
        row(out, texts.say("ledger.below"), display.text(Show.VOLUME, i.below()));
        row(out, texts.say("ledger.leaked"), display.text(Show.VOLUME, i.leaked()));
        row(out, texts.say("ledger.storeChange"), display.text(Show.VOLUME, i.storeChange()));
        row(out, texts.say("ledger.closure"), String.format(java.util.Locale.ROOT, "%.1e", i.closure()));
        line(out, "");
        row(
                out,
                texts.say("ice.areaHours"),
                display.text(Show.ICE, outcome.ledger().ice().areaHours()));
        row(
                out,
                texts.say("ice.mornings"),
                Integer.toString(outcome.ledger().ice().mornings()));
        row(out, texts.say("leaks.happened"), leaks(texts, outcome.leaks()));
        line(out, "");
        line(out, texts.say("loss.title"));
        row(
                out,
                texts.say("loss.clock"),
                display.text(Show.MONEY, standing.clock().total()));
        row(
                out,
                texts.say("loss.trainee"),
                display.text(Show.MONEY, standing.trainee().total()));
        row(
                out,
                texts.say("loss.mark"),
                standing.mark()
                        .map(m -> display.text(Show.MONEY, m.total()))
                        .orElseGet(() -> texts.say("loss.unknown")));
        for (Loss.Entry entry : standing.trainee().entries()) {
            if (Math.abs(entry.money()) >= 0.005) {
                row(out, "  " + texts.say("loss." + entry.kind().name()), display.text(Show.MONEY, entry.money()));
            }
        }
        line(out, "");
        out.append(score(texts));
        return out.toString();
    }

    private String score(Texts texts) {
        if (standing.score().points() == null) {
            return texts.say(
                    "score.none",
                    texts.say("reason." + standing.score().reason().name()));
        }
        String points = texts.say("score.points", standing.score().shown());
        return standing.score().outside()
                ? points + " "
                        + texts.say("score.outside", Math.round(standing.score().points()))
                : points;
    }

    private static String leaks(Texts texts, Outcome.Leaks leaks) {
        return leaks.happened() + " (" + texts.say("leaks.found") + " " + leaks.found() + ", "
                + texts.say("leaks.missed") + " " + leaks.missed() + ", " + texts.say("leaks.falseAlarms") + " "
                + leaks.falseAlarms() + ")";
    }

    private static void line(StringBuilder out, String text) {
        out.append(text).append(System.lineSeparator());
    }

    private static void row(StringBuilder out, String name, String value) {
        line(out, String.format(java.util.Locale.ROOT, "  %-34s %16s", name, value));
    }
}
