package provingyard.season;

import java.time.LocalDateTime;
import java.util.List;

/**
 * The yard at one minute, as the screen and the headless picture draw it: plain values, nothing of the world.
 *
 * @param tick minute of the season; 0 before the first minute was lived
 * @param clock standard time of the place
 * @param sky the weather of this minute
 * @param nx cells east; cell index = row * nx + column, row 0 in the south
 * @param ny cells north
 * @param wetness per cell: share of the available water in the root zone, 0 to 1 (over 1 while draining; 0 on paving)
 * @param film per cell: water on paving in mm
 * @param ice per cell: ice from irrigation water in mm
 * @param stress per cell: 1 - Ks
 * @param cold per cell: air temperature at 0.1 m in °C
 * @param paving per cell: temperature of the paving's surface in °C (not a number where plants grow)
 * @param zones state of each zone, in the document's order
 * @param heads state of each head, in the document's order
 * @param links flow of each pipe (m3/s, positive from its {@code from} end), in the document's order
 * @param sensors what each placed sensor shows
 * @param leaks what leaks now
 * @param masterOpen whether the master valve is open (true where there is none)
 * @param supplyFlow m3/s through the point of connection
 * @param ledger where the water went so far
 * @param spent USD spent on sensors
 */
public record Snapshot(
        long tick,
        LocalDateTime clock,
        Sky sky,
        int nx,
        int ny,
        float[] wetness,
        float[] film,
        float[] ice,
        float[] stress,
        float[] cold,
        float[] paving,
        List<Zone> zones,
        List<Head> heads,
        double[] links,
        List<Sensor> sensors,
        List<Leak> leaks,
        boolean masterOpen,
        double supplyFlow,
        Ledger ledger,
        double spent) {

    /**
     * The weather now.
     *
     * @param rainRate mm/h
     * @param sunAltitude degrees; negative by night
     * @param sunBearing degrees
     */
    public record Sky(
            double air,
            double dewPoint,
            double wind,
            double windFrom,
            double sun,
            double cloud,
            double rainRate,
            double sunAltitude,
            double sunBearing) {}

    /** A zone: open or not, the controller's lock-out, its flow in m3/s and the pressure at its valve in Pa. */
    public record Zone(String id, boolean open, boolean lockedOut, double flow, double pressure) {}

    /**
     * A head.
     *
     * @param spraying water leaves it now
     * @param flow m3/s
     * @param pressure Pa at its base (NaN when cut off)
     * @param radius throw in m at this pressure
     * @param driftX m east by which the pattern's far edge is carried
     * @param driftY m north
     */
    public record Head(
            String id, boolean spraying, double flow, double pressure, double radius, double driftX, double driftY) {}

    /**
     * A sensor's display.
     *
     * @param reading what it shows, in SI units (rain: m held; wind: m/s; freeze: °C; flow: m3/s; soil: volume share)
     * @param tripped whether it holds
     */
    public record Sensor(String id, double reading, boolean tripped) {}

    /**
     * A leak.
     *
     * @param x m east
     * @param y m north
     * @param flow m3/s
     * @param minutes since it began
     * @param surfaces whether so much comes out that it shows at the surface
     */
    public record Leak(double x, double y, double flow, long minutes, boolean surfaces) {}
}
