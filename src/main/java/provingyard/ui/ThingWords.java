package provingyard.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import provingyard.picture.HitTest;
import provingyard.quantity.Show;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.Text;
import provingyard.scenario.YardPlan;
import provingyard.season.Snapshot;
import provingyard.setup.Placement;
import provingyard.ui.ThingPlate.Saying;

/** What a thing on the yard answers when it is pointed at: its name, and its state at the minute shown. */
final class ThingWords {

    /** mm of water or ice worth a word. */
    private static final double SOME_MM = 0.02;

    /** m3/s of flow worth a word. */
    private static final double SOME_FLOW = 1e-6;

    private static final double SECTOR = 45;

    private final YardModel model;
    private final Words words;

    ThingWords(YardModel model, Words words) {
        this.model = model;
        this.words = words;
    }

    Saying say(HitTest.Hit hit) {
        return switch (hit.kind()) {
            case SENSOR -> sensor(hit.id());
            case HEAD -> head(hit.id());
            case FITTING -> fitting(hit.id());
            case PIPE -> pipe(hit);
            case DRIP_LINE -> dripLine(hit.id());
            case SURFACE -> surface(hit);
            case STRUCTURE -> structure(hit.id());
            case TREE -> tree(hit.id());
            case VENT -> vent(hit.id());
            case OFF_SITE -> new Saying(words.say("thing.OFF_SITE"), List.of());
        };
    }

    private Snapshot now() {
        return model.frameProperty().get().snapshot();
    }

    private YardPlan yard() {
        return model.scenario().yard();
    }

    private Plumbing plumbing() {
        return model.scenario().plumbing();
    }

    private String show(Show show, double inner) {
        return words.display().text(show, inner);
    }

    private Saying sensor(String id) {
        Placement placement = model.setUp().sensor(id).orElse(null);
        if (placement == null) {
            return Saying.NOTHING;
        }
        List<String> lines = new ArrayList<>();
        now().sensors().stream().filter(s -> s.id().equals(id)).forEach(s -> {
            lines.add(words.say("thing.reads", show(Readouts.of(placement.kind()), s.reading())));
            if (s.tripped()) {
                lines.add(words.say("thing.holds"));
            }
        });
        return new Saying(words.say("kind." + placement.kind().name()), lines);
    }

    private Saying head(String id) {
        Plumbing.Head plan = find(plumbing().heads(), h -> h.id().equals(id));
        Snapshot.Head head = find(now().heads(), h -> h.id().equals(id));
        Catalogue.Nozzle nozzle = find(model.scenario().catalogue().nozzles(), n -> n.id().equals(plan.nozzle()));
        List<String> lines = new ArrayList<>();
        lines.add(words.say("thing.nozzle", nozzle.name() == null ? nozzle.id() : words.say(nozzle.name())));
        lines.add(words.say("thing.zone", zoneName(plan.zone())));
        if (head.spraying()) {
            lines.add(words.say("thing.sprays", show(Show.FLOW, head.flow()), show(Show.LENGTH, head.radius())));
            lines.add(words.say("thing.base", show(Show.PRESSURE, head.pressure())));
            double drift = Math.hypot(head.driftX(), head.driftY());
            if (drift > 0.1) {
                lines.add(words.say("thing.drifts", show(Show.LENGTH, drift)));
            }
        } else {
            double radius = plan.radius() != null ? plan.radius() : nozzle.radius();
            lines.add(words.say("thing.rests", show(Show.LENGTH, radius)));
        }
        return new Saying(words.say("thing.head"), lines);
    }

    private Saying dripLine(String id) {
        Plumbing.DripLine line = find(plumbing().drips(), d -> d.id().equals(id));
        String state = isOpen(line.zone()) ? "thing.running" : "thing.resting";
        return new Saying(
                words.say("thing.DRIP_LINE"),
                List.of(
                        words.say("thing.zone", zoneName(line.zone())),
                        words.say("thing.emitters", line.emitters()),
                        words.say(state)));
    }

    private boolean isOpen(String zone) {
        return now().zones().stream().anyMatch(z -> z.id().equals(zone) && z.open());
    }

