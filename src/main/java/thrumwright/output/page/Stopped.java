package thrumwright.output.page;

import java.io.IOException;

/** A work was stopped as its {@link Progress} asked for. Whatever it wrote so far isn't whole and should be thrown away. */
public final class Stopped extends IOException {
    private static final long serialVersionUID = 1L;

    public Stopped() {
        super("stopped when asked to");
    }
}
