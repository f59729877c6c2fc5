package thrumwright.editor.look;

/** Tells what a component says because the program has just set it from what the weaver does to it. */
public final class Quiet {
    private boolean now;

    /** Whether the program is setting it. */
    public boolean now() {
        return now;
    }

    /** Sets it; what it says meanwhile isn't the weaver's. */
    public void during(Runnable setting) {
        boolean before = now;
        now = true;
        try {
            setting.run();
        } finally {
            now = before;
        }
    }
}
