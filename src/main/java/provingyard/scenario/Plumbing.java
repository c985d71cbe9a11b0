package provingyard.scenario;

import com.fasterxml.jackson.databind.EnumNamingStrategies.CamelCaseStrategy;
import com.fasterxml.jackson.databind.annotation.EnumNaming;
import java.util.List;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/**
 * Supply, pipes, what sits in them, and heads.
 *
 * <p>The order along the way is the author's: usually supply, meter, backflow preventer, master valve, mainline, zone
 * valves, laterals, heads. A fitting sits on a pipe at a distance from its {@code from} end. Pipes beyond a zone valve
 * are that zone's laterals; a head taps the nearest point of its zone's laterals.
 */
public record Plumbing(
        Friction friction,
        Supply supply,
        List<Junction> junctions,
        List<Pipe> pipes,
        List<Fitting> fittings,
        List<Head> heads,
        List<DripLine> drips) {

    /** Friction law. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum Friction {
        HAZEN_WILLIAMS,
        DARCY_WEISBACH
    }

    /** What feeds the site. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum SupplyKind {
        /** Constant static pressure. */
        FIXED,
        /** Static pressure and one flowing test point. */
        CURVE,
        /** A pump with a curve of three points over a suction at atmospheric pressure. */
        PUMP
    }

    /**
     * The supply.
     *
     * @param junction where it joins
     * @param pressure static pressure at that junction's elevation in Pa (fixed and curve)
     * @param points flowing test point (curve: one) or pump curve (three, first at no flow)
     */
    public record Supply(
            SupplyKind kind,
            String junction,
            @In(Dimension.PRESSURE) double pressure,
            List<FlowingPoint> points) {}

    /** Pressure (Pa) at a flow (m3/s). */
    public record FlowingPoint(
            @In(Dimension.FLOW) double flow,
            @In(Dimension.PRESSURE) double pressure) {}

    /** Where pipes join; elevation in m over the yard's datum. */
    public record Junction(
            String id, Point at, @In(Dimension.LENGTH) double elevation) {}

    /**
     * A pipe.
     *
     * @param size nominal size in m
     * @param make catalogue id
     * @param via corners of the way between its ends
     * @param length m; null for the drawn length
     * @param losses sum of minor loss coefficients on the pipe's velocity head
     */
    public record Pipe(
            String id,
            String from,
            String to,
            @In(Dimension.LENGTH) double size,
            String make,
            List<Point> via,
            @In(Dimension.LENGTH) Double length,
            double losses) {}

    /** What sits in a pipe. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum FittingKind {
        METER,
        BACKFLOW_PREVENTER,
        MASTER_VALVE,
        ISOLATION_VALVE,
        ZONE_VALVE,
        REGULATOR,
        CHECK_VALVE,
        FILTER
    }

    /** State at rest of a master valve. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum Normally {
        /** Lives at all hours, shut on alarm only. */
        OPEN,
        /** Opens with each run. */
        CLOSED
    }

    /**
     * A fitting.
     *
     * @param label a zone's name; may be absent
     * @param on pipe id
     * @param along m from the pipe's {@code from} end
     * @param size nominal size in m
     * @param losses loss coefficient on its own size's velocity head when open
     * @param opensAt backflow preventers: Pa lost before any flow passes
     * @param setting regulators: Pa held downstream (0 elsewhere)
     * @param normally master valves only (null elsewhere)
     */
    public record Fitting(
            String id,
            FittingKind kind,
            Text label,
            String on,
            @In(Dimension.LENGTH) double along,
            @In(Dimension.LENGTH) double size,
            double losses,
            @In(Dimension.PRESSURE) double opensAt,
            @In(Dimension.PRESSURE) double setting,
            Normally normally) {}

    /**
     * A sprinkler head.
     *
     * @param zone id of its zone valve
     * @param nozzle catalogue id
     * @param from bearing in degrees where the arc begins
     * @param sweep degrees clockwise
     * @param radius m set by the radius screw; null for the nozzle's own
     */
    public record Head(
            String id,
            String zone,
            Point at,
            String nozzle,
            @In(Dimension.ANGLE) double from,
            @In(Dimension.ANGLE) double sweep,
            @In(Dimension.LENGTH) Double radius) {}

    /**
     * A drip line: emitters along a way.
     *
     * @param emitters how many
     * @param nozzle catalogue id of the emitter (flow per emitter)
     */
    public record DripLine(String id, String zone, List<Point> way, int emitters, String nozzle) {}
}
