package thrumwright.testing;

import java.awt.EventQueue;
import javax.swing.JComponent;
import javax.swing.RepaintManager;

/** Counts what is to be laid out anew. */
public final class Laying extends RepaintManager {
    private int asked;

    /** How often that was asked for since it was last forgotten. */
    public int asked() {
        return asked;
    }

    public void forget() {
        asked = 0;
    }

    @Override
    public void addInvalidComponent(JComponent invalid) {
        asked++;
    }

    /** From now on all is counted by this, and nothing laid out by itself. */
    public void begin() throws Exception {
        EventQueue.invokeAndWait(() -> RepaintManager.setCurrentManager(this));
    }

    /** From now on all is laid out as usual. */
    public void end() throws Exception {
        EventQueue.invokeAndWait(() -> RepaintManager.setCurrentManager(null));
    }
}
