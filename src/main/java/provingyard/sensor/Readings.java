package provingyard.sensor;

import java.util.List;
import java.util.Optional;
import provingyard.scenario.SensorKind;

/** What all sensors show in one minute, in the order of placing: displayed values only, never the truth. */
public record Readings(List<Reading> all) {

    /** No sensor. */
    public static final Readings NONE = new Readings(List.of());

    public Readings {
        all = List.copyOf(all);
    }

    /**
     * What one sensor shows.
     *
     * @param id placement id
     * @param kind which of the five
     * @param shown displayed value in SI units: rain m held, wind m/s (running mean), freeze °C, flow m3/s, soil volume
     *     share
     * @param tripped rain wet, wind too strong, air too cold, soil wet; never for flow
     * @param dry soil only: it is at or under its dry point and has not been wet since
     * @param wireCut its wire is cut, which the controller cannot tell from a trip
     * @param pulses flow only: pulses counted in this minute
     */
    public record Reading(
            String id, SensorKind kind, double shown, boolean tripped, boolean dry, boolean wireCut, int pulses) {

        /** Whether the controller sees the contact open: wires are normally closed, a cut one reads as tripped. */
        public boolean open() {
            return tripped || wireCut;
        }

        /** Whether the controller sees dry soil. */
        public boolean seenDry() {
            return dry && !wireCut;
        }
    }

    /** Number of sensors. */
    public int size() {
        return all.size();
    }

    /** The reading of a sensor by placement id. */
    public Optional<Reading> of(String id) {
        return all.stream().filter(r -> r.id().equals(id)).findFirst();
    }

    /** The reading of a sensor that is expected at an index, found by id wherever it is; null when there is none. */
    public Reading at(int index, String id) {
        if (index >= 0 && index < all.size() && all.get(index).id().equals(id)) {
            return all.get(index);
        }
        return of(id).orElse(null);
    }
}
