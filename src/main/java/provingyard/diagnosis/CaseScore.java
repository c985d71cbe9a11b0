package provingyard.diagnosis;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Score of a service call, 0 to 100, as a sum of named lines; a pure function of its steps.
 *
 * <p>The key idea: what the evidence supports is credited, not a lucky hit. Making safe, requests, repairs and checks
 * are outside the tests and their minutes. All weights are design; the columns (redundant tests, early conclusions,
 * unsupported swaps, no check after a repair) are those of the literature on troubleshooting.
 *
 * @param lines what gave or took points, unsafe acts first, then in the order of {@link Kind}
 * @param total points, 0 to 100
 * @param unsafe what was unsafe, in the order of {@link Hazard}
 * @param flags what to talk about
 * @param informationShare S, expected bits by the best bits of the same minutes, 0 to 1
 * @param redundant redundant tests
 * @param tests judged actions
 * @param minutes minutes of judged actions
 */
public record CaseScore(
        List<Line> lines,
        double total,
        Set<Hazard> unsafe,
        Set<Flag> flags,
        double informationShare,
        int redundant,
        int tests,
        double minutes) {

    /** Most points of a case with an unsafe act. */
    public static final double CAP = 59;

    /** Probability at which a statement is supported in full. */
    public static final double SUPPORTED = 0.90;

    private static final double ANSWER = 45;
    private static final double TIME = 25;
    private static final double PROCESS = 20;
    private static final double ECONOMY = 10;
    private static final double EARLY = 30;
    private static final double DIG = 5;
    private static final double UNVERIFIED = 5;
    private static final double WATER = 10;

    /** As slow as this times the reference costs nothing. */
    private static final double EASE = 1.25;

    /** Litres that nobody asks about. */
    private static final double SMALL_WATER = 50;

    private static final int ONE_SIDED = 3;

    /** What points are given and taken for, with the keys of their names. */
    public enum Kind {
        UNSAFE("line.unsafe"),
        ANSWER("line.answer"),
        TIME("line.time"),
        PROCESS("line.process"),
        ECONOMY("line.economy"),
        EARLY("line.early"),
        DIGS("line.digs"),
        UNVERIFIED("line.unverified"),
        WATER("line.water"),
        /** What a sum below 0 is given back. */
        BOTTOM("line.bottom");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        /** Key of its name. */
        public String key() {
            return key;
        }
    }

    /** Things to talk about, never scored by themselves, with the keys of their texts. */
    public enum Flag {
        UNSAFE("flag.unsafe"),
        REDUNDANT("flag.redundant"),
        UNSUPPORTED_DIG("flag.unsupportedDig"),
        STOPPED_EARLY("flag.stoppedEarly"),
        UNVERIFIED("flag.unverified"),
        ONE_SIDED("flag.oneSided");

        private final String key;

        Flag(String key) {
            this.key = key;
        }

        /** Key of its text. */
        public String key() {
            return key;
        }
    }

    /** Points of one kind; negative ones are taken. */
    public record Line(Kind kind, double points) {}

    /**
     * Water that ran away, in litres.
     *
     * @param lost in this case
     * @param reference on the reference's path
     */
    public record Water(double lost, double reference) {

        /** Nothing was lost, by nobody. */
        public static final Water NONE = new Water(0, 0);
    }

    public CaseScore {
        lines = List.copyOf(lines);
    }

    /**
     * The score:
     *
     * <pre>
     * ev = min(1, P_d/0.90)   A = ok ev   S = sum EIG / sum min(rho* c, H)   R redundant of n tests
     * D = 45 A + 25 A min(1, 1.25 T_ref/T) + 20 S ev + 10 (1 - R/n)
     *     - 30 max(0, 0.90 - P_d)/0.90 - 5 max(0, unsupported digs - 1) - 5 [no check after a repair]
     *     - 10 (1 - min(1, (W_ref + 50)/(W + 50)))
     * </pre>
     *
     * with H the bits that were left before a test: no action can tell more. Kept within 0 and 100, and at most 59 after an
     * unsafe act. Without a test S and the line of redundant tests give nothing.
     *
     * @param referenceMinutes T_ref, mean minutes of the reference
     */
    public static CaseScore of(List<Step> steps, Declaration declaration, double referenceMinutes, Water water) {
        List<Step> judged = steps.stream().filter(s -> s.kind().judged()).toList();
        int n = judged.size();
        int redundant = (int) judged.stream().filter(Step::redundant).count();
        double minutes = judged.stream().mapToDouble(Step::minutes).sum();
        double share = informationShare(judged);
        long digs = judged.stream().filter(Step::unsupported).count();
        boolean unverified = isUnverified(steps);
        double ev = Math.min(1, declaration.probability() / SUPPORTED);
        double answer = declaration.hit().credit() * ev;
        double pace = minutes > 0 ? Math.min(1, EASE * referenceMinutes / minutes) : 1;

        List<Line> lines = new ArrayList<>();
        lines.add(new Line(Kind.ANSWER, ANSWER * answer));
        lines.add(new Line(Kind.TIME, TIME * answer * pace));
        lines.add(new Line(Kind.PROCESS, PROCESS * share * ev));
        lines.add(new Line(Kind.ECONOMY, n > 0 ? ECONOMY * (n - redundant) / n : 0));
        lines.add(new Line(Kind.EARLY, -EARLY * Math.max(0, SUPPORTED - declaration.probability()) / SUPPORTED));
        lines.add(new Line(Kind.DIGS, -DIG * Math.max(0, digs - 1)));
        lines.add(new Line(Kind.UNVERIFIED, unverified ? -UNVERIFIED : 0));
        lines.add(new Line(Kind.WATER, -WATER * (1 - waterShare(water))));

        Set<Hazard> unsafe = unsafe(steps);
        return new CaseScore(
                bounded(lines, unsafe),
                total(bounded(lines, unsafe)),
                unsafe,
                flags(steps, judged, declaration, unsafe),
                share,
                redundant,
                n,
                minutes);
    }

    private static double informationShare(List<Step> judged) {
        double gain = judged.stream().mapToDouble(Step::gain).sum();
        double best = judged.stream().mapToDouble(Step::bestBits).sum();
        return best > 0 ? Math.min(1, gain / best) : 0;
    }

    private static double waterShare(Water water) {
        return Math.min(1, (water.reference() + SMALL_WATER) / (water.lost() + SMALL_WATER));
    }

    private static boolean isUnverified(List<Step> steps) {
        boolean open = false;
        for (Step step : steps) {
            open = step.kind() == Action.Kind.REPAIR || open && step.kind() != Action.Kind.VERIFY;
        }
        return open;
    }

    private static Set<Hazard> unsafe(List<Step> steps) {
        Set<Hazard> unsafe = EnumSet.noneOf(Hazard.class);
        steps.forEach(s -> unsafe.addAll(s.breaches()));
        return unsafe;
    }

    /** The lines with what brings their sum between 0 and 100, and under the cap. */
    private static List<Line> bounded(List<Line> lines, Set<Hazard> unsafe) {
        List<Line> all = new ArrayList<>(lines);
        double sum = total(lines);
        if (sum < 0) {
            all.add(new Line(Kind.BOTTOM, -sum));
        }
        if (!unsafe.isEmpty()) {
            all.add(0, new Line(Kind.UNSAFE, Math.min(0, CAP - Math.max(0, sum))));
        }
        return all;
    }

    private static double total(List<Line> lines) {
        double sum = 0;
        for (Line line : lines) {
            sum += line.points();
        }
        return sum;
    }

    private static Set<Flag> flags(List<Step> steps, List<Step> judged, Declaration declaration, Set<Hazard> unsafe) {
        Set<Flag> flags = EnumSet.noneOf(Flag.class);
        raise(flags, Flag.UNSAFE, !unsafe.isEmpty());
        raise(flags, Flag.REDUNDANT, judged.stream().anyMatch(Step::redundant));
        raise(flags, Flag.UNSUPPORTED_DIG, judged.stream().anyMatch(Step::unsupported));
        raise(flags, Flag.STOPPED_EARLY, declaration.probability() < SUPPORTED);
        raise(flags, Flag.UNVERIFIED, isUnverified(steps));
        raise(flags, Flag.ONE_SIDED, isOneSided(judged));
        return flags;
    }

    private static void raise(Set<Flag> flags, Flag flag, boolean so) {
        if (so) {
            flags.add(flag);
        }
    }

    private static boolean isOneSided(List<Step> judged) {
        int inARow = 0;
        for (Step step : judged) {
            inARow = step.tellsApart() ? 0 : inARow + 1;
            if (inARow == ONE_SIDED) {
                return true;
            }
        }
        return false;
    }
}
