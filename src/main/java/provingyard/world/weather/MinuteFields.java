package provingyard.world.weather;

/** The series while it is made: one array per quantity, one entry per minute; units as in {@link Weather}. */
final class MinuteFields {

    final double[] air;
    final double[] dewPoint;
    final double[] wind;
    final double[] windFrom;
    final double[] sun;
    final double[] cloud;
    final double[] rain;

    MinuteFields(int ticks) {
        air = new double[ticks];
        dewPoint = new double[ticks];
        wind = new double[ticks];
        windFrom = new double[ticks];
        sun = new double[ticks];
        cloud = new double[ticks];
        rain = new double[ticks];
    }

    int ticks() {
        return air.length;
    }

    /** Sets the cloud of a minute and lets the sun follow it. */
    void cloud(int t, double cover) {
        sun[t] *= Radiation.shareUnderCloud(cover) / Radiation.shareUnderCloud(cloud[t]);
        cloud[t] = cover;
    }
}
