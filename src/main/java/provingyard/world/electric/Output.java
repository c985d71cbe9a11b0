package provingyard.world.electric;

/**
 * One output of the controller.
 *
 * @param terminal its mark: 1, 2, … or {@code MV} for master valve or pump
 * @param ohms of its switch when on, in ohm
 * @param dead never switches on
 */
public record Output(String terminal, double ohms, boolean dead) {

    /** Terminal of the master valve or pump start relay. */
    public static final String MASTER = "MV";

    Output asDead() {
        return new Output(terminal, ohms, true);
    }
}
