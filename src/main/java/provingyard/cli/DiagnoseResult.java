package provingyard.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import provingyard.call.Call;
import provingyard.call.CallSite;
import provingyard.call.Deal;
import provingyard.call.FieldTest;
import provingyard.call.Judge;
import provingyard.diagnosis.Belief;
import provingyard.diagnosis.CaseScore;
import provingyard.diagnosis.Reading;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.Step;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.text.Texts;

/**
 * A service call as it was played, as text for people and as one JSON object in SI units (minutes and litres for what is
 * on site). The tests are done once more as a call, which gives their readings, the belief after each and the litres.
 */
record DiagnoseResult(CallSite site, Deal deal, String policy, long seed, Call call, CaseScore score) {

    /** How sure a policy says it is; it states what the evidence gives. */
    static DiagnoseResult of(CallSite site, Deal deal, String policy, long seed, ServiceRun run) {
        Call call = Call.begin(site, deal, seed);
        run.steps().forEach(step -> call.act(step.action()));
        call.state(new Call.Finding(run.declared(), run.declaredProbability()));
        return new DiagnoseResult(site, deal, policy, seed, call, call.score(Judge.reference(site, deal)));
    }

    String json() {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("site", site.scenario().id());
        root.put("policy", policy);
        root.put("seed", seed);
        root.put("deal", deal.number() + 1);
        for (int i = 0; i < call.notes().size(); i++) {
            note(root.withArray("tests").addObject(), i);
        }
        ObjectNode finding = root.putObject("finding");
        finding.put("stated", call.declaration().repairClass());
        finding.put("probability", call.declaration().probability());
        finding.put("hit", call.declaration().hit().name());
        finding.put("truth", deal.answer(site));
        ObjectNode points = root.putObject("score");
        score.lines().forEach(line -> points.put(line.kind().name(), line.points()));
        points.put("total", score.total());
        root.put("minutes", call.run().testMinutes());
        root.put("litres", call.litres());
        return root.toPrettyString();
    }

    private void note(ObjectNode node, int i) {
        Call.Note note = call.notes().get(i);
        Step step = call.run().steps().get(i);
        node.put("test", note.test().id());
        node.put("minute", note.minute());
        node.put("litres", note.litres());
        node.put("expectedBits", step.gain());
        node.put("bestBits", step.bestBits());
        node.put("cameOut", step.realised());
        if (note.reading() instanceof Reading.Shown shown) {
            node.put("reading", shown.value());
        } else if (note.reading() instanceof Reading.Seen seen) {
            node.put("reading", answer(note.test(), seen));
        }
        Belief after = beliefAfter(i);
        node.put("strongest", after.leading());
        node.put("probability", after.ofClass(after.leading()));
    }

    private Belief beliefAfter(int i) {
        return i + 1 < call.notes().size() ? call.notes().get(i + 1).prior() : call.belief();
    }

    private static String answer(FieldTest test, Reading.Seen seen) {
        return ((FieldTest.Measure.Answers) test.measure()).keys().get(seen.category());
    }

    String text(Texts texts, Display display) {
        Columns table = new Columns();
        table.row(
                texts.say("diagnose.test"),
                texts.say("diagnose.reading"),
                texts.say("diagnose.minute"),
                texts.say("diagnose.bits"),
                texts.say("diagnose.strongest"),
                "");
        for (int i = 0; i < call.notes().size(); i++) {
            row(table, i, display);
        }
        List<String> lines = new ArrayList<>();
        lines.add(texts.say("diagnose.title", site.scenario().title().in(texts.language()), policy));
        lines.add("");
        lines.addAll(table.lines());
        lines.add("");
        lines.add(texts.say(
                "diagnose.stated",
                call.declaration().repairClass(),
                percent(display, call.declaration().probability()),
                deal.answer(site)));
        lines.add(texts.say(
                "diagnose.score",
                display.plain(score.total(), 0),
                display.plain(call.run().testMinutes(), 0),
                display.text(Show.VOLUME, call.litres() / 1000)));
        return String.join(System.lineSeparator(), lines);
    }

    private void row(Columns table, int i, Display display) {
        Call.Note note = call.notes().get(i);
        Belief after = beliefAfter(i);
        table.row(
                note.test().id(),
                reading(note, display),
                display.plain(note.minute(), 0),
                display.plain(call.run().steps().get(i).gain(), 2),
                after.leading(),
                percent(display, after.ofClass(after.leading())));
    }

    private static String percent(Display display, double share) {
        return display.text(Show.FRACTION, share);
    }

    private static String reading(Call.Note note, Display display) {
        if (note.reading() instanceof Reading.Seen seen) {
            return answer(note.test(), seen);
        }
        return note.reading() instanceof Reading.Shown shown
                ? shown(((FieldTest.Measure.Number) note.test().measure()).quantity(), shown.value(), display)
                : "";
    }

    private static String shown(FieldTest.Quantity quantity, double value, Display display) {
        return switch (quantity) {
            case FLOW -> display.text(Show.FLOW, value);
            case PRESSURE -> display.text(Show.PRESSURE, value);
            case PRESSURE_RATE -> display.text(Show.PRESSURE, value * 60) + "/min";
            case OHMS -> display.plain(value, 1) + " \u03a9";
            case VOLTS -> display.plain(value, 1) + " V";
            case AMPERES -> display.plain(value, 2) + " A";
            case METRES -> display.text(Show.LENGTH, value);
            case KELVIN -> display.text(Show.TEMPERATURE_DIFFERENCE, value);
            case SHARE -> percent(display, value);
        };
    }
}
