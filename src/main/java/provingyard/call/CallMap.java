package provingyard.call;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import provingyard.diagnosis.Hypothesis;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;

/**
 * Where everything that may be wrong lies on the plan, in m.
 *
 * @param mains the cells of the mainlines
 * @param spots places of all other repair classes; those that have none, such as nothing being wrong, are missing
 */
public record CallMap(List<Stretch> mains, Map<String, Point> spots) {

    /** A cell of a mainline: its way and the m of pipe before it. */
    public record Stretch(String repairClass, String pipe, double from, double to, List<Point> way) {

        public Stretch {
            way = List.copyOf(way);
        }
    }

    /** m between the points that a cell's way is drawn through. */
    private static final double STEP = 0.25;

    public CallMap {
        mains = List.copyOf(mains);
    }

    /** The map of a site. */
    public static CallMap of(CallSite site) {
        Ground ground = site.ground();
        List<Stretch> mains = new ArrayList<>();
        for (String pipe : ground.pipes().mainline()) {
            int cells = ground.suspects().cells(pipe).size();
            double each = ground.pipes().path(pipe).length() / cells;
            for (int i = 0; i < cells; i++) {
                String repairClass = ground.suspects().cellClass(pipe, (i + 0.5) * each);
                mains.add(new Stretch(
                        repairClass, pipe, i * each, (i + 1) * each, way(ground, pipe, i * each, (i + 1) * each)));
            }
        }
        Map<String, Point> spots = new LinkedHashMap<>();
        for (int h = 0; h < site.hypotheses().size(); h++) {
            Hypothesis hypothesis = site.hypotheses().get(h);
            if (!hypothesis.repairClass().startsWith(Suspects.MAIN)) {
                place(site, hypothesis).ifPresent(at -> spots.putIfAbsent(hypothesis.repairClass(), at));
            }
        }
        return new CallMap(mains, spots);
    }

    private static List<Point> way(Ground ground, String pipe, double from, double to) {
        int steps = (int) Math.max(1, Math.ceil((to - from) / STEP));
        List<Point> way = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            way.add(ground.pipes().path(pipe).pointAt(from + (to - from) * i / steps));
        }
        return way;
    }

    private static Optional<Point> place(CallSite site, Hypothesis hypothesis) {
        Point known = site.place(hypothesis.place());
        if (known != null) {
            return Optional.of(known);
        }
        Plumbing plumbing = site.scenario().plumbing();
        Optional<Point> junction = plumbing.junctions().stream()
                .filter(j -> j.id().equals(hypothesis.place()))
                .map(Plumbing.Junction::at)
                .findFirst();
        if (junction.isPresent()) {
            return junction;
        }
        boolean pipe = plumbing.pipes().stream().anyMatch(p -> p.id().equals(hypothesis.place()));
        if (pipe) {
            var path = site.ground().pipes().path(hypothesis.place());
            return Optional.of(path.pointAt(path.length() / 2));
        }
        for (SensorKind kind : SensorKind.values()) {
            if (kind.name().equalsIgnoreCase(hypothesis.place())) {
                return site.ground().installed().of(kind).stream().findFirst().map(p -> site.place(p.id()));
            }
        }
        return Optional.empty();
    }

    /** Where a fault is. */
    static Optional<Point> place(CallSite site, int fault) {
        FaultPlan plan = site.faults().get(fault);
        if (plan.kind() == FaultPlan.Kind.MAINLINE_BREAK
                || plan.kind() == FaultPlan.Kind.MAINLINE_LEAK
                || plan.kind() == FaultPlan.Kind.LATERAL_BREAK) {
            return Optional.of(site.ground().pipes().path(plan.on()).pointAt(plan.along()));
        }
        return Optional.ofNullable(of(site).spots().get(site.repairClass(fault)));
    }
}
