package provingyard.world.electric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static provingyard.world.electric.Wirings.NEVER;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import provingyard.world.electric.LiveReadings.Fuse;
import provingyard.world.electric.LiveReadings.Plunger;
import provingyard.world.electric.Transformer.Protection;

/** What each electrical fault shows at the instruments, all computed from the circuit. */
@Tag("unit")
class ElectricFaultsTest {

    private static final Wiring ROW = Wirings.row();
    private static final Conditions DRY = Conditions.DRY;
    private static final Conditions WET = Conditions.everywhere(20, 1);

    private static double ohms(Wiring wiring, String terminal) {
        return new OhmReadings(wiring, DRY).toCommon(terminal);
    }

    private static LiveReadings live(Wiring wiring, String... on) {
        return LiveReadings.of(wiring, DRY, Panel.running(on));
    }

    private static double volts(Wiring wiring, String terminal) {
        return live(wiring, terminal).volts(terminal, Wiring.COMMON);
    }

    private static void ohmsAsHealthy(Wiring wiring, String... terminals) {
        for (String terminal : terminals) {
            assertEquals(ohms(ROW, terminal), ohms(wiring, terminal), 1e-9, "terminal " + terminal);
        }
    }

    /**
     * Zone 3, by hand. Ohms: 60 m of 18 AWG at 20.95 ohm/km, 60 m of 14 AWG at 8.286 ohm/km, its splice, three joints of
     * the common, the coil. Volts: 27 V over 3 ohm inner, 0.2 ohm output, 0.519 ohm loop and the rest with 91.19 ohm of
     * reactance.
     */
    @Test
    void aHealthyZoneReadsAsByHand() {
        double r = 60 * 20.95e-3 + 60 * 8.286e-3 + 0.04 + 30;
        assertEquals(r, ohms(ROW, "3"), 0.002);
        double all = r + 3 + 0.2 + 0.1 + 20 * 20.95e-3;
        double x = 2 * Math.PI * 60 * 0.2419;
        double amps = 27 / Math.sqrt(all * all + x * x);
        LiveReadings on = live(ROW, "3");
        assertEquals(amps, on.amps("3"), 1e-5);
        assertEquals(amps, on.supplied(), 1e-5);
        assertEquals(amps * Math.sqrt(r * r + x * x), on.volts("3", Wiring.COMMON), 2e-3);
        assertEquals(amps * Math.sqrt(900 + x * x), on.voltsAtCoil("v3"), 2e-3);
        assertEquals(Plunger.IN, on.plunger("v3"));
        assertEquals(Set.of("v3"), on.drawn());
        assertEquals(Fuse.HOLDS, on.fuse());
        assertEquals(30, new OhmReadings(ROW, DRY).coil("v3"), 1e-9);
        assertTrue(ohms(ROW, "3") > 20 && ohms(ROW, "3") < 60);
        assertTrue(on.volts("3", Wiring.COMMON) > 24 && on.volts("3", Wiring.COMMON) < 28);
    }

    @Test
    void eachOutputOfAHealthyRowDrawsItsValve() {
        assertEquals(
                Map.of("1", Set.of("v1"), "2", Set.of("v2"), "3", Set.of("v3"), "4", Set.of("v4"), "MV", Set.of("mv")),
                LiveReadings.drawnByOutput(ROW, DRY));
        assertEquals(Set.of("v2", "mv"), live(ROW, "2", "MV").drawn());
        assertEquals(Set.of(), live(ROW).drawn());
    }

    @Test
    void f12CoilOpen() {
        Wiring w = new ElectricFault.CoilOpen("v2").in(ROW);
        assertEquals(NEVER, ohms(w, "2"));
        assertEquals(NEVER, new OhmReadings(w, DRY).coil("v2"));
        assertEquals(27, volts(w, "2"), 1e-4, "no drop but the voltmeter's own");
        assertEquals(27, live(w, "2").voltsAtCoil("v2"), 1e-4);
        assertEquals(0, live(w, "2").amps("2"), 1e-12);
        assertEquals(Plunger.OUT, live(w, "2").plunger("v2"));
        ohmsAsHealthy(w, "1", "3", "4", "MV");
    }

