package provingyard.scenario;

import com.fasterxml.jackson.databind.EnumNamingStrategies.CamelCaseStrategy;
import com.fasterxml.jackson.databind.annotation.EnumNaming;
import java.util.List;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/** Soils, plants, paving, nozzles and pipe makes by id; shipped in {@code shared/reference/catalogue.json}. */
public record Catalogue(
        List<Soil> soils, List<Plant> plants, List<Paving> pavings, List<Nozzle> nozzles, List<PipeMake> pipes) {

    /**
     * A soil; water contents are volume shares.
     *
     * @param conductivity saturated hydraulic conductivity for infiltration in m/s
     * @param suction wetting-front suction head in m (Green-Ampt)
     * @param drainage time in which drainable water above field capacity falls to a tenth, in s
     */
    public record Soil(
            String id,
            Text name,
            @In(Dimension.FRACTION) double saturation,
            @In(Dimension.FRACTION) double fieldCapacity,
            @In(Dimension.FRACTION) double wiltingPoint,
            @In(Dimension.RATE) double conductivity,
            @In(Dimension.LENGTH) double suction,
            @In(Dimension.DURATION) double drainage) {}

    /**
     * A planting.
     *
     * @param coefficient crop or landscape coefficient
     * @param roots root depth in m
     * @param depletion allowable depletion p as a share of the available water
     * @param height m
     */
    public record Plant(
            String id,
            Text name,
            @In(Dimension.FRACTION) double coefficient,
            @In(Dimension.LENGTH) double roots,
            @In(Dimension.FRACTION) double depletion,
            @In(Dimension.LENGTH) double height) {}

    /** A pavement material: slab thickness m, conductivity W/(m K), specific heat J/(kg K), density kg/m3. */
    public record Paving(
            String id,
            Text name,
            @In(Dimension.LENGTH) double thickness,
            @In(Dimension.CONDUCTIVITY) double conductivity,
            @In(Dimension.SPECIFIC_HEAT) double specificHeat,
            @In(Dimension.DENSITY) double density,
            @In(Dimension.FRACTION) double albedo,
            @In(Dimension.FRACTION) double emissivity,
            @In(Dimension.LENGTH) double filmHeld) {}

    /** How a nozzle throws. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum Throw {
        SPRAY,
        ROTOR,
        DRIP
    }

    /** Shape of the radial profile of application. */
    @EnumNaming(CamelCaseStrategy.class)
    public enum Profile {
        UNIFORM,
        /** Falls linearly to nothing at the radius. */
        TRIANGULAR,
        /** As given by points. */
        MEASURED
    }

    /**
     * A nozzle.
     *
     * @param flow m3/s at the design pressure; for matched nozzles of a full circle, scaled by the arc
     * @param scalesWithArc flow is for 360 degrees and scales with the sweep
     * @param pressure design pressure in Pa
     * @param exponent n of q = k p^n: 0.5 for a plain nozzle, near 0 when pressure compensated
     * @param radius throw in m at the design pressure
     * @param lowest Pa under which the throw shrinks
     * @param highest Pa above which it mists
     * @param points relative application at equal steps from head to radius, measured profiles only
     * @param drop mean drop diameter in m at the design pressure
     */
    public record Nozzle(
            String id,
            Text name,
            Throw throwing,
            @In(Dimension.FLOW) double flow,
            boolean scalesWithArc,
            @In(Dimension.PRESSURE) double pressure,
            double exponent,
            @In(Dimension.LENGTH) double radius,
            @In(Dimension.PRESSURE) double lowest,
            @In(Dimension.PRESSURE) double highest,
            Profile profile,
            List<Double> points,
            @In(Dimension.LENGTH) double drop) {}

    /** A make of pipe: Hazen-Williams C, wall roughness m, Young's modulus Pa, and its sizes. */
    public record PipeMake(
            String id,
            Text name,
            double hazenWilliams,
            @In(Dimension.LENGTH) double roughness,
            @In(Dimension.PRESSURE) double modulus,
            List<PipeSize> sizes) {}

    /** A nominal size (m) with its inner diameter and wall (m). */
    public record PipeSize(
            @In(Dimension.LENGTH) double nominal,
            @In(Dimension.LENGTH) double inner,
            @In(Dimension.LENGTH) double wall) {}
}
