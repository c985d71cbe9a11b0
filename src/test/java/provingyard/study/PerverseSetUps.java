package provingyard.study;

import java.util.List;
import java.util.Optional;
import provingyard.numeric.RandomStreams;
import provingyard.scenario.Kit;
import provingyard.scenario.Plumbing.FittingKind;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.season.Site;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** Set-ups that dodge the work; on every tune site each of them has to lose to the textbook one. */
public final class PerverseSetUps {

    private PerverseSetUps() {}

    /** A freeze sensor set so that it is always cold shuts every start. It need not be in the kit. */
    public static SetUp neverWaters() {
        Placement always = new Placement.Freeze("freeze-1", new Point(1, 1), Mount.POST, 2, 60, 70);
        return new SetUp(
                List.of(always),
                List.of(new Interlock("freeze-1", Interlock.Action.SHUT, List.of())),
                FlowWatch.OFF,
                null);
    }

    /** Textbook with every sensor at its strictest. */
    public static SetUp strictest(SetUp textbook) {
        SetUp strict = textbook;
        for (Placement placement : textbook.sensors()) {
            strict = strict.with(strictest(placement));
        }
        return strict;
    }

    private static Placement strictest(Placement placement) {
        if (placement instanceof Placement.Rain r) {
            return new Placement.Rain(r.id(), r.at(), r.mount(), r.height(), 0.003175, 0);
        }
        if (placement instanceof Placement.Wind w) {
            return new Placement.Wind(w.id(), w.at(), w.mount(), w.height(), 2, 1.5, w.averaging(), w.hold());
        }
        if (placement instanceof Placement.Freeze f) {
            return new Placement.Freeze(f.id(), f.at(), f.mount(), f.height(), 5, 8);
        }
        if (placement instanceof Placement.Soil s) {
            return new Placement.Soil(s.id(), s.at(), s.depth(), s.soil(), 0.02, 0.05);
        }
        return placement;
    }

    /** Textbook with as many more sensors of each kind as kit and budget let, put and wired as usual. */
    public static SetUp buysEverything(Site site) {
        SetUp all = References.textbook(site.scenario()).orElseThrow();
        Limits limits = new Limits(site.scenario());
        List<Point> spots = Spots.of(site, new RandomStreams(MarkSearch.SEED));
        for (Options options : Search.options(site, limits, spots)) {
            SensorKind kind = options.kind();
            Kit.Item item = site.scenario().kit().item(kind);
            List<Fitting> like = Fitting.of(all, kind);
            for (int n = all.of(kind).size(); n < item.most(); n++) {
                Fitting usual = options.places().get(n % options.places().size());
                SetUp more = beside(usual, like).numbered(n + 1).into(all);
                all = limits.keeps(more) ? more : all;
            }
        }
        return all;
    }

    /** One more probe goes beside the first, where the first speaks for the zones too. */
    private static Fitting beside(Fitting usual, List<Fitting> like) {
        if (like.isEmpty() || !(like.get(0).placement() instanceof Placement.Soil s)) {
            return usual;
        }
        Point at = new Point(s.at().x() + 3, s.at().y());
        return like.get(0).with(new Placement.Soil(s.id(), at, s.depth(), s.soil(), s.dry(), s.wet()));
    }

    /**
     * Limits so tight that the first watering is an alarm that shuts the master valve, where flow can be watched: with
     * textbook's flow sensor alone, or one as it comes out of its box.
     */
    public static Optional<SetUp> shutsTheMaster(Site site) {
        Limits limits = new Limits(site.scenario());
        boolean master =
                site.scenario().plumbing().fittings().stream().anyMatch(f -> f.kind() == FittingKind.MASTER_VALVE);
        if (limits.most(SensorKind.FLOW) == 0 || !master) {
            return Optional.empty();
        }
        SetUp textbook = References.textbook(site.scenario()).orElseThrow();
        Placement flow = textbook.of(SensorKind.FLOW).stream()
                .findFirst()
                .orElseGet(() -> new FlowOptions(site).places().get(0).placement());
        List<FlowWatch.Expected> tiny = site.scenario().plumbing().fittings().stream()
                .filter(v -> v.kind() == FittingKind.ZONE_VALVE)
                .map(v -> new FlowWatch.Expected(v.id(), 1e-5))
                .toList();
        FlowWatch tight = new FlowWatch(
                flow.id(),
                tiny,
                false,
                1.03,
                0,
                60,
                60,
                FlowWatch.Action.SHUT_MASTER,
                1e-4,
                600,
                FlowWatch.Action.SHUT_MASTER);
        return Optional.of(new SetUp(List.of(flow), List.of(), tight, null));
    }
}