    @Test
    void f13WireCut() {
        Wiring w = new ElectricFault.WireCut("v2", new Cut(31, NEVER)).in(ROW);
        assertEquals(NEVER, ohms(w, "2"));
        assertEquals(30, new OhmReadings(w, DRY).coil("v2"), 1e-9);
        assertEquals(27, volts(w, "2"), 0.01);
        assertEquals(0, live(w, "2").voltsAtCoil("v2"), 1e-3);
        assertEquals(Plunger.OUT, live(w, "2").plunger("v2"));
        ohmsAsHealthy(w, "1", "3", "4", "MV");
    }

    @Test
    void f14CommonOpenAfterABox() {
        Wiring w = new ElectricFault.CommonOpenAfter("b2").in(ROW);
        ohmsAsHealthy(w, "1", "2", "MV");
        assertEquals(NEVER, ohms(w, "3"));
        assertEquals(NEVER, ohms(w, "4"));
        Map<String, Set<String>> drawn = LiveReadings.drawnByOutput(w, DRY);
        assertEquals(Set.of("v2"), drawn.get("2"));
        assertEquals(Set.of(), drawn.get("3"));
        assertEquals(Set.of(), drawn.get("4"));
        double both = new OhmReadings(w, DRY).between("3", "4");
        assertEquals(60 + 140 * 20.95e-3 + 20 * 8.286e-3 + 0.03, both, 0.005, "two coils in series beyond the break");
    }

    @Test
    void f15CoilShort() {
        Wiring w = new ElectricFault.CoilShort("v3", 0.2).in(ROW);
        assertTrue(ohms(w, "3") < 2.1, "the wires alone are left");
        assertTrue(new OhmReadings(w, DRY).coil("v3") < 0.2);
        assertEquals(Set.of("v1"), live(w, "1").drawn(), "others run until the short is switched on");
        LiveReadings on = live(w, "1", "3");
        assertEquals(Fuse.OPENS, on.fuse());
        assertEquals(Set.of(), on.drawn());
        assertEquals(0, on.supplied());
        assertEquals(0, on.volts("1", Wiring.COMMON));
        Wiring after = w.after(DRY, Panel.running("3"));
        assertEquals(Fuse.BLOWN, live(after, "1").fuse());
        LiveReadings.drawnByOutput(after, DRY).forEach((t, v) -> assertEquals(Set.of(), v, t));
        assertEquals(Set.of("v1"), live(after.withNewFuse(), "1").drawn());
        assertEquals(ROW, ROW.after(DRY, Panel.running("1", "2")));
    }

    @Test
    void f15OverloadLimitComesBack() {
        Wiring w =
                new ElectricFault.CoilShort("v3", 0.2).in(ROW.with(Wirings.transformer(1, Protection.OVERLOAD_LIMIT)));
        assertEquals(Fuse.OPENS, live(w, "3").fuse());
        assertEquals(w, w.after(DRY, Panel.running("3")));
        assertEquals(Set.of("v1"), live(w, "1").drawn());
    }

    @Test
    void f15WiresTouching() {
        Wiring w = new ElectricFault.Touching(new WireShort("v2", "v3", 30, 0.05)).in(ROW);
        assertEquals(ohms(ROW, "2") / 2, ohms(w, "2"), 1, "two coils side by side");
        assertEquals(Set.of("v2", "v3"), live(w, "2").drawn());
        Wiring toCommon = new ElectricFault.Touching(new WireShort("v2", Wiring.COMMON, 30, 0.05)).in(ROW);
        double way = 30 * (20.95e-3 + 8.286e-3);
        assertEquals(way + 0.06, ohms(toCommon, "2"), 0.01, "the way there and back");
        assertEquals(Fuse.OPENS, live(toCommon, "2").fuse());
        ohmsAsHealthy(toCommon, "1");
        assertEquals(ohms(ROW, "4"), ohms(toCommon, "4"), 1e-3, "but for the loop that the touch makes");
    }

