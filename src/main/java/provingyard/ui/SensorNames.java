package provingyard.ui;

import provingyard.scenario.Plumbing;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;

/** What zones and sensors are called: a number stands behind a sensor's kind where there are several of it. */
final class SensorNames {

    private final YardModel model;
    private final Words words;

    SensorNames(YardModel model, Words words) {
        this.model = model;
        this.words = words;
    }

    /** Name of a zone or a sensor by its id. */
    String of(String id) {
        for (Placement placement : model.setUp().sensors()) {
            if (placement.id().equals(id)) {
                return name(
                        placement.kind(), id, model.setUp().of(placement.kind()).size() > 1);
            }
        }
        for (Plumbing.Fitting fitting : model.scenario().plumbing().fittings()) {
            if (fitting.id().equals(id) && fitting.label() != null) {
                return words.say(fitting.label());
            }
        }
        return id;
    }

    private String name(SensorKind kind, String id, boolean several) {
        String number = id.replaceAll(".*?(\\d*)$", "$1");
        String name = words.say("sensor." + kind.name());
        return several && !number.isEmpty() ? name + " " + number : name;
    }
}
