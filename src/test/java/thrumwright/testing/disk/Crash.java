package thrumwright.testing.disk;

/** The power is gone: no program gets on from here. */
public final class Crash extends Error {
    private static final long serialVersionUID = 1L;

    Crash() {
        super("the power is gone");
    }
}
