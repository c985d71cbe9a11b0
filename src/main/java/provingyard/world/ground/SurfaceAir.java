package provingyard.world.ground;

/**
 * Air and sky over the pavements over a beat, worked out once for all of them.
 */
final class SurfaceAir {

    private static final double TABLE_FROM = -60;
    private static final double TABLE_STEP = 0.1;
    private static final double[] SATURATION = saturationTable();

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
        sky = SurfaceHeat.cloudy(Math.min(1, SurfaceHeat.brutsaert(air, vapour)), f.cloud()) * black;
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
        double place = (celsius - TABLE_FROM) / TABLE_STEP;
        int i = Math.min(SATURATION.length - 2, Math.max(0, (int) place));
        return SATURATION[i] + (place - i) * (SATURATION[i + 1] - SATURATION[i]);
    }

    private static double[] saturationTable() {
        double[] table = new double[1502];
        for (int i = 0; i < table.length; i++) {
            table[i] = SurfaceHeat.saturation(TABLE_FROM + i * TABLE_STEP);
        }
        return table;
    }
}
