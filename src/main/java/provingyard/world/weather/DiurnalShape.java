package provingyard.world.weather;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * The day's course of wind by month, as ratios to its mean, from {@code weather-soil/diurnal-shape.json} (hourly
 * normals of Seattle 1981-2010, NOAA; taken for every place).
 */
final class DiurnalShape {

    private static final String FILE = "weather-soil/diurnal-shape.json";

    private final List<double[]> months = new ArrayList<>();

    private DiurnalShape() {}

    static DiurnalShape read(DataFiles files) {
        JsonData root = JsonData.read(files, FILE);
        DiurnalShape shape = new DiurnalShape();
        for (int month = 1; month <= 12; month++) {
            JsonNode ratios = root.at("/" + month + "/wind_ratio");
            if (ratios.size() != 24) {
                throw new WeatherDataException(
                        FILE, 0, "month " + month + " has " + ratios.size() + " wind ratios; 24 are expected");
            }
            double[] hours = new double[24];
            for (int hour = 0; hour < 24; hour++) {
                hours[hour] = root.number("/" + month + "/wind_ratio/" + hour, 0.0, 10.0);
            }
            shape.months.add(hours);
        }
        return shape;
    }

    /** Ratio to the day's mean at a minute of the day, straight between full hours. */
    double wind(int month, int minute) {
        double[] hours = months.get(month - 1);
        int hour = minute / 60;
        double share = (minute % 60) / 60.0;
        return hours[hour] * (1.0 - share) + hours[(hour + 1) % 24] * share;
    }
}
