package thrumwright.commandline;

import java.io.PrintStream;
import java.util.Map;
import java.util.function.LongSupplier;
import thrumwright.output.page.Progress;

/** Tells on one line of a terminal how far a work has come that takes more than a second; the line goes when it is done. */
final class TerminalProgress implements Progress {
    private static final long SOON = 1_000;
    private static final int WIDEST = 40;

    private final PrintStream err;
    private final LongSupplier clock;
    private final long begun;

    /** @param clock milliseconds from any moment */
    TerminalProgress(PrintStream err, LongSupplier clock) {
        this.err = err;
        this.clock = clock;
        this.begun = clock.getAsLong();
    }

    /** Nobody watches what goes into a file or another program. */
    static Progress on(PrintStream err) {
        return System.console() == null ? UNWATCHED : new TerminalProgress(err, () -> System.nanoTime() / 1_000_000);
    }

    @Override
    public void done(int pages, int all) {
        if (clock.getAsLong() - begun >= SOON) {
            String said = pages < all ? Said.of("progress", Map.of("done", pages, "all", all)) : "";
            err.print("\r" + " ".repeat(WIDEST) + "\r" + said);
            err.flush();
        }
    }

    @Override
    public boolean stopping() {
        return false;
    }
}
