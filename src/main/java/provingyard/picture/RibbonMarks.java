package provingyard.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import provingyard.scenario.SensorKind;

/**
 * Where the marks of sensors and signs stand: alike ones that would touch become one with a count, and all are packed
 * into rows so that none lies on another. Where there is no room a mark goes without its word.
 */
final class RibbonMarks {

    /** Height of a row in px. */
    static final double ROW = 16;

    private static final double HALF = 8;
    private static final double GAP = 4;
    private static final int MOST_ROWS = 3;

    /**
     * A mark.
     *
     * @param x px of its disc's or sign's middle
     * @param row 0 is the uppermost
     * @param kind the sensor that held, or null for a sign
     * @param sign the sign, or null for a sensor
     * @param bars px from and to of what it held; empty for signs
     * @param word as it is shown, behind the last bar; empty where there is no room
     * @param wordAt px where the word begins
     * @param end px of its right end
     */
    record Mark(
            double x,
            int row,
            SensorKind kind,
            RibbonData.SignKind sign,
            List<double[]> bars,
            String word,
            double wordAt,
            double end) {

        double start() {
            return x - HALF;
        }
    }

    /** Several marks of one kind in the making. */
    private static final class Group {
        private final double x;
        private final SensorKind kind;
        private final RibbonData.SignKind sign;
        private final String word;
        private final List<double[]> bars = new ArrayList<>();
        private double end;
        private int count = 1;
        private int row;
        private double held;

        Group(double x, SensorKind kind, RibbonData.SignKind sign, String word) {
            this.x = x;
            this.kind = kind;
            this.sign = sign;
            this.word = word;
            end = x + HALF;
        }

        void bar(double from, double to) {
            bars.add(new double[] {from, to});
            end = Math.max(end, to);
        }
    }

    private final RibbonView view;
    private final RibbonWords words;
    private final ToDoubleFunction<String> width;

    RibbonMarks(RibbonView view, RibbonWords words, ToDoubleFunction<String> width) {
        this.view = view;
        this.words = words;
        this.width = width;
    }

    /** Rows that a ribbon's marks get. */
    static int rows(RibbonData data) {
        return Math.max(1, Math.min(MOST_ROWS, data.holders()));
    }

    /** All marks in view, in the order of time. */
    List<Mark> lay(RibbonData data) {
        double[] free = new double[rows(data)];
        Arrays.fill(free, Double.NEGATIVE_INFINITY);
        List<Group> groups = new ArrayList<>(signs(data));
        groups.addAll(holds(data));
        groups.sort(Comparator.comparingDouble((Group g) -> g.x).thenComparing(g -> g.sign == null));
        for (Group g : groups) {
            g.row = firstFree(free, g.x - HALF);
            free[g.row] = Math.max(free[g.row], g.end + GAP + (g.sign == null ? 0 : width.applyAsDouble(g.word)));
        }
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            marks.add(spoken(groups.get(i), room(groups, i)));
        }
        return marks;
    }

    /** px up to which a mark's word may reach: the next mark of its row. */
    private double room(List<Group> groups, int at) {
        for (int i = at + 1; i < groups.size(); i++) {
            if (groups.get(i).row == groups.get(at).row) {
                return Math.min(view.end(), groups.get(i).x - HALF - GAP);
            }
        }
        return view.end();
    }

    private Mark spoken(Group g, double room) {
        String word = g.kind == null ? words.times(g.word, g.count) : words.held(g.word, g.count, g.held);
        double at = (g.kind == null ? g.x + HALF : g.end) + 3;
        double end = at + width.applyAsDouble(word);
        boolean fits = !word.isEmpty() && end <= room;
        return new Mark(g.x, g.row, g.kind, g.sign, g.bars, fits ? word : "", at, fits ? Math.max(g.end, end) : g.end);
    }

    /** The uppermost row that is free at a place, or the one that is soonest. */
    private static int firstFree(double[] free, double from) {
        int soonest = 0;
        for (int row = 0; row < free.length; row++) {
            if (free[row] <= from) {
                return row;
            }
            soonest = free[row] < free[soonest] ? row : soonest;
        }
        return soonest;
    }

    private List<Group> signs(RibbonData data) {
        List<Group> all = new ArrayList<>();
        Map<String, Group> last = new LinkedHashMap<>();
        for (RibbonData.Sign sign : data.signs()) {
            double x = view.x(sign.tick());
            if (x < RibbonView.GUTTER || x > view.end()) {
                continue;
            }
            Group before = last.get(sign.kind() + sign.word());
            if (before != null && x - before.end < width.applyAsDouble(words.times(sign.word(), 2)) + GAP) {
                before.count++;
                before.end = x + HALF;
            } else {
                Group group = new Group(x, null, sign.kind(), sign.word());
                last.put(sign.kind() + sign.word(), group);
                all.add(group);
            }
        }
        return all;
    }

    private List<Group> holds(RibbonData data) {
        List<Group> all = new ArrayList<>();
        Map<String, Group> last = new LinkedHashMap<>();
        for (RibbonData.Hold hold : data.holds()) {
            double to = view.x(Math.min(hold.to(), data.livedUntil()));
            double x = Math.max(RibbonView.GUTTER + HALF + 1, view.x(hold.from()));
            if (to < RibbonView.GUTTER || x > view.end()) {
                continue;
            }
            Group before = last.get(hold.sensor());
            if (before != null && x - before.end < 2 * HALF) {
                before.count++;
            } else {
                before = new Group(x, hold.kind(), null, hold.word());
                last.put(hold.sensor(), before);
                all.add(before);
            }
            before.bar(x, Math.max(to, x));
            before.held += Math.min(hold.to(), data.livedUntil()) - hold.from();
        }
        return all;
    }
}
