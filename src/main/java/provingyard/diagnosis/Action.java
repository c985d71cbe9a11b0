package provingyard.diagnosis;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Something a technician can do in one go: a look, a measurement with the valve work before it, a dig, a repair.
 *
 * @param id its name; equal rates are told apart by it
 * @param kind what it is for the score
 * @param legs what is done where, in order; several make a composite test, whose last leg gives the reading
 * @param needs conditions without which it cannot be done
 * @param latent what decides whether looking again can tell anything; null where each reading has fresh noise
 * @param target repair class of the place that is dug up or of the part that is swapped; null for others
 * @param risks what is dangerous about it
 */
public record Action(
        String id,
        Kind kind,
        List<Leg> legs,
        Map<String, String> needs,
        Latent latent,
        String target,
        Set<Risk> risks) {

    /** What an action is for the score. */
    public enum Kind {
        /** A look or a measurement. */
        TEST,
        /** A look or a measurement that halves the line, such as shutting an isolation valve and reading the meter. */
        SPLIT,
        /** Digging down to the pipe. */
        DIG,
        /** Putting a new part in to see whether it helps. */
        SWAP,
        /** Shutting the water at the point of connection, telling the owner. */
        MAKE_SAFE,
        /** Putting back what was shut, opened or bypassed. */
        OPERATE,
        /** A request to others: to mark buried lines, for a licensed tester. */
        REQUEST,
        REPAIR,
        /** Checking after a repair. */
        VERIFY;

        /** Whether it is judged as a test: by what it tells for its minutes. */
        public boolean judged() {
            return this == TEST || this == SPLIT || this == DIG || this == SWAP;
        }
    }

    /** What is dangerous about an action; {@link SafetyGates} says when it may be done. */
    public enum Risk {
        DIGS,
        TOUCHES_MAINS,
        OPENS_BACKFLOW,
        OPENS_PRESSURE,
        WETS_WALK
    }

    /**
     * A part of an action at one place.
     *
     * @param place where
     * @param minutes setting up, waiting and measuring, without walking
     * @param sets conditions that hold afterwards. A leg that only sets what already holds is left out, with its walk
     * @param where conditions without which it is left out as well; empty where there are none
     */
    public record Leg(String place, double minutes, Map<String, String> sets, Map<String, String> where) {

        /** A leg that is needed wherever it changes something. */
        public Leg(String place, double minutes, Map<String, String> sets) {
            this(place, minutes, sets, Map.of());
        }

        public Leg {
            if (!(minutes >= 0)) {
                throw new IllegalArgumentException("minutes must not be negative at " + place);
            }
            sets = Map.copyOf(sets);
            where = Map.copyOf(where);
        }

        boolean isDone(SiteState state) {
            return !sets.isEmpty() && state.holds(sets) || !state.holds(where);
        }
    }

    /**
     * What an answer hangs on beside noise, drawn once by nature: whether a break shows at the surface here. The same
     * look under the same conditions gives the same answer, so it tells nothing new.
     *
     * @param spot what is looked at
     * @param changesWith conditions that make the answer a new one, such as how long the pipe was under pressure
     */
    public record Latent(String spot, List<String> changesWith) {

        public Latent {
            changesWith = List.copyOf(changesWith);
        }

        String key(SiteState state) {
            StringBuilder key = new StringBuilder(spot);
            changesWith.forEach(c -> key.append('|').append(c).append('=').append(state.condition(c)));
            return key.toString();
        }
    }

    /** Minutes of walking between two places. */
    @FunctionalInterface
    public interface Walk {
        double minutes(String from, String to);
    }

    public Action {
        if (legs.isEmpty()) {
            throw new IllegalArgumentException(id + " has no leg");
        }
        legs = List.copyOf(legs);
        needs = Map.copyOf(needs);
        risks = Set.copyOf(risks);
    }

    /** Whether its conditions hold. */
    public boolean possible(SiteState state) {
        return state.holds(needs);
    }

    /** Its legs that are not left out. */
    public List<Leg> legsFrom(SiteState state) {
        return legs.stream().filter(leg -> !leg.isDone(state)).toList();
    }

    /** Minutes of walking and working from where one stands; above 0. */
    public double minutes(SiteState state, Walk walk) {
        double minutes = 0;
        String place = state.standing();
        for (Leg leg : legsFrom(state)) {
            minutes += walk.minutes(place, leg.place()) + leg.minutes();
            place = leg.place();
        }
        return Math.max(minutes, LEAST_MINUTES);
    }

    /** Nothing is done in less, so that bits per minute stay finite. */
    static final double LEAST_MINUTES = 0.1;

    /** The site afterwards: valves shut for a test stay shut. */
    public SiteState after(SiteState state) {
        return after(state, legs);
    }

    SiteState beforeLastLeg(SiteState state) {
        return after(state, legs.subList(0, legs.size() - 1));
    }

    private static SiteState after(SiteState state, List<Leg> legs) {
        Map<String, String> changes = new TreeMap<>();
        String place = state.standing();
        for (Leg leg : legs) {
            if (!leg.isDone(state)) {
                place = leg.place();
                changes.putAll(leg.sets());
            }
        }
        return state.after(place, changes);
    }

    /** Key of the answer if nature has drawn it once for all; the reading is taken in the state after the legs. */
    public Optional<String> latentKey(SiteState state) {
        return latent == null ? Optional.empty() : Optional.of(latent.key(after(state)));
    }
}
