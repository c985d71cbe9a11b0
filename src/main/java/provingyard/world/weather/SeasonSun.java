package provingyard.world.weather;

import java.time.LocalDate;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Place;

/** The sun over the place for each day and minute of a season, and the clear-sky radiation it gives. */
final class SeasonSun {

    static final int MINUTES = 1440;
    private static final double LONGEST_HALF_DAY = 11.5;

    private final double latitude;
    private final double clearSkyShare;
    private final int[] dayNumber;
    private final double[] noon;
    private final double[] halfDay;
    private final double[] altitude;
    private final double[] bearing;
    private final double[] clearSky;

    SeasonSun(Place place, LocalDate from, int days) {
        latitude = Math.toRadians(place.latitude());
        clearSkyShare = Radiation.clearSkyShare(place.elevation());
        dayNumber = new int[days];
        noon = new double[days];
        halfDay = new double[days];
        altitude = new double[days * MINUTES];
        bearing = new double[days * MINUTES];
        clearSky = new double[days * MINUTES];
        for (int day = 0; day < days; day++) {
            dayNumber[day] = SolarGeometry.dayNumber(from.plusDays(day));
            noon[day] = SolarGeometry.solarNoon(place.longitude(), place.utcOffset(), dayNumber[day]);
            halfDay[day] = SolarGeometry.daylightHours(latitude, dayNumber[day]) / 2.0;
            fill(day);
        }
    }

    /** As {@link SolarGeometry#sineOfAltitude} and {@link SolarGeometry#bearing}, the day's own terms taken out. */
    private void fill(int day) {
        double declination = SolarGeometry.declination(dayNumber[day]);
        double sinLatitude = Deterministic.sin(latitude);
        double cosLatitude = Deterministic.cos(latitude);
        double sinDeclination = Deterministic.sin(declination);
        double cosDeclination = Deterministic.cos(declination);
        double clear = clearSkyShare * SolarGeometry.momentaryRa(1.0, dayNumber[day]);
        for (int minute = 0; minute < MINUTES; minute++) {
            // The middle of the minute stands for it.
            double hourAngle = SolarGeometry.hourAngle((minute + 0.5) / 60.0, noon[day]);
            double cosHour = Deterministic.cos(hourAngle);
            double sine = sinLatitude * sinDeclination + cosLatitude * cosDeclination * cosHour;
            double east = -cosDeclination * Deterministic.sin(hourAngle);
            double north = sinDeclination * cosLatitude - cosDeclination * sinLatitude * cosHour;
            double degrees = Math.toDegrees(Deterministic.atan2(east, north));
            int t = day * MINUTES + minute;
            altitude[t] = Math.toDegrees(Deterministic.asin(Math.max(-1.0, Math.min(1.0, sine))));
            bearing[t] = degrees < 0.0 ? degrees + 360.0 : degrees;
            clearSky[t] = clear * Math.max(0.0, sine);
        }
    }

    int days() {
        return noon.length;
    }

    /** Rso/Ra of the place. */
    double clearSkyShare() {
        return clearSkyShare;
    }

    /** Degrees over the flat horizon, by tick. */
    double[] altitude() {
        return altitude;
    }

    /** Degrees from north over east, by tick. */
    double[] bearing() {
        return bearing;
    }

    /** Clear-sky global radiation in W/m2, by tick. */
    double[] clearSky() {
        return clearSky;
    }

    /** Tick of solar noon of a day, a fraction of a minute kept; the days before and after mirror the season's ends. */
    double noonTick(int day) {
        return day * (double) MINUTES + noon[within(day)] * 60.0;
    }

    /** Tick of sunrise. Where the sun hardly sets or never, 11.5 h from noon, so that a night is left. */
    double sunriseTick(int day) {
        return noonTick(day) - Math.min(LONGEST_HALF_DAY, halfDay[within(day)]) * 60.0;
    }

    /** Tick of sunset, as above. */
    double sunsetTick(int day) {
        return noonTick(day) + Math.min(LONGEST_HALF_DAY, halfDay[within(day)]) * 60.0;
    }

    private int within(int day) {
        return Math.max(0, Math.min(noon.length - 1, day));
    }
}