    @Test
    void f15ShortedTurns() {
        Wiring w = new ElectricFault.ShortedTurns("v2", 0.3).in(ROW);
        assertEquals(21, new OhmReadings(w, DRY).coil("v2"), 1e-9);
        assertTrue(
                live(w, "2").amps("2") > 1.5 * live(ROW, "2").amps("2"),
                "a clamp tells it while the valve still works");
        assertEquals(Plunger.IN, live(w, "2").plunger("v2"));
        Wiring most = new ElectricFault.ShortedTurns("v2", 0.8).in(ROW);
        assertEquals(Fuse.OPENS, live(most, "2").fuse());
        Wiring strong = new ElectricFault.ShortedTurns("v2", 0.9).in(ROW.with(Wirings.transformer(9, Protection.FUSE)));
        assertEquals(Plunger.OUT, live(strong, "2").plunger("v2"), "hardly any turns are left to pull");
    }

    @Test
    void f16BadSpliceIsWorseAfterRain() {
        Wiring w = new ElectricFault.BadSplice("v2", new Splice(0.5, 5000, 20_000)).in(ROW);
        double before = 0;
        for (double wetness : new double[] {0, 0.25, 0.5, 0.75, 1}) {
            double now = new OhmReadings(w, Conditions.everywhere(20, wetness)).toCommon("2");
            assertTrue(now > before, "drifts up with wetness " + wetness);
            before = now;
        }
        assertTrue(before > 1000);
        assertEquals(Set.of("v2"), live(w, "2").drawn(), "works when dry");
        assertEquals(Set.of(), LiveReadings.of(w, WET, Panel.running("2")).drawn());
        Conditions puddle = new Conditions(20, 0, Map.of("b2", 1.0));
        assertEquals(Set.of(), LiveReadings.of(w, puddle, Panel.running("2")).drawn(), "its own box counts");
        Conditions elsewhere = new Conditions(20, 1, Map.of("b2", 0.0));
        assertEquals(
                Set.of("v2"), LiveReadings.of(w, elsewhere, Panel.running("2")).drawn());
        assertEquals(30, new OhmReadings(w, WET).coil("v2"), 1e-9);
    }

    @Test
    void f16WetSplicesLeakThroughTheSoil() {
        Splice leaky = new Splice(0.01, 0.01, 100);
        Wiring one = new ElectricFault.BadSplice("v2", leaky).in(ROW);
        assertEquals(ohms(ROW, "2"), new OhmReadings(one, WET).toCommon("2"), 1e-9, "no way back for one leak");
        assertEquals(NEVER, new OhmReadings(one, DRY).toEarth("2"));
        assertEquals(100 + 40 * 20.95e-3, new OhmReadings(one, WET).toEarth("2"), 0.01);
        Wiring two = new ElectricFault.BadCommonSplice("b1", leaky).in(one);
        double dry = new OhmReadings(two, DRY).toCommon("2");
        double damp = new OhmReadings(two, Conditions.everywhere(20, 0.5)).toCommon("2");
        double wet = new OhmReadings(two, WET).toCommon("2");
        assertTrue(dry > damp && damp > wet, dry + ", " + damp + ", " + wet);
        assertEquals(1 / (1 / 200.0 + 1 / ohms(ROW, "2")), wet, 0.3, "two leaks beside the coil");
        Wiring cut = new ElectricFault.WireCut("v3", new Cut(50, 400)).in(ROW);
        assertEquals(400 + 50 * 20.95e-3, new OhmReadings(cut, WET).toEarth("3"), 0.01, "a cut end in wet soil");
        double throughSoil = new OhmReadings(cut, WET).toCommon("3");
        assertEquals(800 + ohms(ROW, "3"), throughSoil, 0.01, "from one bare end to the other, not open");
        Wiring nearThird = new ElectricFault.WireCut("v4", new Cut(55, 400)).in(ROW);
        Conditions thirdWet = new Conditions(20, 0, Map.of("b3", 1.0));
        assertEquals(
                400 + 55 * 20.95e-3, new OhmReadings(nearThird, thirdWet).toEarth("4"), 0.01, "the nearest box's soil");
        assertEquals(NEVER, new OhmReadings(cut, new Conditions(20, 0, Map.of("b4", 1.0))).toEarth("3"));
    }

