package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import provingyard.scenario.Plumbing;
import provingyard.scenario.SensorKind;
import provingyard.season.RunTrace;
import provingyard.season.Season;
import provingyard.setup.FlowWatch;
import provingyard.setup.Placement;

/** The zones as the flow watch knows them: expected flow, typed or recorded, and the last run; while its sensor is selected. */
final class FlowLog {

    /**
     * A zone.
     *
     * @param expected m3/s, NaN where neither typed nor recorded
     * @param typed whether the trainee typed it
     * @param lastRun what the sensor showed in its last run, null before one
     * @param mean m3/s of the last run after settling, NaN before one
     */
    record Zone(String id, double expected, boolean typed, RunTrace lastRun, double mean) {

        /** How far the last run lay from what was expected, as a share; NaN where either is missing. */
        double difference() {
            return mean / expected - 1;
        }
    }

    private record Seen(List<RunTrace> runs, double[] recorded) {
        static final Seen NOTHING = new Seen(List.of(), new double[0]);
    }

    private final YardModel model;
    private final Executor window;
    private final List<String> ids = new ArrayList<>();
    private final ReadOnlyObjectWrapper<List<Zone>> zones = new ReadOnlyObjectWrapper<>(List.of());
    private Seen seen = Seen.NOTHING;
    private int events = -1;

    /** A log that tells what it finds on the window's thread. */
    FlowLog(YardModel model, Executor window) {
        this.model = model;
        this.window = window;
        model.scenario().plumbing().fittings().stream()
                .filter(f -> f.kind() == Plumbing.FittingKind.ZONE_VALVE)
                .forEach(f -> ids.add(f.id()));
        model.selectedProperty().addListener(o -> ask(true));
        model.draftProperty().addListener(o -> ask(true));
        model.frameProperty().addListener(o -> ask(false));
        ask(true);
    }

    /** The zones in the document's order. */
    ReadOnlyObjectProperty<List<Zone>> zonesProperty() {
        return zones.getReadOnlyProperty();
    }

    private void ask(boolean anew) {
        if (!watching() || model.frameProperty().get() == null) {
            return;
        }
        int now = model.frameProperty().get().events().size();
        if (anew || now != events) {
            events = now;
            tell();
            model.player().handOver(this::look);
        }
    }

    private boolean watching() {
        String id = model.selectedProperty().get();
        Optional<Placement> selected =
                id == null ? Optional.empty() : model.setUp().sensor(id);
        return selected.filter(p -> p.kind() == SensorKind.FLOW).isPresent();
    }

    private void look(Season season) {
        Seen found = new Seen(season.lastRuns(), season.expectedFlows());
        window.execute(() -> {
            seen = found;
            tell();
        });
    }

    private void tell() {
        List<Zone> all = new ArrayList<>();
        FlowWatch watch = model.setUp().flowWatch();
        for (int z = 0; z < ids.size(); z++) {
            String id = ids.get(z);
            double recorded = z < seen.recorded().length ? seen.recorded()[z] : Double.NaN;
            double typed = watch.expected().stream()
                    .filter(e -> e.zone().equals(id))
                    .mapToDouble(FlowWatch.Expected::flow)
                    .findFirst()
                    .orElse(Double.NaN);
            RunTrace run = seen.runs().stream()
                    .filter(r -> r.zone().equals(id))
                    .findFirst()
                    .orElse(null);
            boolean isTyped = !Double.isNaN(typed);
            all.add(new Zone(
                    id,
                    isTyped ? typed : recorded,
                    isTyped,
                    run,
                    run == null ? Double.NaN : run.mean(watch.settling())));
        }
        zones.set(List.copyOf(all));
    }
}
