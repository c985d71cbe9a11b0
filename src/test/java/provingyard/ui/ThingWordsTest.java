package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.picture.HitTest;
import provingyard.picture.YardShapes;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Sites;
import provingyard.season.Site;
import provingyard.season.Snapshot;

/** Every thing of the clinic names itself and its state, in both languages and units. */
class ThingWordsTest {

    private static final long WATERING = 3205;

    private static final Words WORDS = new Words();
    private static YardModel model;
    private static ThingWords things;
    private static List<HitTest.Hit> all;

    @BeforeAll
    static void yard() throws Exception {
        model = new YardModel(Site.of(Sites.open("quillback-clinic").orThrow()), e -> {});
        model.player().show(WATERING);
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (model.player().frame().snapshot().tick() != WATERING && System.nanoTime() < end) {
            TimeUnit.MILLISECONDS.sleep(10);
        }
        model.refresh();
        things = new ThingWords(model, WORDS);
        all = HitTest.things(YardShapes.of(model.scenario()));
    }

    @AfterAll
    static void close() {
        model.close();
    }

    private static void in(String language, UnitSystem units) {
        WORDS.speak(language);
        WORDS.units().set(units);
    }

    private static String whole(HitTest.Hit hit) {
        return things.say(hit).whole();
    }

    private static Snapshot now() {
        return model.frameProperty().get().snapshot();
    }

    @Test
    void thereAreThingsOfEveryKind() {
        Set<HitTest.Kind> kinds = EnumSet.noneOf(HitTest.Kind.class);
        all.forEach(h -> kinds.add(h.kind()));
        assertEquals(EnumSet.complementOf(EnumSet.of(HitTest.Kind.SENSOR, HitTest.Kind.OFF_SITE)), kinds);
    }

    @Test
    void everyThingHasANameAndAStateInBothLanguagesAndUnits() {
        for (String language : new String[] {"en", "es"}) {
            for (UnitSystem units : UnitSystem.values()) {
                in(language, units);
                for (HitTest.Hit hit : all) {
                    ThingPlate.Saying said = things.say(hit);
                    assertFalse(said.name().isBlank(), hit.toString());
                    assertFalse(said.lines().isEmpty(), hit.toString());
                    assertFalse(said.whole().contains("{"), said.whole());
                    assertFalse(said.whole().contains("NaN"), said.whole());
                }
            }
        }
    }

    @Test
    void aHeadThatSpraysTellsNozzleFlowThrowAndPressure() {
        in("en", UnitSystem.METRIC);
        Snapshot.Head on = now().heads().stream()
                .filter(Snapshot.Head::spraying)
                .findFirst()
                .orElseThrow();
        Snapshot.Head off =
                now().heads().stream().filter(h -> !h.spraying()).findFirst().orElseThrow();
        String sprays = whole(of(HitTest.Kind.HEAD, on.id()));
        for (String part : List.of(
                WORDS.display().text(Show.FLOW, on.flow()),
                WORDS.display().text(Show.LENGTH, on.radius()),
                WORDS.display().text(Show.PRESSURE, on.pressure()))) {
            assertTrue(sprays.contains(part), sprays + ": " + part);
        }
        assertTrue(sprays.contains("Nozzle"), sprays);
        String rests = whole(of(HitTest.Kind.HEAD, off.id()));
        assertTrue(rests.contains("At rest") && !rests.contains("bar"), rests);
    }

    @Test
    void aPipeTellsSizeFlowVelocityAndDirection() {
        in("es", UnitSystem.US);
        int busiest = 0;
        for (int i = 0; i < now().links().length; i++) {
            busiest = Math.abs(now().links()[i]) > Math.abs(now().links()[busiest]) ? i : busiest;
        }
        String id = model.scenario().plumbing().pipes().get(busiest).id();
        String said = whole(of(HitTest.Kind.PIPE, id));
        assertTrue(said.contains("gpm") && said.contains("mph") && said.contains("hacia el"), said);
    }

    @Test
    void waterThatRunsBackTurnsTheDirection() {
        in("en", UnitSystem.METRIC);
        HitTest.Hit hit = all.stream()
                .filter(h -> h.kind() == HitTest.Kind.PIPE && Math.abs(flow(h.id())) > 1e-5)
                .findFirst()
                .orElseThrow();
        HitTest.Hit turned = new HitTest.Hit(hit.kind(), hit.id(), hit.at(), hit.along(), (hit.bearing() + 180) % 360);
        assertFalse(whole(hit).equals(whole(turned)));
    }

    private static double flow(String pipe) {
        var pipes = model.scenario().plumbing().pipes();
        for (int i = 0; i < pipes.size(); i++) {
            if (pipes.get(i).id().equals(pipe)) {
                return now().links()[i];
            }
        }
        return 0;
    }

    @Test
    void zoneValvesTellWhetherTheyAreOpen() {
        in("en", UnitSystem.METRIC);
        for (Snapshot.Zone zone : now().zones()) {
            String said = whole(of(HitTest.Kind.FITTING, zone.id()));
            assertTrue(said.contains(zone.open() ? "Open" : "Shut"), said);
        }
    }

    private static HitTest.Hit of(HitTest.Kind kind, String id) {
        return all.stream()
                .filter(h -> h.kind() == kind && h.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
