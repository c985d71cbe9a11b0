package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import provingyard.quantity.Show;
import provingyard.season.Proof;
import provingyard.season.Proof.Finding;
import provingyard.season.Proof.Test;
import provingyard.season.Proof.Verdict;
import provingyard.setup.Placement;

/** The tests of all placed sensors, and what each came to in words. No control is known here. */
final class ProvingPlan {

    /**
     * A test of a sensor.
     *
     * @param proof what it came to, empty while it was not made under the settings of now
     */
    record Item(Placement placement, Test test, Optional<Proof> proof) {

        String id() {
            return placement.id() + "-" + test.name();
        }

        boolean good() {
            return proof.map(p -> p.verdict().good()).orElse(false);
        }
    }

    private final YardModel model;
    private final Words words;
    private final SensorNames names;

    ProvingPlan(YardModel model, Words words) {
        this.model = model;
        this.words = words;
        names = new SensorNames(model, words);
    }

    /** All tests of the sensors placed now. */
    List<Item> items() {
        List<Item> items = new ArrayList<>();
        for (Placement placement : model.setUp().sensors()) {
            for (Test test : Test.of(placement.kind())) {
                items.add(new Item(
                        placement, test, model.proofsProperty().get().of(placement.id(), test, model.setUp())));
            }
        }
        return items;
    }

    /** How many tests were made, of how many. */
    String progress() {
        List<Item> items = items();
        long made = items.stream().filter(i -> i.proof().isPresent()).count();
        return words.say("prove.progress", made, items.size());
    }

    String sensor(Item item) {
        return names.of(item.placement().id());
    }

    String zone(Proof proof) {
        return names.of(proof.zone());
    }

    /** What is done, in order. */
    List<String> steps(Test test) {
        List<String> steps = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            steps.add(words.say("prove." + test.name() + "." + i));
        }
        return steps;
    }

    /** What it came to: the numbers, then what the controller did, then what is not as it should be. */
    List<String> verdict(Proof proof) {
        List<String> lines = new ArrayList<>();
        Verdict v = proof.verdict();
        Test test = proof.test();
        Show show = test == Test.METER ? Show.VOLUME : Readouts.of(test.kind());
        if (Double.isFinite(v.reference()) && Double.isFinite(v.reading())) {
            lines.add(words.say("verdict.reads." + test.name(), text(show, v.reading()), text(show, v.reference())));
        }
        if (v.trippedAfter() >= 0 && Double.isFinite(v.trippedAt())) {
            lines.add(words.say(
                    "verdict.trips." + test.name(),
                    text(show, v.trippedAt()),
                    text(show, v.setPoint()),
                    text(Show.DURATION, 60.0 * v.trippedAfter())));
        }
        if (v.rearmedAfter() >= 0) {
            lines.add(words.say("verdict.rearms", text(Show.DURATION, 60.0 * (v.rearmedAfter() - v.trippedAfter()))));
        }
        boolean said = v.findings().contains(Finding.NOT_OBEYED) || v.findings().contains(Finding.NOT_WATCHED);
        if (test != Test.METER && !said && !v.findings().contains(Finding.NEVER_TRIPPED)) {
            lines.add(words.say("reaction." + v.reaction().name(), zone(proof)));
        }
        return lines;
    }

    /** What is not as it should be, each with what to look at. */
    List<String> findings(Proof proof) {
        return proof.verdict().findings().stream()
                .sorted()
                .map(f -> words.say("finding." + f.name()))
                .toList();
    }

    /** What was changed for the test and is back as it was. */
    List<String> restored(Proof proof) {
        List<String> lines = new ArrayList<>();
        lines.add(words.say("back.run", zone(proof)));
        lines.add(words.say("back.others"));
        if (proof.test() == Test.LIMIT && Double.isFinite(proof.verdict().setPoint())) {
            double high = model.setUp().flowWatch().high();
            String half = text(Show.FLOW, proof.verdict().setPoint() / high);
            lines.add(words.say("back.limit", zone(proof), half, expected(proof.zone())));
        }
        lines.add(words.say("back." + proof.test().name()));
        return lines;
    }

    private String expected(String zone) {
        return model.setUp().flowWatch().expected().stream()
                .filter(e -> e.zone().equals(zone))
                .findFirst()
                .map(e -> text(Show.FLOW, e.flow()))
                .orElse(words.say("back.notTyped"));
    }

    private String text(Show show, double value) {
        return words.display().text(show, value);
    }
}
