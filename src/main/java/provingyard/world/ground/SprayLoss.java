package provingyard.world.ground;

import provingyard.numeric.Deterministic;

/**
 * Wind drift and evaporation between nozzle and ground: published regressions, each in percent of the flow, with its
 * own inputs. They were fitted to farm sprinklers and differ by a factor of two between fields (measured on one linear
 * move: 3 to 49 %, Sarwar et al. 2019), so read them as an order, not a measurement.
 */
public final class SprayLoss {

    private SprayLoss() {}

    /** Solid sets, day and night: 20.3 + 0.214 U^2 - 2.29e-3 RH^2 (U in m/s, RH in %). Playan et al. 2005, E15. */
    public static double solidSet(double wind, double humidity) {
        return 20.3 + 0.214 * wind * wind - 2.29e-3 * humidity * humidity;
    }

    /** Solid sets by day: 20.7 + 0.185 U^2 - 2.14e-3 RH^2. Playan et al. 2005, E13. */
    public static double solidSetDay(double wind, double humidity) {
        return 20.7 + 0.185 * wind * wind - 2.14e-3 * humidity * humidity;
    }

    /** Solid sets by night: 3.7 + 1.31 U. Playan et al. 2005, E2. */
    public static double solidSetNight(double wind) {
        return 3.7 + 1.31 * wind;
    }

    /**
     * Evaporation alone: 0.389 exp(0.18 W) (e_s - e_a)^0.7, W in m/s, deficit in hPa. Yazar 1984; coefficients and unit
     * from memory; a field test of 2019 ranked it low.
     */
    public static double yazar(double wind, double deficitHectopascal) {
        return 0.389 * Deterministic.exp(0.18 * wind) * Deterministic.pow(deficitHectopascal, 0.7);
    }

    /**
     * Frost and Schwalen's nomograph as an equation: (1.98 D^-0.72 + 0.22 VPD^0.63 + 3.6e-4 h^1.16 + 0.14 W^0.7)^4.2.
     * Trimmer 1987; the wind coefficient from memory (a public copy prints 0.4, which misses the paper's table).
     *
     * @param nozzle diameter in mm
     * @param deficit vapour pressure deficit in kPa
     * @param pressure kPa
     * @param wind m/s
     */
    public static double trimmer(double nozzle, double deficit, double pressure, double wind) {
        double sum = 1.98 * Deterministic.pow(nozzle, -0.72)
                + 0.22 * Deterministic.pow(deficit, 0.63)
                + 3.6e-4 * Deterministic.pow(pressure, 1.16)
                + 0.14 * Deterministic.pow(wind, 0.7);
        return Deterministic.pow(sum, 4.2);
    }

    /** Coarseness index of Keller and Bliesner: 0.032 P^1.3 / B (P in kPa, B in mm), held within 7 and 17. */
    public static double coarseness(double pressure, double nozzle) {
        return Math.min(17, Math.max(7, 0.032 * Deterministic.pow(pressure, 1.3) / nozzle));
    }

    /**
     * Effective share of the water by Keller and Bliesner 1990: 0.976 + 0.005 ET - 0.00017 ET^2 + 0.0012 W - CI (0.00043
     * ET + 0.00018 W + 0.000016 ET W). From memory.
     *
     * @param reference reference evapotranspiration in mm/d
     * @param wind km/h
     */
    public static double kellerBliesner(double coarseness, double reference, double wind) {
        return 0.976
                + 0.005 * reference
                - 0.00017 * reference * reference
                + 0.0012 * wind
                - coarseness * (0.00043 * reference + 0.00018 * wind + 0.000016 * reference * wind);
    }

    /**
     * Share (0 to 0.6) that does not reach the ground, as the simulator uses it: Playan's regressions for day (E13) and
     * night (E2), joined linearly while the sun stands between the horizon and 10 degrees, never under the night's
     * intercept; scaled by drop size as (1.5 mm / drop)^0.5 within 0.6 and 2.5, since fine drops evaporate and drift
     * more (the scaling: common practice, no source).
     *
     * @param wind m/s at 2 m
     * @param humidity percent
     * @param sunAltitude degrees
     * @param drop mean drop diameter in m at the present pressure
     */
    public static double share(double wind, double humidity, double sunAltitude, double drop) {
        double night = solidSetNight(wind);
        double day = Math.max(3.7, solidSetDay(wind, humidity));
        double byDay = Math.min(1, Math.max(0, sunAltitude / 10));
        double coarse = Math.min(2.5, Math.max(0.6, Math.sqrt(1.5e-3 / drop)));
        return Math.min(0.6, 0.01 * coarse * (night + byDay * (day - night)));
    }
}
