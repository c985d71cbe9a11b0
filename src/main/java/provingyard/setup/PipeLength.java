package provingyard.setup;

import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;

/** How long a pipe is. */
public final class PipeLength {

    private PipeLength() {}

    /** Given or drawn length of a pipe in m; the plumbing is one that was read without errors. */
    public static double of(Plumbing plumbing, String id) {
        Plumbing.Pipe pipe = plumbing.pipes().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
        if (pipe.length() != null) {
            return pipe.length();
        }
        Point at = junction(plumbing, pipe.from());
        double length = 0;
        for (Point corner : pipe.via()) {
            length += at.distance(corner);
            at = corner;
        }
        return length + at.distance(junction(plumbing, pipe.to()));
    }

    private static Point junction(Plumbing plumbing, String id) {
        return plumbing.junctions().stream()
                .filter(j -> j.id().equals(id))
                .map(Plumbing.Junction::at)
                .findFirst()
                .orElseThrow();
    }
}