    @Test
    void f16BadCommonJointWeakensAllBeyond() {
        Wiring w = new ElectricFault.BadCommonSplice("b2", new Splice(60, 60, NEVER)).in(ROW);
        ohmsAsHealthy(w, "1", "MV");
        for (String beyond : List.of("2", "3", "4")) {
            assertEquals(ohms(ROW, beyond) + 59.99, ohms(w, beyond), 1e-9);
        }
        Set<String> several = live(w, "1", "2", "3", "4").drawn();
        assertEquals(Set.of("v1"), several, "the shared resistance keeps all beyond from going in");
        assertTrue(live(w, "2", "3").voltsAtCoil("v3") < live(w, "3").voltsAtCoil("v3"));
    }

    @Test
    void f17OutputDead() {
        Wiring w = new ElectricFault.OutputDead("2").in(ROW);
        assertEquals(0, volts(w, "2"), 1e-6);
        assertEquals(volts(ROW, "1"), volts(w, "1"), 1e-9);
        ohmsAsHealthy(w, "1", "2", "3", "4", "MV");
        assertEquals(Set.of(), live(w, "2").drawn());
        assertEquals(
                Set.of("v2"), live(w.moved("v2", "1").moved("v1", "2"), "1").drawn(), "works on a good terminal");
    }

    @Test
    void f17TransformerDeadOrFuseBlown() {
        for (ElectricFault fault : List.of(new ElectricFault.TransformerDead(), new ElectricFault.FuseBlown())) {
            Wiring w = fault.in(ROW);
            for (String terminal : List.of("1", "2", "3", "4", "MV")) {
                assertEquals(0, volts(w, terminal), 1e-6);
                ohmsAsHealthy(w, terminal);
            }
            LiveReadings.drawnByOutput(w, DRY).values().forEach(v -> assertEquals(Set.of(), v));
        }
        assertEquals(
                Fuse.BLOWN, live(new ElectricFault.FuseBlown().in(ROW), "1").fuse());
        assertEquals(
                Fuse.HOLDS,
                live(new ElectricFault.TransformerDead().in(ROW), "1").fuse());
    }

    @Test
    void f18TwoZonesOnOneOutput() {
        Wiring w = new ElectricFault.TwoOnOne("v3", "v2").in(ROW);
        assertEquals(ohms(ROW, "2") / 2, ohms(w, "2"), 0.5, "about half");
        assertEquals(NEVER, ohms(w, "3"));
        Map<String, Set<String>> drawn = LiveReadings.drawnByOutput(w, DRY);
        assertEquals(Set.of("v2", "v3"), drawn.get("2"));
        assertEquals(Set.of(), drawn.get("3"));
        double alone = live(ROW, "2").amps("2");
        assertEquals(2 * alone, live(w, "2").amps("2"), 0.05 * 2 * alone);
        Wiring small = w.with(Wirings.transformer(0.4, Protection.FUSE));
        assertEquals(Fuse.OPENS, live(small, "2").fuse(), "two valves overload a small transformer");
        assertEquals(Fuse.HOLDS, live(small, "1").fuse());
    }

    @Test
    void f18WrongOrder() {
        Wiring w = new ElectricFault.Swapped("v1", "v4").in(ROW);
        Map<String, Set<String>> drawn = LiveReadings.drawnByOutput(w, DRY);
        assertEquals(Set.of("v4"), drawn.get("1"));
        assertEquals(Set.of("v1"), drawn.get("4"));
        assertEquals(ohms(ROW, "4"), ohms(w, "1"), 1e-9);
    }

    @Test
    void f20SensorStuckOrWiredWrong() {
        Wiring w = new ElectricFault.SensorOpen().in(ROW);
        for (String terminal : List.of("1", "2", "3", "4")) {
            assertEquals(0, volts(w, terminal), 1e-3);
            ohmsAsHealthy(w, terminal);
            Panel bypassed = Panel.running(terminal).bypassed();
            assertEquals(
                    Set.of("v" + terminal), LiveReadings.of(w, DRY, bypassed).drawn());
        }
        Panel wetSensor = new Panel(Set.of("1"), true, false);
        assertEquals(Set.of(), LiveReadings.of(ROW, DRY, wetSensor).drawn(), "a sound sensor stops it when it holds");
        Wiring bridged = new ElectricFault.SensorShorted().in(ROW);
        assertEquals(Set.of("v1"), LiveReadings.of(bridged, DRY, wetSensor).drawn());
    }

