package provingyard.ui;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import provingyard.scenario.SensorKind;
import provingyard.setup.FlowWatch;
import provingyard.setup.Interlock;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * What a tutor beside the chair would say, and when to keep silent: at most one hint at a time, some quiet between two,
 * none again that was waved away on this visit, and none ever again that was followed once. Knows no control and no
 * clock.
 */
final class Hints {

    /** Seconds without a sensor until help is offered. */
    static final double IDLE = 60;

    /** Seconds that a half-done setting may stand before it is spoken of. */
    static final double SETTLED = 12;

    /** Seconds of quiet after a hint went. */
    static final double QUIET = 20;

    /** Season minutes that a sensor may stand without ever tripping. */
    static final long NEVER = 14 * 1440;

    /** A score under which a word is due. */
    static final int LOW = 30;

    /** The hints, the most urgent first. */
    enum Hint {
        AFTER_RAIN,
        LOW_SCORE,
        NOTHING_PLACED,
        IN_SPRAY,
        NO_ACTION,
        NEVER_TRIPPED;

        /** Key of its text, which is also its name in a learner's file. */
        String key() {
            return "hint." + name();
        }
    }

    /**
     * What is seen at a moment.
     *
     * @param seconds since the site was opened
     * @param setUp as it stands
     * @param inSpray ids of sensors above ground that are sprayed
     * @param lived minutes of the season
     * @param placedAt tick from which each placed sensor stands, by id
     * @param tripped ids of sensors that tripped at least once
     * @param score points of the season that is over; null while there are none
     */
    record Seen(
            double seconds,
            SetUp setUp,
            Set<String> inSpray,
            long lived,
            java.util.Map<String, Long> placedAt,
            Set<String> tripped,
            Integer score) {}

    private final Set<Hint> away = EnumSet.noneOf(Hint.class);
    private final Set<Hint> followed = EnumSet.noneOf(Hint.class);
    private final boolean rained;
    private Hint shown;
    private SetUp setUp;
    private double changed;
    private double quietUntil;

    /**
     * Hints for a visit to a site.
     *
     * @param known keys of hints that were followed before
     * @param rained whether the learner is here for the first time, and the clock waters after rain before their eyes
     */
    Hints(Collection<String> known, boolean rained) {
        this.rained = rained;
        for (Hint hint : Hint.values()) {
            if (known.contains(hint.key())) {
                away.add(hint);
            }
        }
    }

    /** The hint that is due; empty for none. */
    Optional<Hint> look(Seen seen) {
        if (!seen.setUp().equals(setUp)) {
            setUp = seen.setUp();
            changed = seen.seconds();
        }
        if (shown != null && !holds(shown, seen)) {
            followed.add(shown);
            away.add(shown);
            gone(seen.seconds());
        }
        if (shown == null && seen.seconds() >= quietUntil) {
            shown = List.of(Hint.values()).stream()
                    .filter(h -> !away.contains(h) && holds(h, seen))
                    .findFirst()
                    .orElse(null);
        }
        return Optional.ofNullable(shown);
    }

    /** The hint that is shown is waved away. */
    void dismiss(double seconds) {
        if (shown != null) {
            away.add(shown);
            gone(seconds);
        }
    }

    private void gone(double seconds) {
        shown = null;
        quietUntil = seconds + QUIET;
    }

    /** Hints that were followed since this was asked last. */
    Set<Hint> takeFollowed() {
        Set<Hint> taken = EnumSet.noneOf(Hint.class);
        taken.addAll(followed);
        followed.clear();
        return taken;
    }

    private boolean holds(Hint hint, Seen seen) {
        boolean settled = hint == shown || seen.seconds() - changed >= SETTLED;
        boolean nothing = seen.setUp().sensors().isEmpty();
        return switch (hint) {
            case AFTER_RAIN -> rained && nothing;
            case NOTHING_PLACED -> nothing && (hint == shown || seen.seconds() - changed >= IDLE);
            case LOW_SCORE -> seen.score() != null && seen.score() < LOW;
            case IN_SPRAY -> settled && !seen.inSpray().isEmpty();
            case NO_ACTION -> settled && seen.setUp().sensors().stream().anyMatch(p -> idle(p, seen.setUp()));
            case NEVER_TRIPPED -> seen.setUp().sensors().stream().anyMatch(p -> silent(p, seen));
        };
    }

    /** Whether a sensor trips for nothing, because the controller does nothing then. */
    private static boolean idle(Placement placement, SetUp setUp) {
        if (placement.kind() == SensorKind.FLOW) {
            FlowWatch watch = setUp.flowWatch();
            return !placement.id().equals(watch.sensor());
        }
        return setUp.interlocks().stream()
                .noneMatch(i -> i.sensor().equals(placement.id()) && i.action() != Interlock.Action.NONE);
    }

    private static boolean silent(Placement placement, Seen seen) {
        // Rain falls on every site; a flow sensor that never trips may be just right.
        Long since = seen.placedAt().get(placement.id());
        return placement.kind() == SensorKind.RAIN
                && since != null
                && seen.lived() - since >= NEVER
                && !seen.tripped().contains(placement.id());
    }
}
