package thrumwright.editor.view;

import java.awt.event.HierarchyEvent;
import javax.swing.JComponent;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Session;

/** Keeps a view up to date while it can be seen, and only then. */
final class LiveView {
    private final JComponent component;
    private final Runnable refresh;
    private final Runnable choose;
    private boolean stale = true;

    private LiveView(JComponent component, Runnable refresh, Runnable choose) {
        this.component = component;
        this.refresh = refresh;
        this.choose = choose;
    }

    static void keep(Session session, JComponent component, Runnable refresh) {
        keep(session, component, refresh, () -> {});
    }

    /** @param choose shows which blocks are selected; runs after {@code refresh} and whenever others are selected */
    static void keep(Session session, JComponent component, Runnable refresh, Runnable choose) {
        LiveView view = new LiveView(component, refresh, choose);
        session.listen(view::changed);
        component.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
                view.now();
            }
        });
    }

    private void changed(Change change) {
        stale |= change != Change.SELECTION;
        now();
    }

    private void now() {
        if (!component.isShowing()) {
            return;
        }
        if (stale) {
            stale = false;
            refresh.run();
            component.repaint();
        }
        choose.run();
    }
}
