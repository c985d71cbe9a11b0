package provingyard.world.ground;

/**
 * Air and sky over the pavements over a beat, worked out once for all of them.
 */
final class SurfaceAir {

    private static final double COLDEST = -60;
    private static final double WARMEST = 90;
    private static final double DEGREES = 0.1;
    private static final double CLOUDS = 1.0 / 512;

    private static final Table SATURATION = new Table(COLDEST, WARMEST, DEGREES, SurfaceHeat::saturation);

    /** Emissivity of a clear sky by dew point, and the same by air temperature as a share of that at 0 °C. */
    private static final Table CLEAR =
            new Table(COLDEST, WARMEST, DEGREES, dew -> SurfaceHeat.brutsaert(0, SurfaceHeat.saturation(dew)));

    private static final Table CLEAR_BY_AIR =
            new Table(COLDEST, WARMEST, DEGREES, air -> SurfaceHeat.brutsaert(air, 1) / SurfaceHeat.brutsaert(0, 1));

    /** Emissivity of a sky under cloud as a multiple of the clear sky's. */
    private static final Table CLOUDY = new Table(0, 1, CLOUDS, cloud -> SurfaceHeat.cloudy(0.5, cloud) / 0.5);

    final double air;
    final double dewPoint;
    final double convection;
    private final double vapour;
    private final double evaporates;
    final double sky;
    final double walls;
    final double beam;
    final double diffuse;
    final double sunAltitude;
    final int bearing;

    SurfaceAir(MinuteForcing f) {
        air = f.air();
        dewPoint = f.dewPoint();
        vapour = saturation(f.dewPoint());
        convection = SurfaceHeat.convection(f.wind());
        evaporates = convection / SurfaceHeat.PSYCHROMETRIC / (Freezing.WATER * SurfaceHeat.VAPORISATION);
        double black = SurfaceHeat.radiated(air);
        sky = emissivity(air, dewPoint, f.cloud()) * black;
        walls = black;
        double scattered = Math.min(1, 0.2 + 0.8 * f.cloud());
        diffuse = f.sun() * scattered;
        beam = f.sun() - diffuse;
        sunAltitude = f.sunAltitude();
        double turn = f.sunBearing() / 360;
        bearing = Math.min(GroundCells.BEARINGS - 1, (int) ((turn - Math.floor(turn)) * GroundCells.BEARINGS));
    }

    /** Depths of water in m that wet surfaces (°C) would lose in a time; negative where dew falls. */
    void evaporation(double[] surfaces, double[] depths, double seconds, int count) {
        for (int p = 0; p < count; p++) {
            depths[p] = evaporates * (saturation(surfaces[p]) - vapour) * seconds;
        }
    }

    /** Saturation vapour pressure in kPa from a table (error under 2e-5 of it between -60 and 90 °C). */
    static double saturation(double celsius) {
        return SATURATION.at(celsius);
    }

    /** Emissivity of the sky after Brutsaert and Bolz from tables (error under 1e-5). */
    static double emissivity(double air, double dewPoint, double cloud) {
        double clear = Math.min(1, CLEAR.at(dewPoint) * CLEAR_BY_AIR.at(air));
        return Math.min(1, clear * CLOUDY.at(cloud));
    }
}
