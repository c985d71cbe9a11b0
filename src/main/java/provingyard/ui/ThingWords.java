package provingyard.ui;

import provingyard.picture.HitTest;
import provingyard.quantity.Show;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Text;
import provingyard.scenario.YardPlan;
import provingyard.season.Snapshot;
import provingyard.setup.Placement;

/** What a thing on the yard answers when it is pointed at. */
final class ThingWords {

    private final YardModel model;
    private final Words words;

    ThingWords(YardModel model, Words words) {
        this.model = model;
        this.words = words;
    }

    String say(HitTest.Hit hit) {
        return switch (hit.kind()) {
            case SENSOR -> sensor(hit.id());
            case HEAD -> head(hit.id());
            case FITTING -> fitting(hit.id());
            case PIPE -> pipe(hit.id());
            case SURFACE -> surface(hit);
            case STRUCTURE -> named("thing.structure", labelOfStructure(hit.id()), hit.id());
            case TREE, VENT, DRIP_LINE, OFF_SITE ->
                words.say("thing." + hit.kind().name());
        };
    }

    private Snapshot now() {
        return model.frameProperty().get().snapshot();
    }

    private String sensor(String id) {
        Placement placement = model.setUp().sensor(id).orElse(null);
        if (placement == null) {
            return "";
        }
        String name = words.say("kind." + placement.kind().name());
        return now().sensors().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .map(s -> words.say(
                        s.tripped() ? "thing.sensorTripped" : "thing.sensor",
                        name,
                        words.display().text(Readouts.of(placement.kind()), s.reading())))
                .orElse(name);
    }

    private String head(String id) {
        Plumbing.Head plan = model.scenario().plumbing().heads().stream()
                .filter(h -> h.id().equals(id))
                .findFirst()
                .orElseThrow();
        Snapshot.Head head = now().heads().stream()
                .filter(h -> h.id().equals(id))
                .findFirst()
                .orElseThrow();
        String zone = zoneName(plan.zone());
        return head.spraying()
                ? words.say(
                        "thing.headRunning",
                        plan.nozzle(),
                        zone,
                        words.display().text(Show.FLOW, head.flow()),
                        words.display().text(Show.LENGTH, head.radius()),
                        words.display().text(Show.PRESSURE, head.pressure()))
                : words.say("thing.head", plan.nozzle(), zone);
    }

    /** A zone's name, or its id where it has none. */
    private String zoneName(String id) {
        return model.scenario().plumbing().fittings().stream()
                .filter(f -> f.id().equals(id) && f.label() != null)
                .findFirst()
                .map(f -> words.say(f.label()))
                .orElse(id);
    }

    private String fitting(String id) {
        return model.scenario().plumbing().fittings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .map(f -> words.say("fitting." + f.kind().name())
                        + (f.label() == null ? "" : " · " + words.say(f.label())))
                .orElseGet(() -> words.say("thing.supply"));
    }

    private String pipe(String id) {
        var pipes = model.scenario().plumbing().pipes();
        for (int i = 0; i < pipes.size(); i++) {
            if (pipes.get(i).id().equals(id)) {
                return words.say(
                        "thing.pipe",
                        words.display().text(Show.DEPTH, pipes.get(i).size()),
                        words.display().text(Show.FLOW, Math.abs(now().links()[i])));
            }
        }
        return "";
    }

    private String surface(HitTest.Hit hit) {
        YardPlan.Surface surface = model.scenario().yard().surfaces().stream()
                .filter(s -> s.id().equals(hit.id()))
                .findFirst()
                .orElseThrow();
        String name = surface.label() != null
                ? words.say(surface.label())
                : words.say("surface." + surface.kind().name());
        int cell = cell(hit);
        if (cell < 0) {
            return name;
        }
        if (surface.kind().planted()) {
            return words.say(
                    "thing.planted", name, words.display().text(Show.FRACTION, Math.max(0, now().wetness()[cell])));
        }
        double ice = now().ice()[cell];
        return ice >= 0.1
                ? words.say("thing.iced", name, words.display().text(Show.DEPTH, ice / 1000))
                : words.say("thing.paved", name, words.display().text(Show.DEPTH, now().film()[cell] / 1000));
    }

    private int cell(HitTest.Hit hit) {
        double size = model.scenario().yard().cell();
        int column = (int) Math.floor(hit.at().x() / size);
        int row = (int) Math.floor(hit.at().y() / size);
        boolean inside = column >= 0 && row >= 0 && column < now().nx() && row < now().ny();
        return inside ? row * now().nx() + column : -1;
    }

    private String named(String key, Text label, String id) {
        return words.say(key, label == null ? id : words.say(label));
    }

    private Text labelOfStructure(String id) {
        return model.scenario().yard().structures().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .map(YardPlan.Structure::label)
                .orElse(null);
    }
}
