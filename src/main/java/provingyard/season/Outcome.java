package provingyard.season;

/**
 * What a lived season came to: all that scoring may see, so that what is scored can be shown.
 *
 * @param days days lived
 * @param ledger where the water went, ice and plants
 * @param leaks what became of the leaks
 * @param spent USD paid for the sensors placed
 * @param shareOfLife days lived as a share of a sensor's service life
 */
public record Outcome(int days, Ledger ledger, Leaks leaks, double spent, double shareOfLife) {

    /**
     * Leaks of the season.
     *
     * @param happened breaks, leaks and stuck or weeping valves that began to lose water
     * @param found those that the controller's flow watch found
     * @param late the part of the found that took longer than the lesson allows
     * @param falseAlarms flow alarms while nothing leaked
     */
    public record Leaks(int happened, int found, int late, int falseAlarms) {

        /** Leaks that nobody found. */
        public int missed() {
            return happened - found;
        }
    }
}
