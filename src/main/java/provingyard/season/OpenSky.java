package provingyard.season;

import provingyard.scenario.Point;
import provingyard.sensor.Surroundings;
import provingyard.world.weather.Weather;

/** Open field wherever a sensor stands: the weather's own rain, wind and air, no roof, wall, tree or sprinkler near. */
final class OpenSky implements Surroundings, Surroundings.Air {

    private Weather now;

    void minute(Weather weather) {
        now = weather;
    }

    @Override
    public Air air(Point at, double height) {
        return this;
    }

    @Override
    public Soil soil(Point at, double depth, double support) {
        throw new UnsupportedOperationException("there is no soil in the sky");
    }

    @Override
    public Pipe pipe(String pipe, double along) {
        throw new UnsupportedOperationException("there is no pipe in the sky");
    }

    @Override
    public double temperature() {
        return now.air();
    }

    @Override
    public double sun() {
        return now.sun();
    }

    @Override
    public double wind() {
        return now.wind();
    }

    @Override
    public double rain() {
        return now.rain();
    }

    @Override
    public double spray() {
        return 0;
    }

    @Override
    public double drying() {
        return now.reference();
    }
}
