package provingyard.study;

/** Told how a long search gets on; may stop it. */
public interface Progress {

    /** Nobody watches. */
    Progress SILENT = new Progress() {
        @Override
        public void at(int done, int of) {
            // nobody watches
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /** {@code done} of about {@code of} seasons were lived. */
    void at(int done, int of);

    /** Whether the search should stop. */
    boolean cancelled();
}
