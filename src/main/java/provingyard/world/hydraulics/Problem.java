package provingyard.world.hydraulics;

/**
 * Something wrong with a network.
 *
 * @param place JSON pointer, or the id of the object
 * @param what what was found
 * @param allowed what is allowed
 */
public record Problem(String place, String what, String allowed) {

    @Override
    public String toString() {
        return place + ": " + what + ", allowed: " + allowed;
    }
}