    /** A zone's name, or its id where it has none. */
    private String zoneName(String id) {
        return plumbing().fittings().stream()
                .filter(f -> f.id().equals(id) && f.label() != null)
                .findFirst()
                .map(f -> words.say(f.label()))
                .orElse(id);
    }

    private Saying fitting(String id) {
        Optional<Plumbing.Fitting> found =
                plumbing().fittings().stream().filter(f -> f.id().equals(id)).findFirst();
        if (found.isEmpty()) {
            return new Saying(words.say("thing.supply"), List.of(flowOf(now().supplyFlow())));
        }
        Plumbing.Fitting fitting = found.get();
        String name = words.say("fitting." + fitting.kind().name());
        List<String> lines = new ArrayList<>();
        if (fitting.label() != null) {
            lines.add(words.say(fitting.label()));
        }
        switch (fitting.kind()) {
            case ZONE_VALVE -> lines.addAll(zone(id));
            case MASTER_VALVE -> lines.add(words.say(now().masterOpen() ? "thing.open" : "thing.shut"));
            case ISOLATION_VALVE -> lines.add(words.say("thing.byHand"));
            case REGULATOR -> lines.add(words.say("thing.keeps", show(Show.PRESSURE, fitting.setting())));
            case METER, BACKFLOW_PREVENTER, CHECK_VALVE, FILTER -> {
                // Their flow says all.
            }
        }
        pipeFlow(fitting.on()).ifPresent(flow -> lines.add(flowOf(flow)));
        lines.add(words.say("thing.size", show(Show.DEPTH, fitting.size())));
        return new Saying(name, lines);
    }

    private List<String> zone(String id) {
        Snapshot.Zone zone = find(now().zones(), z -> z.id().equals(id));
        List<String> lines = new ArrayList<>();
        lines.add(words.say(zone.open() ? "thing.open" : "thing.shut"));
        if (zone.lockedOut()) {
            lines.add(words.say("thing.lockedOut"));
        }
        if (zone.open() && Double.isFinite(zone.pressure())) {
            lines.add(words.say("thing.base", show(Show.PRESSURE, zone.pressure())));
        }
        return lines;
    }

    private String flowOf(double flow) {
        return Math.abs(flow) < SOME_FLOW
                ? words.say("thing.noFlow")
                : words.say("thing.flow", show(Show.FLOW, Math.abs(flow)));
    }

    private Optional<Double> pipeFlow(String id) {
        List<Plumbing.Pipe> pipes = plumbing().pipes();
        for (int i = 0; i < pipes.size(); i++) {
            if (pipes.get(i).id().equals(id)) {
                return Optional.of(now().links()[i]);
            }
        }
        return Optional.empty();
    }

    private Saying pipe(HitTest.Hit hit) {
        Plumbing.Pipe pipe = find(plumbing().pipes(), p -> p.id().equals(hit.id()));
        double flow = pipeFlow(pipe.id()).orElse(0.0);
        List<String> lines = new ArrayList<>();
        lines.add(words.say("thing.size", show(Show.DEPTH, pipe.size())));
        lines.add(flowOf(flow));
        if (Math.abs(flow) >= SOME_FLOW) {
            double inner = model.site().siting().innerDiameter(pipe.id());
            double velocity = Math.abs(flow) / (Math.PI * inner * inner / 4);
            lines.add(words.say("thing.velocity", show(Show.SPEED, velocity), direction(hit.bearing(), flow)));
        }
        return new Saying(words.say("thing.pipe"), lines);
    }

    /** The compass word of a bearing, turned back where water flows against the pipe. */
    private String direction(double bearing, double flow) {
        double toward = flow > 0 ? bearing : bearing + 180;
        return words.say("toward." + Math.floorMod(Math.round(toward / SECTOR), 8));
    }

