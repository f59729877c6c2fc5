package thrumwright.output.page;

/**
 * Who is told how far a long work has come, and may ask it to stop. Told and asked on the thread that does the work, before
 * the first page and after every one.
 */
public interface Progress {
    /** For work that nobody watches. */
    Progress UNWATCHED = new Progress() {
        @Override
        public void done(int pages, int all) {
            // Nobody wants to know.
        }

        @Override
        public boolean stopping() {
            return false;
        }
    };

    /**
     * So many pages are done.
     *
     * @param pages 0 to {@code all}
     */
    void done(int pages, int all);

    /** Whether the work is to stop. */
    boolean stopping();

    /**
     * Tells how far the work has come, and stops it if that is asked for.
     *
     * @throws Stopped if the work is to stop
     */
    default void reached(int pages, int all) throws Stopped {
        done(pages, all);
        if (stopping()) {
            throw new Stopped();
        }
    }
}
