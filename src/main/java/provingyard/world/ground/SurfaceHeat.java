package provingyard.world.ground;

import provingyard.numeric.Deterministic;

/** Heat that a level surface trades with air and sky. Temperatures in °C, fluxes in W/m2, positive to the surface. */
public final class SurfaceHeat {

    /** Stefan-Boltzmann constant in W/(m2 K4). */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** 0 °C in K. */
    public static final double KELVIN = 273.15;

    /** Psychrometric constant in kPa/K near sea level (FAO-56 eq. 8 at 100 kPa). */
    public static final double PSYCHROMETRIC = 0.0665;

    /** Latent heat of vaporisation in J/kg near 0 °C to 10 °C (FAO-56: 2.45 MJ/kg at 20 °C; 2.50 at 0 °C). */
    public static final double VAPORISATION = 2.49e6;

    private SurfaceHeat() {}

    /** Saturation vapour pressure over water in kPa: 0.6108 exp(17.27 T / (T + 237.3)). Source: FAO-56 eq. 11. */
    public static double saturation(double celsius) {
        return 0.6108 * Deterministic.exp(17.27 * celsius / (celsius + 237.3));
    }

    /** Relative humidity in percent from air temperature and dew point. */
    public static double humidity(double air, double dewPoint) {
        return Math.min(100, 100 * saturation(dewPoint) / saturation(air));
    }

    /**
     * Emissivity of a clear sky: 1.24 (e/T)^(1/7), e in hPa, T in K. Source: Brutsaert 1975.
     *
     * @param vapour actual vapour pressure in kPa
     */
    public static double brutsaert(double air, double vapour) {
        return 1.24 * Deterministic.pow(10 * vapour / (air + KELVIN), 1.0 / 7);
    }

    /** Emissivity of a clear sky: 0.70 + 5.95e-5 e exp(1500/T), e in hPa, T in K. Source: Idso 1981. For comparison. */
    public static double idso(double air, double vapour) {
        return 0.70 + 5.95e-5 * 10 * vapour * Deterministic.exp(1500 / (air + KELVIN));
    }

    /** Emissivity of the sky under cloud (0 to 1): clear x (1 + 0.22 n^2.75), at most 1. Source: Bolz 1949 (memory). */
    public static double cloudy(double clear, double cloud) {
        return cloud <= 0 ? clear : Math.min(1, clear * (1 + 0.22 * Deterministic.pow(cloud, 2.75)));
    }

    /** What a black body at a temperature gives off. */
    public static double radiated(double celsius) {
        double kelvin = celsius + KELVIN;
        double square = kelvin * kelvin;
        return STEFAN_BOLTZMANN * square * square;
    }

    /**
     * Convection coefficient in W/(m2 K): 5.6 + 4.0 v up to 5 m/s, 7.2 v^0.78 above. Source: McAdams 1954, as used for
     * pavements (from memory); it includes free convection, so some 5.6 remain in calm air.
     */
    public static double convection(double wind) {
        return wind <= 5 ? 5.6 + 4.0 * wind : 7.2 * Deterministic.pow(wind, 0.78);
    }

    /**
     * Convection and average re-radiation together in W/(m2 K): 1.3 + 0.62 v^0.75 Btu/(h ft2 F), v in mph. Source:
     * Barber 1957. For comparison.
     */
    public static double barber(double wind) {
        return (1.3 + 0.62 * Deterministic.pow(wind / 0.44704, 0.75)) * 5.678263;
    }

    /**
     * Latent heat that a wet surface loses, h / gamma (e_s(surface) - e_air): the Bowen analogy with equal transfer of
     * heat and vapour. Negative when dew falls.
     *
     * @param vapour air's vapour pressure in kPa
     */
    public static double evaporation(double convection, double surface, double vapour) {
        return convection / PSYCHROMETRIC * (saturation(surface) - vapour);
    }

    /**
     * Surface temperature of a steady night balance: h (Ta - Ts) + eps (sky - sigma Ts^4) + ground = 0, by Newton.
     *
     * @param sky longwave from the sky in W/m2
     * @param ground heat from below in W/m2
     */
    public static double steadyNight(double air, double convection, double emissivity, double sky, double ground) {
        double surface = air;
        for (int i = 0; i < 50; i++) {
            double kelvin = surface + KELVIN;
            double error = convection * (air - surface) + emissivity * (sky - radiated(surface)) + ground;
            double change = error / (convection + 4 * emissivity * STEFAN_BOLTZMANN * kelvin * kelvin * kelvin);
            surface += change;
            if (Math.abs(change) < 1e-12) {
                break;
            }
        }
        return surface;
    }

    /** Depth in m at which a temperature wave of a period (s) has fallen to 1/e: sqrt(alpha P / pi), alpha in m2/s. */
    public static double dampingDepth(double diffusivity, double period) {
        return Math.sqrt(diffusivity * period / Math.PI);
    }
}