    private Saying structure(String id) {
        YardPlan.Structure s = find(yard().structures(), b -> b.id().equals(id));
        String kind = words.say("structure." + s.kind().name());
        List<String> lines = new ArrayList<>();
        if (s.label() != null) {
            lines.add(kind);
        }
        boolean roofed = s.kind() == YardPlan.StructureKind.BUILDING || s.kind() == YardPlan.StructureKind.CANOPY;
        lines.add(words.say(roofed ? "thing.eaveHeight" : "thing.height", show(Show.LENGTH, s.height())));
        if (s.eave() > 0) {
            lines.add(words.say("thing.eave", show(Show.LENGTH, s.eave())));
        }
        if (s.heated()) {
            lines.add(words.say("thing.heated"));
        }
        return new Saying(s.label() == null ? kind : words.say(s.label()), lines);
    }

    private Saying tree(String id) {
        YardPlan.Tree tree = find(yard().trees(), t -> t.id().equals(id));
        return new Saying(
                words.say("thing.TREE"),
                List.of(
                        words.say("thing.height", show(Show.LENGTH, tree.height())),
                        words.say("thing.crown", show(Show.LENGTH, tree.canopy())),
                        words.say(tree.evergreen() ? "thing.evergreen" : "thing.deciduous")));
    }

    private Saying vent(String id) {
        YardPlan.Vent vent = find(yard().vents(), v -> v.id().equals(id));
        return new Saying(
                words.say("thing.VENT"),
                List.of(words.say(
                        "thing.warms",
                        show(Show.TEMPERATURE_DIFFERENCE, vent.adds()),
                        show(Show.LENGTH, vent.reach()))));
    }

    private Saying surface(HitTest.Hit hit) {
        YardPlan.Surface surface = find(yard().surfaces(), s -> s.id().equals(hit.id()));
        String kind = words.say("surface." + surface.kind().name());
        List<String> lines = new ArrayList<>();
        if (surface.label() != null) {
            lines.add(kind);
        }
        int cell = cell(hit.at());
        if (surface.kind().planted()) {
            planted(surface, cell, lines);
        } else if (cell >= 0) {
            paved(cell, lines);
        }
        return new Saying(surface.label() == null ? kind : words.say(surface.label()), lines);
    }

    private void planted(YardPlan.Surface surface, int cell, List<String> lines) {
        Catalogue catalogue = model.scenario().catalogue();
        catalogue.plants().stream()
                .filter(p -> p.id().equals(surface.plant()))
                .findFirst()
                .ifPresent(p -> lines.add(words.say("thing.plant", named(p.name(), p.id()))));
        catalogue.soils().stream()
                .filter(s -> s.id().equals(surface.soil()))
                .findFirst()
                .ifPresent(s -> lines.add(words.say("thing.soil", named(s.name(), s.id()))));
        if (cell >= 0) {
            lines.add(words.say("thing.wetness", show(Show.FRACTION, Math.max(0, now().wetness()[cell]))));
            if (now().stress()[cell] > 0.01) {
                lines.add(words.say("thing.stress", show(Show.FRACTION, now().stress()[cell])));
            }
            lines.add(words.say("thing.air", show(Show.TEMPERATURE, now().cold()[cell])));
        }
    }

    private void paved(int cell, List<String> lines) {
        double surface = now().paving()[cell];
        if (Double.isFinite(surface)) {
            lines.add(words.say("thing.paving", show(Show.TEMPERATURE, surface)));
        }
        double ice = now().ice()[cell];
        double film = now().film()[cell];
        if (ice >= SOME_MM) {
            lines.add(words.say("thing.ice", show(Show.DEPTH, ice / 1000)));
        }
        if (film >= SOME_MM) {
            lines.add(words.say("thing.film", show(Show.DEPTH, film / 1000)));
        } else if (ice < SOME_MM) {
            lines.add(words.say("thing.dry"));
        }
    }

    private String named(Text name, String id) {
        return name == null ? id : words.say(name);
    }

    private int cell(Point at) {
        double size = yard().cell();
        int column = (int) Math.floor(at.x() / size);
        int row = (int) Math.floor(at.y() / size);
        boolean inside = column >= 0 && row >= 0 && column < now().nx() && row < now().ny();
        return inside ? row * now().nx() + column : -1;
    }

    private static <T> T find(List<T> all, java.util.function.Predicate<T> which) {
        return Objects.requireNonNull(all.stream().filter(which).findFirst().orElse(null));
    }
}