    @Test
    void aWeakHoldChatters() {
        Coil weak = new Coil(30, 0.2419, 0.1378, 0.28, 0.35, false, 0, NEVER);
        Wiring w = ROW.wire("v2", z -> z.with(weak));
        assertEquals(Plunger.CHATTERS, live(w, "2").plunger("v2"));
        assertEquals(Set.of(), live(w, "2").drawn());
    }

    @Test
    void lowerFrequencyAndColdDrawMore() {
        Transformer fifty = new Transformer(27, 3, 50, 1, Protection.FUSE, false, false);
        assertTrue(live(ROW.with(fifty), "2").amps("2") > live(ROW, "2").amps("2"));
        double cold = LiveReadings.of(ROW, Conditions.everywhere(-5, 0), Panel.running("2"))
                .amps("2");
        assertTrue(cold > live(ROW, "2").amps("2"));
        assertTrue(new OhmReadings(ROW, Conditions.everywhere(-5, 0)).toCommon("2") < ohms(ROW, "2"));
    }

    @Test
    void anEarthedCommonIsSeenFromEarth() {
        Wiring w = new Wiring(
                ROW.transformer(),
                ROW.sensor(),
                ROW.outputs(),
                ROW.common(),
                ROW.boxes(),
                ROW.wires(),
                ROW.shorts(),
                25);
        assertEquals(25, new OhmReadings(w, DRY).toEarth(Wiring.COMMON), 1e-9);
        assertEquals(25 + ohms(ROW, "2"), new OhmReadings(w, DRY).toEarth("2"), 1e-9);
        assertEquals(0, new OhmReadings(w, DRY).between("2", "2"));
    }

    @Test
    void theOrderOfValvesDoesNotMatter() {
        Wiring w = new ElectricFault.Touching(new WireShort("v2", "v3", 30, 3)).in(ROW);
        List<ZoneWire> turned = new ArrayList<>(w.wires());
        Collections.reverse(turned);
        Wiring other = new Wiring(
                w.transformer(), w.sensor(), w.outputs(), w.common(), w.boxes(), turned, w.shorts(), w.earthOhms());
        for (String terminal : List.of("1", "2", "3", "4", "MV")) {
            assertEquals(ohms(w, terminal), ohms(other, terminal), 1e-9);
            assertEquals(volts(w, terminal), volts(other, terminal), 1e-9);
            assertEquals(live(w, terminal).drawn(), live(other, terminal).drawn());
        }
    }

    @Test
    void aCutOrATouchAtABoxCountsToo() {
        Wiring cut = new ElectricFault.CommonCut(new Cut(40, NEVER)).in(ROW);
        ohmsAsHealthy(cut, "1", "MV");
        assertEquals(NEVER, ohms(cut, "2"));
        assertEquals(NEVER, ohms(cut, "3"));
        Wiring touch = new ElectricFault.Touching(new WireShort("v2", Wiring.COMMON, 40, 0.05)).in(ROW);
        assertTrue(ohms(touch, "2") < 1.3);
    }

    @Test
    void namesAndPlacesThatAreNotThereAreRefused() {
        assertRefused(() -> new ElectricFault.CoilOpen("v9").in(ROW));
        assertRefused(() -> new ElectricFault.CommonOpenAfter("b4").in(ROW));
        assertRefused(() -> new ElectricFault.WireCut("v1", new Cut(20, NEVER)).in(ROW));
        assertRefused(() -> new ElectricFault.CommonCut(new Cut(80, NEVER)).in(ROW));
        assertRefused(() -> new ElectricFault.Touching(new WireShort("v1", "v2", 21, 1)).in(ROW));
        assertRefused(() -> new ElectricFault.OutputDead("9").in(ROW));
        assertRefused(() -> ROW.moved("v1", "9"));
        assertRefused(() -> live(ROW, "9"));
        assertRefused(() -> ohms(ROW, "9"));
        assertRefused(() -> ROW.box("b9"));
    }

    private static void assertRefused(Executable act) {
        assertThrows(IllegalArgumentException.class, act);
    }
}
