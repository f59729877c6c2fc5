package thrumwright.editor.view;

import java.awt.BorderLayout;
import java.awt.event.HierarchyEvent;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The place of a view that is made when it is first seen. */
public final class WhenSeen extends JPanel {
    private static final long serialVersionUID = 1L;

    private transient Supplier<JComponent> make;

    /** @param make on the event thread, and once */
    public WhenSeen(Supplier<JComponent> make) {
        super(new BorderLayout());
        this.make = make;
        addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && isShowing()) {
                fill();
            }
        });
    }

    private void fill() {
        if (make != null) {
            Supplier<JComponent> once = make;
            make = null;
            add(once.get());
            validate();
        }
    }
}
