package provingyard.world.electric;

import provingyard.world.electric.SensorLoop.State;

/**
 * An electrical fault, as the change that it makes to a wiring. Faults can be applied one after the other. Names that the
 * wiring does not know are refused with an {@link IllegalArgumentException}.
 */
public sealed interface ElectricFault {

    /** The wiring with the fault. */
    Wiring in(Wiring wiring);

    /** The winding of a valve's coil is broken. */
    record CoilOpen(String valve) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.wire(valve, w -> w.with(w.coil().asOpen()));
        }
    }

    /** A share of the turns of a valve's coil is shorted, above 0 and below 1. */
    record ShortedTurns(String valve, double share) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.wire(valve, w -> w.with(w.coil().withShortedTurns(share)));
        }
    }

    /** The leads of a valve's coil touch, with so many ohms. */
    record CoilShort(String valve, double ohms) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.wire(valve, w -> w.with(w.coil().withShort(ohms)));
        }
    }

    /** A valve's own wire is cut. */
    record WireCut(String valve, Cut cut) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            cutWithin(wiring, valve, cut);
            return wiring.wire(valve, w -> w.with(cut));
        }
    }

    /** The common is cut half way between a box and the next, dry ended. */
    record CommonOpenAfter(String box) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            int at = wiring.boxes().indexOf(wiring.box(box));
            if (at == wiring.boxes().size() - 1) {
                throw new IllegalArgumentException("There is no common after the last box, " + box);
            }
            double middle = (wiring.boxes().get(at).metres()
                            + wiring.boxes().get(at + 1).metres())
                    / 2;
            return new CommonCut(new Cut(middle, Double.POSITIVE_INFINITY)).in(wiring);
        }
    }

    /** The common is cut anywhere. */
    record CommonCut(Cut cut) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            cutWithin(wiring, Wiring.COMMON, cut);
            return wiring.with(wiring.common().with(cut));
        }
    }

    /** Two wires touch. */
    record Touching(WireShort touch) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            touchWithin(wiring, touch.wire(), touch.metres());
            touchWithin(wiring, touch.other(), touch.metres());
            return wiring.with(touch);
        }
    }

    /** A bad joint between a valve's wire and its coil. */
    record BadSplice(String valve, Splice splice) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.wire(valve, w -> w.with(splice));
        }
    }

    /** A bad joint of the common in a box. */
    record BadCommonSplice(String box, Splice splice) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.box(box, b -> b.with(splice));
        }
    }

    /** An output never switches on. */
    record OutputDead(String terminal) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.output(terminal, Output::asDead);
        }
    }

    /** The transformer gives nothing. */
    record TransformerDead() implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.with(wiring.transformer().asDead());
        }
    }

    /** The fuse is blown. */
    record FuseBlown() implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.with(wiring.transformer().asBlown(true));
        }
    }

    /** Two valves on one output: the first is put on the other's terminal. */
    record TwoOnOne(String valve, String other) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.moved(valve, wiring.wire(other).terminal());
        }
    }

    /** Two valves on each other's terminals. */
    record Swapped(String valve, String other) implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            String kept = wiring.wire(valve).terminal();
            return wiring.moved(valve, wiring.wire(other).terminal()).moved(other, kept);
        }
    }

    /** The sensor's loop never closes: cut, stuck wet or on the wrong contact. */
    record SensorOpen() implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.with(wiring.sensor().in(State.OPEN));
        }
    }

    /** The sensor's loop is bridged and never opens. */
    record SensorShorted() implements ElectricFault {
        @Override
        public Wiring in(Wiring wiring) {
            return wiring.with(wiring.sensor().in(State.SHORTED));
        }
    }

    /** A wire is cut before its end. */
    private static void cutWithin(Wiring wiring, String wire, Cut cut) {
        if (cut.metres() >= wiring.length(wire)) {
            throw beyond(wiring, wire, cut.metres());
        }
    }

    private static void touchWithin(Wiring wiring, String wire, double metres) {
        if (metres > wiring.length(wire)) {
            throw beyond(wiring, wire, metres);
        }
    }

    private static IllegalArgumentException beyond(Wiring wiring, String wire, double metres) {
        return new IllegalArgumentException(
                "Wire " + wire + " ends at " + wiring.length(wire) + " m, before " + metres + " m");
    }
}
