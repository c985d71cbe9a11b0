package provingyard.study;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Numbers that the sentence of a moment needs; which of them a moment carries, and in which order, its What fixes. */
public enum Gauge {
    /** Rain that fell at true open sky since it last began after a dry day, m. */
    FELL,
    /** The part of it that reached the sensor, m. */
    CAUGHT,
    /** Irrigation water that the sensor caught, m. */
    SPRAYED,
    /** What the sensor showed: at the start for rain and soil, its furthest for wind and freeze (SI units). */
    SEEN,
    /** Where the sensor trips (SI units). */
    TRIPS,
    /** Water in the root zone at the start as a share of what plants can draw, 1 at field capacity. */
    WETNESS,
    /** m3 below the roots. */
    BELOW,
    /** m3 run off. */
    RUNOFF,
    /** Mean wind in the open while it was too strong, m/s. */
    WIND,
    /** Coldest air over the middles of the iced walks in their nights, °C. */
    AIR,
    /** Largest iced area at one time, m2. */
    AREA,
    /** m3/s: lost by a leak at most, or shown by the sensor. */
    FLOW,
    /** m3/s expected, or the limit. */
    EXPECTED,
    /** m3/s that truly passed the sensor. */
    TRUTH,
    /** s from its begin until an alarm found it. */
    FOUND_AFTER,
    /** s for which water was lost. */
    LASTED,
    /** m2 of plants that died. */
    DEAD,
    /** Starts dropped and runs held or ended. */
    STOPS;

    /** The gauges of a kind of moment, in their order. */
    public static List<Gauge> of(Moment.What what) {
        return switch (what) {
            case WATERED_WET_SOIL -> List.of(FELL, CAUGHT, SPRAYED, SEEN, TRIPS, WETNESS, BELOW, RUNOFF);
            case DRIFTED -> List.of(WIND, SEEN, TRIPS);
            case ICED -> List.of(AIR, SEEN, TRIPS, AREA);
            case LEAKED -> List.of(FLOW, FOUND_AFTER, LASTED);
            case FALSE_ALARM -> List.of(FLOW, EXPECTED, TRUTH);
            case WENT_DRY -> List.of(DEAD, STOPS, SPRAYED);
            case SAVED_WATER -> List.of(STOPS, FELL);
            case SAVED_DRIFT -> List.of(STOPS, WIND);
            case SAVED_ICE -> List.of(STOPS, AIR);
            case LEAK_SHUT -> List.of(FLOW, FOUND_AFTER);
        };
    }

    /** What a moment's gauge says; NaN where nothing could be read. */
    public double on(Moment moment) {
        int at = of(moment.what()).indexOf(this);
        return at < 0 ? Double.NaN : moment.readings().get(at);
    }

    /** Readings being taken. Mutable. */
    static final class Readings {

        private final Map<Gauge, Double> values = new EnumMap<>(Gauge.class);

        Readings put(Gauge gauge, double value) {
            values.put(gauge, value);
            return this;
        }

        /** In the order of a What; NaN for those not taken. */
        List<Double> of(Moment.What what) {
            return Gauge.of(what).stream()
                    .map(g -> values.getOrDefault(g, Double.NaN))
                    .toList();
        }
    }
}
