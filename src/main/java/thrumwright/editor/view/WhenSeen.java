package thrumwright.editor.view;

import java.awt.BorderLayout;
import java.awt.event.HierarchyEvent;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import thrumwright.editor.look.OneByOne;
import thrumwright.editor.look.WhenWanted;

/** The place of a view that is made when it is first seen, in parts: made, filled, laid out. */
public final class WhenSeen extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Runnable before;
    private transient Supplier<JComponent> make;

    /** @param make on the event thread, and once */
    public WhenSeen(Supplier<JComponent> make) {
        this(() -> {}, make);
    }

    /** @param before what it needs and may have been done already, once and by an event of its own */
    public WhenSeen(Runnable before, Supplier<JComponent> make) {
        super(new BorderLayout());
        this.before = before;
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
            WhenWanted<JComponent> view = new WhenWanted<>();
            OneByOne.begin(List.of(before, () -> view.get(once), () -> add(view.get(once)), this::validate));
        }
    }
}
