package provingyard.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provingyard.scenario.Kit;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.setup.Cost;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.References;
import provingyard.setup.SetUp;

/** Set-ups that dodge the work lose to textbook on every shipped site, by the simulator's own outcome. */
class CheatingSetUpsTest {

    private Site site;
    private SetUp textbook;

    private void open(String id) {
        site = Site.of(Sites.open(id).orThrow());
        textbook = References.textbook(site.scenario()).orElseThrow();
    }

    private Season lived(SetUp setUp) {
        return LivedSeasons.of(site, setUp);
    }

    private double loss(SetUp setUp) {
        return LivedSeasons.loss(site, setUp).total();
    }

    private void losesToTextbook(SetUp other, String what) {
        double good = loss(textbook);
        double bad = loss(other);
        assertTrue(good < bad, what + " loses " + bad + ", textbook " + good);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tansy-row", "quillback-clinic", "burdock-steps"})
    void theClockAloneAndTheCarelessLose(String id) {
        open(id);
        losesToTextbook(SetUp.CLOCK_ALONE, "the clock alone");
        losesToTextbook(References.careless(site.scenario()).orElseThrow(), "careless");
    }

    /** A freeze sensor set so that it is always cold shuts every start. */
    private SetUp alwaysCold() {
        Point at = textbook.sensors().get(0) instanceof Placement.Rain r ? r.at() : new Point(1, 1);
        Placement always = new Placement.Freeze("freeze-1", at, Mount.POST, 2, 60, 70);
        return new SetUp(
                List.of(always),
                List.of(new Interlock("freeze-1", Interlock.Action.SHUT, List.of())),
                FlowWatch.OFF,
                null);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tansy-row", "quillback-clinic", "burdock-steps"})
    void neverWateringLoses(String id) {
        open(id);
        assertEquals(0, lived(alwaysCold()).ledger().irrigation().used(), 1e-9);
        losesToTextbook(alwaysCold(), "never watering");
    }

    @ParameterizedTest
    @ValueSource(strings = {"tansy-row", "quillback-clinic", "burdock-steps"})
    void everythingAtItsStrictestLoses(String id) {
        open(id);
        SetUp strict = textbook;
        for (Placement placement : textbook.sensors()) {
            strict = strict.with(strictest(placement));
        }
        losesToTextbook(strict, "everything at its strictest");
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

    /** As much as the budget lets, kind by kind. */
    @ParameterizedTest
    @ValueSource(strings = {"tansy-row", "quillback-clinic", "burdock-steps"})
    void buyingEverythingLoses(String id) {
        open(id);
        SetUp all = textbook;
        for (SensorKind kind : SensorKind.values()) {
            Kit.Item item = site.scenario().kit().item(kind);
            for (int n = all.of(kind).size(); item != null && n < item.most(); n++) {
                SetUp more = withOneMore(all, kind, n + 1);
                all = Cost.of(more, site.scenario().kit()).withinBudget() ? more : all;
            }
        }
        assertTrue(all.sensors().size() > textbook.sensors().size());
        assertTrue(
                Cost.of(all, site.scenario().kit()).withinBudget(),
                "the budget lets it, so that it has to lose by itself");
        losesToTextbook(all, "buying everything");
    }

    /** One more of a kind, put and wired as a good technician would. */
    private SetUp withOneMore(SetUp setUp, SensorKind kind, int number) {
        Placement first = setUp.sensors().get(0);
        String id = kind.name().toLowerCase(java.util.Locale.ROOT) + "-" + number;
        if (kind == SensorKind.FREEZE) {
            Point at = ((Placement.Rain) first).at();
            return setUp.with(new Placement.Freeze(id, at, Mount.POST, 1.8, 3.3, 5))
                    .with(new Interlock(id, Interlock.Action.SHUT, List.of()));
        }
        if (kind == SensorKind.SOIL) {
            Placement.Soil s = (Placement.Soil) setUp.of(SensorKind.SOIL).get(0);
            Point beside = new Point(s.at().x() + 3, s.at().y());
            return setUp.with(new Placement.Soil(id, beside, s.depth(), s.soil(), s.dry(), s.wet()))
                    .with(new Interlock(id, Interlock.Action.BLOCK, List.of()));
        }
        throw new IllegalStateException("no site's kit offers more of " + kind + " than textbook buys");
    }

    /** Limits so tight that the first watering is an alarm that shuts the master valve, where flow can be watched. */
    @Test
    void shuttingTheMasterValveOnDayOneLoses() {
        open("quillback-clinic");
        Placement.Flow f = (Placement.Flow) textbook.of(SensorKind.FLOW).get(0);
        List<FlowWatch.Expected> tiny = site.scenario().plumbing().fittings().stream()
                .filter(v -> v.id().startsWith("zone-"))
                .map(v -> new FlowWatch.Expected(v.id(), 1e-5))
                .toList();
        FlowWatch tight = new FlowWatch(
                f.id(),
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
        SetUp shut = new SetUp(List.of(f), List.of(), tight, null);
        Season season = lived(shut);
        assertTrue(season.outcome().leaks().falseAlarms() > 0, "it was shut by an alarm without a leak");
        assertTrue(season.ledger().irrigation().supplied()
                < 0.2 * lived(SetUp.CLOCK_ALONE).ledger().irrigation().supplied());
        losesToTextbook(shut, "the master valve shut on day one");
    }
}
